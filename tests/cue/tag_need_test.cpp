// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/tag_need.h"

#include <QtTest>
#include <cmath>

#include "tests/cue/address_film.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class TagNeedTest : public QObject {
  Q_OBJECT
 private slots:
  void largeTagsNeedNothing();
  void halfReadSmallTagsNeedALargerSide();
  void smallTagsThatAreReadNeedNothing();
};

namespace {

std::vector<CueSighting> squaresOf(double side_px, int images) {
  std::vector<CueSighting> sightings;
  for (int i = 0; i < images; ++i) {
    sightings.push_back({i,
                         i / 30.0,
                         {{10, {{{0.0, 0.0}, {side_px, 0.0}, {side_px, side_px}, {0.0, side_px}}}},
                          {11, {{{90.0, 0.0}, {90.0 + side_px, 0.0}, {90.0 + side_px, side_px}, {90.0, side_px}}}}}});
  }
  return sightings;
}

}  // namespace

void TagNeedTest::largeTagsNeedNothing() {
  const TagsSeen seen = tagsSeen(taggedCue(), squaresOf(30.0, 20), 100, 0.0);
  QVERIFY(std::abs(seen.module_px - 5.0) < 1e-12);
  QVERIFY(std::abs(seen.readShare - 0.2) < 1e-12);
  QVERIFY(!seen.sideNeeded_m.has_value());
}

/// 12 px over 6 modules are 2 px; 4 px need twice the 40 mm.
void TagNeedTest::halfReadSmallTagsNeedALargerSide() {
  const TagsSeen seen = tagsSeen(taggedCue(), squaresOf(12.0, 20), 40, 0.0);
  QVERIFY(std::abs(seen.readShare - 0.5) < 1e-12);
  QVERIFY(std::abs(seen.sideNeeded_m.value() - 0.080) < 1e-12);
}

void TagNeedTest::smallTagsThatAreReadNeedNothing() {
  QVERIFY(!tagsSeen(taggedCue(), squaresOf(12.0, 20), 20, 0.0).sideNeeded_m.has_value());
}

FERRULE_TEST(TagNeedTest)
#include "tag_need_test.moc"
