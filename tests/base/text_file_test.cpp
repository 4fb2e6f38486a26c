// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/text_file.h"

#include <sys/stat.h>
#include <unistd.h>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <QtTest>
#include <thread>

#include "tests/support/test_registry.h"

using namespace ferrule;

class TextFileTest : public QObject {
  Q_OBJECT
 private slots:
  void whatIsWrittenIsRead();
  void writingReplacesTheWholeFile();
  void nothingIsLeftBesideTheFile();
  void aFailedWriteLeavesTheOldFileWhole();
  void anUnwritableFolderIsAnError();
  void theOldFilesRightsAreKept();
  void aLinkIsFollowed();
  void aPipeIsWrittenStraightTo();
  void twoWritersNeverMixTheirWords();
  void aMissingFileIsSaidToBeMissing();
  void anEmptyFileIsSaidToBeEmpty();
  void aFolderIsNotReadable();
  void aFileLargerThanTheLimitIsRefused();
  void bytesAreKeptAsTheyAre();

 private:
  [[nodiscard]] std::string in(const char* name) const { return folder_.filePath(name).toStdString(); }
  QTemporaryDir folder_;
};

namespace {

ErrorCode codeOf(const Result<std::string>& result) {
  return result ? ErrorCode::Cancelled : result.error().code;
}

}  // namespace

void TextFileTest::whatIsWrittenIsRead() {
  const std::string path = in("plain.json");
  QVERIFY(writeTextFile(path, "{\"a\": 1}\n").has_value());
  QCOMPARE(readTextFile(path).value(), std::string("{\"a\": 1}\n"));
}

void TextFileTest::writingReplacesTheWholeFile() {
  const std::string path = in("shrinks.txt");
  QVERIFY(writeTextFile(path, std::string(100000, 'x')).has_value());
  QVERIFY(writeTextFile(path, "short").has_value());
  QCOMPARE(readTextFile(path).value(), std::string("short"));
}

void TextFileTest::nothingIsLeftBesideTheFile() {
  QTemporaryDir own;
  QVERIFY(writeTextFile(own.filePath("a.txt").toStdString(), "a").has_value());
  QCOMPARE(QDir(own.path()).entryList(QDir::Files | QDir::Hidden), QStringList{"a.txt"});
}

/// /dev/full answers every write with 'no space left', as a full disk does. Source: full(4) of Linux.
void TextFileTest::aFailedWriteLeavesTheOldFileWhole() {
  const auto result = writeTextFile("/dev/full", "lost");
  QVERIFY(!result.has_value());
  QCOMPARE(result.error().code, ErrorCode::FileNotWritable);
  QCOMPARE(result.error().subject, std::string("/dev/full"));
  QVERIFY(!result.error().detail.empty());
  QVERIFY(QFileInfo::exists("/dev/full"));
  // A folder stands where the file should: the rename fails and what was there stays.
  QVERIFY(QDir(folder_.path()).mkpath("taken.json/inside"));
  QVERIFY(!writeTextFile(in("taken.json"), "lost").has_value());
  QVERIFY(QFileInfo::exists(folder_.filePath("taken.json/inside")));
}

void TextFileTest::anUnwritableFolderIsAnError() {
  const auto result = writeTextFile(in("no-such-folder/a.txt"), "a");
  QVERIFY(!result.has_value());
  QCOMPARE(result.error().code, ErrorCode::FileNotWritable);
}

void TextFileTest::theOldFilesRightsAreKept() {
  const std::string path = in("private.json");
  QVERIFY(writeTextFile(path, "1").has_value());
  QCOMPARE(::chmod(path.c_str(), 0600), 0);
  QVERIFY(writeTextFile(path, "2").has_value());
  struct stat now {};
  QCOMPARE(::stat(path.c_str(), &now), 0);
  QCOMPARE(now.st_mode & 0777U, 0600U);
}

void TextFileTest::aLinkIsFollowed() {
  QVERIFY(writeTextFile(in("target.json"), "old").has_value());
  QVERIFY(QFile::link(folder_.filePath("target.json"), folder_.filePath("link.json")));
  QVERIFY(writeTextFile(in("link.json"), "new").has_value());
  QVERIFY(QFileInfo(folder_.filePath("link.json")).isSymLink());
  QCOMPARE(readTextFile(in("target.json")).value(), std::string("new"));
}

void TextFileTest::aPipeIsWrittenStraightTo() {
  const std::string path = in("pipe");
  QCOMPARE(::mkfifo(path.c_str(), 0600), 0);
  std::string heard;
  std::thread reader([&] { heard = readTextFile(path).value_or(""); });
  const auto written = writeTextFile(path, "through");
  reader.join();
  QVERIFY(written.has_value());
  QCOMPARE(heard, std::string("through"));
}

void TextFileTest::twoWritersNeverMixTheirWords() {
  const std::string path = in("shared.txt");
  const auto writeMany = [&path](char letter) {
    for (int i = 0; i < 50; ++i) {
      if (!writeTextFile(path, std::string(20000, letter))) return;
    }
  };
  std::thread a(writeMany, 'a');
  std::thread b(writeMany, 'b');
  a.join();
  b.join();
  const std::string content = readTextFile(path).value();
  QCOMPARE(content.size(), std::size_t{20000});
  QVERIFY(content == std::string(20000, content.front()));
}

void TextFileTest::aMissingFileIsSaidToBeMissing() {
  const auto result = readTextFile(in("nowhere.json"));
  QCOMPARE(codeOf(result), ErrorCode::FileMissing);
  QCOMPARE(result.error().subject, in("nowhere.json"));
}

void TextFileTest::anEmptyFileIsSaidToBeEmpty() {
  QFile file(folder_.filePath("empty.json"));
  QVERIFY(file.open(QIODevice::WriteOnly));
  file.close();
  QCOMPARE(codeOf(readTextFile(in("empty.json"))), ErrorCode::FileEmpty);
}

void TextFileTest::aFolderIsNotReadable() {
  QCOMPARE(codeOf(readTextFile(folder_.path().toStdString())), ErrorCode::FileUnreadable);
}

/// /dev/zero never ends, as a wrong pipe may not.
void TextFileTest::aFileLargerThanTheLimitIsRefused() {
  QCOMPARE(codeOf(readTextFile("/dev/zero", 1000000)), ErrorCode::FileUnreadable);
  QVERIFY(writeTextFile(in("limit.txt"), std::string(1000, 'x')).has_value());
  QVERIFY(readTextFile(in("limit.txt"), 1000).has_value());
  QCOMPARE(codeOf(readTextFile(in("limit.txt"), 999)), ErrorCode::FileUnreadable);
}

void TextFileTest::bytesAreKeptAsTheyAre() {
  const std::string bytes("a\r\n\0\xff\xfe", 6);
  QVERIFY(writeTextFile(in("bytes"), bytes).has_value());
  QCOMPARE(readTextFile(in("bytes")).value(), bytes);
}

FERRULE_TEST(TextFileTest)
#include "text_file_test.moc"
