// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/report_first_page.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/words/consent_words.h"
#include "app/words/joining.h"

namespace ferrule {

namespace {

constexpr std::int64_t kDay_ms = 24LL * 3600LL * 1000LL;
/// A report says little when so much had to be put right by hand.
constexpr double kMuchCorrected = 0.25;

class FirstPage {
  Q_DECLARE_TR_FUNCTIONS(FirstPage)

 public:
  FirstPage(const PlayerProgress& progress, const ReportSettings& settings, const ReportWords& words)
      : progress_(progress), settings_(settings), words_(words) {}

  ReportPage page() {
    add(TextKind::Title, QString::fromStdString(progress_.history.player));
    add(TextKind::Subtitle, heading());
    if (progress_.quality.shots > 0) add(TextKind::Small, usable());
    if (settings_.consent) add(TextKind::Small, consent());
    if (progress_.quality.shots == 0) {
      add(TextKind::Paragraph, tr("There is no shot of this player in this period, so there is nothing to report. "
                                  "Choose another period, or measure a film first."));
      note();
      return std::move(page_);
    }
    add(TextKind::Heading, tr("In short"));
    add(TextKind::Paragraph, pots());
    add(TextKind::Paragraph, change());
    add(TextKind::Paragraph, first());
    goals();
    whatStands();
    work();
    certainty();
    note();
    return std::move(page_);
  }

 private:
  void add(TextKind kind, const QString& text) { page_.blocks.push_back(ReportText{kind, text}); }

  [[nodiscard]] QString period() const {
    const auto& sessions = progress_.history.sessions;
    if (!sessions.empty()) {
      std::int64_t first_ms = sessions.front().started_ms;
      std::int64_t last_ms = sessions.back().started_ms;
      for (const PlayedRun& run : progress_.history.runs) {
        first_ms = std::min(first_ms, run.started_ms);
        last_ms = std::max(last_ms, run.started_ms);
      }
      const QString from = words_.date(first_ms);
      const QString to = words_.date(last_ms);
      return from == to ? from : tr("%1 to %2").arg(from, to);
    }
    if (settings_.from_ms && settings_.until_ms)
      return tr("%1 to %2").arg(words_.date(*settings_.from_ms), words_.date(*settings_.until_ms - 1));
    if (settings_.from_ms) return tr("from %1").arg(words_.date(*settings_.from_ms));
    if (settings_.until_ms) return tr("until %1").arg(words_.date(*settings_.until_ms - 1));
    return tr("the whole record");
  }

  [[nodiscard]] QString heading() const {
    const DataQuality& quality = progress_.quality;
    QStringList parts{tr("Progress report"), period()};
    if (quality.shots > 0) {
      parts << words_.sessions(quality.sessions) << words_.shots(quality.shots);
      for (const PlayedTable& table : progress_.history.tables)
        parts << QString::fromStdString(table.name);
      parts.removeDuplicates();
      if (quality.hours >= 0.1) parts << tr("%1 hours").arg(words_.numbers().fixed(quality.hours, 1));
    }
    // A line ends between two parts, not within one.
    for (QString& part : parts)
      part.replace(QLatin1Char(' '), QChar(QChar::Nbsp));
    return parts.join(QStringLiteral("\u00a0\u00b7 "));
  }

  [[nodiscard]] QString usable() const {
    const DataQuality& quality = progress_.quality;
    const auto of = [&](int part) {
      return tr("%1 (%2)", "a count, its share")
          .arg(words_.numbers().whole(part), words_.percent(static_cast<double>(part) / quality.shots));
    };
    return tr("Shots whose stroke was measured: %1. Not seen well enough: %2. Corrected by a person: %3.",
              "each a count and its share")
        .arg(of(quality.shots - quality.untracked), of(quality.untracked), of(quality.corrected));
  }

  [[nodiscard]] QString consent() const {
    const ReportConsent& known = *settings_.consent;
    QStringList sentences;
    QStringList missing;
    QStringList without;
    for (const ConsentScope scope : scopesFor(known.player)) {
      const ConsentState state = consentState(known.ledger, known.player.minor, scope, settings_.now_ms);
      if (state.consent == Consent::Missing) {
        missing << scopeWords(scope);
        // These shots are measured; whether they should have been is asked where people are kept.
        if (scope != ConsentScope::Measuring) without << withoutConsentWords(scope);
      } else {
        sentences << toldOf(scopeWords(scope), consentSentence(state, scope, words_.numbers()));
      }
    }
    if (!missing.isEmpty()) sentences << tr("No consent is recorded for: %1.").arg(listApart(missing)) << without;
    return sentencesOf(
        {tr("What the record knew of consent on %1:").arg(words_.date(settings_.now_ms)), sentencesOf(sentences)});
  }

  [[nodiscard]] QString pots() const {
    const Answer<Estimate>& share = progress_.mainMakes().share;
    if (!share) {
      return tr("How many balls go in cannot be said yet (%1).").arg(words_.shortage(share.error()));
    }
    const auto hundred = [this](double value) { return words_.numbers().fixed(100.0 * value, 0); };
    return tr("Of every 100 balls that were tried, about %1 went in. Luck and good and bad days allowed for, the true "
              "number very probably lies between %2 and %3.")
        .arg(hundred(share->value), hundred(share->interval.least), hundred(share->interval.most));
  }

  static bool isTrend(const Finding& finding) {
    return finding.kind == FindingKind::AimTrend || finding.kind == FindingKind::SpeedTrend ||
           finding.kind == FindingKind::MakeTrend;
  }

  [[nodiscard]] QString change() const {
    for (const Finding& finding : progress_.findings) {
      if (finding.stands && isTrend(finding)) return words_.sentence(finding);
    }
    const bool looked = std::ranges::any_of(
        progress_.findings, [](const Finding& finding) { return isTrend(finding) && !finding.shortage; });
    if (!looked) {
      return tr("Whether anything changed cannot be said yet: that takes at least %1 with enough shots.")
          .arg(words_.sessions(kFewestForTrend));
    }
    return tr(
        "Over these weeks nothing changed by more than luck alone would bring about. That is usual for so short a "
        "time and no verdict on the practice.");
  }

  [[nodiscard]] QString first() const {
    if (progress_.work.empty()) {
      return tr("There is not yet enough to say what to work on first; every further session helps.");
    }
    return tr("To work on first: %1. The drill is \u201c%2\u201d.")
        .arg(words_.name(progress_.work.front().kind), words_.name(progress_.work.front().drill));
  }

  void whatStands() {
    QStringList looked;
    QStringList missing;
    QStringList stand;
    for (const Finding& finding : progress_.findings) {
      if (finding.shortage) {
        missing << words_.name(finding.kind);
      } else if (finding.stands) {
        stand << words_.sentence(finding);
      } else {
        looked << words_.name(finding.kind);
      }
    }
    add(TextKind::Heading, tr("What we can be sure of"));
    for (const QString& sentence : stand)
      add(TextKind::Item, sentence);
    // Where nothing could be tested, nothing is said of luck.
    if (stand.isEmpty() && !looked.isEmpty()) add(TextKind::Item, tr("Nothing stands out beyond luck in this period."));
    if (!looked.isEmpty()) {
      add(TextKind::Small, tr("Also looked at, and no more than luck: %1.").arg(listApart(looked)));
    }
    if (!missing.isEmpty()) {
      add(TextKind::Small, tr("Not enough shots or sessions yet: %1.").arg(listApart(missing)));
    }
  }

  [[nodiscard]] QString became(const GoalCheck& goal) const {
    const QString state = goal.state == GoalState::Met ? tr("met") : tr("not yet");
    if (goal.state == GoalState::NotTried) return tr("not tried since");
    if (goal.measured) return tr("%1; now %2", "met or not yet, spread").arg(state, words_.percent(*goal.measured));
    return tr("%1; since then %2 of %3 (between %4)", "met or not yet, tries that met it, tries, interval")
        .arg(state, words_.numbers().whole(goal.met), words_.numbers().whole(goal.known),
             words_.percents(*goal.interval));
  }

  void goals() {
    if (progress_.goals.empty()) return;
    add(TextKind::Heading, tr("Targets of the time before"));
    for (const GoalCheck& goal : progress_.goals) {
      const bool ofPots = isOfPots(goal.item.kind);
      const QString target = ofPots
                                 ? tr("%1 of %2 at \u201c%3\u201d")
                                       .arg(words_.numbers().whole(goal.item.target),
                                            words_.numbers().whole(goal.item.trials), words_.name(goal.item.drill))
                                 : tr("scatter of %1 or less").arg(words_.percent((1.0 - kDrawnIn) * goal.item.share));
      add(TextKind::Item, toldOf(listOf({words_.name(goal.item.kind), target}), became(goal)));
    }
    add(TextKind::Small, tr("The targets are those that a report on the first day of this period would have set."));
  }

  void work() {
    if (progress_.work.empty()) return;
    add(TextKind::Heading, tr("What to work on"));
    const std::int64_t last = progress_.history.sessions.back().started_ms;
    const std::int64_t retest = std::max(last, settings_.now_ms) + kRetestDays * kDay_ms;
    int number = 1;
    for (const WorkItem& item : progress_.work) {
      add(TextKind::Lead, tr("%1. %2").arg(words_.numbers().whole(number++), words_.name(item.kind)));
      const QString drill = tr("Drill: %1. %2").arg(words_.name(item.drill), words_.how(item.drill));
      add(TextKind::Item,
          words_.evidence(item) + QLatin1Char('\n') + drill + QLatin1Char('\n') + words_.target(item, retest));
      if (item.tiesWithNext) add(TextKind::Small, tr("This one and the next are about equal; take either first."));
    }
    if (progress_.work.front().frames) {
      add(TextKind::Small,
          tr("The order is by frames won: the player's own shots are played again in the simulator, with one part of "
             "the scatter a fifth smaller. A simulation is a guide, not a promise."));
      return;
    }
    add(TextKind::Small,
        tr("The order comes from a simple rule: the lines on which the balls ran are judged again with "
           "one cause taken away. Position, speed and choice of shot are not judged by it."));
  }

  void certainty() {
    const DataQuality& quality = progress_.quality;
    ReportBox box;
    box.heading = tr("How far to trust this");
    if (quality.corrected == quality.shots) {
      box.lines << tr("Every one of these shots was corrected by a person; nothing rests on the camera alone.");
    } else if (quality.corrected > kMuchCorrected * quality.shots) {
      // How many stands in the header.
      box.lines << tr("Many shots were corrected by a person; look at the camera before the next session.");
    }
    if (quality.asked > 0) box.lines << tr("Still waiting for a person's word: %1.").arg(words_.shots(quality.asked));
    // Where nobody named any, all were read from the balls, which the page of pots tells.
    if (quality.called > 0) {
      box.lines
          << tr("The pocket was named by a person for %1 pots and read from the balls for %2; the two are not mixed.")
                 .arg(words_.numbers().whole(quality.called),
                      words_.numbers().whole(quality.attempts - quality.called));
    }
    for (const TableLeftOut& table : quality.leftOut) {
      box.lines
          << tr("Left out: %1 on the table \u201c%2\u201d, whose pockets are of another width (%3 mm at the corners).")
                 .arg(words_.shots(table.shots), QString::fromStdString(table.name),
                      words_.numbers().fixed(1000.0 * table.cornerMouth_m, 0));
    }
    if (quality.futureSessions > 0) {
      box.lines << tr("Dated in the future: %1; set the clock of the camera or computer.")
                       .arg(words_.sessions(quality.futureSessions));
    }
    if (quality.backwardTimes > 0) {
      box.lines << tr("A clock went back during a session (%1); times within sessions are doubtful.")
                       .arg(words_.shots(quality.backwardTimes));
    }
    if (quality.undatedShots > 0) {
      box.lines << tr("For %1 the time within the session is unknown.").arg(words_.shots(quality.undatedShots));
    }
    if (!box.lines.isEmpty()) page_.blocks.push_back(std::move(box));
  }

  void note() {
    ReportBox box;
    box.heading = tr("The coach's note");
    if (settings_.coachNote.isEmpty()) {
      box.blankLines = 3;
    } else {
      box.lines = settings_.coachNote.split(QLatin1Char('\n'));
    }
    page_.blocks.push_back(std::move(box));
  }

  const PlayerProgress& progress_;
  const ReportSettings& settings_;
  const ReportWords& words_;
  ReportPage page_;
};

}  // namespace

ReportPage firstPage(const PlayerProgress& progress, const ReportSettings& settings, const ReportWords& words) {
  return FirstPage(progress, settings, words).page();
}

}  // namespace ferrule
