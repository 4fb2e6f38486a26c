// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QSignalSpy>
#include <QTest>
#include <atomic>

#include "app/session/session_place.h"
#include "tests/app/fresh_settings.h"
#include "tests/support/patience.h"

namespace ferrule {

inline const QString kClipFolder = QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/clip/");

/// The Session place alone on a screen of its own, with fresh settings and an empty record.
class SessionScreen {
 public:
  SessionScreen() : actions_(&window_) {
    place_ = std::make_unique<SessionPlace>(actions_, [this] { return now_ += 5000; });
    QObject::connect(&actions_, &ActionSet::triggered, place_.get(), [this](ActionId id) { place_->act(id); });
    place_->resize(1200, 700);
    QSignalSpy changed(&place_->desk(), &HandDesk::changed);
    place_->openRecord(record());
    place_->show();
    if (!changed.wait(kPatience_ms)) qFatal("the record was not opened");
  }

  [[nodiscard]] SessionPlace& place() { return *place_; }
  [[nodiscard]] ActionSet& actions() { return actions_; }
  [[nodiscard]] QString record() const { return settings_.filePath("sessions.sqlite"); }
  [[nodiscard]] QString file(const QString& name) const { return settings_.filePath(name); }
  template <class T>
  [[nodiscard]] T* find(const char* name) const {
    // Pages that are not shown may have fields of the same name.
    const QList<T*> all = place_->findChildren<T*>(QString::fromLatin1(name));
    for (T* one : all) {
      if (one->isVisible()) return one;
    }
    return all.isEmpty() ? nullptr : all.front();
  }
  [[nodiscard]] QString words(const char* name) const { return find<QLabel>(name)->text(); }
  [[nodiscard]] bool isVisible(const char* name) const { return find<QWidget>(name)->isVisible(); }

 private:
  FreshSettings settings_;
  QWidget window_;
  ActionSet actions_;  ///< the window's
  std::unique_ptr<SessionPlace> place_;
  std::atomic<UtcMilliseconds> now_ = 1'772'389'800'000;  ///< asked on the measuring thread too
};

}  // namespace ferrule
