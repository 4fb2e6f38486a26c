// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/window_host.h"

#include <QSettings>

#include "app/window/main_window.h"

namespace ferrule {

WindowHost::WindowHost(Openers openers, QObject* parent) : QObject(parent), openers_(std::move(openers)) {}

WindowHost::~WindowHost() = default;

void WindowHost::open(const QString& record) {
  speak();
  makeWindow(record);
}

void WindowHost::speak() {
  const QString chosen = QSettings().value(kLanguageSetting).toString();
  QLocale::setDefault(localeFor(chosen));
  // The old words go first: they would be asked before the new ones.
  language_.reset();
  language_ = std::make_unique<SpokenLanguage>(chosen.isEmpty() ? languageFor(QLocale::system()) : chosen);
}

void WindowHost::makeWindow(const QString& record) {
  window_ = std::make_unique<MainWindow>(openers_);
  // Queued: the window that is told from goes away.
  connect(
      window_.get(), &MainWindow::languageChosen, this,
      [this] {
        const bool goesOn = window_->isUnderWay();
        window_->close();
        window_.reset();
        speak();
        makeWindow({});
        if (goesOn) window_->goOn();
      },
      Qt::QueuedConnection);
  window_->start(record);
  window_->show();
}

}  // namespace ferrule
