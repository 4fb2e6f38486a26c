// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/lens_file.h"

#include <QTemporaryDir>
#include <QtTest>

#include "core/base/text_file.h"
#include "core/camera/rig_file.h"
#include "tests/camera/camera_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class LensFileTest : public QObject {
  Q_OBJECT
 private slots:
  void aLensComesBackFromItsFile();
  void aRigComesBackFromItsFile();
  void badLensFilesAreNamed_data();
  void badLensFilesAreNamed();
  void aRigFileWithTwoLensesIsRefused();
  void aRigFileOutOfOrderIsRefused();
  void aRigFileIsNotALensFile();
  void aPoseThatIsNoRotationIsRefused();
};

namespace {

Rig completeRig() {
  const Rig truth = invented9ftRig();
  return calibrateRig(evidenceFor(truth, taggedTable(), 0.1), taggedTable()).value();
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  if (at != std::string::npos) text.replace(at, from.size(), to);
  return text;
}

}  // namespace

void LensFileTest::aLensComesBackFromItsFile() {
  for (Lens lens : {brownLens(), rationalLens(), fisheyeLens()}) {
    lens.board = "chessboard:9x6:25";
    lens.date = "2024-05-01";
    lens.rms_px = 0.123;
    const auto again = parseLens(lensText(lens), "lens.json");
    QVERIFY(again.has_value());
    QVERIFY(*again == lens);
  }
}

void LensFileTest::aRigComesBackFromItsFile() {
  QTemporaryDir folder;
  const std::string path = folder.filePath("rig.json").toStdString();
  Rig rig = completeRig();
  addNoses(rig, {{CushionName::LeftHead, 0.00025, 0.0005, 180}});
  QVERIFY(writeRigFile(path, rig).has_value());
  const auto again = readRigFile(path);
  QVERIFY(again.has_value());
  QVERIFY(again->lens == rig.lens);
  QVERIFY(again->chain == rig.chain);
  QVERIFY(again->pose.rotation == rig.pose.rotation);
  QVERIFY((again->pose.translation_m - rig.pose.translation_m).norm() < 1e-12);
  QVERIFY(again->poseCovariance == rig.poseCovariance);
  QCOMPARE(again->tags.size(), rig.tags.size());
  QVERIFY(again->noses == rig.noses);
  QCOMPARE(again->verdict, rig.verdict);
}

void LensFileTest::badLensFilesAreNamed_data() {
  QTest::addColumn<QString>("from");
  QTest::addColumn<QString>("to");
  QTest::addColumn<int>("code");
  QTest::addColumn<QString>("detail");
  const auto row = [](const char* name, const char* from, const char* to, ErrorCode code, const char* detail) {
    QTest::newRow(name) << QString(from) << QString(to) << static_cast<int>(code) << QString(detail);
  };
  row("not JSON", "{", "", ErrorCode::FileMalformed, "not JSON");
  row("another format", "ferrule-lens/1", "other/1", ErrorCode::FileMalformed, "not a lens file");
  row("no size", "image_size", "size", ErrorCode::FieldMissing, "image_size");
  row("unknown model", "brown5", "brown9", ErrorCode::FieldInvalid, "model");
  row("no coefficient", "\"k2\"", "\"q2\"", ErrorCode::FieldMissing, "coefficients.k2");
  row("text for a number", "0.08", "\"0.08\"", ErrorCode::FieldInvalid, "coefficients.k2");
  row("focal length of another unit", "1400.0", "1.4", ErrorCode::FieldInvalid, "focal_px");
  row("centre outside", "951.0", "5000.0", ErrorCode::FieldInvalid, "centre_px");
}

void LensFileTest::badLensFilesAreNamed() {
  QFETCH(QString, from);
  QFETCH(QString, to);
  QFETCH(int, code);
  QFETCH(QString, detail);
  const std::string text = lensText(brownLens());
  const std::string bad = replaced(text, from.toStdString(), to.toStdString());
  QVERIFY(bad != text);
  const auto lens = parseLens(bad, "lens.json");
  QVERIFY(!lens.has_value());
  QCOMPARE(static_cast<int>(lens.error().code), code);
  QCOMPARE(lens.error().subject, std::string("lens.json"));
  QCOMPARE(QString::fromStdString(lens.error().detail), detail);
}

void LensFileTest::aRigFileWithTwoLensesIsRefused() {
  const std::string text = replaced(rigText(completeRig()), "\"kind\": \"pose\"", "\"kind\": \"lens\"");
  const auto rig = parseRig(text, "rig.json");
  QVERIFY(!rig.has_value());
  QVERIFY(rig.error().code == ErrorCode::CorrectionTwice);
  QCOMPARE(rig.error().subject, std::string("rig.json"));
  QCOMPARE(rig.error().detail, std::string("lens"));
}

void LensFileTest::aRigFileOutOfOrderIsRefused() {
  const std::string text = replaced(rigText(completeRig()), "\"kind\": \"pose\"", "\"kind\": \"rotation\"");
  const auto rig = parseRig(text, "rig.json");
  QVERIFY(!rig.has_value());
  QVERIFY(rig.error().code == ErrorCode::FieldInvalid);
  QCOMPARE(rig.error().detail, std::string("chain: out of order"));
}

void LensFileTest::aRigFileIsNotALensFile() {
  const auto lens = parseLens(rigText(completeRig()), "rig.json");
  QVERIFY(!lens.has_value());
  QVERIFY(lens.error().code == ErrorCode::FileMalformed);
}

void LensFileTest::aPoseThatIsNoRotationIsRefused() {
  Rig rig = completeRig();
  rig.pose.rotation *= 1.1;
  const auto again = parseRig(rigText(rig), "rig.json");
  QVERIFY(!again.has_value());
  QVERIFY(again.error().code == ErrorCode::FieldInvalid);
  QCOMPARE(again.error().detail, std::string("pose.rotation"));
}

FERRULE_TEST(LensFileTest)
#include "lens_file_test.moc"
