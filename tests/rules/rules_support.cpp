// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/rules/rules_support.h"

#include <QtTest>
#include <algorithm>
#include <stdexcept>

namespace ferrule {

namespace {

QString text(std::string_view word) {
  return QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
}

BallName ballOf(const QString& word) {
  if (word == "CB") return kCueBall;
  bool isNumber = false;
  const int number = word.toInt(&isNumber);
  if (!isNumber) throw std::invalid_argument(word.toStdString());
  return BallName(number);
}

QString ballList(const std::vector<BallName>& balls) {
  QStringList words;
  for (const BallName ball : balls)
    words << QString::fromStdString(toText(ball));
  return words.join(' ');
}

class ShotWriter {
 public:
  explicit ShotWriter(Game game) : game_(game) {}

  void put(const QString& phrase) {
    const QStringList words = phrase.split(' ', Qt::SkipEmptyParts);
    const QString& first = words.first();
    if (first == "FC") {
      event(EventKind::Ball, kCueBall).other = ballOf(words.at(1));
    } else if (first == "rail") {
      event(EventKind::Cushion, kCueBall).cushion = CushionName::LeftHead;
    } else if (first == "R") {
      for (int i = 0; i < words.at(1).toInt(); ++i)
        event(EventKind::Cushion, kCueBall).cushion = CushionName::LeftFoot;
    } else if (first == "OBR") {
      driveToRail(words.at(1).toInt());
    } else if (first == "P" && words.at(1) != "-") {
      fall(words.at(1));
    } else if (first.startsWith("CB@")) {
      fall(first);
    } else if (first == "OFF") {
      event(EventKind::OffTable, ballOf(words.at(1)));
    } else if (words.size() == 3 && words.at(1) == "same") {
      event(EventKind::Cushion, ballOf(first)).cushion = CushionName::Foot;
    } else if (first != "P") {
      throw std::invalid_argument(phrase.toStdString());
    }
  }
  ShotEvents shot;

 private:
  ShotEvent& event(EventKind kind, BallName ball) {
    ShotEvent event;
    event.time_s = 0.1 * static_cast<double>(shot.events.size());
    event.kind = kind;
    event.ball = ball;
    shot.events.push_back(event);
    return shot.events.back();
  }
  void fall(const QString& ballAtPocket) {
    const QStringList parts = ballAtPocket.split('@');
    event(EventKind::Pocket, ballOf(parts.at(0))).pocket = pocketOf(parts.at(1));
  }
  /// Balls from the last number down.
  void driveToRail(int count) {
    const auto balls = ballsOfGame(game_);
    for (int i = 0; i < count; ++i)
      event(EventKind::Cushion, balls.at(balls.size() - 1 - static_cast<std::size_t>(i))).cushion = CushionName::Foot;
  }

  Game game_;
};

void keep(GameState& state, const std::vector<int>& numbers) {
  std::erase_if(state.onTable,
                [&](BallName ball) { return std::ranges::find(numbers, ball.number()) == numbers.end(); });
}

GameState groupState(GameState state, const QString& text) {
  state.groupOfFirst = text.startsWith('T') ? Group::Stripes : Group::Solids;
  if (text == "clr") keep(state, {8, 9, 10, 11});
  if (!text.contains(':')) return state;
  std::vector<int> left{8, 9, 10, 11, 12};
  for (const QString& number : text.section(':', 1).split(' ', Qt::SkipEmptyParts))
    left.push_back(number.toInt());
  keep(state, left);
  return state;
}

}  // namespace

PocketName pocketOf(const QString& shortName) {
  const QStringList names{"HL", "HR", "SL", "SR", "FL", "FR"};
  const auto place = names.indexOf(shortName);
  if (place < 0) throw std::invalid_argument(shortName.toStdString());
  return kPocketNames.at(static_cast<std::size_t>(place));
}

ShotEvents shotOf(Game game, const QString& call, const QString& events) {
  ShotWriter writer(game);
  for (const QString& phrase : events.split(',', Qt::SkipEmptyParts))
    writer.put(phrase.trimmed());
  ShotEvents shot = writer.shot;
  if (call == "safety") shot.call = Call{std::nullopt, std::nullopt, true};
  if (call == "push-out") shot.pushOut = true;
  if (call.startsWith("c=")) {
    const QStringList parts = call.mid(2).split('@');
    shot.call = Call{ballOf(parts.at(0)), pocketOf(parts.at(1)), false};
  }
  return shot;
}

GameState stateOf(const RuleSet& rules, const QString& text) {
  GameState state = newFrame(rules);
  if (text == "break") return state;
  state.phase = Phase::Play;
  state.cueBall = CueBallPlace::AsItLies;
  if (text == "open" || text == "play") return state;
  if (text == "second") {
    state.pushOutAllowed = true;
    return state;
  }
  if (text.startsWith("low ")) {
    std::erase_if(state.onTable, [&](BallName ball) { return ball.number() < text.mid(4).toInt(); });
    return state;
  }
  return groupState(state, text);
}

QString summaryOf(const GameState& before, const Ruling& ruling) {
  QStringList parts;
  const GameState after = apply(before, ruling);
  for (const Foul& foul : ruling.fouls)
    parts << text(toText(foul.kind));
  if (ruling.illegalBreak) parts << "illegal break";
  if (ruling.result) {
    parts << text(toText(ruling.result->value.winner)) + " wins: " + text(toText(ruling.result->value.why));
  } else {
    parts << "next " + text(toText(ruling.next.value)) << text(toText(ruling.cueBall.value));
  }
  if (!ruling.options.empty()) {
    QStringList words;
    for (const Option& option : ruling.options)
      words << text(toText(option.kind));
    parts << text(toText(ruling.chooser)) + " may " + words.join('/');
  }
  if (before.rules.game == Game::EightBall) {
    parts << (after.groupOfFirst ? "first " + text(toText(*after.groupOfFirst)) : QString("open"));
  }
  if (ruling.points.value != std::array<int, 2>{}) parts << QString("points %1").arg(ruling.points.value.at(0));
  if (!ruling.spotted.empty()) {
    std::vector<BallName> balls;
    for (const auto& spotting : ruling.spotted)
      balls.push_back(spotting.value.ball);
    parts << "spot " + ballList(balls);
  }
  if (!ruling.restored.empty()) parts << "restore " + ballList(ruling.restored);
  if (ruling.racking != Racking::None) parts << "rack " + text(toText(ruling.racking));
  std::vector<BallName> gone = before.onTable;
  std::erase_if(gone, [&](BallName ball) { return std::ranges::find(ruling.onTable, ball) != ruling.onTable.end(); });
  if (!gone.empty()) parts << "out " + ballList(gone);
  parts << text(toText(ruling.sureness));
  return parts.join(" | ");
}

QStringList sectionsOf(const Ruling& ruling) {
  QStringList sections;
  const auto add = [&](const Evidence& evidence) {
    const QString section = QString::fromStdString(evidence.rule.section);
    if (!section.isEmpty() && !sections.contains(section)) sections << section;
  };
  for (const Foul& foul : ruling.fouls)
    add(foul.evidence);
  if (ruling.pot) add(ruling.pot->evidence);
  for (const auto& spotting : ruling.spotted)
    add(spotting.evidence);
  if (ruling.shooterGroup) add(ruling.shooterGroup->evidence);
  add(ruling.next.evidence);
  add(ruling.cueBall.evidence);
  add(ruling.points.evidence);
  if (ruling.result) add(ruling.result->evidence);
  for (const Question& question : ruling.questions)
    add(question.evidence);
  return sections;
}

void addCaseColumns() {
  QTest::addColumn<QString>("state");
  QTest::addColumn<QString>("call");
  QTest::addColumn<QString>("events");
  QTest::addColumn<QString>("expected");
  QTest::addColumn<QString>("sections");
}

void addCase(const char* name, const char* state, const char* call, const char* events, const char* expected,
             const char* sections) {
  QTest::newRow(name) << state << call << events << expected << sections;
}

void checkCase(const RuleSet& rules) {
  QFETCH(QString, state);
  QFETCH(QString, call);
  QFETCH(QString, events);
  QFETCH(QString, expected);
  QFETCH(QString, sections);
  const GameState before = stateOf(rules, state);
  const Ruling ruling = rule(before, shotOf(rules.game, call, events));
  QCOMPARE(summaryOf(before, ruling), expected);
  const QStringList cited = sectionsOf(ruling);
  for (const QString& section : sections.split(", "))
    QVERIFY2(cited.contains(section), qPrintable("cited: " + cited.join(", ")));
}

}  // namespace ferrule
