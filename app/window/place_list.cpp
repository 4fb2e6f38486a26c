// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/place_list.h"

#include <QCoreApplication>
#include <QEvent>
#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/window/ink_icon.h"
#include "app/window/places.h"

namespace ferrule {

namespace {

constexpr int kLeastWide_px = 84;
constexpr int kBesideWords_px = 12;
constexpr int kNarrow_px = 48;
constexpr int kIcon_px = 24;
constexpr double kBar_px = 3.0;

/// What the words of a place are written in.
QFont wordsFont(const QFont& font, bool isShown) {
  return scaled(font, 0.92, isShown);
}

/// An icon over its word, without a box: the place that is shown is told by the accent and a bar at its left.
class PlaceButton : public QToolButton {
 public:
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }
  /// With room for the words as they are when the place is shown.
  [[nodiscard]] QSize sizeHint() const override {
    const QFontMetrics words(wordsFont(font(), true));
    const bool withWords = toolButtonStyle() == Qt::ToolButtonTextUnderIcon;
    return {withWords ? words.horizontalAdvance(text()) + kBesideWords_px : kNarrow_px - 8,
            withWords ? 8 + kIcon_px + 4 + words.height() + 5 : kIcon_px + 16};
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Inks inks = inksFor(palette());
    if (underMouse() || hasFocus()) {
      painter.setPen(hasFocus() ? QPen(inks.accent, 1.0) : QPen(Qt::NoPen));
      painter.setBrush(inks.line);
      painter.drawRoundedRect(rect().toRectF().adjusted(2.5, 1.5, -2.5, -1.5), 6.0, 6.0);
    }
    const bool withWords = toolButtonStyle() == Qt::ToolButtonTextUnderIcon;
    const QRect iconBox((width() - kIcon_px) / 2, withWords ? 8 : (height() - kIcon_px) / 2, kIcon_px, kIcon_px);
    icon().paint(&painter, iconBox, Qt::AlignCenter, QIcon::Normal, isChecked() ? QIcon::On : QIcon::Off);
    if (!withWords) return;
    painter.setFont(wordsFont(font(), isChecked()));
    painter.setPen(isChecked() ? inks.accent : inks.text);
    painter.drawText(rect().adjusted(0, 0, 0, -5), Qt::AlignHCenter | Qt::AlignBottom, text());
  }
};

}  // namespace

PlaceList::PlaceList(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("placeList"));
  setAccessibleName(tr("Places"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 12, 4, 8);
  column->setSpacing(4);
  group_.setExclusive(true);
  const auto rows = placeRows();
  for (std::size_t i = 0; i < rows.size(); ++i) {
    auto* button = new PlaceButton;
    button->setObjectName(QStringLiteral("place-%1").arg(QLatin1String(rows[i].name)));
    button->setText(QCoreApplication::translate("Places", rows[i].text));
    button->setAccessibleDescription(QCoreApplication::translate("Places", rows[i].help));
    button->setToolTip(QCoreApplication::translate("Places", rows[i].help));
    button->setIcon(inkIcon(QString::fromLatin1(rows[i].icon)));
    button->setIconSize({kIcon_px, kIcon_px});
    button->setShortcut(QKeySequence(QString::fromLatin1(rows[i].keys), QKeySequence::PortableText));
    button->setCheckable(true);
    button->setAutoRaise(true);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    group_.addButton(button, static_cast<int>(i));
    column->addWidget(button);
  }
  column->addStretch(1);
  fold_ = new QToolButton;
  fold_->setObjectName(QStringLiteral("foldPlaces"));
  fold_->setAutoRaise(true);
  fold_->setIconSize({18, 18});
  fold_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  column->addWidget(fold_);
  connect(fold_, &QToolButton::clicked, this, [this] { setNarrow(!narrow_); });
  connect(&group_, &QButtonGroup::idClicked, this, &PlaceList::chosen);
  // The bar beside the place that is shown is drawn here.
  connect(&group_, &QButtonGroup::idToggled, this, [this] { update(); });
  restyle();
}

void PlaceList::setNarrow(bool narrow) {
  if (narrow_ == narrow) return;
  narrow_ = narrow;
  restyle();
  emit narrowChanged(narrow_);
}

void PlaceList::setCurrent(int row) {
  if (auto* button = group_.button(row)) button->setChecked(true);
  update();
}

void PlaceList::restyle() {
  int widest = 0;
  for (QAbstractButton* button : group_.buttons()) {
    static_cast<QToolButton*>(button)->setToolButtonStyle(narrow_ ? Qt::ToolButtonIconOnly
                                                                  : Qt::ToolButtonTextUnderIcon);
    widest = std::max(widest, button->sizeHint().width());
  }
  const QMargins around = layout()->contentsMargins();
  setFixedWidth(narrow_ ? kNarrow_px : std::max(kLeastWide_px, widest + around.left() + around.right()));
  fold_->setIcon(inkIcon(narrow_ ? QStringLiteral("wide") : QStringLiteral("narrow")));
  fold_->setText(narrow_ ? tr("Show words") : tr("Show icons only"));
  fold_->setToolTip(fold_->text());
}

void PlaceList::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) restyle();
}

void PlaceList::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const Inks inks = inksFor(palette());
  painter.fillRect(rect(), inks.page);
  painter.setPen(inks.line);
  painter.drawLine(width() - 1, 0, width() - 1, height());
  if (const auto* button = group_.checkedButton()) {
    painter.fillRect(QRectF(0.0, button->y() + 4.0, kBar_px, button->height() - 8.0), inks.accent);
  }
}

}  // namespace ferrule
