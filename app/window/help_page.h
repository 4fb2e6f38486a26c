// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>
#include <span>

namespace ferrule {

struct PlaceRow;

/// How one place is used: what it is for, the steps in their order, what goes wrong most often.
class HelpPage : public QDialog {
  Q_OBJECT
 public:
  explicit HelpPage(const PlaceRow& place, QWidget* parent = nullptr);
};

/// The steps of a place, by the name of its row; to be translated in the context "PlaceHelp". Empty for a name that is
/// no place.
[[nodiscard]] std::span<const char* const> helpSteps(const char* place);

}  // namespace ferrule
