// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/chain_row.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QImage>
#include <QLabel>

#include "app/setup/chain_pictures.h"
#include "app/setup/setup_words.h"
#include "app/window/card.h"
#include "app/window/inks.h"

namespace ferrule {

namespace {

constexpr QSize kPicture{168, 95};

}  // namespace

ChainRow::ChainRow(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("chainRow"));
  row_ = new QHBoxLayout(this);
  row_->setContentsMargins(0, 0, 0, 0);
  row_->setSpacing(8);
}

void ChainRow::clear() {
  while (QLayoutItem* item = row_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  boxes_ = 0;
}

void ChainRow::addBox(const QString& title, const QString& source, const QString& date, const QString& purpose,
                      const QImage& picture) {
  if (boxes_ > 0) {
    auto* arrow = new QLabel(QStringLiteral("→"));
    arrow->setFont(scaled(font(), 1.3));
    arrow->setAccessibleName(tr("then"));
    row_->addWidget(arrow);
  }
  auto* box = new Card;
  box->setObjectName(QStringLiteral("chainBox%1").arg(boxes_));
  box->setFocusPolicy(Qt::TabFocus);
  box->setAccessibleName(QStringLiteral("%1: %2 %3").arg(title, source, date));
  box->setToolTip(purpose.isEmpty() ? source : QStringLiteral("%1\n%2").arg(purpose, source));
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(8, 8, 8, 8);
  column->setSpacing(4);
  if (!picture.isNull()) {
    auto* shown = new QLabel;
    QPixmap pixels = QPixmap::fromImage(picture.scaled(kPicture * 2, Qt::KeepAspectRatio, Qt::SmoothTransformation));
    pixels.setDevicePixelRatio(2.0);
    shown->setPixmap(pixels);
    column->addWidget(shown);
  }
  auto* head = new QLabel(title);
  head->setFont(scaled(font(), 1.0, true));
  column->addWidget(head);
  for (const QString& words : {QFileInfo(source).fileName(), date}) {
    if (words.isEmpty()) continue;
    auto* line = new QuietLabel(words);
    line->setMaximumWidth(kPicture.width());
    line->setFont(scaled(font(), 0.9));
    column->addWidget(line);
  }
  column->addStretch(1);
  row_->addWidget(box);
  ++boxes_;
}

void ChainRow::setRig(const Rig& rig, const MeasuredTable& measured, const QImage& picture, const QString& film) {
  clear();
  const bool fits = !picture.isNull() && picture.width() == rig.lens.size.width;
  const QImage raw = fits ? picture.scaled(kPicture * 2, Qt::KeepAspectRatio, Qt::SmoothTransformation) : QImage();
  addBox(tr("Sensor"), film, tr("%1 × %2 px").arg(rig.lens.size.width).arg(rig.lens.size.height), {}, raw);
  for (const Correction& correction : rig.chain.corrections()) {
    QImage after = raw;
    if (fits && correction.kind == CorrectionKind::Lens) after = straightenedPicture(rig, picture, raw.size());
    if (fits && correction.kind == CorrectionKind::Pose) after = tablePicture(rig, measured, picture, raw.size());
    addBox(correctionWords(correction.kind), QString::fromStdString(correction.source),
           QString::fromStdString(correction.date), QString::fromStdString(correction.purpose), after);
  }
  row_->addStretch(1);
}

}  // namespace ferrule
