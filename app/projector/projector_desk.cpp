// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/projector/projector_desk.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QScreen>
#include <QSettings>

#include "app/console/position_call.h"
#include "app/projector/light_image.h"
#include "app/setup/rig_in_use.h"
#include "app/words/error_sentence.h"

namespace ferrule {

namespace {

/// So long nobody must have leaned over the table before light returns: it cannot become a flicker.
constexpr int kClear_ms = 2000;

const QString& screenSetting() {
  static const QString key = QStringLiteral("projector/screen");
  return key;
}

/// Two screens of one make may have one name; they do not have one place.
QString keyOf(const QScreen* screen) {
  const QRect at = screen->geometry();
  return QStringLiteral("%1 %2 %3 %4 %5").arg(screen->name()).arg(at.x()).arg(at.y()).arg(at.width()).arg(at.height());
}

bool isOfSize(const QScreen* screen, ImageSize size) {
  return ProjectorScreen::pixelsOf(screen) == QSize(size.width, size.height);
}

/// The chosen screen, or the one beside the window's that has the projector's pixels.
QScreen* screenFor(const Projector& projector) {
  QScreen* chosen = ProjectorDesk::chosenScreen();
  if (chosen != nullptr && isOfSize(chosen, projector.size)) return chosen;
  for (QScreen* screen : QGuiApplication::screens()) {
    if (screen != QGuiApplication::primaryScreen() && isOfSize(screen, projector.size)) return screen;
  }
  return nullptr;
}

}  // namespace

ProjectorDesk::ProjectorDesk(QObject* parent) : QObject(parent) {
  clear_.setSingleShot(true);
  clear_.setInterval(kClear_ms);
  connect(&clear_, &QTimer::timeout, this, [this] {
    heldBack_ = false;
    light();
    emit changed();
  });
}

ProjectorDesk::~ProjectorDesk() {
  delete screen_;
}

std::optional<Projector> ProjectorDesk::projectorInUse() {
  const auto used = rigInUse();
  if (!used) return std::nullopt;
  const QString path = QFileInfo(used->rig).dir().filePath(QStringLiteral("projector.json"));
  const auto projector = readProjectorFile(path.toStdString());
  return projector ? std::optional(*projector) : std::nullopt;
}

std::optional<MeasuredTable> ProjectorDesk::tableInUse() {
  const auto used = rigInUse();
  if (!used) return std::nullopt;
  const auto measured = readMeasuredTable(used->table.toStdString());
  return measured ? std::optional(*measured) : std::nullopt;
}

void ProjectorDesk::chooseScreen(const QScreen* screen) {
  if (screen != nullptr) QSettings().setValue(screenSetting(), keyOf(screen));
}

QScreen* ProjectorDesk::chosenScreen() {
  const QString key = QSettings().value(screenSetting()).toString();
  for (QScreen* screen : QGuiApplication::screens()) {
    if (keyOf(screen) == key) return screen;
  }
  return nullptr;
}

bool ProjectorDesk::isOpen() const {
  return screen_ && screen_->isVisible();
}

ProjectorScreen* ProjectorDesk::open(QScreen* screen) {
  if (!screen_) {
    screen_ = new ProjectorScreen;
    connect(screen_, &ProjectorScreen::closed, this, [this] {
      shown_.clear();
      picture_ = {};
      emit changed();
    });
    connect(screen_, &ProjectorScreen::darkWanted, this, &ProjectorDesk::dark);
  }
  screen_->showOn(screen);
  return screen_;
}

void ProjectorDesk::show(const QString& what, const LightDrawing& drawing) {
  const auto projector = projectorInUse();
  if (!projector) {
    emit said(
        tr("The set-up in use has no projector; find where its light falls in Set-up, step Projector, and save "
           "the set-up."));
    return;
  }
  show(what, drawing, *projector);
}

void ProjectorDesk::show(const QString& what, const LightDrawing& drawing, const Projector& projector) {
  QScreen* screen = screenFor(projector);
  if (screen == nullptr) {
    emit said(tr("No screen beside the window's own has the %1 × %2 px that the projector was found with; connect it, "
                 "or choose its screen in Set-up, step Projector, and find it anew.")
                  .arg(projector.size.width)
                  .arg(projector.size.height));
    return;
  }
  emit said({});
  open(screen);
  job_.start<QImage>([projector, drawing](const JobControl&) { return lightImage(projector, drawing); },
                     [this, what](const QImage& picture) {
                       if (!isOpen()) return;
                       shown_ = what;
                       picture_ = picture;
                       light();
                       emit changed();
                     });
}

void ProjectorDesk::showPosition(const QString& path, const Projector& projector) {
  const auto file = readPositionFile(path.toStdString());
  if (!file) {
    emit said(errorSentence(file.error()));
    return;
  }
  const auto drawing = lightOf(*file);
  if (!drawing) {
    emit said(errorSentence(aboutPosition(path.toStdString(), drawing.error()).value()));
    return;
  }
  show(QFileInfo(path).fileName(), *drawing, projector);
}

void ProjectorDesk::showPicture(const QString& what, const QImage& picture) {
  QScreen* screen = chosenScreen();
  open(screen != nullptr ? screen : QGuiApplication::primaryScreen());
  shown_ = what;
  picture_ = picture;
  light();
  emit changed();
}

void ProjectorDesk::light() {
  if (!screen_) return;
  if (heldBack_) {
    screen_->darkenNow();
  } else {
    screen_->setPicture(picture_);
  }
}

void ProjectorDesk::dark() {
  shown_.clear();
  picture_ = {};
  light();
  emit changed();
}

void ProjectorDesk::close() {
  if (screen_) screen_->close();
}

void ProjectorDesk::setSomebodyLeans(bool leans) {
  if (!leans) {
    if (heldBack_) clear_.start();
    return;
  }
  clear_.stop();
  if (heldBack_) return;
  heldBack_ = true;
  light();
  emit changed();
}

QString beamCaution() {
  return ProjectorDesk::tr("Never look into the beam; B makes it black, Escape closes it.");
}

}  // namespace ferrule
