// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QThread>

#include "core/measure/correct_shot.h"

namespace ferrule {

class CorrectionKeeper;

/// Writes corrections into a record, and what follows from them, on a thread of its own: shots are read and ruled again
/// there, so that the window never waits. Requests are carried out in their order; each is answered by one signal on
/// the caller's thread.
class CorrectionService : public QObject {
  Q_OBJECT
 public:
  explicit CorrectionService(QObject* parent = nullptr);
  /// Carries out what was asked for before.
  ~CorrectionService() override;

  /// From now on requests are about this record. Opened with the first of them: a record that is only looked at may be
  /// one that cannot be written.
  void setRecord(const QString& path);
  void say(ShotId shot, const ShotSaying& saying, const QString& who, UtcMilliseconds when);
  void takeBack(FrameId frame, CorrectionId correction);

 signals:
  void said(ferrule::CorrectionId correction);
  void takenBack(ferrule::CorrectionId correction);
  void refused(ferrule::NotSaid why);
  void failed(const ferrule::Error& error);

 private:
  QThread thread_;
  CorrectionKeeper* keeper_;
};

}  // namespace ferrule
