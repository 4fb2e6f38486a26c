// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/window/live_run.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QTimer>
#include <algorithm>
#include <cstdio>
#include <vector>

#include "app/live/paced_film.h"
#include "app/session/session_place.h"
#include "app/window/main_window.h"
#include "tests/bench/median.h"

namespace ferrule::bench {

namespace {

constexpr const char* kDemo = FERRULE_SOURCE_DIR "/resources/demo/";

double quantile(std::vector<double> values, double share) {
  if (values.empty()) return 0.0;
  std::ranges::sort(values);
  return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

}  // namespace

void printLive(MainWindow& window, const char* record) {
  window.showPlace(QStringLiteral("session"));
  LiveDesk& live = window.findChild<SessionPlace*>()->live();
  MeasureOptions options;
  options.rig = std::string(kDemo) + "rig.json";
  options.table = std::string(kDemo) + "table.json";
  options.game = "eight-ball";
  options.record = record;
  options.session = "Bench (invented)";
  options.players = {"Ada Example (invented)"};
  std::vector<double> behind;
  std::vector<double> afterRest_s;
  constexpr double kRate_hz = 60.0;
  const auto newest = [&live] { return static_cast<double>(live.counts().came - 1); };
  QObject::connect(&live, &LiveDesk::imageSeen, &window,
                   [&] { behind.push_back(newest() - static_cast<double>(live.image()->picture.number)); });
  // What somebody sees who looks at any moment.
  std::vector<double> atAnyTime;
  QTimer often;
  QObject::connect(&often, &QTimer::timeout, &window, [&] {
    if (live.state() == LiveState::Running && live.image() != nullptr)
      atAnyTime.push_back(static_cast<double>(live.imagesBehind()));
  });
  often.start(5);
  std::size_t shots = 0;
  QObject::connect(&live, &LiveDesk::changed, &window, [&] {
    if (live.state() != LiveState::Running || live.shots().all().size() == shots) return;
    shots = live.shots().all().size();
    afterRest_s.push_back(newest() / kRate_hz - live.shots().all().back()->reading.rest_s);
  });
  live.start(options, std::make_shared<PacedFilm>(QString::fromUtf8(kDemo) + QStringLiteral("cut-with-follow.mp4"),
                                                  FilmPace::Own));
  while (live.state() != LiveState::Done && live.state() != LiveState::None)
    QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
  const ImageQueue::Counts counts = live.counts();
  std::printf("live: a film of 1280x720 px at 60 images/s in place of a camera, %ld images\n", counts.came);
  std::printf("  %-44s median %.0f, 95 %% %.0f, most %.0f  (goal 2), of %zu that were shown\n",
              "images behind the newest, as one is shown", median(behind), quantile(behind, 0.95),
              quantile(behind, 1.0), behind.size());
  std::printf("  %-44s median %.0f, 95 %% %.0f, most %.0f\n", "images behind the newest, at any moment",
              median(atAnyTime), quantile(atAnyTime, 0.95), quantile(atAnyTime, 1.0));
  std::printf("  %-44s %ld\n", "dropped", counts.dropped);
  for (const double after_s : afterRest_s)
    std::printf("  %-44s %.2f s  (goal 1)\n", "the shot is listed after the balls rest", after_s);
  QObject::disconnect(&live, nullptr, &window, nullptr);
}

}  // namespace ferrule::bench
