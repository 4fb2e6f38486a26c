// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QtTest>

#include "tests/architecture/house_rules.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class ArchitectureTest : public QObject {
  Q_OBJECT
 private slots:
  void theHouseKeepsItsRules();
  void theTableOfDependenciesHasNoCircle();
  void aHouseInOrderHasNoFindings();
  void aPlantedFaultIsFound_data();
  void aPlantedFaultIsFound();
};

namespace {

const QString kLicence = "// SPDX-License-Identifier: GPL-3.0-or-later\n";

void put(const QDir& root, const QString& path, const QString& content) {
  QVERIFY(root.mkpath(QFileInfo(path).path()));
  QFile file(root.filePath(path));
  QVERIFY(file.open(QIODevice::WriteOnly));
  file.write(content.toUtf8());
}

/// A house of a few files that keeps every rule.
void putSoundHouse(const QDir& root) {
  put(root, "CMakeLists.txt", "# SPDX-License-Identifier: GPL-3.0-or-later\n");
  put(root, "core/base/error.h", kLicence + "#pragma once\n#include <string>\n#include <tl/expected.hpp>\n");
  put(root, "core/table/ball.h", kLicence + "#pragma once\n#include \"core/base/error.h\"\n");
  put(root, "core/table/ball.cpp", kLicence + "#include \"core/table/ball.h\"\n#include <nlohmann/json.hpp>\n");
  put(root, "core/physics/motion.h", kLicence + "#pragma once\n#include \"core/table/ball.h\"\n");
  put(root, "core/record/record.h", kLicence + "#pragma once\n#include <QSqlDatabase>\n");
  put(root, "app/main.cpp", kLicence + "#include <QApplication>\n#include \"core/record/record.h\"\n");
  put(root, "packaging/run", "#!/usr/bin/env bash\n# SPDX-License-Identifier: GPL-3.0-or-later\n");
}

}  // namespace

void ArchitectureTest::theHouseKeepsItsRules() {
  const QDir root(FERRULE_SOURCE_DIR);
  QVERIFY(filesRead(root) > 100);
  const QStringList findings = houseFindings(root);
  QVERIFY2(findings.isEmpty(), qPrintable('\n' + findings.join('\n')));
}

/// Every part stands in the table after all the parts that it may know.
void ArchitectureTest::theTableOfDependenciesHasNoCircle() {
  QStringList seen;
  for (const FolderRule& rule : folderRules()) {
    for (const QString& part : rule.parts) {
      if (part == "core") continue;
      QVERIFY2(seen.contains(part), qPrintable(rule.folder + " names " + part + " too early"));
    }
    QVERIFY(!seen.contains(rule.folder));
    seen << rule.folder;
  }
}

void ArchitectureTest::aHouseInOrderHasNoFindings() {
  QTemporaryDir folder;
  const QDir root(folder.path());
  putSoundHouse(root);
  QCOMPARE(houseFindings(root), QStringList{});
  QCOMPARE(filesRead(root), 8);
}

void ArchitectureTest::aPlantedFaultIsFound_data() {
  QTest::addColumn<QString>("path");
  QTest::addColumn<QString>("content");
  QTest::addColumn<QString>("finding");
  const auto row = [](const char* name, const char* path, const QString& content, const char* finding) {
    QTest::newRow(name) << path << content << finding;
  };
  row("upward", "core/table/bad.cpp", kLicence + "#include \"core/physics/motion.h\"\n",
      "core/table/bad.cpp:2: core/table must not know core/physics");
  row("record is secret", "core/physics/bad.cpp", kLicence + "#include \"core/record/record.h\"\n",
      "core/physics/bad.cpp:2: core/physics must not know core/record");
  row("core knows no app", "core/record/bad.cpp", kLicence + "#include \"app/main.h\"\n",
      "core/record must not know app");
  row("core knows no tests", "core/table/bad.cpp", kLicence + "#include \"tests/support/test_registry.h\"\n",
      "core/table must not know tests");
  row("app knows no tests", "app/bad.cpp", kLicence + "#include \"tests/support/test_registry.h\"\n",
      "app must not know tests");
  row("Qt in core", "core/physics/bad.cpp", kLicence + "#include <QString>\n", "core/physics must not use <QString>");
  row("widgets by module", "app/bad.cpp", kLicence + "#include <QtWidgets>\n", "include the class, not the module");
  row("module's folder", "app/bad.cpp", kLicence + "#include <QtWidgets/QLabel>\n",
      "include the class, not the module");
  row("SQL outside the record", "app/bad.cpp", kLicence + "#include <QSqlQuery>\n", "only core/record may use");
  row("OpenCV in physics", "core/physics/bad.cpp", kLicence + "#include <opencv2/core.hpp>\n",
      "core/physics must not use <opencv2/core.hpp>");
  row("a second Qt", "core/vision/bad.cpp", kLicence + "#include <opencv2/highgui.hpp>\n", "second Qt");
  row("JSON in a header", "core/table/bad.h", kLicence + "#pragma once\n#include <nlohmann/json.hpp>\n",
      "JSON belongs in a .cpp");
  row("no pragma once", "core/table/bad.h", kLicence + "int x();\n", "core/table/bad.h:1: has no #pragma once");
  row("no licence", "core/table/bad.cpp", "int x;\n", "core/table/bad.cpp:1: has no SPDX line");
  row("a script without licence", "packaging/bad", "#!/bin/sh\n", "packaging/bad:1: has no SPDX line");
  row("a short path", "core/table/bad.cpp", kLicence + "#include \"ball.h\"\n", "is not of the form");
  row("a path up", "core/table/bad.cpp", kLicence + "#include \"../base/error.h\"\n", "is not of the form");
  row("ours in angle brackets", "core/table/bad.cpp", kLicence + "#include <core/base/error.h>\n", "in quotes");
  row("a ghost", "core/table/bad.cpp", kLicence + "#include \"core/base/ghost.h\"\n", "does not exist");
  row("too long", "core/table/bad.cpp", kLicence + QString("int x();\n").repeated(500), "is longer than 500 lines");
  row("an unknown part", "core/weather/bad.cpp", kLicence, "does not know");
  row("core that translates", "core/record/bad.cpp", kLicence + "auto s = QObject::tr(\"x\");\n",
      "core translates nothing");
  row("a private source", "core/table/bad.cpp", kLicence + "// Source: reference sheet on motion.\n",
      "name a publication");
  row("a hidden correction", "core/vision/bad.cpp", kLicence + "void f() { cv::undistort(a, b, c, d); }\n",
      "core/vision/bad.cpp:2: moves pixels outside the chain of corrections");
  row("a test's own patience", "tests/table/bad.cpp", kLicence + "QTRY_VERIFY_WITH_TIMEOUT(x, 100);\n",
      "waits for a time of its own");
  row("Qt's own patience", "tests/table/bad.cpp", kLicence + "QVERIFY(spy.wait());\n", "waits for a time of its own");
  row("its own header late", "core/table/ball.cpp", kLicence + "#include <string>\n#include \"core/table/ball.h\"\n",
      "core/table/ball.cpp:2: include core/table/ball.h");
  row("indented include", "core/table/bad.cpp", kLicence + "  # include \"core/physics/motion.h\"\n",
      "core/table must not know core/physics");
}

void ArchitectureTest::aPlantedFaultIsFound() {
  QFETCH(QString, path);
  QFETCH(QString, content);
  QFETCH(QString, finding);
  QTemporaryDir folder;
  const QDir root(folder.path());
  putSoundHouse(root);
  put(root, "app/main.h", kLicence + "#pragma once\n");
  put(root, "tests/support/test_registry.h", kLicence + "#pragma once\n");
  put(root, path, content);
  const QStringList findings = houseFindings(root);
  QCOMPARE(findings.size(), 1);
  QVERIFY2(findings.first().contains(finding), qPrintable(findings.first()));
}

FERRULE_TEST(ArchitectureTest)
#include "architecture_test.moc"
