// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/live_words.h"

#include <QCoreApplication>

#include "app/session/measuring_words.h"
#include "app/session/session_words.h"
#include "app/words/error_sentence.h"
#include "app/words/joining.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct LiveWords {
  Q_DECLARE_TR_FUNCTIONS(LiveWords)
};

/// Fewer images are the pipeline at work, not a delay that anyone would see.
constexpr long kNoticed = 3;

}  // namespace

QString liveTurnWords(const LiveDesk& desk, const SeatNames& names) {
  switch (desk.state()) {
    case LiveState::None:
      return {};
    case LiveState::Waiting:
      return LiveWords::tr("Waiting for the first image");
    case LiveState::Ending:
      return LiveWords::tr("What was seen is measured to its end");
    case LiveState::Done:
      return LiveWords::tr("%n shot(s) stand in the record", nullptr, static_cast<int>(desk.shots().all().size()));
    case LiveState::Running:
      break;
  }
  if (desk.options().game.empty()) return LiveWords::tr("Practice without a referee");
  if (!desk.standing()) return LiveWords::tr("Waiting for the first shot");
  const QString turn = turnWords(desk.standing()->state, names);
  if (!desk.standing()->state.unsettled) return turn;
  return LiveWords::tr("%1, as far as anyone knows", "whose turn it is").arg(turn);
}

QString scoreWords(const LiveStanding& standing, const SeatNames& names) {
  if (standing.state.rules.game == Game::StraightPool) return {};
  return LiveWords::tr("Frames: %1 %2, %3 %4", "name, frames, name, frames")
      .arg(names.of(Seat::First))
      .arg(standing.framesWon[0])
      .arg(names.of(Seat::Second))
      .arg(standing.framesWon[1]);
}

QString countWords(const ImageQueue::Counts& counts, long behind, const Numbers& numbers) {
  const QString words =
      listOf({LiveWords::tr("%1 images", "a number that grows").arg(numbers.whole(counts.came)),
              counts.dropped == 0 ? LiveWords::tr("none dropped")
                                  : LiveWords::tr("%n dropped", nullptr, static_cast<int>(counts.dropped))});
  if (behind < kNoticed) return words;
  return listApart({words, LiveWords::tr("the picture is %n image(s) behind", nullptr, static_cast<int>(behind))});
}

bool isMisfit(const LiveCheckReport& report) {
  return report.check && report.check->check.verdict != RigFault::None;
}

QString liveCheckWords(const LiveDesk& desk, const Numbers& numbers) {
  const LiveCheckReport* report = desk.lastCheck();
  if (report == nullptr) return {};
  const QString when = numbers.clock(report->time_s);
  if (!report->check) {
    return LiveWords::tr("Rig not checked at %1: %2", "time, why").arg(when, errorSentence(report->check.error()));
  }
  const SelfCheck& check = report->check->check;
  if (check.verdict == RigFault::None) return LiveWords::tr("Rig checked at %1: it fits.").arg(when);
  return LiveWords::tr("Rig checked at %1: %2", "time, what is wrong")
      .arg(when, misfitWords(check, desk.checkNames(), numbers));
}

QString lightWords(const SeenImage& image, double ballRadius_m, const Numbers& numbers) {
  switch (image.light) {
    case LightFault::TooDark:
      return LiveWords::tr("The picture is too dark: put more light on the table, or let the camera expose longer.");
    case LightFault::TooBright:
      return LiveWords::tr(
          "Part of the picture is burnt out: dim the lamps, or let the camera expose for a shorter time.");
    case LightFault::None:
      break;
  }
  if (!smearsFastBalls(image.exposure_s, ballRadius_m)) return {};
  return LiveWords::tr("Fast balls become streaks: the camera exposes about %1 ms; with more light it can be shorter.")
      .arg(numbers.fixed(1000.0 * image.exposure_s, 0));
}

}  // namespace ferrule
