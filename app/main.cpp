// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>
#include <clocale>
#include <cstdio>
#include <memory>
#include <string_view>

#include "app/console/console.h"
#include "app/console/report_command.h"
#include "app/film/film_file.h"
#include "app/review/record_source.h"
#include "app/session/demo_session.h"
#include "app/window/appearance.h"
#include "app/window/window_call.h"
#include "app/window/window_host.h"

namespace {

/// The demo as packaging/run measured it, or where the package puts it.
QString demoRecord() {
  const QString measured =
      QStandardPaths::locate(QStandardPaths::GenericDataLocation, QStringLiteral("ferrule/demo.sqlite"));
  if (!measured.isEmpty()) return measured;
  const QDir program(QCoreApplication::applicationDirPath());
  const QString packaged =
      QDir::cleanPath(program.absoluteFilePath(QStringLiteral("../share/ferrule/demo/demo.sqlite")));
  return QFileInfo::exists(packaged) ? packaged : QString();
}

/// A call has one voice on standard error: the toolkit's remark on a folder that nobody asked for is not its matter.
void passOn(QtMsgType type, const QMessageLogContext& context, const QString& message) {
  if (message.startsWith(QLatin1String("QStandardPaths: "))) return;
  std::fprintf(stderr, "%s\n", qPrintable(qFormatLogMessage(type, context, message)));
}

int runWindow(int argc, char** argv, const ferrule::WindowCall& call) {
  QApplication application(argc, argv);
  // Qt takes the user's decimal comma for the C library as well; our files need the point.
  std::setlocale(LC_NUMERIC, "C");
  QCoreApplication::setApplicationName(QStringLiteral("ferrule"));
  QCoreApplication::setOrganizationName(QStringLiteral("ferrule"));
  QCoreApplication::setApplicationVersion(QStringLiteral(FERRULE_VERSION));
  QGuiApplication::setApplicationDisplayName(QStringLiteral("Ferrule"));
  QGuiApplication::setDesktopFileName(QStringLiteral("ferrule"));
  ferrule::applyAppearance(
      ferrule::appearanceFromSetting(QSettings().value(QStringLiteral("window/appearance")).toString()));
  ferrule::WindowHost host({ferrule::openRecordSource, ferrule::openFilmFile, demoRecord(),
                            ferrule::demoFolder(QCoreApplication::applicationDirPath())});
  host.open(QString::fromStdString(call.record));
  return QApplication::exec();
}

}  // namespace

int main(int argc, char** argv) {
  const auto call = ferrule::windowCallFrom(argc, argv);
  if (!call) {
    // A report needs fonts and Qt Charts, which stands on widgets, but no display, whatever the desktop says.
    const bool draws = argc > 1 && std::string_view(argv[1]) == "report";
    if (draws) {
      qputenv("QT_QPA_PLATFORM", "offscreen");
      qInstallMessageHandler(passOn);
    }
    // The record's database driver is found through it.
    std::unique_ptr<QCoreApplication> application;
    if (draws) {
      application = std::make_unique<QApplication>(argc, argv);
      std::setlocale(LC_NUMERIC, "C");
    } else {
      application = std::make_unique<QCoreApplication>(argc, argv);
    }
    return ferrule::runConsole(argc, argv, {ferrule::addReportCommand});
  }
  if (!ferrule::hasDisplay()) {
    std::fputs(
        "There is no display to open the window on; run this in a desktop session, or give a command "
        "(ferrule --help).\n",
        stderr);
    return 1;
  }
  return runWindow(argc, argv, *call);
}
