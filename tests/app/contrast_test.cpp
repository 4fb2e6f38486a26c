// SPDX-License-Identifier: GPL-3.0-or-later
#include <QImage>
#include <QPainter>
#include <QtTest>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "app/drills/drill_painter.h"
#include "app/picture/ball_painter.h"
#include "app/picture/plan_mapping.h"
#include "app/picture/plan_painter.h"
#include "app/picture/shot_painter.h"
#include "app/window/inks.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// Text and pictures of text. Source: Web content accessibility guidelines 2.1, success criterion 1.4.3. For other
/// marks 1.4.11 asks for 3; here they must meet the same as text.
constexpr double kReadable = 4.5;
constexpr double kMark = 3.0;
/// A casing is no farther from its line than this, px.
constexpr int kReach_px = 4;

struct Cloth {
  const char* name;
  QColor colour;
};

/// Cloths as they are sold: common practice, no source.
const std::vector<Cloth> kNamed{{"tournament blue", {0x2b, 0x7f, 0xc2}},
                                {"electric blue", {0x15, 0x5b, 0xc9}},
                                {"powder blue", {0x9c, 0xbf, 0xdd}},
                                {"navy", {0x16, 0x27, 0x4a}},
                                {"green", {0x14, 0x7a, 0x4a}},
                                {"yellow green", {0x3f, 0x9a, 0x35}},
                                {"spruce", {0x0f, 0x4a, 0x3a}},
                                {"red", {0xb0, 0x22, 0x28}},
                                {"burgundy", {0x6a, 0x1c, 0x2e}},
                                {"grey", {0x84, 0x88, 0x8b}},
                                {"light grey", {0xc4, 0xc7, 0xc8}},
                                {"black", {0x1a, 0x1a, 0x1c}},
                                {"tan", {0xc9, 0xa9, 0x78}},
                                {"camel", {0xa8, 0x7c, 0x4a}},
                                {"gold", {0xc9, 0xa2, 0x2f}},
                                {"orange", {0xd0, 0x74, 0x20}},
                                {"purple", {0x5a, 0x35, 0x82}},
                                {"pink", {0xd2, 0x6a, 0x96}},
                                {"teal", {0x1c, 0x7d, 0x86}},
                                {"white", {0xf2, 0xf2, 0xee}}};

/// The named ones, and every hue in steps from pale to full and from dark to bright, as a film's light may make them.
std::vector<Cloth> cloths() {
  std::vector<Cloth> all = kNamed;
  for (int hue = 0; hue < 360; hue += 20) {
    for (const int saturation : {60, 140, 230}) {
      for (const int value : {30, 80, 130, 180, 230})
        all.push_back({"of the sweep", QColor::fromHsv(hue, saturation, value)});
    }
  }
  return all;
}

constexpr QSize kPicture{900, 520};

struct Stage {
  Table table;
  PlanMapping mapping{table, QRectF(20, 20, 860, 480), false};
  Inks inks = inksFor(lightPalette());

  [[nodiscard]] QPointF at(double x_m, double y_m) const { return mapping.screenFromTable({x_m, y_m}); }
};

using Paint = std::function<void(QPainter&, const Stage&)>;

/// A mark: how it is painted, where a line of it runs, and the direction across it.
struct Mark {
  const char* name;
  Paint paint;
  std::function<QPointF(const Stage&)> on;
  QPointF across{0.0, 1.0};
};

Track straight(BallName ball, bool seen) {
  Track track{ball, {}};
  for (int i = 0; i <= 60; ++i)
    track.samples.push_back({i / 60.0, {-0.6 + 0.02 * i, 0.1}, 0.0003, seen});
  return track;
}

StoredShot shotOf(BallName ball) {
  StoredShot shot;
  shot.tracks.push_back(straight(ball, true));
  shot.reading.after.push_back({ball, {0.6, 0.1}});
  ShotEvent contact;
  contact.position = {-0.2, -0.3};
  shot.reading.events.push_back(contact);
  return shot;
}

void paintStored(QPainter& painter, const Stage& stage, const StoredShot& shot) {
  paintShot(
      painter, shot, [&](TablePoint point) { return std::optional(stage.mapping.screenFromTable(point)); },
      [&](TablePoint) { return stage.mapping.scale(); }, 0.0286, std::nullopt, stage.inks);
}

constexpr double kSpread_m = 0.06;

std::vector<Mark> marks() {
  const Leave leave{{0.0, 0.0}, kSpread_m, kSpread_m, 0.0};
  const auto top = [](const Stage& stage) {
    // The rim of the 95 % ellipse, above its middle. Source: the chi-square law with two degrees of freedom.
    const double rim_m = kSpread_m * std::sqrt(-2.0 * std::log(0.05));
    return stage.at(0.0, rim_m);
  };
  return {
      {"way of the cue ball", [](QPainter& p, const Stage& s) { paintStored(p, s, shotOf(kCueBall)); },
       [](const Stage& s) { return s.at(0.0, 0.1); }},
      {"way of an object ball", [](QPainter& p, const Stage& s) { paintStored(p, s, shotOf(BallName(3))); },
       [](const Stage& s) { return s.at(0.0, 0.1); }},
      {"place of rest", [](QPainter& p, const Stage& s) { paintStored(p, s, shotOf(BallName(3))); },
       [](const Stage& s) { return s.at(0.6, 0.1) + QPointF(0.0, -0.0286 * s.mapping.scale()); }},
      {"contact", [](QPainter& p, const Stage& s) { paintStored(p, s, shotOf(BallName(3))); },
       [](const Stage& s) { return s.at(-0.2, -0.3) + QPointF(0.0, -1.5); }},
      {"suggested way",
       [](QPainter& p, const Stage& s) {
         paintPlannedWays(p, {{kCueBall, {{-0.6, 0.1}, {0.6, 0.1}}}}, s.mapping, s.inks);
       },
       [](const Stage& s) { return s.at(-0.6, 0.1) + QPointF(3.0, 0.0); }},
      {"suggested leave", [leave](QPainter& p, const Stage& s) { paintLeave(p, leave, s.table, s.mapping, s.inks); },
       top},
      {"taken leave", [leave](QPainter& p, const Stage& s) { paintTakenLeave(p, leave, s.table, s.mapping, s.inks); },
       top},
      {"ring of a lit ball", [](QPainter& p, const Stage& s) { paintRing(p, s.at(0.0, 0.0), 14.0, s.inks); },
       [](const Stage& s) { return s.at(0.0, 0.0) + QPointF(0.0, -17.0); }},
  };
}

QImage painted(const Mark& mark, const Stage& stage, const QColor& cloth) {
  QImage image(kPicture, QImage::Format_RGB32);
  image.fill(cloth);
  QPainter painter(&image);
  mark.paint(painter, stage);
  return image;
}

/// The best contrast on the weaker side of a line that runs through a place: between a pixel of the line and one beside
/// it.
double contrastOfLine(const QImage& image, const QPointF& on, const QPointF& across) {
  const auto pixel = [&](double away) { return image.pixelColor((on + away * across).toPoint()); };
  double best = 0.0;
  // The line's own pixel is the one with the strongest contrast near the place that was worked out.
  for (const double shift : {-1.5, -1.0, -0.5, 0.0, 0.5, 1.0, 1.5}) {
    const QColor line = pixel(shift);
    double weaker = 1e9;
    for (const double side : {-1.0, 1.0}) {
      double strongest = 0.0;
      for (int away = 1; away <= kReach_px; ++away)
        strongest = std::max(strongest, contrast(line, pixel(shift + side * away)));
      weaker = std::min(weaker, strongest);
    }
    best = std::max(best, weaker);
  }
  return best;
}

}  // namespace

/// What is drawn over cloth or film can be told from it, whatever colour the cloth has.
class ContrastTest : public QObject {
  Q_OBJECT
 private slots:
  void theFormulaGivesThePublishedValues();
  void everyMarkIsToldFromEveryCloth_data();
  void everyMarkIsToldFromEveryCloth();
  void aLineWithoutACasingWouldFail();
  void theTablesOwnLinesAreToldFromItsCloth();
  void wordsAreReadableOnPanels_data();
  void wordsAreReadableOnPanels();
  void suggestedAndTakenDifferWithoutColour();
};

/// Source: the guidelines' own examples: black on white is 21, and #767676 on white is the lightest grey that passes.
void ContrastTest::theFormulaGivesThePublishedValues() {
  QVERIFY(std::abs(contrast(Qt::black, Qt::white) - 21.0) < 1e-9);
  QVERIFY(std::abs(contrast(QColor(0x76, 0x76, 0x76), Qt::white) - 4.54) < 0.005);
  QVERIFY(contrast(QColor(0x77, 0x77, 0x77), Qt::white) < 4.5);
}

void ContrastTest::everyMarkIsToldFromEveryCloth_data() {
  QTest::addColumn<int>("mark");
  const auto all = marks();
  for (std::size_t i = 0; i < all.size(); ++i)
    QTest::newRow(all[i].name) << static_cast<int>(i);
}

void ContrastTest::everyMarkIsToldFromEveryCloth() {
  QFETCH(const int, mark);
  const Mark drawn = marks().at(static_cast<std::size_t>(mark));
  const Stage stage;
  QStringList faults;
  double least = 21.0;
  for (const Cloth& cloth : cloths()) {
    const double found = contrastOfLine(painted(drawn, stage, cloth.colour), drawn.on(stage), drawn.across);
    least = std::min(least, found);
    if (found < kReadable)
      faults << QStringLiteral("%1 %2: %3").arg(QLatin1String(cloth.name), cloth.colour.name()).arg(found, 0, 'f', 2);
  }
  qInfo("%s: at least %.2f", drawn.name, least);
  QVERIFY2(faults.isEmpty(), qPrintable(faults.join(QStringLiteral("; "))));
}

/// The test itself can fail: the bare ink is lost on a cloth of nearly its own brightness.
void ContrastTest::aLineWithoutACasingWouldFail() {
  const Stage stage;
  const Mark bare{"bare",
                  [](QPainter& painter, const Stage& s) {
                    painter.setPen(QPen(s.inks.taken, 3.0));
                    painter.drawLine(s.at(-0.6, 0.1), s.at(0.6, 0.1));
                  },
                  [](const Stage& s) { return s.at(0.0, 0.1); }};
  QVERIFY(contrastOfLine(painted(bare, stage, QColor(0xc9, 0xa9, 0x78)), bare.on(stage), bare.across) < kMark);
}

void ContrastTest::theTablesOwnLinesAreToldFromItsCloth() {
  for (const QPalette& palette : {lightPalette(), darkPalette()}) {
    const Inks inks = inksFor(palette);
    const double share = inks.clothLine.alphaF();
    const auto mixed = [&](int line, int cloth) { return static_cast<int>(share * line + (1.0 - share) * cloth); };
    const QColor seen(mixed(inks.clothLine.red(), inks.cloth.red()), mixed(inks.clothLine.green(), inks.cloth.green()),
                      mixed(inks.clothLine.blue(), inks.cloth.blue()));
    QVERIFY2(contrast(seen, inks.cloth) >= kMark, qPrintable(QString::number(contrast(seen, inks.cloth))));
    QVERIFY(contrast(inks.sight, inks.wood) >= kReadable);
  }
}

void ContrastTest::wordsAreReadableOnPanels_data() {
  QTest::addColumn<QPalette>("palette");
  QTest::newRow("light") << lightPalette();
  QTest::newRow("dark") << darkPalette();
}

void ContrastTest::wordsAreReadableOnPanels() {
  QFETCH(const QPalette, palette);
  const Inks inks = inksFor(palette);
  for (const QColor& ground : {inks.panel, inks.page}) {
    QVERIFY(contrast(inks.text, ground) >= kReadable);
    QVERIFY2(contrast(inks.quiet, ground) >= kReadable, qPrintable(QString::number(contrast(inks.quiet, ground))));
    QVERIFY2(contrast(inks.accent, ground) >= kReadable, qPrintable(QString::number(contrast(inks.accent, ground))));
  }
  for (const auto& [words, ground] :
       {std::pair{QPalette::ButtonText, QPalette::Button}, std::pair{QPalette::HighlightedText, QPalette::Highlight},
        std::pair{QPalette::ToolTipText, QPalette::ToolTipBase}, std::pair{QPalette::Text, QPalette::AlternateBase}}) {
    const double found = contrast(palette.color(words), palette.color(ground));
    QVERIFY2(found >= kReadable, qPrintable(QString::number(found)));
  }
}

/// One is drawn whole and the other with gaps, so they differ where nobody sees the hues.
void ContrastTest::suggestedAndTakenDifferWithoutColour() {
  const Stage stage;
  const auto all = marks();
  const auto gaps = [&](const char* name, const QColor& ink) {
    const auto mark =
        std::ranges::find(all, std::string_view(name), [](const Mark& m) { return std::string_view(m.name); });
    const QImage image = painted(*mark, stage, QColor(0x14, 0x7a, 0x4a));
    const int y = static_cast<int>(std::lround(stage.at(0.0, 0.1).y()));
    int changes = 0;
    bool on = false;
    for (int x = static_cast<int>(stage.at(-0.4, 0.1).x()); x < static_cast<int>(stage.at(0.4, 0.1).x()); ++x) {
      const bool now = contrast(image.pixelColor(x, y), ink) < 1.5;
      changes += now != on ? 1 : 0;
      on = now;
    }
    return changes;
  };
  QVERIFY(gaps("way of the cue ball", stage.inks.taken) <= 1);
  QVERIFY(gaps("suggested way", stage.inks.suggested) > 10);
}

FERRULE_TEST(ContrastTest)
#include "contrast_test.moc"
