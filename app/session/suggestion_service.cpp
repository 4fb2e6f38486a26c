// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/suggestion_service.h"

#include <optional>
#include <utility>

namespace ferrule {

namespace {

/// Settled within this; the first list comes far earlier.
constexpr double kMost_s = 1.5;
/// One point of a drawn way for every so much of it, m.
constexpr double kWayStep_m = 0.01;

std::vector<TablePoint> wayOf(const BallPath& path, double duration_s) {
  std::vector<TablePoint> way;
  for (double time_s = 0.0; time_s <= duration_s; time_s += 0.01) {
    if (path.motionAt(time_s).kind == MotionKind::Gone) break;
    const TablePoint place = planOf(path.stateAt(time_s).position);
    if (way.empty() || distance(way.back(), place) >= kWayStep_m) way.push_back(place);
  }
  return way;
}

}  // namespace

/// Lives on the service's thread and keeps the planner of the table that was asked about last.
class SuggestionSearcher : public QObject {
  Q_OBJECT
 public:
  void search(const SuggestionQuestion& question, int number, const std::stop_token& stop) {
    if (stop.stop_requested()) return;
    if (!planner_ || table_ != question.table || parameters_ != question.parameters) {
      auto planner = Planner::create(question.table.table, question.parameters);
      if (!planner) {
        emit failed(planner.error(), number);
        return;
      }
      planner_.emplace(std::move(*planner));
      table_ = question.table;
      parameters_ = question.parameters;
    }
    const Scatter scatter = scatterOf(question.level);
    SearchBudget budget;
    budget.most_s = kMost_s;
    budget.stop = stop;
    const auto found = planner_->suggest(question.situation, {scatter, scatter}, budget, [&](const Suggestion& better) {
      tell(question, better, scatter, false, number);
    });
    if (stop.stop_requested()) return;
    if (!found) {
      emit failed(found.error(), number);
    } else {
      tell(question, *found, scatter, true, number);
    }
  }

 signals:
  void answered(std::shared_ptr<const ferrule::SuggestionAnswer> answer, int number);
  void failed(const ferrule::Error& error, int number);

 private:
  void tell(const SuggestionQuestion& question, const Suggestion& suggestion, const Scatter& scatter, bool final,
            int number) {
    SuggestionAnswer answer{suggestion, scatter, question.situation.balls, {}, final};
    if (!suggestion.plans.empty()) {
      const Plan& best = suggestion.plans.front().plan;
      if (best.cueBall) answer.placed = withCueBallAt(question.situation, *best.cueBall).balls;
      if (const auto played = planner_->simulator().shoot(answer.placed, best.strike)) {
        for (const BallPath& path : played->paths) {
          auto way = wayOf(path, played->duration_s);
          if (way.size() > 1) answer.ways.emplace_back(path.ball, std::move(way));
        }
      }
    }
    emit answered(std::make_shared<const SuggestionAnswer>(std::move(answer)), number);
  }

  std::optional<Planner> planner_;
  MeasuredTable table_;
  PhysicsParameters parameters_;
};

SuggestionService::SuggestionService(QObject* parent) : QObject(parent), searcher_(new SuggestionSearcher) {
  thread_.setObjectName(QStringLiteral("suggestion"));
  searcher_->moveToThread(&thread_);
  connect(&thread_, &QThread::finished, searcher_, &QObject::deleteLater);
  // What was under way when another question came is not told.
  connect(
      searcher_, &SuggestionSearcher::answered, this,
      [this](const std::shared_ptr<const SuggestionAnswer>& answer, int number) {
        if (number == question_) emit answered(answer);
      },
      Qt::QueuedConnection);
  connect(
      searcher_, &SuggestionSearcher::failed, this,
      [this](const Error& error, int number) {
        if (number == question_) emit failed(error);
      },
      Qt::QueuedConnection);
  thread_.start();
}

SuggestionService::~SuggestionService() {
  stop();
  thread_.quit();
  thread_.wait();
}

void SuggestionService::ask(const SuggestionQuestion& question) {
  stop();
  stop_ = std::stop_source();
  QMetaObject::invokeMethod(
      searcher_,
      [searcher = searcher_, question, number = question_, token = stop_.get_token()] {
        searcher->search(question, number, token);
      },
      Qt::QueuedConnection);
}

void SuggestionService::stop() {
  stop_.request_stop();
  ++question_;
}

}  // namespace ferrule

#include "suggestion_service.moc"
