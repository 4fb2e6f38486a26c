// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/report_builder.h"

#include <QCoreApplication>
#include <functional>

#include "app/report/drill_charts.h"
#include "app/report/play_charts.h"
#include "app/report/report_charts.h"
#include "app/report/report_first_page.h"
#include "app/report/report_words.h"
#include "app/words/drill_words.h"
#include "app/words/trade_words.h"
#include "core/geometry/units.h"
#include "core/record/record.h"

namespace ferrule {

namespace {

class Builder {
  Q_DECLARE_TR_FUNCTIONS(ReportBuilder)

 public:
  Builder(const PlayerProgress& progress, const ReportSettings& settings)
      : progress_(progress), settings_(settings), words_(settings.locale, settings.speedUnit) {}

  Report build() {
    Report report;
    const QString player = QString::fromStdString(progress_.history.player);
    report.title = tr("Progress report: %1").arg(player);
    report.foot = tr("%1 \u00b7 made with Ferrule on %2").arg(player, words_.date(settings_.now_ms));
    report.locale = settings_.locale;
    report.pages.push_back(firstPage(progress_, settings_, words_));
    if (progress_.quality.shots == 0) return report;
    report.pages.push_back(pots());
    report.pages.push_back(stroke());
    report.pages.push_back(game());
    return report;
  }

 private:
  static void add(ReportPage& page, TextKind kind, const QString& text) {
    page.blocks.push_back(ReportText{kind, text});
  }

  /// The chart, or the sentence that stands in for it.
  static void add(ReportPage& page, const std::optional<Chart>& chart, const QString& otherwise) {
    if (chart) {
      page.blocks.push_back(ReportCharts{{*chart}});
    } else {
      add(page, TextKind::Paragraph, otherwise);
    }
  }

  ReportPage pots() const {
    ReportPage page;
    add(page, TextKind::Heading, tr("Pots"));
    const Makes& makes = progress_.mainMakes();
    const double width_m = progress_.history.tables.front().table.width_m;
    const bool called = progress_.mainIntent() == Intent::Called;
    add(page, TextKind::Paragraph,
        called
            ? tr("Pots whose pocket was named by a person. Every cell shows how many of the balls tried went in, "
                 "between "
                 "which shares the true one lies, and how many were tried.")
            : tr("Pots whose pocket was read from the paths of the balls; a lucky ball may count as meant. Every cell "
                 "shows "
                 "how many of the balls tried went in, between which shares the true one lies, and how many were "
                 "tried."));
    const QString few = tr("Made by cut and distance: %1.")
                            .arg(words_.shortage({ShortageKind::Shots, makes.byCueBall.tried, kFewestForShare}));
    add(page, makeGridChart(makes.byCueBall, tr("Made, by cut and distance of the cue ball"), width_m, words_), few);
    if (makes.byObjectBall.tried >= kFewestForShare)
      add(page, makeGridChart(makes.byObjectBall, tr("Made, by cut and distance to the pocket"), width_m, words_), {});
    ReportCharts pair;
    if (const auto chart = pocketChart(makes, words_)) pair.charts.push_back(*chart);
    if (const auto chart = missChart(progress_.misses, words_)) pair.charts.push_back(*chart);
    if (!pair.charts.empty()) page.blocks.push_back(std::move(pair));
    if (pairMissing()) add(page, TextKind::Small, tr("On which side the misses lie: too few missed cuts to say."));
    intents(page);
    if (const auto chart = conditionChart(progress_, words_)) page.blocks.push_back(ReportCharts{{*chart}});
    return page;
  }

  [[nodiscard]] bool pairMissing() const { return !missChart(progress_.misses, words_); }

  void intents(ReportPage& page) const {
    const auto row = [&](const QString& name, const Makes& makes) {
      QStringList cells{name};
      if (makes.share) {
        cells << words_.percent(makes.share->value) << words_.percents(makes.share->interval)
              << words_.numbers().whole(makes.share->shots);
      } else {
        cells << words_.shortage(makes.share.error()) << QString() << QString();
      }
      return cells;
    };
    page.blocks.push_back(ReportTable{{tr("All pots"), tr("made"), tr("95\u00a0% interval"), tr("tried")},
                                      {row(tr("pocket read from the balls"), progress_.inferred),
                                       row(tr("pocket named by a person"), progress_.called)}});
  }

  ReportPage stroke() const {
    ReportPage page;
    add(page, TextKind::Heading, tr("Aim and speed"));
    add(page, TextKind::Paragraph,
        tr("How far the strokes scatter, session by session: lower is steadier. The aim is worked out from the line on "
           "which the object ball ran, so near and far shots compare."));
    add(page,
        spreadChart(progress_.history, progress_.aim.all, findingOf(progress_.findings, FindingKind::AimTrend),
                    SpreadUnit::Degrees, tr("Scatter of the aim"), words_),
        tr("Scatter of the aim: not enough sessions with %1 or more to draw.").arg(words_.shots(kFewestInSession)));
    const ErrorMeasure& speed = progress_.strikes.speed;
    add(page,
        spreadChart(
            progress_.history, speed, findingOf(progress_.findings, FindingKind::SpeedTrend), SpreadUnit::Percent,
            speed.fromRepeats ? tr("Scatter of the speed in repeated set-ups") : tr("Scatter of the speed"), words_),
        speed.spread ? tr("Scatter of the speed: not enough sessions with %1 or more to draw.")
                           .arg(words_.shots(kFewestInSession))
                     : tr("Scatter of the speed: %1.").arg(words_.shortage(speed.spread.error())));
    strokes(page);
    return page;
  }

  using Shown = std::function<QString(double)>;

  QStringList row(const QString& name, const Answer<Estimate>& answer, const Shown& shown) const {
    if (!answer) return {name, words_.shortage(answer.error()), QString(), QString()};
    const Estimate& estimate = *answer;
    return {name, shown(estimate.value),
            tr("%1 to %2", "least, most").arg(shown(estimate.interval.least), shown(estimate.interval.most)),
            words_.numbers().whole(estimate.shots)};
  }

  void strokes(ReportPage& page) const {
    const Shown degrees = [this](double value) { return words_.degrees(value); };
    const Shown share = [this](double value) { return words_.percent(value, 1); };
    const Shown radii = [this](double value) { return words_.numbers().fixed(value, 2) + QStringLiteral(" R"); };
    const Shown millimetres = [this](double value) { return words_.numbers().millimetres(value); };
    const AimMeasure& aim = progress_.aim;
    const StrikeMeasures& strikes = progress_.strikes;
    page.blocks.push_back(ReportTable{
        {tr("Stroke"), tr("value"), tr("95\u00a0% interval"), tr("shots")},
        {row(tr("aim: scatter"), aim.all.spread, degrees), row(tr("aim: mean, + to the left"), aim.all.bias, degrees),
         row(tr("cuts to the left: mean, + thin, − thick"), aim.leftCuts.bias, degrees),
         row(tr("cuts to the right: mean, + thin, − thick"), aim.rightCuts.bias, degrees),
         row(tr("speed: scatter"), strikes.speed.spread, share),
         row(tr("speed: mean error"), strikes.speed.bias, share),
         row(tr("tip point, side: scatter"), strikes.side.spread, radii),
         row(tr("tip point, height: scatter"), strikes.height.spread, radii),
         row(tr("rest of the cue ball: scatter each way"), strikes.position.spread, millimetres)}});
    add(page, TextKind::Small,
        tr("Two strokes in three lie within the scatter on either side of the mean. R: the ball's radius."));
    if (strikes.speed.fromRepeats || strikes.position.fromRepeats) {
      add(page, TextKind::Small,
          tr("Nobody wrote down what was meant, so speed, tip point and rest are compared with the player's own mean "
             "in set-ups "
             "that were repeated: this shows how well a stroke is repeated, not whether it was right."));
    }
  }

  ReportPage game() const {
    ReportPage page;
    add(page, TextKind::Heading, tr("The game"));
    const Shown share = [this](double value) { return words_.percent(value); };
    const Shown finer = [this](double value) { return words_.percent(value, 1); };
    const Shown balls = [this](double value) { return words_.numbers().fixed(value, 2); };
    const Shown metres = [this](double value) { return words_.numbers().metres(value); };
    const Shown seconds = [this](double value) { return words_.numbers().seconds(value, 1); };
    const BreakMeasure& breaks = progress_.breaks;
    page.blocks.push_back(ReportTable{
        {tr("Measure"), tr("value"), tr("95\u00a0% interval"), tr("counted")},
        {row(tr("break: a ball and no foul"), breaks.success, share), row(tr("break: balls"), breaks.balls, balls),
         row(tr("break: distance of the cue ball from the middle"), breaks.cueBallFromMiddle_m, metres),
         row(tr("balls in an inning"), progress_.innings.balls, balls),
         row(tr("innings in a frame"), progress_.innings.inFrame, balls),
         row(tr("frames won that were run out"), progress_.innings.runOuts, share),
         row(tr("safeties that left no direct shot"), progress_.safeties.success, share),
         row(tr("fouls, of all shots"), progress_.fouls, finer),
         row(tr("easy pots missed, of easy ones"), progress_.unforced, share),
         row(tr("time for a shot"), progress_.times.all, seconds),
         row(tr("time before a ball that went in"), progress_.times.beforeMakes, seconds),
         row(tr("time before a miss"), progress_.times.beforeMisses, seconds)}});
    add(page, TextKind::Small,
        tr("An easy pot is one that this player makes at least four times in five. Hard shots take longer and are "
           "missed "
           "more often, so more time before a miss is no fault by itself. Innings depend on the opponent and the "
           "rack."));
    // On paper nobody opens the shots behind a count, and of a few there is no more to draw.
    if (progress_.safeties.success || progress_.safeties.answered >= kFewestForShare) {
      if (const auto chart = safetyChart(progress_.safeties, words_)) page.blocks.push_back(ReportCharts{{*chart}});
    }
    choices(page);
    position(page);
    drill(page);
    highlights(page);
    method(page);
    return page;
  }

  void position(ReportPage& page) const {
    add(page, TextKind::Heading, tr("Position"));
    const PositionPlay& play = progress_.position;
    if (!play.wrongSide) {
      add(page, TextKind::Paragraph,
          tr("On which side of the next ball the cue ball was left: %1.").arg(words_.shortage(play.wrongSide.error())));
      return;
    }
    const Shown share = [this](double value) { return words_.percent(value); };
    const Shown cost = [this](double value) { return words_.percent(value, 1); };
    const Shown millimetres = [this](double value) {
      return words_.numbers().withSign(1000.0 * value, 0) + QStringLiteral("\u00a0mm");
    };
    page.blocks.push_back(
        ReportTable{{tr("Pots that fell, against the plan"), tr("value"), tr("95\u00a0% interval"), tr("shots")},
                    {row(tr("on the wrong side of the next ball"), play.wrongSide, share),
                     row(tr("cost on the right side, of the frame's chance"), play.lossRight, cost),
                     row(tr("cost on the wrong side, of the frame's chance"), play.lossWrong, cost),
                     row(tr("longer (+) or shorter than meant"), play.longBy_m, millimetres)}});
  }

  void drill(ReportPage& page) const {
    const auto chosen = chosenDrill(progress_.history, {});
    if (!chosen) return;
    add(page, TextKind::Heading, tr("The drill with most tries: %1").arg(chosen->name));
    add(page, TextKind::Paragraph, changeSentence(chosen->history, words_.numbers()));
    add(page, historyChart(chosen->history, tr("Tries that met every goal"), words_.numbers()), {});
  }

  void choices(ReportPage& page) const {
    const ChoiceMeasure& choices = progress_.choices;
    add(page, TextKind::Heading, tr("Choice and delivery"));
    if (!choices.choiceLoss || !choices.deliveryLoss) {
      const Shortage& shortage = choices.choiceLoss ? choices.deliveryLoss.error() : choices.choiceLoss.error();
      add(page, TextKind::Paragraph,
          shortage.kind == ShortageKind::NoValues
              ? tr("Whether the right shot was chosen cannot be said: no suggestions are recorded for these shots.")
              : tr("Whether the right shot was chosen cannot be said: %1.").arg(words_.shortage(shortage)));
      return;
    }
    const Shown points = [this](double value) { return words_.percent(value, 1); };
    page.blocks.push_back(ReportTable{
        {tr("Cost of a shot, of the chance to win the frame"), tr("value"), tr("95\u00a0% interval"), tr("shots")},
        {row(tr("by the choice"), choices.choiceLoss, points),
         row(tr("by the delivery"), choices.deliveryLoss, points)}});
    const auto count = [this, &choices](int choice, int delivery) {
      return words_.numbers().whole(
          choices.boxes[static_cast<std::size_t>(choice)][static_cast<std::size_t>(delivery)]);
    };
    page.blocks.push_back(
        ReportTable{{QString(), tr("well struck"), tr("badly struck")},
                    {{tr("good choice"), count(0, 0), count(0, 1)}, {tr("poor choice"), count(1, 0), count(1, 1)}}});
    add(page, TextKind::Small,
        tr("Options that are too close to tell apart count as good. A shot is never wrong merely for differing from "
           "the "
           "suggestion."));
    if (const auto kept = reliabilityChart(progress_.reliability, words_)) page.blocks.push_back(ReportCharts{{*kept}});
  }

  void highlights(ReportPage& page) const {
    const auto place = [this](std::size_t i) {
      const PlayedShot& shot = progress_.history.shots[i];
      const PlayedSession& session = progress_.history.sessions[shot.session];
      return tr("%1, %2, shot %3 to %4")
          .arg(words_.date(session.started_ms), QString::fromStdString(session.name),
               words_.numbers().whole(shot.number), pocketWords(*shot.pocket));
    };
    if (!progress_.highlights.best && !progress_.highlights.instructive) return;
    add(page, TextKind::Heading, tr("Worth looking at again"));
    if (progress_.highlights.best) {
      add(page, TextKind::Item,
          tr("The best: %1. This player makes such a ball about %2 of the time.")
              .arg(place(*progress_.highlights.best), words_.percent(progress_.highlights.bestChance)));
    }
    if (progress_.highlights.instructive) {
      add(page, TextKind::Item,
          tr("The most instructive: %1. Missed, though such a ball goes in about %2 of the time.")
              .arg(place(*progress_.highlights.instructive), words_.percent(progress_.highlights.instructiveChance)));
    }
  }

  void method(ReportPage& page) const {
    ReportBox box;
    box.heading = tr("How the numbers were made");
    box.lines << tr("Intervals hold the true value 95 times in 100. They come from drawing whole sessions again, since "
                    "shots of "
                    "one day are alike; shares of single cells are Wilson intervals.")
              << tr("All findings of this report together raise a false alarm in at most 5 of 100 reports about "
                    "players of whom "
                    "none is true.")
              << tr("Harder shots are allowed for: what went in is compared with what this player makes of shots with "
                    "the same "
                    "cut, distances and pocket.")
              << tr("Tables whose pockets differ in width are never put together, and players are not ranked.");
    page.blocks.push_back(std::move(box));
  }

  const PlayerProgress& progress_;
  const ReportSettings& settings_;
  ReportWords words_;
};

}  // namespace

Result<ReportConsent> reportConsent(Record& record, const std::string& player) {
  const auto known = record.playerNamed(player);
  if (!known) return tl::make_unexpected(known.error());
  if (!*known) return failure(ErrorCode::NotFound, player, record.path());
  auto ledger = consents(record, (*known)->id);
  if (!ledger) return tl::make_unexpected(ledger.error());
  return ReportConsent{**known, std::move(*ledger)};
}

Report buildReport(const PlayerProgress& progress, const ReportSettings& settings) {
  return Builder(progress, settings).build();
}

}  // namespace ferrule
