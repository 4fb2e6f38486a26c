// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/drill_service.h"

#include <QDir>
#include <QFileInfo>
#include <utility>

namespace ferrule {

namespace {

Result<DrillShelf> shelfOf(Record& record) {
  DrillShelf shelf;
  auto own = ownDrills(record);
  if (!own) return tl::make_unexpected(own.error());
  auto runs = keptRuns(record);
  if (!runs) return tl::make_unexpected(runs.error());
  auto sessions = record.sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  const auto players = record.players();
  if (!players) return tl::make_unexpected(players.error());
  shelf.own = std::move(*own);
  shelf.runs = std::move(*runs);
  shelf.sessions = std::move(*sessions);
  for (const Player& player : *players)
    shelf.players.push_back(player.name);
  return shelf;
}

}  // namespace

/// Lives on the service's thread and owns the record there.
class DrillKeeper : public QObject {
  Q_OBJECT
 public:
  void open(const QString& path) {
    record_.reset();
    QDir().mkpath(QFileInfo(path).absolutePath());
    auto record = Record::open(path.toStdString());
    if (!record) {
      emit failed(record.error());
      return;
    }
    record_.emplace(std::move(*record));
    emit opened(path);
    shelve();
  }

  void carryOut(const std::function<Result<void>(Record&)>& work, bool shelves) {
    if (!record_) return;
    if (auto done = work(*record_); !done) emit failed(done.error());
    if (shelves) shelve();
  }

 signals:
  void opened(const QString& record);
  void shelved(std::shared_ptr<const ferrule::DrillShelf> shelf);
  void failed(const ferrule::Error& error);

 private:
  void shelve() {
    auto shelf = shelfOf(*record_);
    if (!shelf) {
      emit failed(shelf.error());
    } else {
      emit shelved(std::make_shared<const DrillShelf>(std::move(*shelf)));
    }
  }

  std::optional<Record> record_;
};

DrillService::DrillService(QObject* parent) : QObject(parent), keeper_(new DrillKeeper) {
  thread_.setObjectName(QStringLiteral("drill keeper"));
  keeper_->moveToThread(&thread_);
  connect(&thread_, &QThread::finished, keeper_, &QObject::deleteLater);
  connect(keeper_, &DrillKeeper::opened, this, &DrillService::opened, Qt::QueuedConnection);
  connect(keeper_, &DrillKeeper::shelved, this, &DrillService::shelved, Qt::QueuedConnection);
  connect(keeper_, &DrillKeeper::failed, this, &DrillService::failed, Qt::QueuedConnection);
  thread_.start();
}

DrillService::~DrillService() {
  // Behind all that waits in the queue.
  QMetaObject::invokeMethod(
      keeper_, [thread = &thread_] { thread->quit(); }, Qt::QueuedConnection);
  thread_.wait();
}

void DrillService::ask(std::function<Result<void>(Record&)> work, bool shelves) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, work = std::move(work), shelves] { keeper->carryOut(work, shelves); },
      Qt::QueuedConnection);
}

void DrillService::open(const QString& record) {
  QMetaObject::invokeMethod(
      keeper_, [keeper = keeper_, record] { keeper->open(record); }, Qt::QueuedConnection);
}

void DrillService::keepDrills(const std::vector<Drill>& drills, UtcMilliseconds now) {
  ask(
      [drills, now](Record& record) -> Result<void> {
        for (const Drill& drill : drills) {
          if (auto done = keepOwnDrill(record, drill, now); !done) return done;
        }
        return {};
      },
      true);
}

void DrillService::removeDrill(const std::string& key) {
  ask([key](Record& record) { return record.removeDrill(key); }, true);
}

void DrillService::beginRun(const RunTerms& terms, UtcMilliseconds now) {
  ask(
      [this, terms, now](Record& record) -> Result<void> {
        auto run = ferrule::beginRun(record, terms, now);
        if (!run) return tl::make_unexpected(run.error());
        // The service outlives its thread's work; signals reach its own thread through the queue.
        emit begun(std::make_shared<const KeptRun>(std::move(*run)));
        return {};
      },
      false);
}

void DrillService::keepTrial(DrillRunId run, const DrillTrial& trial) {
  ask([run, trial](Record& record) { return ferrule::keepTrial(record, run, trial); }, false);
}

void DrillService::takeBackTrial(DrillRunId run) {
  ask([run](Record& record) { return record.removeLastTrial(run); }, false);
}

void DrillService::endRun(const KeptRun& run, UtcMilliseconds now) {
  ask([run, now](Record& record) { return ferrule::endRun(record, run, now); }, true);
}

void DrillService::countSession(SessionId session, const Drill& drill) {
  ask(
      [this, session, drill](Record& record) -> Result<void> {
        auto run = runFromSession(record, session, drill, std::nullopt);
        if (!run) return tl::make_unexpected(run.error());
        emit counted(std::make_shared<const KeptRun>(std::move(*run)));
        return {};
      },
      true);
}

}  // namespace ferrule

#include "drill_service.moc"
