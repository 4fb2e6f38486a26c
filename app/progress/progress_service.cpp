// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress/progress_service.h"

#include <algorithm>
#include <atomic>
#include <map>
#include <optional>
#include <set>

#include "app/progress/progress_words.h"
#include "core/measure/player_history.h"
#include "core/measure/steadier_play.h"
#include "core/progress/goals.h"
#include "core/record/record.h"

namespace ferrule {

/// Lives on the service's thread; keeps the histories that were read.
class ProgressReader : public QObject {
  Q_OBJECT
 public:
  explicit ProgressReader(ProgressService::Clock now) : now_(std::move(now)) {}

  void open(const QString& path) {
    histories_.clear();
    replayed_.clear();
    record_.reset();
    RecordOptions options;
    options.mode = RecordMode::ReadOnly;
    auto record = Record::open(path.toStdString(), options);
    if (!record) {
      emit failed(record.error());
      return;
    }
    const auto players = record->players();
    if (!players) {
      emit failed(players.error());
      return;
    }
    record_.emplace(std::move(*record));
    players_ = *players;
    emit opened(path, *players);
  }

  /// Answers at once, and once more when the player's shots have been played again.
  void answer(const ProgressQuestion& question, int number, const std::stop_token& stop) {
    if (!record_ || number != newest || !answerOnce(question, number)) return;
    bool more = false;
    for (const ProgressWanted& wanted : question.wanted) {
      if (!replayed_.insert(wanted.player).second) continue;
      const auto played = addSteadierGains(*record_, histories_.at(wanted.player), {}, {{}, stop});
      // Stopped by a newer question: what is left is played for that one.
      if (!played) replayed_.erase(wanted.player);
      if (!played && played.error().code != ErrorCode::Cancelled) emit failed(played.error());
      more |= played.value_or(0) > 0;
    }
    if (more && number == newest) answerOnce(question, number);
  }

  bool answerOnce(const ProgressQuestion& question, int number) {
    auto answer = std::make_shared<ProgressAnswer>();
    for (const ProgressWanted& wanted : question.wanted) {
      const auto history = historyOf(wanted.player);
      if (!history) {
        emit failed(history.error());
        return false;
      }
      answer->columns.push_back(column(**history, wanted, question));
      auto consent = reportConsent(*record_, wanted.player);
      if (!consent) {
        emit failed(consent.error());
        return false;
      }
      answer->columns.back().consent = std::move(*consent);
      if (number != newest) return false;
    }
    emit answered(answer);
    return true;
  }

  void list(const QString& record, const ProgressWanted& wanted, const QLocale& locale, int number) {
    if (!record_ || number != newest || record_->path() != record.toStdString()) return;
    ShotList list;
    list.record = record;
    const ReportWords words(locale);
    for (const Player& player : players_) {
      if (!wanted.player.empty() && player.name != wanted.player) continue;
      const auto history = historyOf(player.name);
      if (!history) {
        emit failed(history.error());
        return;
      }
      for (const PlayedShot& shot : (*history)->shots) {
        const PlayedSession& session = (*history)->sessions[shot.session];
        if (!passes(shot, session, (*history)->tables[session.table], wanted.filter)) continue;
        list.shots.push_back({SessionId{session.id}, ShotId{shot.id}, listedWords(session, shot, words), shot.outcome});
      }
    }
    emit listed(list);
  }

  std::atomic<int> newest = 0;  ///< question; older ones are not worked out any more

 signals:
  void opened(const QString& path, const std::vector<ferrule::Player>& players);
  void answered(std::shared_ptr<const ferrule::ProgressAnswer> answer);
  void listed(const ferrule::ShotList& shots);
  void failed(const ferrule::Error& error);

 private:
  Result<const PlayerHistory*> historyOf(const std::string& player) {
    auto known = histories_.find(player);
    if (known == histories_.end()) {
      auto read = playerHistory(*record_, player, {});
      if (!read) return tl::make_unexpected(read.error());
      known = histories_.emplace(player, std::move(*read)).first;
    }
    return &known->second;
  }

  ProgressColumn column(const PlayerHistory& history, const ProgressWanted& wanted,
                        const ProgressQuestion& question) const {
    ProgressColumn column;
    column.wanted = wanted;
    for (const PlayedTable& table : history.tables) {
      if (std::ranges::find(column.tables, table.name) == column.tables.end()) column.tables.push_back(table.name);
    }
    std::set<std::string> games;
    for (const PlayedShot& shot : history.shots) {
      if (!shot.game.empty()) games.insert(shot.game);
    }
    column.games.assign(games.begin(), games.end());
    std::set<std::string> opponents;
    for (const PlayedSession& session : history.sessions)
      opponents.insert(session.opponents.begin(), session.opponents.end());
    column.opponents.assign(opponents.begin(), opponents.end());
    for (const PlayedRun& run : history.runs) {
      if (std::ranges::find(column.drills, run.drill, &Drill::key) != column.drills.end()) continue;
      column.drills.push_back({.key = run.drill, .title = run.title});
    }
    column.progress = playerProgress(filtered(history, wanted.filter), {now_(), {}});
    if (question.goals && wanted.filter.from_ms) {
      HistoryFilter before = wanted.filter;
      before.until_ms = before.from_ms;
      before.from_ms.reset();
      column.progress.goals = checkGoals(filtered(history, before), column.progress, {now_(), {}});
    }
    column.figures =
        figuresOf(column.progress, ReportWords(question.numbers), wanted.filter.drill.value_or(std::string()));
    return column;
  }

  ProgressService::Clock now_;
  std::optional<Record> record_;
  std::vector<Player> players_;
  std::map<std::string, PlayerHistory> histories_;
  std::set<std::string> replayed_;  ///< whose shots were played again
};

ProgressService::ProgressService(Clock now, QObject* parent)
    : QObject(parent), reader_(new ProgressReader(std::move(now))) {
  thread_.setObjectName(QStringLiteral("progress"));
  reader_->moveToThread(&thread_);
  connect(&thread_, &QThread::finished, reader_, &QObject::deleteLater);
  connect(reader_, &ProgressReader::opened, this, &ProgressService::opened, Qt::QueuedConnection);
  connect(reader_, &ProgressReader::answered, this, &ProgressService::answered, Qt::QueuedConnection);
  connect(reader_, &ProgressReader::listed, this, &ProgressService::listed, Qt::QueuedConnection);
  connect(reader_, &ProgressReader::failed, this, &ProgressService::failed, Qt::QueuedConnection);
  thread_.start();
}

ProgressService::~ProgressService() {
  next();
  thread_.quit();
  thread_.wait();
}

int ProgressService::next() {
  stop_.request_stop();
  stop_ = std::stop_source();
  return ++reader_->newest;
}

void ProgressService::open(const QString& path) {
  next();
  QMetaObject::invokeMethod(
      reader_, [reader = reader_, path] { reader->open(path); }, Qt::QueuedConnection);
}

void ProgressService::ask(const ProgressQuestion& question) {
  const int number = next();
  QMetaObject::invokeMethod(
      reader_,
      [reader = reader_, question, number, stop = stop_.get_token()] { reader->answer(question, number, stop); },
      Qt::QueuedConnection);
}

void ProgressService::list(const QString& record, const ProgressWanted& wanted, const QLocale& locale) {
  const int number = next();
  QMetaObject::invokeMethod(
      reader_, [reader = reader_, record, wanted, locale, number] { reader->list(record, wanted, locale, number); },
      Qt::QueuedConnection);
}

}  // namespace ferrule

#include "progress_service.moc"
