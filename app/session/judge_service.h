// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QThread>
#include <stop_token>

#include "core/measure/judge_session.h"

namespace ferrule {

/// Sets suggested beside taken for sessions that have ended, on a thread of its own with a record of its own. What is
/// not done when the program ends can be done later: what was judged stays.
class JudgeService : public QObject {
  Q_OBJECT
 public:
  explicit JudgeService(QObject* parent = nullptr);
  ~JudgeService() override;

  void judge(const QString& record, SessionId session);

 signals:
  void judged(int shots);
  void failed(const ferrule::Error& error);

 private:
  QThread thread_;
  QObject* worker_;  ///< lives on the thread
  std::stop_source stop_;
};

}  // namespace ferrule
