// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/contacts.h"

#include <QtTest>
#include <algorithm>
#include <cmath>
#include <functional>

#include "core/base/random.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRadius_m = 0.028575;
constexpr double kNoise_m = 0.0004;
constexpr double kInterval_s = 1.0 / 60.0;
constexpr double kUntil_s = 1.4;

using Way = std::function<TablePoint(double)>;

/// A camera's view of a way, from 0 to kUntil_s.
BallMotion filmed(int number, const Way& way, Random& random) {
  MeasuredPath path;
  for (double t = 0.0; t < kUntil_s; t += kInterval_s) {
    const TableVector noise{kNoise_m * random.normal(), kNoise_m * random.normal()};
    path.push_back({t, way(t) + noise, kNoise_m});
  }
  return motionOf(number == 0 ? kCueBall : BallName(number), std::move(path), kInterval_s);
}

/// At rest at a place until a time, then at a velocity.
Way startingAt(double time_s, TablePoint place, TableVector velocity) {
  return [=](double t) { return place + std::max(0.0, t - time_s) * velocity; };
}

/// At one velocity until a time, then at another; at a place at that time.
Way turningAt(double time_s, TablePoint place, TableVector before, TableVector after) {
  return [=](double t) { return place + (t - time_s) * (t < time_s ? before : after); };
}

std::vector<Contact> read(const std::vector<Way>& ways) {
  Random random(5);
  std::vector<BallMotion> motions;
  for (std::size_t i = 0; i < ways.size(); ++i)
    motions.push_back(filmed(static_cast<int>(i), ways[i], random));
  return contactsOf(motions, kRadius_m, kInterval_s);
}

/// A stun shot off centre: the object ball leaves along the line of centres with v cos(cut), the cue ball along the
/// tangent with v sin(cut); equal smooth elastic balls (Newton's law of impact).
struct Cut {
  Way cue;
  Way object;
  TableVector line;
};

Cut cutAt(double time_s, TablePoint object, double cut_rad, double speed_mps) {
  Cut cut;
  cut.line = {std::cos(cut_rad), std::sin(cut_rad)};
  const TableVector tangent{std::sin(cut_rad), -std::cos(cut_rad)};
  const TablePoint ghost = object - 2.0 * kRadius_m * cut.line;
  cut.cue = turningAt(time_s, ghost, {speed_mps, 0.0}, speed_mps * std::sin(cut_rad) * tangent);
  cut.object = startingAt(time_s, object, speed_mps * std::cos(cut_rad) * cut.line);
  return cut;
}

}  // namespace

class ContactsTest : public QObject {
  Q_OBJECT
 private slots:
  void aCutHasItsTimeAndLine_data();
  void aCutHasItsTimeAndLine();
  void ballsThatPassTouchNothing();
  void aTurnAtARailIsNoContact();
  void twoContactsBetweenTwoImagesKeepTheirOrder();
  void theBallThatCameIsTheFirst();
  void nothingMovesTheObjectBallsBeforeTheCueBallMeetsOne();
};

void ContactsTest::aCutHasItsTimeAndLine_data() {
  QTest::addColumn<double>("cut_deg");
  QTest::addColumn<double>("speed_mps");
  QTest::newRow("full") << 0.0 << 1.0;
  QTest::newRow("half ball") << 30.0 << 1.5;
  QTest::newRow("thin") << 60.0 << 2.0;
  QTest::newRow("fast") << 45.0 << 4.0;
}

void ContactsTest::aCutHasItsTimeAndLine() {
  QFETCH(double, cut_deg);
  QFETCH(double, speed_mps);
  // Not on an image.
  const double time_s = 0.5 + 0.37 * kInterval_s;
  const Cut cut = cutAt(time_s, {0.1, 0.05}, cut_deg * 3.14159265358979 / 180.0, speed_mps);
  const auto contacts = read({cut.cue, cut.object});
  QCOMPARE(contacts.size(), std::size_t{1});
  const Contact& contact = contacts.front();
  QVERIFY2(std::abs(contact.time_s - time_s) < 0.002, qPrintable(QString::number(contact.time_s - time_s)));
  // The centres are known to about a millimetre of two radii: two degrees.
  QVERIFY2(dot(contact.line, cut.line) > std::cos(0.035), qPrintable(QString::number(dot(contact.line, cut.line))));
  QVERIFY(contact.firstKnot.has_value() && contact.secondKnot.has_value());
  QVERIFY(std::abs(distance(contact.firstPosition, contact.secondPosition) - 2.0 * kRadius_m) < 0.002);
}

void ContactsTest::ballsThatPassTouchNothing() {
  const auto straight = turningAt(0.5, {0.0, 0.0}, {1.0, 0.0}, {1.0, 0.0});
  QVERIFY(read({straight, startingAt(9.0, {0.1, 2.0 * kRadius_m + 0.008}, {})}).empty());
}

void ContactsTest::aTurnAtARailIsNoContact() {
  const auto rebound = turningAt(0.5, {0.3, 0.2}, {1.0, 0.5}, {-0.8, 0.4});
  QVERIFY(read({rebound, startingAt(9.0, {0.8, 0.2}, {})}).empty());
}

/// The cue ball meets the 1 a third of an image before the 3, still rolling, meets the 2.
void ContactsTest::twoContactsBetweenTwoImagesKeepTheirOrder() {
  const double first_s = 0.5 + 0.2 * kInterval_s;
  const double second_s = first_s + kInterval_s / 3.0;
  const Cut one = cutAt(first_s, {0.0, 0.0}, 0.2, 1.5);
  const Cut two = cutAt(second_s, {0.5, 0.4}, -0.3, 1.5);
  const auto contacts = read({one.cue, one.object, two.object, two.cue});
  QCOMPARE(contacts.size(), std::size_t{2});
  QVERIFY(contacts[0].first == 0 && contacts[0].second == 1);
  QVERIFY(contacts[1].first == 3 && contacts[1].second == 2);
  QVERIFY(contacts[0].time_s < contacts[1].time_s);
  QVERIFY(std::abs(contacts[1].time_s - contacts[0].time_s - kInterval_s / 3.0) < 0.003);
}

void ContactsTest::theBallThatCameIsTheFirst() {
  // The second in the list runs into the first.
  const Cut cut = cutAt(0.5, {-0.2, 0.1}, 0.3, 1.2);
  const auto contacts = read({cut.object, cut.cue});
  QCOMPARE(contacts.size(), std::size_t{1});
  QCOMPARE(contacts.front().first, std::size_t{1});
  QCOMPARE(contacts.front().second, std::size_t{0});
  QVERIFY(dot(contacts.front().line, cut.line) > 0.99);
}

/// Of a rack that starts within one image the paths may tell that a ball at its back left first.
void ContactsTest::nothingMovesTheObjectBallsBeforeTheCueBallMeetsOne() {
  const double time_s = 0.5 + 0.8 * kInterval_s;
  const double early_s = time_s - 0.7 * kInterval_s;
  const Cut cut = cutAt(time_s, {0.1, 0.0}, 0.2, 2.0);
  const TablePoint back{0.4, 0.2};
  const auto contacts = read({cut.cue, cut.object, startingAt(early_s, back, {0.3, 0.0}),
                              startingAt(early_s, back + TableVector{2.0 * kRadius_m, 0.0}, {1.2, 0.0})});
  QCOMPARE(contacts.size(), std::size_t{2});
  QVERIFY(contacts[0].first == 0 && contacts[0].second == 1);
  QVERIFY(contacts[1].first == 2 && contacts[1].second == 3);
  QCOMPARE(contacts[1].time_s, contacts[0].time_s);
  QVERIFY(contacts[1].timeUncertainty_s > 0.5 * kInterval_s);
}

FERRULE_TEST(ContactsTest)
#include "contacts_test.moc"
