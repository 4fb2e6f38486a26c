// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/error.h"

#include <QtTest>
#include <stop_token>
#include <type_traits>

#include "core/base/ids.h"
#include "core/base/progress.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class ErrorTest : public QObject {
  Q_OBJECT
 private slots:
  void aFailureCarriesEverythingTheSentenceNeeds();
  void aResultHoldsItsValueOrItsError();
  void idsOfDifferentKindsDoNotMix();
  void zeroIsNoId();
  void anEmptyReportIsNotCalled();
  void aReportHearsShareAndStep();
};

namespace {

Result<int> halved(int number) {
  if (number % 2 != 0) return failure(ErrorCode::FieldInvalid, "sum.json", "number", {static_cast<double>(number)});
  return number / 2;
}

}  // namespace

void ErrorTest::aFailureCarriesEverythingTheSentenceNeeds() {
  const auto result = halved(7);
  QVERIFY(!result.has_value());
  QVERIFY((result.error() == Error{ErrorCode::FieldInvalid, "sum.json", "number", {7.0}}));
}

void ErrorTest::aResultHoldsItsValueOrItsError() {
  QCOMPARE(halved(8).value(), 4);
  QCOMPARE(halved(8).map([](int n) { return n + 1; }).value(), 5);
  QVERIFY(!halved(7).map([](int n) { return n + 1; }).has_value());
}

void ErrorTest::idsOfDifferentKindsDoNotMix() {
  QVERIFY((!std::is_convertible_v<ShotId, SessionId>));
  QVERIFY((!std::is_convertible_v<std::int64_t, ShotId> || !std::is_convertible_v<ShotId, std::int64_t>));
  QVERIFY(ShotId{1} < ShotId{2});
}

void ErrorTest::zeroIsNoId() {
  QVERIFY(!ShotId{});
  QVERIFY(static_cast<bool>(ShotId{1}));
}

void ErrorTest::anEmptyReportIsNotCalled() {
  const JobControl nobodyListens;
  nobodyListens.reportShare(0.5, "measuring");
  QVERIFY(!nobodyListens.stop.stop_requested());
}

void ErrorTest::aReportHearsShareAndStep() {
  double heardShare = 0.0;
  std::string heardStep;
  std::stop_source source;
  const JobControl control{[&](double share, std::string_view step) {
                             heardShare = share;
                             heardStep = step;
                           },
                           source.get_token()};
  control.reportShare(0.25, "measuring");
  QCOMPARE(heardShare, 0.25);
  QCOMPARE(heardStep, std::string("measuring"));
  source.request_stop();
  QVERIFY(control.stop.stop_requested());
}

FERRULE_TEST(ErrorTest)
#include "error_test.moc"
