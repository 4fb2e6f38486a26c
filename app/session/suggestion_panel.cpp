// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/suggestion_panel.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QSignalBlocker>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/session/session_words.h"
#include "app/window/tool_button.h"
#include "app/words/plan_sentence.h"

namespace ferrule {

namespace {

constexpr int kOwn = -1;  ///< data of the row that asks the record
constexpr int kRow_px = 28;
constexpr int kMostRows = 5;
constexpr int kSettle_ms = 250;
/// Of a strike that a person may try; the miscue limit is the planner's to judge.
constexpr double kMostSpeed_mps = 12.0;
constexpr double kMostTip = 0.5;

}  // namespace

SuggestionPanel::SuggestionPanel(QAction* ask, QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("suggestionPanel"));
  level_ = new QComboBox;
  level_->setObjectName(QStringLiteral("suggestionLevel"));
  level_->setAccessibleName(tr("For whom a shot is suggested"));
  level_->addItem(QString(), kOwn);
  level_->addItem(tr("for a beginner"), static_cast<int>(PlayerLevel::Beginner));
  level_->addItem(tr("for a club player"), static_cast<int>(PlayerLevel::Club));
  level_->addItem(tr("for an expert"), static_cast<int>(PlayerLevel::Expert));
  level_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  connect(level_, &QComboBox::activated, this, &SuggestionPanel::levelChosen);
  auto* asking = new QHBoxLayout;
  asking->setSpacing(4);
  QToolButton* button = toolButton(ask);
  button->setToolButtonStyle(Qt::ToolButtonTextOnly);
  asking->addWidget(button);
  asking->addWidget(level_, 1);

  plans_ = new QListWidget;
  plans_->setObjectName(QStringLiteral("suggestedPlans"));
  plans_->setAccessibleName(tr("Suggested shots, best first"));
  plans_->setFrameShape(QFrame::NoFrame);
  plans_->setUniformItemSizes(true);
  plans_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  connect(plans_, &QListWidget::currentRowChanged, this, [this](int row) {
    if (row >= 0) emit planChosen(static_cast<std::size_t>(row));
  });
  words_ = new QLabel;
  words_->setObjectName(QStringLiteral("suggestion"));
  words_->setWordWrap(true);
  words_->setTextFormat(Qt::PlainText);
  found_ = new QWidget;
  auto* inner = new QVBoxLayout(found_);
  inner->setContentsMargins(0, 0, 0, 0);
  inner->setSpacing(8);
  inner->addWidget(plans_);
  inner->addWidget(words_);
  inner->addWidget(makeWhatIf());

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  column->addLayout(asking);
  column->addWidget(found_);

  wish_.setSingleShot(true);
  wish_.setInterval(kSettle_ms);
  connect(&wish_, &QTimer::timeout, this, [this] {
    emit strikeWished({speed_->value() * mpsPerUnit_, side_->value(), height_->value()});
  });
  setShooter(QString());
}

QDoubleSpinBox* SuggestionPanel::makeSpin(const char* name, const QString& accessible) {
  auto* spin = new QDoubleSpinBox;
  spin->setObjectName(QString::fromLatin1(name));
  spin->setAccessibleName(accessible);
  spin->setToolTip(accessible);
  spin->setKeyboardTracking(false);
  connect(spin, &QDoubleSpinBox::valueChanged, this, [this] { wish_.start(); });
  return spin;
}

QWidget* SuggestionPanel::makeWhatIf() {
  speed_ = makeSpin("wishedSpeed", tr("What if the cue ball left at this speed"));
  speed_->setDecimals(1);
  speed_->setSingleStep(0.1);
  side_ = makeSpin("wishedSide", tr("What if the tip struck so far right of centre, in ball radii"));
  height_ = makeSpin("wishedHeight", tr("What if the tip struck so far above centre, in ball radii"));
  for (QDoubleSpinBox* tip : {side_, height_}) {
    tip->setRange(-kMostTip, kMostTip);
    tip->setDecimals(2);
    tip->setSingleStep(0.05);
    tip->setSuffix(QStringLiteral(" R"));
  }
  auto* row = new QWidget;
  auto* grid = new QGridLayout(row);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(4);
  grid->setVerticalSpacing(2);
  const std::array<std::pair<QString, QDoubleSpinBox*>, 3> columns{
      {{tr("What if: speed"), speed_}, {tr("side"), side_}, {tr("height"), height_}}};
  for (int i = 0; i < 3; ++i) {
    auto* label = new QLabel(columns[static_cast<std::size_t>(i)].first);
    label->setBuddy(columns[static_cast<std::size_t>(i)].second);
    grid->addWidget(label, 0, i);
    grid->addWidget(columns[static_cast<std::size_t>(i)].second, 1, i);
    grid->setColumnStretch(i, 1);
  }
  return row;
}

std::optional<PlayerLevel> SuggestionPanel::level() const {
  const int chosen = level_->currentData().toInt();
  return chosen == kOwn ? std::nullopt : std::optional(static_cast<PlayerLevel>(chosen));
}

void SuggestionPanel::setShooter(const QString& shooter) {
  level_->setItemText(0, shooter.isEmpty() ? tr("for the player at the table") : tr("for %1", "a player").arg(shooter));
}

void SuggestionPanel::fillPlans(const SuggestionAnswer& answer, const PlayedPlan& shown, const Numbers& numbers) {
  const QSignalBlocker quiet(plans_);
  plans_->clear();
  for (const RankedPlan& plan : answer.suggestion.plans) {
    auto* item = new QListWidgetItem(planRowWords(plan, numbers), plans_);
    item->setSizeHint({0, kRow_px});
    item->setToolTip(planSentence(answer.suggestion, static_cast<std::size_t>(plan.rank - 1)));
  }
  plans_->setFixedHeight(kRow_px * std::min(kMostRows, plans_->count()));
  if (shown.ranked.rank > 0) plans_->setCurrentRow(shown.ranked.rank - 1);
}

void SuggestionPanel::fillWish(const PlayedPlan& shown, const Numbers& numbers) {
  mpsPerUnit_ = numbers.mpsPerUnit();
  const QSignalBlocker quietSpeed(speed_);
  const QSignalBlocker quietSide(side_);
  const QSignalBlocker quietHeight(height_);
  for (QDoubleSpinBox* spin : {speed_, side_, height_})
    spin->setLocale(numbers.locale());
  speed_->setSuffix(QStringLiteral(" ") + numbers.speedUnitName());
  speed_->setRange(0.1, kMostSpeed_mps / mpsPerUnit_);
  // A wish that is being turned is not turned back.
  if (wish_.isActive()) return;
  speed_->setValue(shown.ranked.plan.strike.speed_mps / mpsPerUnit_);
  side_->setValue(shown.ranked.plan.strike.side);
  height_->setValue(shown.ranked.plan.strike.height);
}

void SuggestionPanel::show(bool wanted, const SuggestionAnswer* answer, const PlayedPlan* shown, bool triedInVain,
                           const Numbers& numbers) {
  found_->setVisible(wanted);
  const bool found = answer != nullptr && shown != nullptr;
  plans_->setVisible(found);
  speed_->parentWidget()->setVisible(found);
  if (!found) {
    wish_.stop();
    words_->setText(tr("Looking for a shot…"));
    return;
  }
  fillPlans(*answer, *shown, numbers);
  if (!triedInVain) fillWish(*shown, numbers);
  words_->setText(triedInVain ? tr("With this speed and tip point no aim pots the ball.")
                              : shownPlanWords(*answer, *shown, numbers));
}

}  // namespace ferrule
