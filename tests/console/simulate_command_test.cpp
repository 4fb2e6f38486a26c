// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/simulate_command.h"

#include <QDir>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <QtTest>
#include <clocale>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "core/base/text_file.h"
#include "core/physics/position_file.h"
#include "core/physics/simulator.h"
#include "tests/console/call.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class SimulateCommandTest : public QObject {
  Q_OBJECT
 private slots:
  void theOutcomeIsWhatTheSimulatorSays();
  void thePictureShowsEveryBallInEveryLocale();
  void badInputEndsWithOneAndWritesNothing_data();
  void badInputEndsWithOneAndWritesNothing();
  void aWrongCallEndsWithTwo();
};

namespace {

/// An invented position.
const std::string kShot = R"({
 "table": "9ft",
 "balls": [{"ball": "cue", "x_mm": -635, "y_mm": 100}, {"ball": "3", "x_mm": 500, "y_mm": -200},
           {"ball": 9, "x_mm": 900, "y_mm": -430}, {"ball": "12", "x_mm": 0, "y_mm": 430}],
 "strike": {"aim_deg": -14.5, "speed_m_s": 3.5, "side": 0.2, "height": 0.1, "elevation_deg": 8}})";

class Folder {
 public:
  [[nodiscard]] std::string path(const char* name) const { return folder_.filePath(name).toStdString(); }
  [[nodiscard]] QStringList names() const { return QDir(folder_.path()).entryList(QDir::Files); }
  std::string put(const char* name, const std::string& text) const {
    const std::string file = path(name);
    if (!writeTextFile(file, text)) qFatal("the temporary folder cannot be written");
    return file;
  }

 private:
  QTemporaryDir folder_;
};

}  // namespace

void SimulateCommandTest::theOutcomeIsWhatTheSimulatorSays() {
  const Folder folder;
  QCOMPARE(call({"simulate", folder.put("shot.json", kShot), "-o", folder.path("out.json")}), 0);
  const auto out = nlohmann::json::parse(*readTextFile(folder.path("out.json")));
  const auto file = parsePositionFile(kShot, "shot.json");
  const auto s = Simulator::create(file->measured.table, file->parameters)->shoot(file->balls, *file->strike);
  QCOMPARE(out.at("format").get<std::string>(), std::string("ferrule-simulated/1"));
  QVERIFY(std::abs(out.at("duration_s").get<double>() - s->duration_s) <= 1e-6);
  QCOMPARE(out.at("events").size(), s->events.size());
  for (std::size_t i = 0; i < s->events.size(); ++i) {
    const auto& event = out.at("events").at(i);
    QVERIFY(std::abs(event.at("t_s").get<double>() - s->events[i].time_s) <= 1e-6);
    QCOMPARE(event.at("kind").get<std::string>(), std::string(toText(s->events[i].kind)));
    QCOMPARE(event.at("ball").get<std::string>(), toText(s->events[i].ball));
    QCOMPARE(event.contains("other"), s->events[i].other.has_value());
    QCOMPARE(event.contains("cushion"), s->events[i].cushion.has_value());
    QCOMPARE(event.contains("pocket"), s->events[i].pocket.has_value());
  }
  QCOMPARE(out.at("after").size(), std::size_t{4});
  for (std::size_t i = 0; i < 4; ++i) {
    const auto& ball = out.at("after").at(i);
    QCOMPARE(ball.at("ball").get<std::string>(), toText(s->after[i].ball));
    if (s->after[i].fate != BallFate::OnTable) continue;
    QVERIFY(std::abs(ball.at("x_mm").get<double>() - 1000.0 * s->after[i].position.x) <= 1e-3);
    QVERIFY(std::abs(ball.at("y_mm").get<double>() - 1000.0 * s->after[i].position.y) <= 1e-3);
  }
}

void SimulateCommandTest::thePictureShowsEveryBallInEveryLocale() {
  const Folder folder;
  const std::string shot = folder.put("shot.json", kShot);
  std::setlocale(LC_ALL, "de_DE.UTF-8");
  const int status = call({"simulate", shot, "-o", folder.path("out.json"), "--picture", folder.path("shot.svg")});
  std::setlocale(LC_ALL, "C");
  QCOMPARE(status, 0);
  const std::string svg = *readTextFile(folder.path("shot.svg"));
  QXmlStreamReader xml(QByteArray::fromStdString(svg));
  QStringList labels;
  int ways = 0;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == u"path") ways += xml.attributes().value("d").contains(u'Q') ? 1 : 0;
    if (xml.name() == u"text") labels << xml.readElementText();
  }
  QVERIFY2(!xml.hasError(), qPrintable(xml.errorString()));
  labels.removeDuplicates();
  labels.sort();
  QCOMPARE(labels, QStringList({"12", "3", "9", "C"}));
  QVERIFY(ways >= 5);
  // The elevated cue ball hops off.
  QVERIFY(svg.find("stroke-dasharray") != std::string::npos);
  QVERIFY(svg.find(",") == std::string::npos);
}

void SimulateCommandTest::badInputEndsWithOneAndWritesNothing_data() {
  QTest::addColumn<QString>("piece");
  QTest::addColumn<QString>("other");
  QTest::newRow("not JSON") << "{"
                            << "";
  QTest::newRow("no such table") << "9ft"
                                 << "10ft";
  QTest::newRow("no strike") << "\"strike\""
                             << "\"strikes\"";
  QTest::newRow("no cue ball") << "\"cue\""
                               << "\"7\"";
  QTest::newRow("past the miscue limit") << "\"side\": 0.2"
                                         << "\"side\": 0.6";
  QTest::newRow("overlap") << "\"x_mm\": 900, \"y_mm\": -430"
                           << "\"x_mm\": 520, \"y_mm\": -210";
  QTest::newRow("outside") << "430}]"
                           << "700}]";
  QTest::newRow("infinite") << "3.5"
                            << "1e999";
  QTest::newRow("too fast") << "3.5"
                            << "35";
}

void SimulateCommandTest::badInputEndsWithOneAndWritesNothing() {
  QFETCH(QString, piece);
  QFETCH(QString, other);
  QString text = QString::fromStdString(kShot);
  QVERIFY(text.contains(piece));
  text.replace(text.indexOf(piece), piece.size(), other);
  const Folder folder;
  const std::string shot = folder.put("shot.json", text.toStdString());
  QCOMPARE(call({"simulate", shot, "-o", folder.path("out.json"), "--picture", folder.path("shot.svg")}), 1);
  QCOMPARE(folder.names(), QStringList{"shot.json"});
}

void SimulateCommandTest::aWrongCallEndsWithTwo() {
  QCOMPARE(call({"simulate"}), 2);
  QCOMPARE(call({"simulate", "shot.json", "--pictures", "x.svg"}), 2);
}

FERRULE_TEST(SimulateCommandTest)
#include "simulate_command_test.moc"
