// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QtTest>

#include "app/setup/setup_place.h"
#include "tests/app/fresh_settings.h"
#include "tests/support/patience.h"

namespace ferrule {

/// The Set-up place alone, of a person who never started the program: what its tests have in common.
class SetupScreen {
 protected:
  void begin() {
    folder_ = std::make_unique<FreshSettings>();
    openPlace();
  }
  void end() {
    place_.reset();
    window_.reset();
    folder_.reset();
  }
  /// Anew, with what was kept.
  void openPlace() {
    place_.reset();
    window_ = std::make_unique<QWidget>();
    actions_ = new ActionSet(window_.get());
    place_ = std::make_unique<SetupPlace>(*actions_, folder_->filePath("setup"));
    QObject::connect(actions_, &ActionSet::triggered, place_.get(), [this](ActionId id) { place_->act(id); });
    place_->resize(1280, 720);
    place_->show();
  }
  template <class T>
  T* find(const char* name) const {
    return place_->findChild<T*>(QString::fromLatin1(name));
  }
  [[nodiscard]] QString words(const char* name) const { return find<QLabel>(name)->text(); }
  [[nodiscard]] QString message() const { return words("setupMessage"); }
  SetupDesk& desk() { return place_->desk(); }
  void waitForWork() { QTRY_VERIFY(!desk().job().isRunning()); }
  /// Everything that the clip of the tests gives.
  void putInClip() {
    const QString clip = QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/clip/");
    desk().openTable(clip + "table.json");
    desk().useLensFile(clip + "lens.json");
    desk().look(clip + "stop-shot.mp4");
    waitForWork();
  }

  std::unique_ptr<FreshSettings> folder_;
  std::unique_ptr<QWidget> window_;
  ActionSet* actions_ = nullptr;
  std::unique_ptr<SetupPlace> place_;
};

}  // namespace ferrule
