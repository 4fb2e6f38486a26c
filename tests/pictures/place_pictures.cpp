// SPDX-License-Identifier: GPL-3.0-or-later
// Writes a picture of every place of the window, light and dark, for somebody to look at; checks nothing.
#include <QApplication>
#include <QDir>
#include <QEventLoop>
#include <QFile>
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
#include "tests/support/own_home.h"

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

/// One thing more that a place shows.
struct Step {
  const char* name;
  ferrule::ActionId action;
  int times = 1;
};
/// Of Review, one after another: each goes on from what the last one left.
constexpr Step kReviewSteps[] = {
    {"both", ferrule::ActionId::ShowBoth},
    {"film", ferrule::ActionId::ShowFilm},
    {"plan", ferrule::ActionId::ShowPlan},
    {"corrected", ferrule::ActionId::LogSafety},
    {"held", ferrule::ActionId::CompareShots},
    {"compared", ferrule::ActionId::ShotOn},
    {"compared-no-more", ferrule::ActionId::CompareShots},
    {"moving-balls", ferrule::ActionId::MovePlaces},
    {"moving-balls-no-more", ferrule::ActionId::MovePlaces, 2},
    {"filter", ferrule::ActionId::FilterShots},
    {"filter-no-more", ferrule::ActionId::FilterShots},
};

/// A record that the pictures may change.
QString copyInto(const QTemporaryDir& folder, const QString& record) {
  const QString copy = folder.filePath(QFileInfo(record).fileName());
  QFile::remove(copy);
  return QFile::copy(record, copy) ? copy : record;
}

}  // namespace

/// FOLDER LANGUAGE RECORD [RECORD...]: the pictures of each record's places go to FOLDER/NAME-PLACE-LOOK.png.
int main(int argc, char** argv) {
  const ferrule::OwnHome home;
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
      const QString record = copyInto(settings, QFileInfo(QString::fromLocal8Bit(argv[i])).absoluteFilePath());
      ferrule::MainWindow window({ferrule::openRecordSource, ferrule::openFilmFile, QString()});
      window.start(record);
      window.resize(kWindow);
      window.show();
      const auto show = [&](const QString& name) {
        write(window, folder.filePath(QStringLiteral("%1-%2-%3.png")
                                          .arg(QFileInfo(record).completeBaseName(), name, ferrule::toSetting(look))));
      };
      for (const ferrule::PlaceRow& place : ferrule::placeRows()) {
        window.showPlace(QString::fromLatin1(place.name));
        wait(kSettle_ms);
        const QString name = QString::fromLatin1(place.name);
        show(name);
        if (name != QLatin1String("review")) continue;
        for (const Step& step : kReviewSteps) {
          for (int time = 0; time < step.times; ++time)
            window.actions().at(step.action)->trigger();
          wait(kSettle_ms / 4);
          if (!QString::fromLatin1(step.name).endsWith(QLatin1String("no-more")))
            show(name + QLatin1Char('-') + QString::fromLatin1(step.name));
        }
      }
    }
  }
  return 0;
}
