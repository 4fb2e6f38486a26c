// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/setup/setup_page.h"

class QComboBox;
class QLineEdit;

namespace ferrule {

class FirstPicture;

/// The camera's name and a film or still of the table, with what must be heeded before a camera hangs over people.
class CameraPage : public SetupPage {
  Q_OBJECT
 public:
  explicit CameraPage(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh() override;

 private:
  QLineEdit* camera_;
  QLabel* film_;
  QLabel* size_;
  FirstPicture* picture_;
};

/// A picture as large as its space allows, in its own proportions.
class FirstPicture : public QWidget {
  Q_OBJECT
 public:
  explicit FirstPicture(QWidget* parent = nullptr);
  void setPicture(const QImage& picture);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QImage picture_;
};

/// Asks for a film or a still of the table; empty when nothing was chosen.
[[nodiscard]] QString askForFilm(QWidget* over, const QString& before);

}  // namespace ferrule
