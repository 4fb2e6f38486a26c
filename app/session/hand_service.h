// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <memory>

#include "app/window/record_keeper.h"
#include "core/measure/hand_keeping.h"

namespace ferrule {

/// Writes a session that is put in by hand into a record, on a thread of its own. Requests are carried out in their
/// order, those that wait when the service ends too; answers come as signals on the caller's thread.
class HandService : public QObject {
  Q_OBJECT
 public:
  explicit HandService(QObject* parent = nullptr);

  /// Opens a record, or makes it, and looks for a session that was broken off.
  void open(const QString& record);
  void begin(const HandTerms& terms, SessionKind kind, UtcMilliseconds now);
  void keep(const KeptHand& hand);
  void nextFrame(const KeptHand& hand);
  void end(const KeptHand& hand);

 signals:
  /// hand: what was broken off; null when nothing was.
  void opened(const QString& record, std::shared_ptr<const ferrule::KeptHand> hand);
  /// A session or its next frame stands in the record.
  void begun(std::shared_ptr<const ferrule::KeptHand> hand);
  void ended();
  void failed(const ferrule::Error& error);

 private:
  /// Whatever goes wrong is told.
  void ask(std::function<Result<void>(Record&)> work);

  RecordKeeper keeper_;
};

}  // namespace ferrule
