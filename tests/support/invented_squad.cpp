// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/invented_squad.h"

#include <algorithm>
#include <cmath>

#include "core/base/contract.h"
#include "core/base/random.h"
#include "core/geometry/units.h"
#include "core/progress/game_measures.h"

namespace ferrule::invented {

namespace {

constexpr double kDay_ms = 24.0 * 3600.0 * 1000.0;
/// A film reads no target from a line further off.
constexpr double kReadable_rad = 0.2094;
constexpr double kShotTime_s = 6.0;
constexpr int kRepeats = 10;
constexpr int kBallsToWin = 8;
constexpr int kTrials = 20;

/// A pot to be played.
struct Layout {
  BallName ball{1};
  TablePoint cueBall;
  TablePoint objectBall;
  PocketName pocket = PocketName::FootLeft;
  double turn_rad = 0.0;
  double approach_rad = 0.0;  ///< direction to the ghost ball
  double cueWay_m = 0.0;
  double objectWay_m = 0.0;
  double speed_mps = 2.0;  ///< meant
};

class Player {
 public:
  Player(const Habits& habits, const MeasuredTable& table, Random& random)
      : habits_(habits), table_(table), random_(random) {}

  void beginDay(double share) {
    const double day = std::exp(habits_.dayToDay * random_.normal());
    aimSpread_rad_ = day * (habits_.aimSpread_rad + share * (habits_.aimSpreadAtEnd_rad - habits_.aimSpread_rad));
    speedSpread_ = day * (habits_.speedSpread + share * (habits_.speedSpreadAtEnd - habits_.speedSpread));
    dayMean_rad_ = 0.15 * habits_.aimSpread_rad * random_.normal();
  }

  Layout layout(BallName ball) {
    const double radius_m = table_.balls.radius_m();
    for (;;) {
      Layout shot;
      shot.ball = ball;
      shot.objectBall = place();
      shot.pocket = kPocketNames[static_cast<std::size_t>(random_.uniform() * 6.0)];
      const Pocket pocket = pockets(table_.table)[static_cast<std::size_t>(shot.pocket)];
      const TableVector way = pocket.mouth - shot.objectBall;
      if (length(way) < 0.15 || dot(unit(way), pocket.inward) < 0.6) continue;
      const double turn_rad = radiansFromDegrees(22.0) * random_.normal();
      if (std::abs(turn_rad) > radiansFromDegrees(65.0)) continue;
      shot.turn_rad = turn_rad;
      shot.approach_rad = direction(way) - turn_rad;
      shot.cueWay_m = 0.25 + 1.0 * random_.uniform();
      shot.objectWay_m = length(way);
      const TablePoint ghost = shot.objectBall - 2.0 * radius_m * unit(way);
      shot.cueBall = ghost - shot.cueWay_m * TableVector{std::cos(shot.approach_rad), std::sin(shot.approach_rad)};
      if (!isFree(shot.cueBall)) continue;
      shot.speed_mps = 1.0 + 0.7 * (shot.cueWay_m + shot.objectWay_m);
      return shot;
    }
  }

  ShotReading play(const Layout& shot, double minutes) {
    const double radius_m = table_.balls.radius_m();
    double error_rad = habits_.aimMean_rad + dayMean_rad_ +
                       (minutes >= 40.0 ? habits_.lateFactor : 1.0) * aimSpread_rad_ * random_.normal();
    const bool left = shot.turn_rad >= radiansFromDegrees(5.0);
    if (left) error_rad -= habits_.leftCutMean_rad;
    const double reach = shot.cueWay_m / (2.0 * radius_m * std::cos(shot.turn_rad));
    const double line_rad = -error_rad * reach;
    const double speed_mps = shot.speed_mps * (1.0 + speedSpread_ * random_.normal());
    ShotReading reading = begun(minutes);
    // A person sets balls down to a few millimetres.
    const auto set = [&](TablePoint p) {
      return TablePoint{p.x + 0.002 * random_.normal(), p.y + 0.002 * random_.normal()};
    };
    reading.before = {{kCueBall, set(shot.cueBall)}, {shot.ball, set(shot.objectBall)}};
    reading.delivery.aim_rad = Measured{wrapAngle(shot.approach_rad + error_rad), 0.0015};
    reading.delivery.speed_mps = Measured{speed_mps, 0.01 * speed_mps};
    if (random_.uniform() < 0.6) reading.delivery.side = Measured{0.05 * random_.normal(), 0.05};
    if (random_.uniform() < 0.6) reading.delivery.height = Measured{-0.1 + 0.08 * random_.normal(), 0.06};
    reading.firstContact = shot.ball;
    const TablePoint rest = restOf(shot, speed_mps);
    if (std::abs(line_rad) > kReadable_rad) {
      reading.outcome = Outcome::Safety;
      reading.after = {{kCueBall, rest}, {shot.ball, place()}};
      return reading;
    }
    Target target{shot.ball, shot.pocket, std::abs(wrapAngle(shot.turn_rad + line_rad)), line_rad, {}};
    const bool side = isSidePocket(shot.pocket);
    const double mouth_m = side ? table_.table.side.mouth_m : table_.table.corner.mouth_m;
    const bool in = std::abs(line_rad) <= std::atan2(mouth_m / 2.0 - radius_m, shot.objectWay_m);
    reading.after = {{kCueBall, rest}};
    if (in) {
      reading.outcome = Outcome::Pot;
      reading.outcomeVerdict = Verdict::Certain;
      reading.pocketed = {{shot.ball, shot.pocket}};
    } else {
      reading.outcome = Outcome::Miss;
      target.missSide = line_rad * shot.turn_rad > 0.0 ? MissSide::Over : MissSide::Under;
      reading.after.push_back({shot.ball, place()});
    }
    reading.target = target;
    reading.events = eventsOf(reading, shot, in);
    if (in && random_.uniform() < 0.03) scratch(reading);
    return reading;
  }

  /// The chance that play() makes this shot, at the day's own spread.
  [[nodiscard]] double chance(const Layout& shot, double minutes) const {
    const double radius_m = table_.balls.radius_m();
    const double spread_rad = (minutes >= 40.0 ? habits_.lateFactor : 1.0) * aimSpread_rad_ * shot.cueWay_m /
                              (2.0 * radius_m * std::cos(shot.turn_rad));
    const double mouth_m = isSidePocket(shot.pocket) ? table_.table.side.mouth_m : table_.table.corner.mouth_m;
    return std::erf(std::atan2(mouth_m / 2.0 - radius_m, shot.objectWay_m) / (std::sqrt(2.0) * spread_rad));
  }

  /// Where the cue ball comes to rest at the meant speed.
  [[nodiscard]] TablePoint leave(const Layout& shot) const { return restOf(shot, shot.speed_mps); }

  ShotReading breakOff(double minutes) {
    ShotReading reading = begun(minutes);
    reading.outcome = Outcome::Break;
    reading.outcomeVerdict = Verdict::Certain;
    reading.before = {{kCueBall, {-0.8, 0.1}}, {BallName(1), footSpot(table_.table)}};
    reading.firstContact = BallName(1);
    reading.delivery.aim_rad = Measured{-0.07, 0.002};
    reading.delivery.speed_mps = Measured{7.0 + 0.5 * random_.normal(), 0.1};
    reading.after = {{kCueBall, place()}};
    int next = 2;
    for (double left = random_.uniform(); left < 0.5 && next < 5; left *= 1.8)
      reading.pocketed.push_back({BallName(next++), PocketName::FootLeft});
    if (random_.uniform() < 0.08) {
      scratch(reading);
      reading.outcome = Outcome::Break;
    }
    return reading;
  }

 private:
  ShotReading begun(double minutes) {
    ShotReading reading;
    reading.strike_s = std::round(60e6 * minutes) / 1e6;
    reading.rest_s = reading.strike_s + kShotTime_s;
    reading.outcomeVerdict = Verdict::Proposed;
    return reading;
  }

  [[nodiscard]] bool isFree(TablePoint p) const {
    const double edge_m = 2.0 * table_.balls.radius_m();
    return std::abs(p.x) < table_.table.length_m / 2.0 - edge_m && std::abs(p.y) < table_.table.width_m / 2.0 - edge_m;
  }
  TablePoint place() {
    const double edge_m = 0.1;
    return {(random_.uniform() - 0.5) * (table_.table.length_m - 2.0 * edge_m),
            (random_.uniform() - 0.5) * (table_.table.width_m - 2.0 * edge_m)};
  }
  /// Along the tangent by the cut, forward by what is left; the cushions hold it.
  [[nodiscard]] TablePoint restOf(const Layout& shot, double speed_mps) const {
    const double tangent_rad = shot.approach_rad + shot.turn_rad + (shot.turn_rad > 0.0 ? -1.0 : 1.0) * 1.5707963;
    const double way_m = 0.25 * speed_mps * std::abs(std::sin(shot.turn_rad)) + 0.05 * speed_mps;
    TablePoint rest = shot.objectBall + way_m * TableVector{std::cos(tangent_rad), std::sin(tangent_rad)};
    const double edge_m = table_.balls.radius_m();
    rest.x = std::clamp(rest.x, -table_.table.length_m / 2.0 + edge_m, table_.table.length_m / 2.0 - edge_m);
    rest.y = std::clamp(rest.y, -table_.table.width_m / 2.0 + edge_m, table_.table.width_m / 2.0 - edge_m);
    return rest;
  }
  static std::vector<ShotEvent> eventsOf(const ShotReading& reading, const Layout& shot, bool in) {
    std::vector<ShotEvent> events{
        {reading.strike_s + 0.5, EventKind::Ball, kCueBall, shot.ball, {}, {}, shot.objectBall}};
    if (in) events.push_back({reading.strike_s + 1.5, EventKind::Pocket, shot.ball, {}, {}, shot.pocket, {}});
    return events;
  }
  static void scratch(ShotReading& reading) {
    reading.scratch = true;
    reading.outcome = Outcome::Scratch;
    reading.pocketed.push_back({kCueBall, PocketName::HeadLeft});
    std::erase_if(reading.after, [](const BallAt& ball) { return ball.ball.isCueBall(); });
  }

  const Habits& habits_;
  const MeasuredTable& table_;
  Random& random_;
  double aimSpread_rad_ = 0.0;
  double speedSpread_ = 0.0;
  double dayMean_rad_ = 0.0;
};

Session practice(Player& player, std::size_t number, int shots, Random& random) {
  Session session;
  session.players = {number};
  const Layout repeated[2] = {player.layout(BallName(3)), player.layout(BallName(5))};
  for (int i = 0; i < shots; ++i) {
    Shot shot;
    shot.player = number;
    shot.frame = i < 2 * kRepeats ? 1 : 2;
    shot.minutes = 1.2 * i + 0.3 * random.uniform();
    const bool repeats = i < 2 * kRepeats;
    shot.reading = player.play(repeats ? repeated[i / kRepeats] : player.layout(BallName(1 + i % 15)), shot.minutes);
    shot.reading.number = repeats ? i + 1 : i - 2 * kRepeats + 1;
    session.shots.push_back(std::move(shot));
  }
  return session;
}

Session match(std::vector<Player>& players, std::size_t first, int shotsEach, Random& random) {
  Session session;
  session.players = {first, first + 1};
  std::size_t atTable = 0;
  std::vector<int> potted(2, 0);
  int frame = 1;
  int number = 1;
  for (int i = 0; i < 2 * shotsEach; ++i) {
    Shot shot;
    shot.player = first + atTable;
    shot.frame = frame;
    shot.minutes = 0.8 * i + 0.2 * random.uniform();
    Player& player = players[first + atTable];
    if (number == 1) {
      shot.reading = player.breakOff(shot.minutes);
    } else {
      const Layout layout = player.layout(BallName(1 + (potted[0] + potted[1]) % 15));
      shot.reading = player.play(layout, shot.minutes);
      shot.judged =
          Judged{player.chance(layout, shot.minutes), 0.0, 0.0, player.leave(layout), layout.ball, false, 0.0};
    }
    shot.reading.number = number++;
    const bool fell = !shot.reading.scratch && !shot.reading.pocketed.empty();
    if (fell) potted[atTable] += static_cast<int>(shot.reading.pocketed.size());
    if (potted[atTable] >= kBallsToWin) {
      shot.wonFrame = true;
      potted = {0, 0};
      ++frame;
      number = 1;
    }
    if (!fell) atTable = 1 - atTable;
    session.shots.push_back(std::move(shot));
  }
  return session;
}

/// What the judgements need beside what was played, from a stream of its own: what was played stays what it was.
void judge(Squad& squad, Random& random) {
  const Table& table = squad.table.table;
  for (Session& session : squad.sessions) {
    for (Shot& shot : session.shots) {
      if (!shot.judged) continue;
      Judged& judged = *shot.judged;
      // To a tenth of a millimetre, as suggestions are written.
      judged.leave = {std::round(1e4 * judged.leave.x) / 10.0 / 1000.0,
                      std::round(1e4 * judged.leave.y) / 10.0 / 1000.0};
      judged.shown = random.uniform() < 0.1;
      judged.direct = random.uniform() < 0.3 ? 0.0 : 0.2 + 0.6 * random.uniform();
      judged.choiceLoss = random.uniform() < 0.3 ? 0.04 + 0.15 * random.uniform() : 0.01 * random.normal();
      // A ball a hand's breadth off, toward a corner and a little beside the line: the side is easily lost.
      const BallName shotAt = shot.reading.before.back().ball;
      judged.nextBall = BallName(1 + shotAt.number() % 15);
      const double side = random.uniform() < 0.5 ? 1.0 : -1.0;
      const TablePoint corner{table.length_m / 2.0, side * table.width_m / 2.0};
      const double way_rad = direction(corner - judged.leave) + side * radiansFromDegrees(6.0);
      TablePoint next = judged.leave + 0.2 * TableVector{std::cos(way_rad), std::sin(way_rad)};
      const double edge_m = 2.0 * squad.table.balls.radius_m();
      next.x = std::clamp(next.x, -table.length_m / 2.0 + edge_m, table.length_m / 2.0 - edge_m);
      next.y = std::clamp(next.y, -table.width_m / 2.0 + edge_m, table.width_m / 2.0 - edge_m);
      shot.reading.after.push_back({judged.nextBall, next});
      const bool fell = shot.reading.outcome == Outcome::Pot;
      const TablePoint* rest = nullptr;
      for (const BallAt& ball : shot.reading.after) {
        if (ball.ball.isCueBall()) rest = &ball.position;
      }
      const double off_m = rest != nullptr ? distance(*rest, judged.leave) : 0.5;
      judged.deliveryLoss = (fell ? 0.2 * off_m : 0.15 + 0.2 * judged.potChance) + 0.01 * random.normal();
    }
  }
}

void addRuns(Squad& squad, const Plan& plan, Random& random) {
  for (int week = 0; week < plan.weeks; ++week) {
    const double share = plan.weeks > 1 ? static_cast<double>(week) / (plan.weeks - 1) : 0.0;
    for (std::size_t i = 0; i < squad.players.size(); ++i) {
      const double chance = i == 4 ? 0.45 + 0.4 * share : 0.6;
      Run run{i, plan.firstDay_ms + std::llround((7.0 * week + 5.0 + 0.05 * static_cast<double>(i)) * kDay_ms), {}};
      for (int trial = 0; trial < kTrials; ++trial)
        run.met.push_back(random.uniform() < chance);
      squad.runs.push_back(std::move(run));
    }
  }
}

}  // namespace

std::vector<Habits> juniorSquad() {
  std::vector<Habits> players(6);
  players[0] = {.name = "Ilva Morn (invented)", .speedSpread = 0.14, .speedSpreadAtEnd = 0.05};
  players[1] = {.name = "Tamo Reck (invented)", .lateFactor = 1.9};
  players[2] = {.name = "Nessa Quill (invented)"};
  players[3] = {.name = "Jorin Vale (invented)", .leftCutMean_rad = -0.0022};
  players[4] = {.name = "Pella Oster (invented)", .aimSpread_rad = 0.0065, .aimSpreadAtEnd_rad = 0.0028};
  players[5] = {.name = "Dov Harrin (invented)", .aimSpread_rad = 0.0020, .aimSpreadAtEnd_rad = 0.0020};
  return players;
}

Squad squad(const std::vector<Habits>& habits, const Plan& plan) {
  Squad squad;
  const auto table = measuredTableFrom("9ft");
  FERRULE_REQUIRE(table.has_value());
  squad.table = *table;
  squad.players = habits;
  Random random(plan.seed);
  std::vector<Player> players;
  players.reserve(habits.size());
  for (const Habits& habit : squad.players)
    players.emplace_back(habit, squad.table, random);
  for (int week = 0; week < plan.weeks; ++week) {
    const double share = plan.weeks > 1 ? static_cast<double>(week) / (plan.weeks - 1) : 0.0;
    const auto day = [&](double days) { return plan.firstDay_ms + std::llround((7.0 * week + days) * kDay_ms); };
    for (std::size_t i = 0; i < players.size(); ++i) {
      players[i].beginDay(share);
      Session session = practice(players[i], i, plan.practiceShots, random);
      session.name = "Invented practice, week " + std::to_string(week + 1) + ", " + squad.players[i].name;
      session.started_ms = day(0.05 * static_cast<double>(i));
      squad.sessions.push_back(std::move(session));
    }
    for (std::size_t i = 0; plan.matchShots > 0 && i + 1 < players.size(); i += 2) {
      players[i].beginDay(share);
      players[i + 1].beginDay(share);
      Session session = match(players, i, plan.matchShots, random);
      session.name = "Invented match, week " + std::to_string(week + 1) + ", " + squad.players[i].name + " and " +
                     squad.players[i + 1].name;
      session.started_ms = day(3.0 + 0.1 * static_cast<double>(i));
      squad.sessions.push_back(std::move(session));
    }
  }
  Random said(plan.seed + 1'000'003);
  judge(squad, said);
  addRuns(squad, plan, said);
  return squad;
}

namespace {

void putJudged(PlayedShot& played, const Shot& shot) {
  const Judged& judged = *shot.judged;
  played.suggestionShown = judged.shown;
  played.choiceLoss = judged.choiceLoss;
  played.deliveryLoss = judged.deliveryLoss;
  played.potChance = judged.potChance;
  played.meant.rest = judged.leave;
  played.meant.restFromPlan = true;
  if (const BallAt* next = ballIn(shot.reading.after, judged.nextBall)) played.nextBall = next->position;
}

void answer(PlayedShot& played, const Shot& next) {
  if (played.outcome != Outcome::Safety || played.frame % 1000 != next.frame) return;
  played.reply = Reply{next.reading.outcome, next.reading.scratch};
  if (next.judged) played.safeLeave = !(next.judged->direct > 0.0);
}

}  // namespace

PlayerHistory historyOf(const Squad& squad, std::size_t player) {
  PlayerHistory history;
  history.player = squad.players[player].name;
  history.tables = {{"9ft", squad.table.table, squad.table.balls.radius_m()}};
  for (std::size_t s = 0; s < squad.sessions.size(); ++s) {
    const Session& session = squad.sessions[s];
    if (std::ranges::find(session.players, player) == session.players.end()) continue;
    const Occasion occasion = session.players.size() > 1 ? Occasion::Match : Occasion::Practice;
    history.sessions.push_back({static_cast<std::int64_t>(s) + 1, session.name, session.started_ms, 0, occasion});
    double before_s = -1.0;
    const PlayedShot* before = nullptr;
    for (const Shot& shot : session.shots) {
      if (shot.player == player) {
        PlayedShot played = playedShot(shot.reading, history.tables.front());
        played.session = history.sessions.size() - 1;
        played.frame = static_cast<std::int64_t>(1000 * s) + shot.frame;
        played.minutes = shot.minutes;
        if (before_s >= 0.0) played.preparation_s = shot.reading.strike_s - before_s;
        played.wonFrame = shot.wonFrame;
        if (session.players.size() > 1) played.game = "eight-ball";
        if (shot.judged) putJudged(played, shot);
        history.shots.push_back(played);
      } else if (!history.shots.empty() && before == &history.shots.back()) {
        // Somebody else answers what may have been a safety.
        answer(history.shots.back(), shot);
      }
      before = shot.player == player ? &history.shots.back() : nullptr;
      before_s = shot.reading.rest_s;
    }
    before = nullptr;
  }
  markLostByChoice(history);
  for (const Run& run : squad.runs) {
    if (run.player != player) continue;
    const int met = static_cast<int>(std::ranges::count(run.met, true));
    history.runs.push_back({kSquadDrill, "", run.started_ms, 0, met, static_cast<int>(run.met.size())});
  }
  return history;
}

PlayerHistory history(const Habits& habits, const Plan& plan) {
  return historyOf(squad({habits}, plan), 0);
}

}  // namespace ferrule::invented
