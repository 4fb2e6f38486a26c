// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/judge_service.h"

namespace ferrule {

namespace {

Result<JudgeReport> judgeIn(const QString& path, SessionId session, const std::stop_token& stop) {
  auto record = Record::open(path.toStdString());
  if (!record) return tl::make_unexpected(record.error());
  JobControl job;
  job.stop = stop;
  return judgeSession(*record, session, {}, job);
}

}  // namespace

JudgeService::JudgeService(QObject* parent) : QObject(parent), worker_(new QObject) {
  thread_.setObjectName(QStringLiteral("judge"));
  worker_->moveToThread(&thread_);
  connect(&thread_, &QThread::finished, worker_, &QObject::deleteLater);
  thread_.start();
}

JudgeService::~JudgeService() {
  stop_.request_stop();
  thread_.quit();
  thread_.wait();
}

void JudgeService::judge(const QString& record, SessionId session) {
  QMetaObject::invokeMethod(
      worker_,
      [this, record, session, stop = stop_.get_token()] {
        const auto report = judgeIn(record, session, stop);
        // The service outlives its thread's work; signals reach its own thread through the queue.
        if (report) {
          emit judged(report->judged);
        } else if (report.error().code != ErrorCode::Cancelled) {
          emit failed(report.error());
        }
      },
      Qt::QueuedConnection);
}

}  // namespace ferrule
