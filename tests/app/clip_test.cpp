// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <QFileInfo>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QtTest>
#include <cmath>
#include <stop_token>

#include "app/film/clip_file.h"
#include "app/film/film_file.h"
#include "app/review/clip_desk.h"
#include "core/record/record.h"
#include "tests/app/review_sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr double kRate_hz = 25.0;

/// Images that grow brighter from 0 to 200 within the clip.
ClipTerms brighter(const QString& path) {
  ClipTerms terms;
  terms.path = path.toStdString();
  terms.from_s = 2.0;
  terms.until_s = 4.0;
  terms.rate_hz = kRate_hz;
  terms.image = [](double time_s) {
    QImage image(161, 121, QImage::Format_RGB32);
    image.fill(QColor::fromHsv(0, 0, static_cast<int>(100.0 * (time_s - 2.0))));
    return std::optional(image);
  };
  return terms;
}

int brightness(const QImage& image) {
  return qGray(image.pixel(image.width() / 2, image.height() / 2));
}

ClipWish wishOf(int shot, ClipKind kind, const QString& path) {
  const SessionContent content = sampleContent();
  ClipWish wish;
  wish.kind = kind;
  wish.path = path.toStdString();
  wish.film = "sample-film";
  wish.rig = sampleRig();
  wish.shot = std::make_shared<const StoredShot>(sampleShot(shot));
  wish.table = content.table;
  wish.inks = inksFor(lightPalette());
  wish.now = 5000;
  return wish;
}

}  // namespace

/// Short films of single shots.
class ClipTest : public QObject {
  Q_OBJECT
 private slots:
  void aClipPlaysAtTheFilmsPace_data();
  void aClipPlaysAtTheFilmsPace();
  void aClipThatIsBrokenOffLeavesTheOldFile();
  void aFolderThatIsNotThereIsAnError();
  void theRateIsTheMiddleOfTheFilms();
  void waysAreDrawnOverTheFilmOnlyWhenAskedFor();
  void theFilmOfAMinorNeedsAGuardiansWord();
  void aPlanNeedsNobodysWord();

 private:
  QTemporaryDir folder_;
};

void ClipTest::aClipPlaysAtTheFilmsPace_data() {
  QTest::addColumn<QString>("name");
  QTest::newRow("mp4") << QStringLiteral("clip.mp4");
  QTest::newRow("avi") << QStringLiteral("clip.avi");
}

void ClipTest::aClipPlaysAtTheFilmsPace() {
  QFETCH(const QString, name);
  const QString path = folder_.filePath(name);
  double last = -1.0;
  JobControl job;
  job.report = [&](double share, std::string_view) { last = share; };
  const auto report = writeClip(brighter(path), job);
  QVERIFY(report.has_value());
  QCOMPARE(report->images, 51L);
  QCOMPARE(report->size, QSize(160, 120));
  QVERIFY(last > 0.9);
  // Read by the reader of films, which knows nothing of who wrote it.
  const auto film = openFilmFile(path.toStdString(), {});
  QVERIFY(film.has_value());
  QCOMPARE((*film)->times().size(), std::size_t{51});
  QVERIFY(std::abs((*film)->times().back() - 2.0) < 0.01);
  for (const long number : {0L, 25L, 50L}) {
    const auto picture = (*film)->picture(number);
    QVERIFY(picture.has_value());
    QVERIFY(std::abs(brightness(picture->picture) - 4.0 * static_cast<double>(number)) < 8.0);
  }
  const auto others = QFileInfo(path).permissions() & (QFile::ReadGroup | QFile::ReadOther);
  QVERIFY(!others);
  QCOMPARE(QDir(folder_.path()).entryList({QStringLiteral(".*part*")}, QDir::Files | QDir::Hidden).size(), 0);
}

void ClipTest::aClipThatIsBrokenOffLeavesTheOldFile() {
  const QString path = folder_.filePath(QStringLiteral("kept.mp4"));
  QFile old(path);
  QVERIFY(old.open(QIODevice::WriteOnly));
  old.write("old");
  old.close();
  std::stop_source stop;
  JobControl job;
  job.stop = stop.get_token();
  ClipTerms terms = brighter(path);
  terms.image = [&, image = terms.image](double time_s) {
    if (time_s > 3.0) stop.request_stop();
    return image(time_s);
  };
  const auto report = writeClip(terms, job);
  QVERIFY(!report.has_value());
  QCOMPARE(report.error().code, ErrorCode::Cancelled);
  QVERIFY(old.open(QIODevice::ReadOnly));
  QCOMPARE(old.readAll(), QByteArray("old"));
  QCOMPARE(QDir(folder_.path()).entryList({QStringLiteral(".*part*")}, QDir::Files | QDir::Hidden).size(), 0);
}

void ClipTest::aFolderThatIsNotThereIsAnError() {
  const auto report = writeClip(brighter(folder_.filePath(QStringLiteral("none/clip.mp4"))));
  QCOMPARE(report.error().code, ErrorCode::FileNotWritable);
  const auto ending = writeClip(brighter(folder_.filePath(QStringLiteral("clip.txt"))));
  QCOMPARE(ending.error().code, ErrorCode::FileNotWritable);
}

void ClipTest::theRateIsTheMiddleOfTheFilms() {
  std::vector<double> times_s;
  for (int i = 0; i < 100; ++i)
    times_s.push_back(i / 50.0);
  times_s[60] += 0.015;  // one image that came late
  QVERIFY(std::abs(clipRate_hz(times_s, 0.5, 1.8) - 50.0) < 0.1);
  QCOMPARE(clipRate_hz({1.0}, 0.0, 2.0), 0.0);
}

void ClipTest::waysAreDrawnOverTheFilmOnlyWhenAskedFor() {
  ClipDesk desk(sampleFilmOpener());
  const auto record = folder_.filePath(QStringLiteral("r.sqlite"));
  QVERIFY(Record::open(record.toStdString()).has_value());
  QSignalSpy written(&desk, &ClipDesk::written);
  std::vector<QImage> middles;
  for (const ClipKind kind : {ClipKind::Film, ClipKind::FilmWithWays}) {
    const QString path = folder_.filePath(QStringLiteral("kind%1.mp4").arg(static_cast<int>(kind)));
    ClipWish wish = wishOf(1, kind, path);
    wish.record = record.toStdString();
    const int before = static_cast<int>(written.size());
    desk.write(wish);
    QTRY_COMPARE(written.size(), before + 1);
    const auto film = openFilmFile(path.toStdString(), {});
    QVERIFY(film.has_value());
    middles.push_back((*film)->picture(static_cast<long>((*film)->times().size()) / 2)->picture);
  }
  QCOMPARE(middles[0].size(), middles[1].size());
  int changed = 0;
  for (int y = 0; y < middles[0].height(); y += 2) {
    for (int x = 0; x < middles[0].width(); x += 2) {
      const QColor a = middles[0].pixelColor(x, y);
      const QColor b = middles[1].pixelColor(x, y);
      if (std::abs(a.red() - b.red()) + std::abs(a.green() - b.green()) + std::abs(a.blue() - b.blue()) > 120)
        ++changed;
    }
  }
  const int all = middles[0].width() * middles[0].height() / 4;
  QVERIFY2(changed > all / 1000 && changed < all / 5, qPrintable(QString::number(changed)));
}

void ClipTest::theFilmOfAMinorNeedsAGuardiansWord() {
  const auto path = folder_.filePath(QStringLiteral("minor.sqlite")).toStdString();
  auto record = Record::open(path);
  Player child;
  child.name = "Lia";
  child.minor = true;
  const PlayerId id = record->addPlayer(child).value();
  Player grown;
  grown.name = "Max";
  const PlayerId other = record->addPlayer(grown).value();
  const auto give = [&](PlayerId player, ConsentScope scope, bool guardian) {
    ConsentEntry entry;
    entry.player = player;
    entry.scope = scope;
    entry.by = "somebody";
    entry.byGuardian = guardian;
    entry.from = 1000;
    QVERIFY(addConsent(*record, entry).has_value());
  };
  const std::vector<std::string> people{"Lia", "Max", "Nobody"};
  QCOMPARE(clipObstacles(*record, people, 5000)->size(), std::size_t{2});
  give(other, ConsentScope::Film, false);
  give(other, ConsentScope::Sharing, false);
  give(id, ConsentScope::FilmOfMinor, true);
  // Filming is allowed, handing on is not; and a child's own word is none.
  give(id, ConsentScope::Sharing, false);
  QCOMPARE(*clipObstacles(*record, people, 5000), (std::vector<ClipObstacle>{{"Lia", ConsentScope::Sharing, true}}));

  ClipDesk desk(sampleFilmOpener());
  QSignalSpy refused(&desk, &ClipDesk::refused);
  QSignalSpy written(&desk, &ClipDesk::written);
  ClipWish wish = wishOf(1, ClipKind::Film, folder_.filePath(QStringLiteral("lia.mp4")));
  wish.record = path;
  wish.players = people;
  desk.write(wish);
  QTRY_COMPARE(refused.size(), 1);
  QVERIFY(!QFileInfo::exists(QString::fromStdString(wish.path)));
  give(id, ConsentScope::Sharing, true);
  desk.write(wish);
  QTRY_COMPARE(written.size(), 1);
  QVERIFY(QFileInfo(QString::fromStdString(wish.path)).size() > 0);
}

void ClipTest::aPlanNeedsNobodysWord() {
  ClipDesk desk(sampleFilmOpener());
  QSignalSpy written(&desk, &ClipDesk::written);
  ClipWish wish = wishOf(1, ClipKind::Plan, folder_.filePath(QStringLiteral("plan.mp4")));
  wish.players = {"Lia"};
  wish.film.clear();
  desk.write(wish);
  QTRY_COMPARE(written.size(), 1);
  const auto film = openFilmFile(wish.path, {});
  QVERIFY(film.has_value());
  const double length_s = wish.shot->reading.rest_s - wish.shot->reading.strike_s;
  QVERIFY((*film)->times().back() > length_s);
  QVERIFY((*film)->times().back() < length_s + 2.0);
}

FERRULE_TEST(ClipTest)
#include "clip_test.moc"
