// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QtTest>
#include <opencv2/imgproc.hpp>

#include "app/drills/set_up_watch.h"
#include "app/projector/light_image.h"
#include "app/projector/projector_desk.h"
#include "app/session/session_light.h"
#include "core/camera/rig_file.h"
#include "core/vision/film_source.h"
#include "tests/app/fresh_settings.h"
#include "tests/support/given_source.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Balls put back after an interruption, by light and in words; and who leans over the table meanwhile.
class PuttingBackTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void cleanup();
  void everyDisplacedBallIsNamedWithItsDistance();
  void ballsThatLieWhereTheyDidNeedNoWords();
  void wordsOnTheClothStandInAnyLanguage();
  void wordsStayWithinThePicture();
  void whoeverChecksASetUpIsSeenLeaningIn();

 private:
  std::unique_ptr<FreshSettings> home_;
};

namespace {

const QString kClip = QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/clip/");

/// Straight above the table, 250 px a metre, its middle in the picture's.
Projector straightProjector() {
  Projector projector;
  projector.size = {800, 600};
  projector.straightFromTable << 0.3125, 0.0, 0.0, 0.0, -0.3125, 0.0, 0.0, 0.0, 1.0;
  return projector;
}

long litWithin(const QImage& image, const QRect& area) {
  long lit = 0;
  const QRect within = area.intersected(image.rect());
  for (int y = within.top(); y <= within.bottom(); ++y) {
    for (int x = within.left(); x <= within.right(); ++x)
      lit += qGray(image.pixel(x, y)) > 100 ? 1 : 0;
  }
  return lit;
}

}  // namespace

void PuttingBackTest::init() {
  home_ = std::make_unique<FreshSettings>();
}

void PuttingBackTest::cleanup() {
  home_.reset();
}

void PuttingBackTest::everyDisplacedBallIsNamedWithItsDistance() {
  ProjectorDesk projector;
  SessionLight light(projector);
  light.show();
  light.findChild<QPushButton*>("projectPutBack")->setChecked(true);
  const Position before{{kCueBall, {-0.5, 0.0}}, {BallName{3}, {0.2, 0.1}}, {BallName{8}, {0.6, 0.3}}};
  const Position now{{kCueBall, {-0.5, 0.002}}, {BallName{3}, {0.2, 0.223}}};
  light.setBalls(before, now, MeasuredTable{});
  const QString words = light.findChild<QLabel*>("displacedBalls")->text();
  // 123 mm, to the next five.
  QCOMPARE(words, QString("To be put back: the 3: 125 mm, the 8: not seen."));
}

void PuttingBackTest::ballsThatLieWhereTheyDidNeedNoWords() {
  ProjectorDesk projector;
  SessionLight light(projector);
  light.show();
  auto* words = light.findChild<QLabel*>("displacedBalls");
  const Position before{{kCueBall, {-0.5, 0.0}}};
  light.setBalls(before, before, MeasuredTable{});
  QVERIFY(!words->isVisible());
  light.findChild<QPushButton*>("projectPutBack")->setChecked(true);
  light.setBalls(before, before, MeasuredTable{});
  QVERIFY(words->isVisible());
  QCOMPARE(words->text(), QString("Every ball lies where it belongs."));
}

void PuttingBackTest::wordsOnTheClothStandInAnyLanguage() {
  const Projector projector = straightProjector();
  LightDrawing drawing;
  const QImage none = lightImage(projector, drawing);
  QCOMPARE(none.size(), QSize(800, 600));
  QCOMPARE(litWithin(none, none.rect()), 0L);
  for (const QString& words : {QStringLiteral("the 3: 42 mm"), QStringLiteral("3号球：42 mm")}) {
    drawing.labels = {{{0.0, 0.0}, words.toStdString()}};
    const QImage image = lightImage(projector, drawing);
    // Its letters begin at the place and stand upright beside it.
    QVERIFY(litWithin(image, QRect(400, 270, 200, 40)) > 60);
    QCOMPARE(litWithin(image, QRect(0, 0, 390, 600)), 0L);
  }
}

void PuttingBackTest::wordsStayWithinThePicture() {
  const Projector projector = straightProjector();
  LightDrawing drawing;
  drawing.labels = {{{1.59, 1.19}, "the 3: 42 mm"}};
  const QImage image = lightImage(projector, drawing);
  const long inside = litWithin(image, image.rect());
  drawing.labels.front().place = {0.0, 0.0};
  const QImage middle = lightImage(projector, drawing);
  QVERIFY2(inside > 0.9 * litWithin(middle, middle.rect()), qPrintable(QString::number(inside)));
}

/// Bare table for a while, then an arm as wide as one that reaches in over a long cushion, then none again.
void PuttingBackTest::whoeverChecksASetUpIsSeenLeaningIn() {
  auto film = FilmSource::open((kClip + "stop-shot.mp4").toStdString());
  QVERIFY(film.has_value());
  FilmImage image;
  QVERIFY(film->next(image));
  const Rig rig = readRigFile((kClip + "rig.json").toStdString()).value();
  cv::Mat arm = image.picture.clone();
  std::vector<cv::Point> outline;
  for (const TablePoint p : {TablePoint{0.30, 0.80}, {0.44, 0.80}, {0.40, 0.20}, {0.34, 0.20}}) {
    const ImagePoint pixel = imageFromTable(rig, {p.x, p.y, 0.05}).value();
    outline.emplace_back(static_cast<int>(pixel.x), static_cast<int>(pixel.y));
  }
  cv::fillConvexPoly(arm, outline, cv::Scalar(120, 150, 205));
  auto camera = std::make_shared<GivenSource>();
  SetUpWatch watch;
  QList<bool> told;
  connect(&watch, &SetUpWatch::somebodyLeans, this, [&](bool leans) { told << leans; });
  watch.watchForPeople(true);
  watch.start(kClip + "rig.json", kClip + "table.json", camera);
  const auto show = [&](const cv::Mat& picture, bool leans) {
    // As fast as they are looked at; a second is enough for what comes late.
    for (int i = 0; i < 60 && (told.isEmpty() || told.last() != leans); ++i) {
      QTRY_VERIFY(camera->hasRoom());
      camera->show(picture);
      QCoreApplication::processEvents();
    }
    QTRY_VERIFY(!told.isEmpty() && told.last() == leans);
  };
  show(image.picture, false);
  show(arm, true);
  show(image.picture, false);
  // Once nobody looks, nobody is said to lean.
  show(arm, true);
  watch.stop();
  QCOMPARE(told.last(), false);
}

FERRULE_TEST(PuttingBackTest)
#include "putting_back_test.moc"
