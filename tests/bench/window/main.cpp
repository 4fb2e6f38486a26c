// SPDX-License-Identifier: GPL-3.0-or-later
// How soon the window stands on a large record, how long stepping and scrubbing keep it from answering, and what the
// plan view costs to draw; how far a live picture is behind its camera. Drawn into memory, without a display.
#include <CLI/CLI.hpp>
#include <QApplication>
#include <QElapsedTimer>
#include <QMouseEvent>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <algorithm>
#include <clocale>
#include <cstdio>
#include <functional>

#include "app/film/film_file.h"
#include "app/picture/plan_view.h"
#include "app/review/record_source.h"
#include "app/review/review_place.h"
#include "app/review/time_line.h"
#include "app/window/main_window.h"
#include "tests/bench/median.h"
#include "tests/bench/record/large_record.h"
#include "tests/bench/window/live_run.h"
#include "tests/support/own_home.h"

namespace ferrule::bench {

namespace {

constexpr QSize kWindow{1280, 720};

/// Keeps the longest time that one event took, with all that it caused.
class TimedApplication : public QApplication {
 public:
  using QApplication::QApplication;

  bool notify(QObject* receiver, QEvent* event) override {
    if (inside_) return QApplication::notify(receiver, event);
    inside_ = true;
    QElapsedTimer clock;
    clock.start();
    const bool taken = QApplication::notify(receiver, event);
    longest_ms_ = std::max(longest_ms_, static_cast<double>(clock.nsecsElapsed()) / 1e6);
    inside_ = false;
    return taken;
  }

  /// Since it was asked last.
  double takeLongest_ms() { return std::exchange(longest_ms_, 0.0); }

 private:
  bool inside_ = false;
  double longest_ms_ = 0.0;
};

/// Milliseconds until something is so; gives up after a minute.
double until(const std::function<bool()>& so) {
  QElapsedTimer clock;
  clock.start();
  while (!so() && clock.elapsed() < 60'000)
    QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
  return static_cast<double>(clock.nsecsElapsed()) / 1e6;
}

void settle(int events = 20) {
  for (int i = 0; i < events; ++i)
    QCoreApplication::processEvents(QEventLoop::AllEvents, 2);
}

void printSteps(const char* what, int times, MainWindow& window, ActionId action, TimedApplication& application) {
  settle();
  application.takeLongest_ms();
  double own_ms = 0.0;
  for (int i = 0; i < times; ++i) {
    QElapsedTimer clock;
    clock.start();
    window.actions().at(action)->trigger();
    own_ms = std::max(own_ms, static_cast<double>(clock.nsecsElapsed()) / 1e6);
    settle(3);
  }
  std::printf("  %-44s longest %8.2f ms  (goal 50)\n", what, std::max(own_ms, application.takeLongest_ms()));
}

void printScrubbing(TimeLine& line, TimedApplication& application) {
  settle();
  application.takeLongest_ms();
  const auto send = [&line](QEvent::Type type, int x) {
    const QPointF place(x, line.height() / 2.0);
    QMouseEvent event(type, place, line.mapToGlobal(place), type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton,
                      type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&line, &event);
  };
  send(QEvent::MouseButtonPress, 4);
  for (int x = 4; x < line.width() - 4; x += 3) {
    send(QEvent::MouseMove, x);
    settle(2);
  }
  send(QEvent::MouseButtonRelease, line.width() - 5);
  std::printf("  %-44s longest %8.2f ms  (goal 50)\n", "scrubbing along a session", application.takeLongest_ms());
}

void printDrawing(PlanView& plan) {
  QImage picture(plan.size(), QImage::Format_ARGB32_Premultiplied);
  std::vector<double> plan_ms;
  std::vector<double> fill_ms;
  for (int i = 0; i < 100; ++i) {
    QElapsedTimer clock;
    clock.start();
    picture.fill(Qt::black);
    fill_ms.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
    clock.start();
    plan.render(&picture);
    plan_ms.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
  }
  std::printf("  %-44s median  %8.2f ms  (goal 4), %.0f times filling its %d x %d px with one colour\n",
              "drawing the plan view", median(plan_ms), median(plan_ms) / median(fill_ms), plan.width(), plan.height());
}

void run(const QString& record, const QString& liveRecord, int shots, TimedApplication& application) {
  QElapsedTimer clock;
  clock.start();
  MainWindow window({openRecordSource, openFilmFile, {}});
  window.start(record);
  window.resize(kWindow);
  window.show();
  window.showPlace(QStringLiteral("review"));
  QCoreApplication::processEvents();
  std::printf("a window of %d x %d px on a record of %d shots\n", kWindow.width(), kWindow.height(), shots);
  std::printf("  %-44s         %8.2f ms\n", "first painted", static_cast<double>(clock.nsecsElapsed()) / 1e6);
  auto& review = *window.findChild<ReviewPlace*>();
  until([&] { return review.desk().shot() != nullptr; });
  std::printf("  %-44s         %8.2f ms  (goal 1000)\n", "open, the newest session's first shot shown",
              static_cast<double>(clock.nsecsElapsed()) / 1e6);
  std::printf("  %-44s longest %8.2f ms\n", "one event while it opened", application.takeLongest_ms());
  printSteps("stepping by image", 200, window, ActionId::ImageOn, application);
  printSteps("stepping by event", 100, window, ActionId::EventOn, application);
  printSteps("stepping by shot", 100, window, ActionId::ShotOn, application);
  printScrubbing(*window.findChild<TimeLine*>(), application);
  printDrawing(*window.findChild<PlanView*>());
  printLive(window, liveRecord.toStdString().c_str());
}

}  // namespace

}  // namespace ferrule::bench

int main(int argc, char** argv) {
  const ferrule::OwnHome home;
  qputenv("QT_QPA_PLATFORM", "offscreen");
  ferrule::bench::TimedApplication application(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  CLI::App app{"Measures the window on a large record: opening, stepping, scrubbing, drawing; and a live session."};
  int shots = 10'000;
  app.add_option("--shots", shots, "Shots of the record")->check(CLI::Range(100, 1'000'000));
  CLI11_PARSE(app, argc, argv);
  const QTemporaryDir folder;
  QSettings::setDefaultFormat(QSettings::IniFormat);
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder.path());
  QCoreApplication::setOrganizationName(QStringLiteral("ferrule-bench"));
  QCoreApplication::setApplicationName(QStringLiteral("ferrule-bench"));
  QStandardPaths::setTestModeEnabled(true);
  const QString record = folder.filePath(QStringLiteral("large.sqlite"));
  ferrule::bench::fillLargeRecord(record.toStdString(), shots);
  ferrule::bench::run(record, folder.filePath(QStringLiteral("live.sqlite")), shots, application);
  return 0;
}
