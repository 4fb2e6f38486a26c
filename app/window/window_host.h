// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <memory>

#include "app/window/languages.h"
#include "app/window/places.h"

namespace ferrule {

class MainWindow;

/// Keeps the one window of the program. When another language is chosen the window is made anew in it, as it stood:
/// record, place, selection and sizes come back from the settings.
class WindowHost : public QObject {
  Q_OBJECT
 public:
  explicit WindowHost(Openers openers, QObject* parent = nullptr);
  ~WindowHost() override;

  /// Shows the window with this record, or with an empty path the one that was open last.
  void open(const QString& record);
  [[nodiscard]] MainWindow& window() { return *window_; }

 private:
  void makeWindow(const QString& record);
  void speak();

  Openers openers_;
  std::unique_ptr<SpokenLanguage> language_;
  std::unique_ptr<MainWindow> window_;
};

}  // namespace ferrule
