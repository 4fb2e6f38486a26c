// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <optional>
#include <vector>

namespace ferrule {

class ProjectorDesk;

/// What a place can show on the cloth: a button for each, of which one at most is down, and the caution about the beam
/// while there is light.
class ProjectorRow : public QWidget {
  Q_OBJECT
 public:
  struct Choice {
    const char* name;  ///< of its button
    QString text;
    QString help;
  };

  ProjectorRow(ProjectorDesk& projector, const std::vector<Choice>& choices, QWidget* parent = nullptr);

  /// Which one is down; nothing: none.
  [[nodiscard]] std::optional<int> chosen() const;
  /// The name under which a choice shows.
  [[nodiscard]] QString lightName(int choice) const;

 signals:
  /// A button went down, or up; then the projector was made dark.
  void chosenChanged();

 private:
  void refresh();

  ProjectorDesk& projector_;
  std::vector<QPushButton*> buttons_;
  QLabel* caution_;
};

}  // namespace ferrule
