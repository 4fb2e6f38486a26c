// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/ball_set.h"

namespace ferrule {

BallSet poolBalls() {
  constexpr BallColour kWhite{244, 241, 230};
  constexpr BallColour kYellow{242, 182, 24};
  constexpr BallColour kBlue{26, 58, 156};
  constexpr BallColour kRed{200, 29, 36};
  constexpr BallColour kPurple{84, 38, 120};
  constexpr BallColour kOrange{236, 106, 26};
  constexpr BallColour kGreen{16, 104, 60};
  constexpr BallColour kMaroon{116, 24, 34};
  constexpr BallColour kBlack{22, 22, 24};
  BallSet set;
  set.colours = {kWhite, kYellow, kBlue, kRed, kPurple, kOrange, kGreen, kMaroon,
                 kBlack, kYellow, kBlue, kRed, kPurple, kOrange, kGreen, kMaroon};
  return set;
}

}  // namespace ferrule
