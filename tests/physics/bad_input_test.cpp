// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <algorithm>
#include <limits>
#include <numbers>

#include "core/base/random.h"
#include "core/physics/position_file.h"
#include "core/physics/simulator.h"
#include "tests/physics/physics_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class BadInputTest : public QObject {
  Q_OBJECT
 private slots:
  void noNumberMakesTheSimulatorFail();
  void noStrikeMakesTheSimulatorFail();
  void allowedExtremesStillEnd();
  void damagedFilesAreRefusedOrRead();
};

namespace {

/// Numbers that break arithmetic, beside ordinary ones.
double wild(Random& random) {
  static constexpr double kWild[] = {0.0,
                                     -0.0,
                                     std::numeric_limits<double>::quiet_NaN(),
                                     std::numeric_limits<double>::infinity(),
                                     -std::numeric_limits<double>::infinity(),
                                     std::numeric_limits<double>::max(),
                                     -std::numeric_limits<double>::max(),
                                     std::numeric_limits<double>::min(),
                                     std::numeric_limits<double>::denorm_min(),
                                     1e-9,
                                     1e9};
  const double u = random.uniform();
  if (u < 0.5) return kWild[static_cast<std::size_t>(random.uniform() * std::size(kWild))];
  return 4.0 * (random.uniform() - 0.5);
}

bool isSound(const Result<Simulation>& s) {
  if (!s) return true;
  if (s->end == SimulationEnd::EventLimit || !std::isfinite(s->duration_s)) return false;
  return std::ranges::all_of(
      s->after, [](const FinalBall& ball) { return std::isfinite(ball.position.x) && std::isfinite(ball.position.y); });
}

}  // namespace

void BadInputTest::noNumberMakesTheSimulatorFail() {
  Random random(2024);
  const Simulator table = *Simulator::create(Table{}, referenceParameters());
  int refused = 0;
  for (int round = 0; round < 4000; ++round) {
    std::vector<BallState> balls;
    for (int i = 0; i < 1 + round % 4; ++i) {
      BallState ball = ballAtRest(BallName(i), {0.3 * i - 0.4, 0.1 * i}, table.parameters());
      for (double* value : {&ball.position.x, &ball.position.y, &ball.position.z, &ball.velocity.x, &ball.velocity.y,
                            &ball.velocity.z, &ball.spin.x, &ball.spin.y, &ball.spin.z}) {
        if (random.uniform() < 0.15) *value = wild(random);
      }
      balls.push_back(ball);
    }
    const auto s = table.run(balls);
    refused += s ? 0 : 1;
    QVERIFY2(isSound(s), qPrintable(QStringLiteral("round %1").arg(round)));
  }
  QVERIFY(refused > 500 && refused < 4000);
}

void BadInputTest::noStrikeMakesTheSimulatorFail() {
  Random random(7);
  const Simulator table = *Simulator::create(Table{}, referenceParameters());
  const Position before{{kCueBall, {-0.5, 0.1}}, {BallName(1), {0.3, 0.0}}, {BallName(2), {0.357, 0.01}}};
  int played = 0;
  for (int round = 0; round < 4000; ++round) {
    Strike strike{0.1, 2.0, 0.1, 0.1, 0.1};
    for (double* value : {&strike.aim_rad, &strike.speed_mps, &strike.side, &strike.height, &strike.elevation_rad}) {
      if (random.uniform() < 0.3) *value = wild(random);
    }
    const auto s = table.shoot(before, strike);
    played += s ? 1 : 0;
    QVERIFY2(isSound(s), qPrintable(QStringLiteral("round %1").arg(round)));
  }
  QVERIFY(played > 500 && played < 4000);
}

/// Every coefficient at one end of what is allowed, in random company.
void BadInputTest::allowedExtremesStillEnd() {
  Random random(99);
  struct End {
    double PhysicsParameters::*field;
    double least;
    double most;
  };
  const End ends[] = {
      {&PhysicsParameters::gravity_mps2, 0.1, 100.0},     {&PhysicsParameters::slidingFriction, 0.01, 2.0},
      {&PhysicsParameters::rollingFriction, 0.0005, 0.2}, {&PhysicsParameters::spinDecay_radps2, 0.1, 1000.0},
      {&PhysicsParameters::ballRestitution, 0.0, 1.0},    {&PhysicsParameters::cushionRestitution, 0.0, 1.0},
      {&PhysicsParameters::cushionFriction, 0.0, 2.0},    {&PhysicsParameters::slateRestitution, 0.0, 0.95},
      {&PhysicsParameters::squirtMassRatio, 0.0, 1e6}};
  const Position before{
      {kCueBall, {-0.5, 0.1}}, {BallName(1), {0.3, 0.0}}, {BallName(2), {0.357, 0.01}}, {BallName(3), {1.1, 0.5}}};
  for (int round = 0; round < 400; ++round) {
    PhysicsParameters p = referenceParameters();
    for (const End& end : ends) {
      const double u = random.uniform();
      if (u < 0.25) p.*end.field = end.least;
      if (u > 0.75) p.*end.field = end.most;
    }
    if (round % 3 == 0) p.ballFriction = constantBallFriction(round % 2 == 0 ? 0.0 : 2.0);
    if (round % 5 == 0) p.cushionModel = CushionModel::Integrated;
    const auto table = Simulator::create(Table{}, p);
    QVERIFY(table.has_value());
    const Strike strike{2.0 * std::numbers::pi * random.uniform(), 8.0 * random.uniform(),
                        0.6 * (random.uniform() - 0.5), 0.6 * (random.uniform() - 0.5), 1.2 * random.uniform()};
    SimulationOptions options;
    options.keepPaths = false;
    const auto s = table->shoot(before, strike, options);
    QVERIFY(s.has_value());
    QVERIFY2(isSound(s), qPrintable(QStringLiteral("round %1, %2 steps").arg(round).arg(s->steps)));
  }
}

/// A sound file with bytes changed, dropped and doubled.
void BadInputTest::damagedFilesAreRefusedOrRead() {
  const std::string whole = R"({"table": "9ft", "balls": [{"ball": "cue", "x_mm": -635, "y_mm": 100},
 {"ball": "3", "x_mm": 500, "y_mm": -200}], "strike": {"aim_deg": -14.5, "speed_m_s": 3.5, "side": 0.2},
 "coefficients": {"rolling_friction": 0.009, "ball_friction": 0.05}, "player": {"aim_sd_deg": 0.2}})";
  Random random(5);
  int read = 0;
  for (int round = 0; round < 5000; ++round) {
    std::string text = whole;
    for (int i = 0; i < 1 + round % 3; ++i) {
      const auto at = static_cast<std::size_t>(random.uniform() * static_cast<double>(text.size()));
      const double u = random.uniform();
      if (u < 0.4) text[at] = static_cast<char>(256.0 * random.uniform());
      if (u >= 0.4 && u < 0.7) text.erase(at, 1 + static_cast<std::size_t>(4.0 * random.uniform()));
      if (u >= 0.7) text.insert(at, text.substr(at, 3));
    }
    const auto file = parsePositionFile(text, "shot.json");
    if (!file || !file->strike) continue;
    ++read;
    const auto table = Simulator::create(file->measured.table, file->parameters);
    QVERIFY(table.has_value());
    QVERIFY(isSound(table->shoot(file->balls, *file->strike)));
  }
  QVERIFY(read > 100 && read < 5000);
}

FERRULE_TEST(BadInputTest)
#include "bad_input_test.moc"
