// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/error_measure.h"

#include <algorithm>
#include <functional>

#include "core/progress/shot_errors.h"

namespace ferrule {

namespace {

/// Two lists in the order of sessions as one.
std::vector<Observation> merged(std::vector<Observation> some, const std::vector<Observation>& others) {
  some.insert(some.end(), others.begin(), others.end());
  std::ranges::stable_sort(some, {}, &Observation::session);
  return some;
}

ErrorMeasure measureOf(const std::vector<Observation>& meant, const std::function<std::vector<Observation>()>& repeats,
                       const Resampling& resampling) {
  if (meant.size() >= static_cast<std::size_t>(kFewestForSpread)) return errorMeasure(meant, resampling);
  const std::vector<Observation> own = repeats();
  if (own.empty()) {
    ErrorMeasure none;
    none.bias = shortOf(ShortageKind::NoPlan);
    none.spread = shortOf(ShortageKind::NoRepeats);
    return none;
  }
  ErrorMeasure measure = errorMeasure(own, resampling);
  measure.bias = shortOf(ShortageKind::NoPlan);
  measure.fromRepeats = true;
  return measure;
}

}  // namespace

ErrorMeasure errorMeasure(std::span<const Observation> errors, const Resampling& resampling) {
  ErrorMeasure measure;
  const std::vector<SessionSum> sums = bySession(errors);
  measure.bias = meanOf(sums, resampling);
  measure.spread = spreadOf(sums, resampling);
  for (const SessionSum& sum : sums) {
    const int count = static_cast<int>(sum.count);
    if (count < kFewestInSession) continue;
    const double spread = sum.spread();
    measure.series.push_back({sum.session, {spread, spreadInterval(spread, count), count, 1, false}});
  }
  return measure;
}

AimMeasure aimMeasure(const PlayerHistory& history, const Resampling& resampling) {
  const auto thinOf = [&](CutSide side) {
    return observed(history, [side](const PlayedShot& shot, const PlayedTable& table) {
      return shot.cutSide == side ? thinError_rad(shot, table) : std::nullopt;
    });
  };
  return {errorMeasure(observed(history, aimError_rad), resampling), errorMeasure(thinOf(CutSide::Left), resampling),
          errorMeasure(thinOf(CutSide::Right), resampling)};
}

StrikeMeasures strikeMeasures(const PlayerHistory& history, const Resampling& resampling) {
  const auto setUps = setUpsOf(history);
  const auto repeats = [&](RepeatedValue value) { return [&, value] { return repeated(history, setUps, value); }; };
  const auto meant = [&](std::optional<double> (*error)(const PlayedShot&)) {
    return observed(history, [error](const PlayedShot& shot, const PlayedTable&) { return error(shot); });
  };
  const auto missed = [&](double TableVector::*part) {
    return observed(history, [part](const PlayedShot& shot, const PlayedTable&) -> std::optional<double> {
      const auto error = positionError_m(shot);
      return error ? std::optional((*error).*part) : std::nullopt;
    });
  };
  StrikeMeasures all;
  all.speed = measureOf(meant(speedError), repeats(RepeatedValue::Speed), resampling);
  all.side = measureOf(meant(sideError), repeats(RepeatedValue::Side), resampling);
  all.height = measureOf(meant(heightError), repeats(RepeatedValue::Height), resampling);
  all.position = measureOf(
      merged(missed(&TableVector::x), missed(&TableVector::y)),
      [&] {
        return merged(repeated(history, setUps, RepeatedValue::RestAlong),
                      repeated(history, setUps, RepeatedValue::RestAcross));
      },
      resampling);
  // Two numbers of one rest are not two shots.
  for (Answer<Estimate>* answer : {&all.position.bias, &all.position.spread}) {
    if (*answer) (*answer)->shots /= 2;
  }
  for (SessionEstimate& session : all.position.series)
    session.estimate.shots /= 2;
  // A mean of along and across means nothing.
  all.position.bias = shortOf(ShortageKind::NoPlan);
  return all;
}

}  // namespace ferrule
