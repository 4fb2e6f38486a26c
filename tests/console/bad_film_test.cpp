// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/console/refusal.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Films that cannot be measured, given to the program by a person.
class BadFilmTest : public QObject {
  Q_OBJECT
 private slots:
  void init();
  void whatIsNoFilmIsRefused_data();
  void whatIsNoFilmIsRefused();
  void aFilmOfAnotherShapeThanTheLensIsRefused();
  void aFilmOfAnotherSizeThanTheRigIsRefused();
  void aFilmThatShowsNoTagsIsRefused();
  void aFilmCutOffIsMeasuredAsFarAsItGoes();

 private:
  QStringList measure(const QString& film) const;
  QStringList calibrate(const QString& film) const;
  std::unique_ptr<Workplace> workplace_;
};

void BadFilmTest::init() {
  workplace_ = std::make_unique<Workplace>();
}

QStringList BadFilmTest::measure(const QString& film) const {
  return {"measure",   film,
          "--rig",     dataPath("clip/rig.json"),
          "--table",   dataPath("clip/table.json"),
          "--record",  "r.sqlite",
          "--session", "Evening",
          "-o",        "measured.json"};
}

QStringList BadFilmTest::calibrate(const QString& film) const {
  return {"calibrate", "rig", "--lens",  dataPath("clip/lens.json"), "--table", dataPath("clip/table.json"), "--film",
          film,        "-o",  "rig.json"};
}

void BadFilmTest::whatIsNoFilmIsRefused_data() {
  QTest::addColumn<QString>("film");
  QTest::addColumn<QByteArray>("content");  // written to the film's name first, unless null
  QTest::addColumn<QString>("whatToDo");
  QTest::newRow("missing") << "missing.mp4" << QByteArray() << "check the path";
  QTest::newRow("empty") << "empty.mp4" << QByteArray("") << "copy or export it again";
  QTest::newRow("text") << "text.mp4" << QByteArray("no film\n") << "export it again as MP4 or MKV";
  QTest::newRow("folder") << "." << QByteArray() << "choose a file";
  QTest::newRow("sound") << dataPath("films/sound-only.mp4") << QByteArray() << "choose the film itself";
  QTest::newRow("cover") << dataPath("films/sound-with-cover.m4a") << QByteArray() << "choose the film itself";
  QTest::newRow("cut off before its index")
      << dataPath("films/cut-off.mp4") << QByteArray() << "copy it from the camera again";
}

void BadFilmTest::whatIsNoFilmIsRefused() {
  QFETCH(QString, film);
  QFETCH(QByteArray, content);
  QFETCH(QString, whatToDo);
  if (!content.isNull()) workplace_->write(film, content);
  FERRULE_VERIFY_REFUSED(*workplace_, measure(film), film, whatToDo);
  FERRULE_VERIFY_REFUSED(*workplace_, calibrate(film), film, whatToDo);
}

void BadFilmTest::aFilmOfAnotherShapeThanTheLensIsRefused() {
  workplace_->writeEmptyCloth("square.avi", 720, 720, 2);
  FERRULE_VERIFY_REFUSED(*workplace_, calibrate("square.avi"), "square.avi is 720x720",
                         "1280x720, another shape of picture; calibrate the lens in the film's mode");
  FERRULE_VERIFY_REFUSED(*workplace_, measure("square.avi"), "square.avi is 720x720",
                         "another shape of picture; calibrate the lens in the film's mode");
}

void BadFilmTest::aFilmOfAnotherSizeThanTheRigIsRefused() {
  workplace_->writeEmptyCloth("small.avi", 640, 360, 2);
  FERRULE_VERIFY_REFUSED(*workplace_, measure("small.avi"), "small.avi is 640x360",
                         "1280x720; calibrate the rig on a film of this size");
}

void BadFilmTest::aFilmThatShowsNoTagsIsRefused() {
  workplace_->writeEmptyCloth("bare.avi", 1280, 720, 4);
  FERRULE_VERIFY_REFUSED(*workplace_, calibrate("bare.avi"), "bare.avi shows 0 of the table's tags and 3 are needed",
                         "uncover or light them");
}

void BadFilmTest::aFilmCutOffIsMeasuredAsFarAsItGoes() {
  workplace_->writeEmptyCloth("whole.mkv", 1280, 720, 40);
  const QByteArray whole = workplace_->content("whole.mkv");
  workplace_->write("half.mkv", whole.left(whole.size() / 2));
  const Ended ended = workplace_->run(measure("half.mkv"));
  QVERIFY2(ended.status == 0, qPrintable(ended.words.join('\n')));
  QVERIFY2(ended.words.contains("half.mkv is shorter than its header says; what is there was measured."),
           qPrintable(ended.words.join('\n')));
  QVERIFY(workplace_->content("measured.json").contains("\"shots\""));
}

FERRULE_TEST(BadFilmTest)
#include "bad_film_test.moc"
