// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/table_printer.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "core/geometry/units.h"

namespace ferrule::bench {

namespace {

using Row = std::vector<std::string>;

std::string number(double value, int decimals) {
  char text[32];
  std::snprintf(text, sizeof text, "%.*f", decimals, value);
  return text;
}

std::string millimetres(double value_m) {
  return number(millimetresFromMetres(value_m), 2);
}

std::string ofAll(const Tally& tally) {
  return tally.all == 0 ? "-" : std::to_string(tally.hits) + "/" + std::to_string(tally.all);
}

std::string share(const Tally& tally, int decimals) {
  return tally.all == 0 ? "-" : number(tally.percent(), decimals);
}

/// "-" where nothing was measured.
std::string rmsOf(const std::vector<double>& values, double unit, int decimals) {
  return values.empty() ? "-" : number(rms(values) * unit, decimals);
}

double greatest(const std::vector<double>& values) {
  return quantile(values, 1.0);
}

void print(const char* title, const Row& header, const std::vector<Row>& rows) {
  std::vector<std::size_t> widths(header.size(), 0);
  for (std::size_t column = 0; column < header.size(); ++column) {
    widths[column] = header[column].size();
    for (const Row& row : rows)
      widths[column] = std::max(widths[column], row[column].size());
  }
  std::printf("\n%s\n", title);
  const auto line = [&](const Row& row) {
    for (std::size_t column = 0; column < row.size(); ++column) {
      const int width = static_cast<int>(widths[column]);
      std::printf(column == 0 ? "%-*s" : "  %*s", width, row[column].c_str());
    }
    std::printf("\n");
  };
  line(header);
  for (const Row& row : rows)
    line(row);
}

Row ballRow(const ClipScore& clip) {
  const ImageScore& images = clip.images;
  return {clip.name,
          std::to_string(images.missed.all),
          millimetres(rms(images.slowErrors_m)),
          millimetres(quantile(images.slowErrors_m, 0.95)),
          millimetres(greatest(images.slowErrors_m)),
          millimetres(rms(images.movingErrors_m)),
          millimetres(quantile(images.movingErrors_m, 0.95)),
          millimetres(greatest(images.movingErrors_m)),
          std::to_string(images.wrongNames.hits),
          share(images.wrongNames, 3),
          std::to_string(images.missed.hits),
          share(images.missed, 3),
          std::to_string(images.falseSamples.hits),
          share(images.falseSamples, 3),
          share(images.slowCovered, 1),
          share(images.movingCovered, 1)};
}

Row shotRow(const ClipScore& clip) {
  const ShotScore& shots = clip.shots;
  return {clip.name,
          ofAll(shots.found),
          std::to_string(shots.invented),
          ofAll(shots.firstContact),
          ofAll(shots.pocketed),
          ofAll(shots.outcome),
          std::to_string(shots.outcomeAside.hits),
          ofAll(shots.events),
          ofAll(shots.eventsOrOpen),
          ofAll(shots.firstEvents),
          ofAll(shots.restBalls),
          rmsOf(shots.restErrors_m, 1e3, 2),
          shots.restErrors_m.empty() ? "-" : millimetres(greatest(shots.restErrors_m)),
          rmsOf(shots.strikeErrors_s, 1e3, 1)};
}

const Row kDeliveryHeader{"film",   "shots",       "shown",   "aim rms deg", "in 95%",       "speed rms %",
                          "in 95%", "side shown",  "rms R",   "in 95%",      "height shown", "rms R",
                          "in 95%", "elev. shown", "rms deg", "in 95%"};

Row deliveryRow(const std::string& name, const ShotScore& shots) {
  return {name,
          std::to_string(shots.found.hits),
          ofAll(shots.strikeShown),
          rmsOf(shots.aimErrors_rad, degreesFromRadians(1.0), 3),
          ofAll(shots.aimCovered),
          rmsOf(shots.speedErrors, 100.0, 2),
          ofAll(shots.speedCovered),
          ofAll(shots.sideShown),
          rmsOf(shots.sideErrors, 1.0, 3),
          ofAll(shots.sideCovered),
          ofAll(shots.heightShown),
          rmsOf(shots.heightErrors, 1.0, 3),
          ofAll(shots.heightCovered),
          ofAll(shots.elevationShown),
          rmsOf(shots.elevationErrors_rad, degreesFromRadians(1.0), 2),
          ofAll(shots.elevationCovered)};
}

Row simulatedRow(const SimulatedScore& group) {
  const ShotScore& shots = group.shots;
  return {group.name,
          ofAll(shots.found),
          std::to_string(shots.invented),
          ofAll(shots.events),
          ofAll(shots.eventsOrOpen),
          ofAll(shots.firstEvents),
          ofAll(shots.firstContact),
          ofAll(shots.pocketed),
          rmsOf(shots.strikeErrors_s, 1e3, 2),
          number(1e3 * quantile(group.fit_s, 0.5), 0),
          number(1e3 * quantile(group.fit_s, 0.95), 0),
          number(1e3 * greatest(group.fit_s), 0)};
}

/// Error, floor, and the error in floors that half of the shots stay below.
void addFloored(Row& row, const FlooredErrors& both, double unit, int decimals) {
  std::vector<double> ratios;
  for (std::size_t i = 0; i < both.errors.size(); ++i)
    ratios.push_back(std::abs(both.errors[i]) / both.floors[i]);
  row.push_back(rmsOf(both.errors, unit, decimals));
  row.push_back(rmsOf(both.floors, unit, decimals));
  row.push_back(ratios.empty() ? "-" : number(quantile(ratios, 0.5), 2));
}

Row floorRow(const SimulatedScore& group) {
  Row row{group.name, std::to_string(group.aim_rad.errors.size())};
  addFloored(row, group.aim_rad, degreesFromRadians(1.0), 3);
  addFloored(row, group.speed, 100.0, 2);
  addFloored(row, group.side, 1.0, 3);
  addFloored(row, group.height, 1.0, 3);
  return row;
}

Row costRow(const ClipScore& clip) {
  const double images = static_cast<double>(std::max(clip.imageCount, 1L));
  return {clip.name,
          std::to_string(clip.imageCount),
          number(1e3 * clip.decoding.wall_s / images, 2),
          number(1e3 * clip.analysis.wall_s / images, 2),
          number(clip.decoding.wall_s > 0.0 ? clip.analysis.wall_s / clip.decoding.wall_s : 0.0, 2),
          number(1e3 * clip.decoding.work_s / images, 2),
          number(1e3 * clip.analysis.work_s / images, 2),
          number(clip.peakMemory_MB, 0)};
}

}  // namespace

void ClipScore::add(const ClipScore& other) {
  images.add(other.images);
  shots.add(other.shots);
  analysis.wall_s += other.analysis.wall_s;
  analysis.work_s += other.analysis.work_s;
  decoding.wall_s += other.decoding.wall_s;
  decoding.work_s += other.decoding.work_s;
  imageCount += other.imageCount;
  peakMemory_MB = std::max(peakMemory_MB, other.peakMemory_MB);
}

void printSimulatedTables(const std::vector<SimulatedScore>& groups) {
  std::vector<Row> deliveries, floors, others;
  for (const SimulatedScore& group : groups) {
    deliveries.push_back(deliveryRow(group.name, group.shots));
    floors.push_back(floorRow(group));
    others.push_back(simulatedRow(group));
  }
  Row header = kDeliveryHeader;
  header.front() = "simulated";
  print("Delivery: rms errors of what was measured, and how many 95 % intervals hold the truth", header, deliveries);
  print(
      "What the film leaves at best: rms error, rms of the information's bound, and the middle error in bounds (0.67 "
      "for an estimate that reaches it)",
      {"simulated", "shots", "aim rms deg", "bound", "middle", "speed rms %", "bound", "middle", "side rms R", "bound",
       "middle", "height rms R", "bound", "middle"},
      floors);
  print("Events and cost; reading: processor time from the cut shot to its story, the fit included",
        {"simulated", "found", "invented", "events in order", "or open", "first three", "first contact", "pocketed",
         "strike rms ms", "reading ms", "95% ms", "max ms"},
        others);
}

void printTables(const std::vector<ClipScore>& clips) {
  std::vector<ClipScore> all = clips;
  ClipScore total;
  total.name = "all";
  for (const ClipScore& clip : clips)
    total.add(clip);
  all.push_back(total);
  std::vector<Row> balls, shots, deliveries, costs;
  for (const ClipScore& clip : all) {
    balls.push_back(ballRow(clip));
    shots.push_back(shotRow(clip));
    deliveries.push_back(deliveryRow(clip.name, clip.shots));
    costs.push_back(costRow(clip));
  }
  print("Balls: position errors of found balls, slow (true speed < 0.2 m/s) and moving; 95 % intervals that hold",
        {"film", "ball-images", "slow rms mm", "95% mm", "max mm", "moving rms mm", "95% mm", "max mm", "wrong name",
         "%", "missed", "%", "false", "%", "slow in 95% %", "moving in 95% %"},
        balls);
  print(
      "Shots: right of found ('aside': safety read as miss or the reverse, marked as no certain verdict; 'or open': or "
      "told otherwise only where the stated times leave the order open)",
      {"film", "found", "invented", "first contact", "pocketed", "outcome", "aside", "events in order", "or open",
       "first three", "rest balls", "rest rms mm", "rest max mm", "strike rms ms"},
      shots);
  print("Delivery: rms errors of what was measured, and how many 95 % intervals hold the truth", kDeliveryHeader,
        deliveries);
  print("Cost of one run; analysis includes decoding; work: processor time of all threads",
        {"film", "images", "decode ms/image", "analysis ms/image", "ratio", "decode work ms/image",
         "analysis work ms/image", "peak MB"},
        costs);
}

}  // namespace ferrule::bench
