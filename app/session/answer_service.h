// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include "app/window/record_keeper.h"
#include "core/measure/measure.h"

namespace ferrule {

/// Brings what a person says of rulings into the record of a session that is measured no more, on a thread of its own.
class AnswerService : public QObject {
  Q_OBJECT
 public:
  explicit AnswerService(QObject* parent = nullptr);

  void say(const QString& record, const SaidOfRecorded& said);

 signals:
  /// Every shot of the frame, as it is ruled since then.
  void ruledAgain(const std::vector<ferrule::RuledAgain>& ruled);
  void failed(const ferrule::Error& error);

 private:
  RecordKeeper keeper_;
};

}  // namespace ferrule
