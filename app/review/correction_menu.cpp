// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/correction_menu.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/words/ruling_words.h"
#include "app/words/trade_words.h"
#include "core/rules/ruling_text.h"

namespace ferrule {

namespace {

struct CorrectionMenu {
  Q_DECLARE_TR_FUNCTIONS(CorrectionMenu)
};

/// Half an image at 60 a second: the image that is looked at is among those that change.
constexpr double kHalfImage_s = 1.0 / 120.0;

QAction* add(QMenu& menu, const QString& words, const QString& name, const SayOfShot& say, const ShotSaying& saying) {
  QAction* action = menu.addAction(words);
  action->setObjectName(name);
  QObject::connect(action, &QAction::triggered, &menu, [say, saying] { say(saying); });
  return action;
}

QString fileWord(std::string_view word) {
  return QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
}

/// The ball that is pointed at first, the others in the order of their names.
std::vector<BallName> inOrder(std::vector<BallName> balls, const std::optional<BallName>& first) {
  std::ranges::sort(balls);
  const auto at = first ? std::ranges::find(balls, *first) : balls.end();
  if (at != balls.end()) std::rotate(balls.begin(), at, at + 1);
  return balls;
}

std::vector<BallName> objectBalls(const CorrectionSubject& subject) {
  std::vector<BallName> balls;
  for (const BallAt& at : subject.shot->reading.before) {
    if (!at.ball.isCueBall()) balls.push_back(at.ball);
  }
  return inOrder(std::move(balls), subject.ball);
}

std::vector<BallName> followedBalls(const CorrectionSubject& subject) {
  std::vector<BallName> balls;
  for (const Track& track : subject.shot->tracks)
    balls.push_back(track.ball);
  return inOrder(std::move(balls), subject.ball);
}

void fillFoulKinds(QMenu& menu, const std::function<ShotSaying(FoulKind)>& saying, const SayOfShot& say) {
  for (const FoulKind kind : calledFouls())
    add(menu, atStart(foulWords(kind, std::nullopt)), QStringLiteral("foul-") + fileWord(toText(kind)), say,
        saying(kind));
}

void fillSwaps(QMenu& menu, const CorrectionSubject& subject, const std::optional<double>& from_s,
               const SayOfShot& say) {
  const QString when = from_s ? QStringLiteral("later") : QStringLiteral("whole");
  for (const BallName one : followedBalls(subject)) {
    QMenu* others = menu.addMenu(ballWordsAtStart(one));
    for (int number = 0; number < BallName::kCount; ++number) {
      const BallName other(number);
      if (other == one) continue;
      const QString name = QStringLiteral("swap-%1-%2-%3").arg(ballShort(one), ballShort(other), when);
      add(*others, CorrectionMenu::tr("is %1, and the other way round").arg(ballWords(other)), name, say,
          NamesSaid{{one, other, from_s}});
    }
  }
}

/// What a person said of the ruling before, with one part of the overrule changed.
template <class Change>
RulingSaid overruledBy(const CorrectionSubject& subject, SaidOfRuling said, Change&& change) {
  Overrule overrule = said.overrule.value_or(Overrule{});
  overrule.who = subject.who.toStdString();
  change(overrule);
  said.overrule = std::move(overrule);
  return {std::move(said)};
}

}  // namespace

void fillFouls(QMenu& menu, const CorrectionSubject&, const SayOfShot& say) {
  fillFoulKinds(
      menu,
      [](FoulKind kind) {
        return OutcomeSaid{Outcome::Foul, kind};
      },
      say);
}

void fillOutcomes(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say) {
  for (const Outcome outcome : {Outcome::Pot, Outcome::Miss, Outcome::Safety, Outcome::Scratch, Outcome::Break}) {
    add(menu, atStart(outcomeWords(outcome)), QStringLiteral("say-") + fileWord(toText(outcome)), say,
        OutcomeSaid{outcome, std::nullopt});
  }
  QMenu* fouls = menu.addMenu(atStart(outcomeWords(Outcome::Foul)));
  fillFouls(*fouls, subject, say);
}

void fillTargets(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say) {
  for (const BallName ball : objectBalls(subject)) {
    QMenu* pockets = menu.addMenu(ballWordsAtStart(ball));
    for (int number = 0; number < 6; ++number) {
      const auto pocket = static_cast<PocketName>(number);
      const QString name = QStringLiteral("target-%1-%2").arg(ballShort(ball), fileWord(toText(pocket)));
      add(*pockets, CorrectionMenu::tr("to %1").arg(pocketWords(pocket)), name, say,
          TargetSaid{PocketedBall{ball, pocket}});
    }
  }
  menu.addSeparator();
  add(menu, CorrectionMenu::tr("No pot was tried"), QStringLiteral("target-none"), say, TargetSaid{});
}

void fillFirstContacts(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say) {
  for (const BallName ball : objectBalls(subject)) {
    add(menu, ballWordsAtStart(ball), QStringLiteral("first-contact-") + ballShort(ball), say, FirstContactSaid{ball});
  }
}

void fillPlayers(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say) {
  const auto addAll = [&](const std::vector<std::string>& names) {
    for (const std::string& name : names) {
      const QString words = QString::fromStdString(name);
      // An ampersand in a name is no key.
      add(menu, QString(words).replace(QLatin1Char('&'), QStringLiteral("&&")), QStringLiteral("player-") + words, say,
          PlayerSaid{name});
    }
  };
  addAll(subject.players);
  if (!subject.players.empty() && !subject.others.empty()) menu.addSeparator();
  addAll(subject.others);
  menu.addSeparator();
  add(menu, CorrectionMenu::tr("Nobody knows"), QStringLiteral("player-unknown"), say, PlayerSaid{});
}

void fillRulings(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say) {
  const auto& kept = subject.shot->ruling;
  const auto ruled = kept ? rulingFromText(kept->content) : std::nullopt;
  if (!ruled) return;
  const SaidOfRuling& said = ruled->said;
  SeatNames names;
  if (subject.players.size() == 2)
    names = {QString::fromStdString(subject.players[0]), QString::fromStdString(subject.players[1])};

  QMenu* fouls = menu.addMenu(CorrectionMenu::tr("It was a foul"));
  fillFoulKinds(
      *fouls,
      [&](FoulKind kind) {
        SaidOfRuling foul = said;
        foul.fouls = {kind};
        foul.noFouls.clear();
        return RulingSaid{foul};
      },
      say);
  SaidOfRuling clean = said;
  clean.fouls.clear();
  for (const Foul& foul : ruled->ruling.fouls)
    clean.noFouls.push_back(foul.kind);
  add(menu, CorrectionMenu::tr("It was no foul"), QStringLiteral("no-foul"), say, RulingSaid{clean})
      ->setEnabled(!ruled->ruling.fouls.empty());
  menu.addSeparator();
  for (const Seat seat : {Seat::First, Seat::Second}) {
    add(menu, CorrectionMenu::tr("%1 is at the table next").arg(atStart(names.of(seat))),
        QStringLiteral("next-") + fileWord(toText(seat)), say,
        overruledBy(subject, said, [&](Overrule& overrule) { overrule.next = seat; }));
  }
  menu.addSeparator();
  for (const CueBallPlace place :
       {CueBallPlace::AsItLies, CueBallPlace::InHandAnywhere, CueBallPlace::InHandBehindString}) {
    const QString where = cueBallWords(place);
    add(menu, where.isEmpty() ? CorrectionMenu::tr("The cue ball stays as it lies") : atStart(where),
        QStringLiteral("cue-ball-") + fileWord(toText(place)), say,
        overruledBy(subject, said, [&](Overrule& overrule) { overrule.cueBall = place; }));
  }
  menu.addSeparator();
  for (const Seat seat : {Seat::First, Seat::Second}) {
    add(menu, CorrectionMenu::tr("%1 wins the frame").arg(atStart(names.of(seat))),
        QStringLiteral("wins-") + fileWord(toText(seat)), say,
        overruledBy(subject, said, [&](Overrule& overrule) { overrule.winner = std::optional(seat); }));
  }
  add(menu, CorrectionMenu::tr("The frame goes on"), QStringLiteral("goes-on"), say,
      overruledBy(subject, said, [](Overrule& overrule) { overrule.winner = std::optional<Seat>(); }));
  menu.addSeparator();
  add(menu, CorrectionMenu::tr("As the referee ruled"), QStringLiteral("as-ruled"), say, RulingSaid{})
      ->setEnabled(said != SaidOfRuling{});
}

void fillNames(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say) {
  if (subject.shot->tracks.empty()) return;
  fillSwaps(*menu.addMenu(CorrectionMenu::tr("In the whole shot")), subject, std::nullopt, say);
  fillSwaps(*menu.addMenu(CorrectionMenu::tr("From this image on")), subject, subject.time_s - kHalfImage_s, say);
}

void fillParts(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say) {
  const ShotReading& reading = subject.shot->reading;
  if (!subject.shot->film) return;
  add(menu, CorrectionMenu::tr("Another shot was struck in this image"), QStringLiteral("split-here"), say,
      SplitSaid{subject.time_s - kHalfImage_s})
      ->setEnabled(subject.time_s > reading.strike_s && subject.time_s < reading.rest_s);
  add(menu, CorrectionMenu::tr("The next shot belongs to this one"), QStringLiteral("join-next"), say, JoinSaid{})
      ->setEnabled(subject.hasNext);
}

void fillPlacements(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say) {
  if (!subject.shot->film) return;
  int number = 0;
  for (const Placement& placement : subject.placements) {
    QMenu* one = menu.addMenu(CorrectionMenu::tr("%1, put down at %2")
                                  .arg(ballWordsAtStart(placement.ball), subject.numbers.seconds(placement.time_s)));
    one->setObjectName(QStringLiteral("placement-%1").arg(++number));
    add(*one, CorrectionMenu::tr("Nobody put it down"), QStringLiteral("placement-%1-none").arg(number), say,
        PlacementSaid{placement, std::nullopt});
    QMenu* balls = one->addMenu(CorrectionMenu::tr("It was another ball"));
    for (int name = 0; name < BallName::kCount; ++name) {
      const BallName ball(name);
      if (ball == placement.ball) continue;
      Placement now = placement;
      now.ball = ball;
      add(*balls, ballWordsAtStart(ball), QStringLiteral("placement-%1-%2").arg(number).arg(ballShort(ball)), say,
          PlacementSaid{placement, now});
    }
  }
  // A ball that the film did not show being put down was put where it lay before the shot.
  QMenu* more = menu.addMenu(CorrectionMenu::tr("A ball was put down that is not listed"));
  for (const BallAt& at : subject.shot->reading.before) {
    const bool listed = std::ranges::find(subject.placements, at.ball, &Placement::ball) != subject.placements.end();
    if (listed) continue;
    add(*more, ballWordsAtStart(at.ball), QStringLiteral("placed-") + ballShort(at.ball), say,
        PlacementSaid{std::nullopt, Placement{at.ball, subject.shot->reading.strike_s, at.position}});
  }
  more->menuAction()->setEnabled(!more->isEmpty());
}

void fillTimes(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say) {
  const ShotReading& reading = subject.shot->reading;
  if (subject.shot->tracks.empty()) return;
  add(menu, CorrectionMenu::tr("Struck in this image"), QStringLiteral("strike-here"), say,
      TimesSaid{{subject.time_s, reading.rest_s}})
      ->setEnabled(subject.time_s < reading.rest_s);
  add(menu, CorrectionMenu::tr("At rest from this image on"), QStringLiteral("rest-here"), say,
      TimesSaid{{reading.strike_s, subject.time_s}})
      ->setEnabled(subject.time_s > reading.strike_s);
}

void fillCorrections(QMenu& menu, const CorrectionSubject& subject, const SayOfShot& say) {
  const auto addMenu = [&menu](const QString& words, const char* name) -> QMenu& {
    QMenu* made = menu.addMenu(words);
    made->setObjectName(QString::fromLatin1(name));
    return *made;
  };
  fillOutcomes(addMenu(CorrectionMenu::tr("&Result"), "outcomes"), subject, say);
  fillTargets(addMenu(CorrectionMenu::tr("&Ball and pocket"), "targets"), subject, say);
  fillFirstContacts(addMenu(CorrectionMenu::tr("Ball that was met &first"), "firstContacts"), subject, say);
  fillPlayers(addMenu(CorrectionMenu::tr("Who &played"), "players"), subject, say);
  QMenu& rulings = addMenu(CorrectionMenu::tr("R&uling"), "rulings");
  fillRulings(rulings, subject, say);
  QMenu& names = addMenu(CorrectionMenu::tr("&Names of two balls"), "names");
  fillNames(names, subject, say);
  QMenu& times = addMenu(CorrectionMenu::tr("&Strike and rest"), "times");
  fillTimes(times, subject, say);
  QMenu& parts = addMenu(CorrectionMenu::tr("&Where the shot ends"), "parts");
  fillParts(parts, subject, say);
  QMenu& placements = addMenu(CorrectionMenu::tr("Balls put &down before it"), "placements");
  fillPlacements(placements, subject, say);
  for (QMenu* made : {&rulings, &names, &times, &parts, &placements})
    made->menuAction()->setEnabled(!made->isEmpty());
}

}  // namespace ferrule
