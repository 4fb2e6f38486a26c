// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QtTest>
#include <cmath>

#include "core/physics/motion.h"

namespace ferrule::testing {

/// The published checks' default inputs: R = 28.575 mm, m = 0.170 kg, g = 9.81, sliding 0.2, rolling 0.01.
inline PhysicsParameters referenceParameters() {
  PhysicsParameters p;
  p.slidingFriction = 0.2;
  p.rollingFriction = 0.01;
  return p;
}

/// A ball at the origin of the cloth. spinSpeed_mps: R ω.
inline BallState moving(Vector3 velocity, Vector3 spinSpeed_mps, const PhysicsParameters& p) {
  return {kCueBall, {0.0, 0.0, p.ballRadius_m}, velocity, spinSpeed_mps / p.ballRadius_m};
}

}  // namespace ferrule::testing

/// Fails with both values. tolerance: absolute; a printed value of n digits allows half a unit of its last digit.
#define COMPARE_WITHIN(actual, expected, tolerance)                                                               \
  QVERIFY2(std::abs((actual) - (expected)) <= (tolerance), qPrintable(QStringLiteral("%1: %2, expected %3 +- %4") \
                                                                          .arg(QStringLiteral(#actual))           \
                                                                          .arg(double(actual), 0, 'g', 12)        \
                                                                          .arg(double(expected), 0, 'g', 12)      \
                                                                          .arg(double(tolerance))))
