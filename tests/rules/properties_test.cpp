// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <algorithm>
#include <set>

#include "core/base/random.h"
#include "core/rules/frame_log.h"
#include "tests/rules/rules_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// What must hold whatever is played: thousands of seeded random frames of every game and edition.
class PropertiesTest : public QObject {
  Q_OBJECT
 private slots:
  void noPlayLeadsToAnImpossibleState_data();
  void noPlayLeadsToAnImpossibleState();
  void theSameShotGivesTheSameRuling();
  void theSeatsAreAlike_data();
  void theSeatsAreAlike();
  void solidsAndStripesAreAlike();
  void everyDecisionNamesItsRule();
  void undoAndRedoAreEachOthersInverse();
};

namespace {

int below(Random& random, std::size_t count) {
  return static_cast<int>(random.uniform() * static_cast<double>(count));
}

BallName anyOf(Random& random, const std::vector<BallName>& balls) {
  return balls.at(static_cast<std::size_t>(below(random, balls.size())));
}

PocketName anyPocket(Random& random) {
  return kPocketNames.at(static_cast<std::size_t>(below(random, kPocketNames.size())));
}

/// A shot that could be played on this table: every ball meets, falls or leaves at most once, from the table.
ShotEvents randomShot(const GameState& state, Random& random) {
  ShotEvents shot;
  double time_s = 0.0;
  const auto event = [&](EventKind kind, BallName ball) -> ShotEvent& {
    ShotEvent made;
    made.time_s = time_s += 0.1;
    made.kind = kind;
    made.ball = ball;
    shot.events.push_back(made);
    return shot.events.back();
  };
  if (random.uniform() < 0.2) event(EventKind::Cushion, kCueBall).cushion = CushionName::Head;
  const bool meets = random.uniform() < 0.95 && !state.onTable.empty();
  if (meets) {
    // Mostly a fair ball, or no frame would come to its end.
    const auto allowed = ballsAllowedFirst(state);
    const bool fair = random.uniform() < 0.8 && !allowed.empty();
    event(EventKind::Ball, kCueBall).other = anyOf(random, fair ? allowed : state.onTable);
  }
  auto balls = meets ? state.onTable : std::vector<BallName>{};
  while (!balls.empty() && random.uniform() < 0.5) {
    const BallName ball = anyOf(random, balls);
    std::erase(balls, ball);
    const double fate = random.uniform();
    if (fate < 0.5) {
      event(EventKind::Pocket, ball).pocket = anyPocket(random);
    } else if (fate < 0.55) {
      event(EventKind::OffTable, ball);
    } else {
      event(EventKind::Cushion, ball).cushion = CushionName::Foot;
    }
  }
  if (random.uniform() < 0.3) event(EventKind::Cushion, kCueBall).cushion = CushionName::LeftFoot;
  if (random.uniform() < 0.08) event(EventKind::Pocket, kCueBall).pocket = anyPocket(random);
  const double said = random.uniform();
  if (said < 0.5) {
    // The call comes true as often as players are good.
    for (const ShotEvent& happened : shot.events) {
      if (happened.kind == EventKind::Pocket && !happened.ball.isCueBall()) {
        shot.call = Call{happened.ball, happened.pocket, false};
      }
    }
  } else if (said < 0.6) {
    shot.call = Call{std::nullopt, std::nullopt, true};
  }
  if (random.uniform() < 0.05) shot.pushOut = true;
  if (random.uniform() < 0.05) shot.calledFouls.push_back({FoulKind::DoubleHit, std::nullopt});
  if (random.uniform() < 0.05) shot.witness = Witness::Person;
  if (random.uniform() < 0.05 && !state.onTable.empty()) {
    shot.doubts.push_back({DoubtKind::PocketUnsure, anyOf(random, state.onTable), std::nullopt});
  }
  if (random.uniform() < 0.03) shot.struck = false;
  return shot;
}

GameState randomStart(std::uint64_t seed) {
  RuleSet rules = worldRules(kGames.at(seed % kGames.size()), kEditions.at(seed / 4 % kEditions.size()));
  rules.pointsToWin = seed % 3 == 0 ? 5 : 0;
  rules.house.threePointBreak = seed % 5 == 0;
  rules.house.calls = static_cast<CallRule>(seed % 3);
  return newFrame(rules, seed % 2 == 0 ? Seat::First : Seat::Second);
}

Choices randomChoice(const Ruling& ruling, Random& random) {
  if (ruling.options.empty()) return {};
  return {ruling.options.at(static_cast<std::size_t>(below(random, ruling.options.size()))).kind};
}

/// What is wrong with a state; empty when it can be.
QString faultOf(const GameState& state) {
  const auto all = ballsOfGame(state.rules.game);
  const std::set<BallName> once(state.onTable.begin(), state.onTable.end());
  if (once.size() != state.onTable.size()) return "a ball lies there twice";
  if (!std::ranges::is_sorted(state.onTable)) return "balls are out of order";
  for (const BallName ball : state.onTable) {
    if (std::ranges::find(all, ball) == all.end()) return "a ball that the game does not use";
  }
  if ((state.phase == Phase::Over) != state.result.has_value()) return "over without a result, or a result without end";
  if (state.phase == Phase::Break && state.onTable.size() != all.size()) return "a break without a full rack";
  if (state.phase == Phase::Break && state.groupOfFirst) return "groups before the break";
  for (const int count : state.foulsInARow) {
    if (count < 0 || (state.rules.house.threeFoulsLose && count > 2 && state.phase != Phase::Over))
      return "fouls in a row";
  }
  if (state.rules.game != Game::StraightPool && state.points != std::array<int, 2>{})
    return "points where there are none";
  if (state.rules.game != Game::EightBall && state.groupOfFirst) return "groups where there are none";
  if (state.rules.game == Game::EightBall && state.phase == Phase::Play && !isOnTable(state, BallName(8))) {
    return "the eight is gone and the frame goes on";
  }
  if (state.rules.game == Game::NineBall && state.phase == Phase::Play && !isOnTable(state, BallName(9))) {
    return "the nine is gone and the frame goes on";
  }
  if (state.rules.game == Game::TenBall && state.phase == Phase::Play && !isOnTable(state, BallName(10))) {
    return "the ten is gone and the frame goes on";
  }
  if (state.rules.game == Game::StraightPool && state.phase == Phase::Play && state.onTable.size() < 2) {
    return "not racked again";
  }
  const auto first = groupOf(state, Seat::First);
  if (first && groupOf(state, Seat::Second) == first) return "two groups alike";
  if (state.pushOutAllowed && state.rules.game != Game::NineBall && state.rules.game != Game::TenBall) {
    return "a push-out where there is none";
  }
  return {};
}

QString faultOf(const GameState& before, const Ruling& ruling) {
  if (ruling.options.size() == 1) return "a choice of one";
  for (std::size_t i = 0; i < ruling.options.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      if (ruling.options[i].kind == ruling.options[j].kind) return "an option twice";
    }
  }
  const bool fouled = !ruling.fouls.empty();
  if (fouled && ruling.pot && !ruling.result) return "a fair pot on a foul";
  if (fouled && ruling.shooterGroup) return "a group on a foul";
  if (fouled && !ruling.result && ruling.racking == Racking::None && ruling.next.value == before.atTable) {
    return "the turn stays after a foul";
  }
  if (fouled && ruling.result && ruling.result->value.winner == before.atTable) return "won by a foul";
  if (before.rules.game == Game::StraightPool) {
    const int scored = ruling.points.value.at(indexOf(before.atTable));
    if (ruling.points.value.at(indexOf(otherSeat(before.atTable))) != 0) return "points for who did not play";
    if (fouled ? scored >= 0 : scored < 0) return "points of the wrong sign";
    if (scored < -16) return "more points off than the rules have";
  }
  return {};
}

Seat swapped(Seat seat) {
  return otherSeat(seat);
}

/// The same state with the seats exchanged.
GameState mirrored(GameState state) {
  state.breaker = swapped(state.breaker);
  state.atTable = swapped(state.atTable);
  if (state.groupOfFirst) state.groupOfFirst = otherGroup(*state.groupOfFirst);
  std::swap(state.foulsInARow[0], state.foulsInARow[1]);
  std::swap(state.warned[0], state.warned[1]);
  std::swap(state.points[0], state.points[1]);
  if (state.result) state.result->winner = swapped(state.result->winner);
  return state;
}

/// 1 <-> 9, 2 <-> 10, ...
BallName otherSide(BallName ball) {
  if (ball.isCueBall() || ball == BallName(8)) return ball;
  return BallName(ball.isSolid() ? ball.number() + 8 : ball.number() - 8);
}

ShotEvents otherSide(ShotEvents shot) {
  for (ShotEvent& event : shot.events) {
    event.ball = otherSide(event.ball);
    if (event.other) event.other = otherSide(*event.other);
  }
  if (shot.call && shot.call->ball) shot.call->ball = otherSide(*shot.call->ball);
  for (Doubt& doubt : shot.doubts) {
    if (doubt.ball) doubt.ball = otherSide(*doubt.ball);
  }
  return shot;
}

GameState otherSide(GameState state) {
  for (BallName& ball : state.onTable)
    ball = otherSide(ball);
  std::ranges::sort(state.onTable);
  if (state.groupOfFirst) state.groupOfFirst = otherGroup(*state.groupOfFirst);
  return state;
}

constexpr int kFrames = 800;
constexpr int kShots = 120;

/// Plays random frames and hands every shot to a check until it answers with a fault.
template <class Check>
QString playFrames(int frames, Check&& check) {
  for (int number = 0; number < frames; ++number) {
    Random random(static_cast<std::uint64_t>(number) + 1);
    GameState state = randomStart(static_cast<std::uint64_t>(number));
    for (int i = 0; i < kShots && state.phase != Phase::Over; ++i) {
      const ShotEvents shot = randomShot(state, random);
      const Ruling ruling = rule(state, shot);
      const QString fault = check(state, shot, ruling, random);
      if (!fault.isEmpty()) return QString("frame %1, shot %2: %3").arg(number).arg(i + 1).arg(fault);
      state = apply(state, ruling, randomChoice(ruling, random));
      if (random.uniform() < 0.3 && state.phase != Phase::Over) {
        state = apply(state, rule(state, Announcement{AnnouncementKind::Warning, state.atTable}));
      }
    }
  }
  return {};
}

}  // namespace

void PropertiesTest::noPlayLeadsToAnImpossibleState_data() {
  QTest::addColumn<int>("game");
  for (const Game game : kGames)
    QTest::newRow(std::string(toText(game)).c_str()) << static_cast<int>(game);
}

void PropertiesTest::noPlayLeadsToAnImpossibleState() {
  QFETCH(int, game);
  int over = 0;
  int shots = 0;
  const QString fault =
      playFrames(kFrames, [&](const GameState& state, const ShotEvents&, const Ruling& ruling, Random&) {
        if (state.rules.game != static_cast<Game>(game)) return QString();
        ++shots;
        for (const Option& option : ruling.options) {
          const QString chosen = faultOf(apply(state, ruling, {option.kind}));
          if (!chosen.isEmpty()) return chosen;
        }
        const GameState next = apply(state, ruling);
        if (next.result) ++over;
        const QString found = faultOf(next);
        return found.isEmpty() ? faultOf(state, ruling) : found;
      });
  QVERIFY2(fault.isEmpty(), qPrintable(fault));
  // Enough was played, and frames came to their end.
  QVERIFY(shots > 1000);
  QVERIFY(over > 20);
}

void PropertiesTest::theSameShotGivesTheSameRuling() {
  const QString fault =
      playFrames(200, [](const GameState& state, const ShotEvents& shot, const Ruling& ruling, Random&) {
        return rule(state, shot) == ruling ? QString() : QString("another ruling");
      });
  QVERIFY2(fault.isEmpty(), qPrintable(fault));
}

void PropertiesTest::theSeatsAreAlike_data() {
  noPlayLeadsToAnImpossibleState_data();
}

void PropertiesTest::theSeatsAreAlike() {
  QFETCH(int, game);
  const QString fault =
      playFrames(400, [&](const GameState& state, const ShotEvents& shot, const Ruling& ruling, Random&) {
        if (state.rules.game != static_cast<Game>(game)) return QString();
        const GameState mirror = mirrored(state);
        const bool same = apply(mirror, rule(mirror, shot)) == mirrored(apply(state, ruling));
        return same ? QString() : QString("it matters who sits where");
      });
  QVERIFY2(fault.isEmpty(), qPrintable(fault));
}

void PropertiesTest::solidsAndStripesAreAlike() {
  const QString fault =
      playFrames(800, [](const GameState& state, const ShotEvents& shot, const Ruling& ruling, Random&) {
        if (state.rules.game != Game::EightBall) return QString();
        const GameState other = otherSide(state);
        const bool same = apply(other, rule(other, otherSide(shot))) == otherSide(apply(state, ruling));
        return same ? QString() : QString("it matters which group it is");
      });
  QVERIFY2(fault.isEmpty(), qPrintable(fault));
}

void PropertiesTest::everyDecisionNamesItsRule() {
  const QString fault =
      playFrames(400, [](const GameState& state, const ShotEvents& shot, const Ruling& ruling, Random&) {
        if (state.rules.edition == Edition::Before2008) return QString();
        std::vector<Evidence> evidence{ruling.next.evidence};
        for (const Foul& foul : ruling.fouls)
          evidence.push_back(foul.evidence);
        for (const auto& spotting : ruling.spotted)
          evidence.push_back(spotting.evidence);
        for (const Question& question : ruling.questions)
          evidence.push_back(question.evidence);
        if (ruling.result) evidence.push_back(ruling.result->evidence);
        for (const Evidence& why : evidence) {
          if (why.rule.section.empty()) return QString("no rule is named");
          for (const int event : why.events) {
            if (event < 0 || event >= static_cast<int>(shot.events.size())) return QString("no such event");
          }
        }
        return QString();
      });
  QVERIFY2(fault.isEmpty(), qPrintable(fault));
}

void PropertiesTest::undoAndRedoAreEachOthersInverse() {
  for (int number = 0; number < 60; ++number) {
    Random random(static_cast<std::uint64_t>(number) + 1000);
    FrameLog log(randomStart(static_cast<std::uint64_t>(number)));
    std::vector<FrameLog> versions{log};
    for (int edit = 0; edit < 25; ++edit) {
      const bool some = !log.entries().empty();
      const auto entry = some ? static_cast<std::size_t>(below(random, log.entries().size())) : 0;
      const double kind = random.uniform();
      if (!some || kind < 0.6) {
        log.add(randomShot(log.state(), random));
      } else if (kind < 0.7) {
        log.testify(entry, {.kind = TestimonyKind::Foul, .holds = random.uniform() < 0.5, .foul = FoulKind::DoubleHit});
      } else if (kind < 0.8) {
        Overrule overrule;
        overrule.next = random.uniform() < 0.5 ? Seat::First : Seat::Second;
        overrule.who = "Referee";
        log.overrule(entry, overrule);
      } else if (kind < 0.9) {
        log.choose(entry, randomChoice(log.entries()[entry].ruling, random).option);
      } else {
        log.setVoided(entry, !log.entries()[entry].voided);
      }
      versions.push_back(log);
    }
    for (std::size_t i = versions.size() - 1; i > 0; --i) {
      log.undo();
      QVERIFY(log == versions[i - 1]);
      log.redo();
      QVERIFY(log == versions[i]);
      log.undo();
    }
  }
}

FERRULE_TEST(PropertiesTest)
#include "properties_test.moc"
