// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/base/progress.h"
#include "core/physics/simulator.h"
#include "core/table/track.h"

namespace ferrule {

/// One recorded shot as the fit reads it. Times are on the tracks' clock; samples outside the shot are left aside.
struct FingerprintShot {
  Position before;
  std::vector<Track> tracks;
  double strike_s = 0.0;
  double rest_s = 0.0;
  Delivery delivery;  ///< where the fit of the strike starts; what is absent starts from the cue ball's first samples
  /// What the film showed. A ball's samples are used while the simulation goes through the same contacts.
  std::vector<ShotEvent> events;
};

/// One coefficient of one table.
struct FittedCoefficient {
  std::string name;  ///< as in position files; "ball_friction_factor" multiplies the speed-dependent law
  double value = 0.0;
  double standardUncertainty = 0.0;
  double literature = 0.0;             ///< where the fit started
  double literatureUncertainty = 0.0;  ///< the spread the literature gives, used as what is known beforehand
  /// Whether the shots said more than the literature: the uncertainty is below half of the literature's.
  bool determined = false;

  bool operator==(const FittedCoefficient&) const = default;
};

/// What cloth, cushions and balls of one table were like on one day.
struct Fingerprint {
  std::string table;
  std::string date;  ///< ISO 8601
  std::vector<FittedCoefficient> coefficients;
  int shots = 0;           ///< that took part
  long samples = 0;        ///< of all their balls
  double rms_m = 0.0;      ///< distance between film and fit, of the samples that count fully
  bool converged = false;  ///< false: more rounds would still change the values

  bool operator==(const Fingerprint&) const = default;
};

/// Fits sliding_friction, rolling_friction, spin_decay_rad_s2, cushion_restitution, cushion_friction, ball_restitution
/// and ball_friction_factor to recorded shots, with every shot's own strike (aim, speed, side, height, instant) and the
/// places of its balls as unknown as they are.
///
/// Weighted least squares over the whole simulation (Levenberg and Marquardt), with the literature's values as prior
/// and Huber weights (Huber, Ann. Math. Stat. 35, 1964) against wrong samples. The shots are taken in contact by
/// contact, each with less weight than the one before, since small errors grow with every hit and no model of a cushion
/// is exact. Uncertainties: the larger of the inverse normal matrix times the misfit, and the scatter from shot to shot
/// (the sandwich of White, Econometrica 48, 1980, with a shot as the unit), since the errors of one shot hang together;
/// the scatter with each shot's own leverage taken off (MacKinnon and White, J. Econometrics 29, 1985; from memory) and
/// widened by Student's t for the number of shots, so that two standard uncertainties are a 95 % interval.
///
/// start: the literature's values, with the ball's size and the cushion model to use.
/// Errors: NotFound (no shot that can be simulated), those of Simulator::create, Cancelled.
[[nodiscard]] Result<Fingerprint> fitFingerprint(const Table& table, const PhysicsParameters& start,
                                                 std::span<const FingerprintShot> shots, const JobControl& job = {});

/// The parameters with the determined coefficients put in; what was not determined keeps the literature's value.
[[nodiscard]] PhysicsParameters applied(const Fingerprint& fingerprint, PhysicsParameters parameters);
/// The names that the shots could not determine.
[[nodiscard]] std::vector<std::string> undetermined(const Fingerprint& fingerprint);

/// The file form, "ferrule-fingerprint/1", and back. name: the file, for errors. Errors: FileMalformed.
[[nodiscard]] std::string fingerprintText(const Fingerprint& fingerprint);
[[nodiscard]] Result<Fingerprint> parseFingerprint(const std::string& json, const std::string& name);

}  // namespace ferrule
