// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/ball_tray.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QToolButton>

#include "app/picture/ball_painter.h"
#include "app/window/card.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

constexpr int kBall_px = 26;

QIcon ballIcon(const BallSet& set, BallName ball, const Inks& inks, double ratio) {
  QPixmap picture((QSizeF(kBall_px, kBall_px) * ratio).toSize());
  picture.setDevicePixelRatio(ratio);
  picture.fill(Qt::transparent);
  QPainter painter(&picture);
  paintBall(painter, set, ball, {kBall_px / 2.0, kBall_px / 2.0}, kBall_px / 2.0 - 2.0, {}, inks);
  return picture;
}

}  // namespace

BallTray::BallTray(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("ballTray"));
  setAccessibleName(tr("Balls off the table"));
  row_ = new QHBoxLayout(this);
  row_->setContentsMargins(12, 4, 12, 4);
  row_->setSpacing(2);
  setMinimumHeight(kBall_px + 16);
}

void BallTray::setBalls(const BallSet& set, const std::vector<BallName>& off) {
  if (off == shown_ && row_->count() > 0) return;
  shown_ = off;
  while (QLayoutItem* item = row_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  auto* words = new QuietLabel(off.empty() ? tr("Every ball is on the table.") : tr("Off the table:"));
  row_->addWidget(words);
  row_->addSpacing(6);
  const Inks inks = inksFor(palette());
  for (const BallName ball : off) {
    auto* button = new QToolButton;
    button->setObjectName(QStringLiteral("bring-") + QString::fromStdString(toText(ball)));
    button->setIcon(ballIcon(set, ball, inks, devicePixelRatioF()));
    button->setIconSize({kBall_px, kBall_px});
    button->setAutoRaise(true);
    button->setToolTip(tr("Put %1 on the table").arg(ballWords(ball)));
    button->setAccessibleName(button->toolTip());
    connect(button, &QToolButton::clicked, this, [this, ball] { emit ballWanted(ball); });
    row_->addWidget(button);
  }
  row_->addStretch(1);
}

}  // namespace ferrule
