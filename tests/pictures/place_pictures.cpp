// SPDX-License-Identifier: GPL-3.0-or-later
// Writes a picture of every place of the window, light and dark, for somebody to look at; checks nothing.
#include <QApplication>
#include <QDir>
#include <QEventLoop>
#include <QFileInfo>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTimer>
#include <clocale>
#include <cstdio>

#include "app/film/film_file.h"
#include "app/review/record_source.h"
#include "app/window/appearance.h"
#include "app/window/languages.h"
#include "app/window/main_window.h"

namespace {

constexpr QSize kWindow{1280, 800};
/// Long enough for a record to be read and a shot to be suggested.
constexpr int kSettle_ms = 4000;

void wait(int time_ms) {
  QEventLoop loop;
  QTimer::singleShot(time_ms, &loop, &QEventLoop::quit);
  loop.exec();
}

void write(const ferrule::MainWindow& window, const QString& path) {
  if (!const_cast<ferrule::MainWindow&>(window).grab().save(path))
    std::fprintf(stderr, "cannot write %s\n", qPrintable(path));
  std::puts(qPrintable(path));
}

}  // namespace

/// FOLDER LANGUAGE RECORD [RECORD...]: the pictures of each record's places go to FOLDER/NAME-PLACE-LOOK.png.
int main(int argc, char** argv) {
  QApplication application(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  if (argc < 4) {
    std::fputs("place_pictures FOLDER LANGUAGE RECORD...\n", stderr);
    return 2;
  }
  const QTemporaryDir settings;
  QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
  QCoreApplication::setApplicationName(QStringLiteral("ferrule-pictures"));
  QCoreApplication::setOrganizationName(QStringLiteral("ferrule-pictures"));
  QStandardPaths::setTestModeEnabled(true);
  const QString language = QString::fromLocal8Bit(argv[2]);
  QLocale::setDefault(QLocale(language));
  const ferrule::SpokenLanguage spoken(language);
  const QDir folder(QString::fromLocal8Bit(argv[1]));
  if (!folder.mkpath(QStringLiteral("."))) {
    std::fprintf(stderr, "cannot make %s\n", argv[1]);
    return 1;
  }
  for (const ferrule::Appearance look : {ferrule::Appearance::Light, ferrule::Appearance::Dark}) {
    ferrule::applyAppearance(look);
    for (int i = 3; i < argc; ++i) {
      const QString record = QFileInfo(QString::fromLocal8Bit(argv[i])).absoluteFilePath();
      ferrule::MainWindow window({ferrule::openRecordSource, ferrule::openFilmFile, QString()});
      window.start(record);
      window.resize(kWindow);
      window.show();
      for (const ferrule::PlaceRow& place : ferrule::placeRows()) {
        window.showPlace(QString::fromLatin1(place.name));
        wait(kSettle_ms);
        write(window, folder.filePath(QStringLiteral("%1-%2-%3.png")
                                          .arg(QFileInfo(record).completeBaseName(), QString::fromLatin1(place.name),
                                               ferrule::toSetting(look))));
      }
    }
  }
  return 0;
}
