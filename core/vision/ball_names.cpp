// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_names.h"

#include "core/geometry/assignment.h"

namespace ferrule {

std::vector<std::optional<BallName>> nameBalls(std::span<const NameLikelihood> evidence) {
  Eigen::MatrixXd costs(static_cast<Eigen::Index>(evidence.size()), BallName::kCount);
  for (std::size_t ball = 0; ball < evidence.size(); ++ball) {
    for (int name = 0; name < BallName::kCount; ++name) {
      costs(static_cast<Eigen::Index>(ball), name) = -evidence[ball][static_cast<std::size_t>(name)];
    }
  }
  std::vector<std::optional<BallName>> names;
  for (const int name : assignCheapest(costs)) {
    names.push_back(name >= 0 ? std::optional(BallName(name)) : std::nullopt);
  }
  return names;
}

}  // namespace ferrule
