// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/ink_icon.h"

#include <QFile>
#include <QGuiApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPalette>
#include <QPixmap>
#include <QSvgRenderer>

#include "app/window/inks.h"

static void loadIcons() {
  Q_INIT_RESOURCE(icons);
}

namespace ferrule {

namespace {

class InkIconEngine : public QIconEngine {
 public:
  explicit InkIconEngine(QString name) : name_(std::move(name)) {
    QFile file(QStringLiteral(":/icons/%1.svg").arg(name_));
    if (file.open(QIODevice::ReadOnly)) svg_ = file.readAll();
  }

  void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) override {
    QByteArray inked = svg_;
    inked.replace("#000000", colour(mode, state).name().toLatin1());
    QSvgRenderer(inked).render(painter, rect);
  }

  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap picture(size);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    paint(&painter, QRect(QPoint(), size), mode, state);
    return picture;
  }

  QIconEngine* clone() const override { return new InkIconEngine(*this); }
  QString key() const override { return QStringLiteral("ink"); }
  bool isNull() override { return svg_.isEmpty(); }

 private:
  static QColor colour(QIcon::Mode mode, QIcon::State state) {
    const QPalette palette = QGuiApplication::palette();
    if (mode == QIcon::Disabled) return palette.color(QPalette::Disabled, QPalette::WindowText);
    const Inks inks = inksFor(palette);
    return state == QIcon::On ? inks.accent : inks.text;
  }

  QString name_;
  QByteArray svg_;
};

}  // namespace

QIcon inkIcon(const QString& name) {
  loadIcons();
  return QIcon(new InkIconEngine(name));
}

}  // namespace ferrule
