// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "app/picture/film_view.h"
#include "app/picture/plan_view.h"
#include "app/window/inks.h"
#include "tests/app/review_sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

bool near(const QColor& a, const QColor& b, int slack) {
  return std::abs(a.red() - b.red()) <= slack && std::abs(a.green() - b.green()) <= slack &&
         std::abs(a.blue() - b.blue()) <= slack;
}

std::shared_ptr<const StoredShot> shared(int number) {
  return std::make_shared<const StoredShot>(sampleShot(number));
}

}  // namespace

class PictureTest : public QObject {
  Q_OBJECT
 private slots:
  void headIsLeftAndLeftIsUp();
  void aTallSpaceTurnsTheTableUpright();
  void theWholeTableFitsAnySpace_data();
  void theWholeTableFitsAnySpace();
  void tableAndScreenAreEachOthersInverse();
  void aBallIsDrawnAtItsPlaceAndToScale();
  void theWayOfTheCueBallIsDrawnInTheWarmInk();
  void pointingAtABallNamesIt();
  void theWheelKeepsWhatIsUnderThePointer();
  void theFilmsOverlayUsesTheRig();
  void theOverlayBelongsToThePicturesOwnTime();
  void inksAreReadableOnLightAndDark();
};

void PictureTest::headIsLeftAndLeftIsUp() {
  const Table table;
  const PlanMapping mapping(table, QRectF(0, 0, 1000, 500), false);
  const QPointF centre = mapping.screenFromTable({0.0, 0.0});
  QVERIFY(mapping.screenFromTable(headSpot(table)).x() < centre.x());
  QVERIFY(mapping.screenFromTable({0.0, 0.3}).y() < centre.y());
}

void PictureTest::aTallSpaceTurnsTheTableUpright() {
  const Table table;
  QVERIFY(PlanMapping::fitsPortrait(table, {400, 900}));
  QVERIFY(!PlanMapping::fitsPortrait(table, {900, 400}));
  const PlanMapping mapping(table, QRectF(0, 0, 400, 900), true);
  const QPointF centre = mapping.screenFromTable({0.0, 0.0});
  // Looking from the head at the bottom to the foot, left is left.
  QVERIFY(mapping.screenFromTable(footSpot(table)).y() < centre.y());
  QVERIFY(mapping.screenFromTable({0.0, 0.3}).x() < centre.x());
}

void PictureTest::theWholeTableFitsAnySpace_data() {
  QTest::addColumn<QSize>("size");
  QTest::newRow("wide") << QSize(1200, 300);
  QTest::newRow("tall") << QSize(300, 1200);
  QTest::newRow("small") << QSize(200, 140);
}

void PictureTest::theWholeTableFitsAnySpace() {
  QFETCH(QSize, size);
  PlanView view;
  view.setTable(sampleContent().table);
  view.resize(size);
  view.grab();
  QVERIFY(QRectF(view.rect()).contains(view.mapping().outline(sampleContent().table.table)));
}

void PictureTest::tableAndScreenAreEachOthersInverse() {
  for (const bool portrait : {false, true}) {
    const PlanMapping mapping(Table{}, QRectF(3, 5, 640, 480), portrait);
    const TablePoint point{0.37, -0.21};
    QVERIFY(distance(mapping.tableFromScreen(mapping.screenFromTable(point)), point) < 1e-12);
  }
}

void PictureTest::aBallIsDrawnAtItsPlaceAndToScale() {
  PlanView view;
  view.resize(1400, 760);
  view.setTable(sampleContent().table);
  view.setShot(shared(1));
  view.setTime(9.0);
  const QImage picture = view.grab().toImage();
  // The 12 lies at (-0.9, 0.3) and is not on any way: its band shows beside the number, cloth just outside the ball.
  const QPointF centre = view.mapping().screenFromTable({-0.9, 0.3});
  const double radius = sampleContent().table.balls.radius_m() * view.mapping().scale();
  const auto at = [&](double dx, double dy) {
    return picture.pixelColor((centre + QPointF(dx, dy) * radius).toPoint());
  };
  const BallColour purple = poolBalls().colours[12];
  QVERIFY(near(at(-0.8, 0.0), QColor(purple.red, purple.green, purple.blue), 60));
  QVERIFY(near(at(0.0, -0.8), QColor(244, 241, 230), 60));  // the white above the band
  QVERIFY(near(at(-1.6, 0.0), inksFor(view.palette()).cloth, 12));
}

void PictureTest::theWayOfTheCueBallIsDrawnInTheWarmInk() {
  PlanView view;
  view.resize(1400, 760);
  view.setTable(sampleContent().table);
  view.setShot(shared(1));
  view.setTime(9.0);
  const QImage picture = view.grab().toImage();
  const QPointF middle = view.mapping().screenFromTable({-0.127, -0.0585});  // half way from (-0.6,-0.2) to the contact
  QVERIFY(near(picture.pixelColor(middle.toPoint()), inksFor(view.palette()).taken, 40));
}

void PictureTest::pointingAtABallNamesIt() {
  PlanView view;
  view.resize(1400, 760);
  view.setTable(sampleContent().table);
  view.setShot(shared(1));
  view.setTime(9.0);
  QSignalSpy pointed(&view, &PictureView::pointed);
  view.show();
  QTest::mouseMove(&view, view.mapping().screenFromTable({-0.9, 0.3}).toPoint());
  QTRY_VERIFY(!pointed.isEmpty());
  QCOMPARE(pointed.last().at(0).value<std::optional<BallName>>(), std::optional(BallName{12}));
}

void PictureTest::theWheelKeepsWhatIsUnderThePointer() {
  PlanView view;
  view.resize(1000, 600);
  view.setTable(sampleContent().table);
  const QPointF place(400, 320);
  const TablePoint before = view.mapping().tableFromScreen(place);
  QWheelEvent turn(place, place, {}, {0, 120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
  QCoreApplication::sendEvent(&view, &turn);
  QVERIFY(view.zoom() > 1.0);
  QVERIFY(distance(view.mapping().tableFromScreen(place), before) < 1e-9);
}

void PictureTest::theFilmsOverlayUsesTheRig() {
  FilmView view;
  view.resize(1280 + 24, 720 + 24);  // the picture at its own size, inside the margin
  QImage picture(1280, 720, QImage::Format_RGB32);
  picture.fill(Qt::black);
  view.setPicture({picture, 0, 9.0});
  view.setRig(sampleRig());
  // 1000 px focal length, 2.5 m above the ball's centre: 400 px a metre from the middle of the picture; the picture's
  // edge lies half a pixel outside its first pixel's centre.
  const auto at = view.screenFromTable({0.5, 0.25});
  QVERIFY(at.has_value());
  QVERIFY(std::abs(at->x() - (12 + 639.5 + 0.5 + 200.0)) < 1e-6);
  QVERIFY(std::abs(at->y() - (12 + 359.5 + 0.5 - 100.0)) < 1e-6);
}

void PictureTest::theOverlayBelongsToThePicturesOwnTime() {
  FilmView view;
  view.resize(1280 + 24, 720 + 24);
  QImage picture(1280, 720, QImage::Format_RGB32);
  picture.fill(Qt::black);
  view.setShot(shared(1));
  view.setRig(sampleRig());
  view.setBallSet(poolBalls());
  view.setPicture({picture, 630, 10.5});
  view.setLit(kCueBall);
  const QImage shown = view.grab().toImage();
  // At 10.5 s the cue ball is at the contact: its ring is white there, 3 px outside the ball.
  const QPointF centre = *view.screenFromTable({0.346, 0.083});
  const double ring = poolBalls().radius_m() * 400.0 + 3.0;
  QVERIFY(near(shown.pixelColor((centre + QPointF(0.0, ring)).toPoint()), Qt::white, 60));
}

void PictureTest::inksAreReadableOnLightAndDark() {
  for (const QPalette& palette : {lightPalette(), darkPalette()}) {
    const Inks inks = inksFor(palette);
    // Source: Web content accessibility guidelines 2.1, 1.4.3: 4.5 for text, 1.4.11: 3 for marks.
    QVERIFY(contrast(inks.text, inks.panel) >= 4.5);
    QVERIFY(contrast(inks.quiet, inks.panel) >= 4.5);
    QVERIFY(contrast(inks.accent, inks.panel) >= 3.0);
    QVERIFY(contrast(palette.color(QPalette::HighlightedText), palette.color(QPalette::Highlight)) >= 4.5);
  }
  QVERIFY(inksFor(darkPalette()).isDark);
  QVERIFY(!inksFor(lightPalette()).isDark);
}

FERRULE_TEST(PictureTest)
#include "picture_test.moc"
