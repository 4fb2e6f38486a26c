// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/compare_view.h"

#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/picture/plan_view.h"
#include "app/review/shot_comparison.h"
#include "app/setup/figure_table.h"
#include "app/window/inks.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

constexpr int kRows = 9;
constexpr int kRow_px = 22;

void showIn(PlanView& plan, QLabel& words, const std::shared_ptr<const StoredShot>& shot) {
  plan.setShot(shot);
  if (!shot) return;
  plan.setTime(shot->reading.rest_s);
  const QString player = QString::fromStdString(shot->playerName);
  const QString heading = shotHeading(shot->reading);
  words.setText(player.isEmpty() ? heading : QStringLiteral("%1 \u00b7 %2").arg(heading, player));
}

}  // namespace

CompareView::CompareView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("compareView"));
  const auto plan = [](const char* name, const QString& what) {
    auto* made = new PlanView;
    made->setObjectName(QString::fromLatin1(name));
    made->setAccessibleName(what);
    return made;
  };
  heldPlan_ = plan("heldPlan", tr("Plan of the shot that is held"));
  otherPlan_ = plan("otherPlan", tr("Plan of the shot that is compared with it"));
  const auto heading = [this](const char* name) {
    auto* made = new QLabel;
    made->setObjectName(QString::fromLatin1(name));
    made->setTextFormat(Qt::PlainText);
    made->setWordWrap(true);
    made->setFont(scaled(font(), 1.0, true));
    return made;
  };
  heldWords_ = heading("heldWords");
  otherWords_ = heading("otherWords");
  values_ = figureTable("comparedValues", {tr("Value"), tr("Held"), tr("Other"), tr("Difference")});
  values_->setAccessibleName(tr("What differs between the two shots"));
  values_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  values_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
  values_->verticalHeader()->setDefaultSectionSize(kRow_px);
  values_->setRowCount(kRows);
  // Every value at a glance, as long as the window is not lower than a small screen.
  values_->setMinimumHeight(kRows * kRow_px);

  auto* pictures = new QHBoxLayout;
  pictures->setSpacing(8);
  for (const auto& [words, picture] : {std::pair{heldWords_, heldPlan_}, std::pair{otherWords_, otherPlan_}}) {
    auto* side = new QVBoxLayout;
    side->setSpacing(4);
    side->addWidget(words);
    side->addWidget(picture, 1);
    pictures->addLayout(side, 1);
  }
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 8, 12, 8);
  column->setSpacing(8);
  column->addLayout(pictures, 1);
  column->addWidget(values_);
}

void CompareView::hold(std::shared_ptr<const StoredShot> shot, const MeasuredTable& table) {
  held_ = std::move(shot);
  other_.reset();
  heldPlan_->setTable(table);
  showIn(*heldPlan_, *heldWords_, held_);
  setOther(nullptr, table);
}

void CompareView::setOther(std::shared_ptr<const StoredShot> shot, const MeasuredTable& table) {
  const bool itself = shot && held_ && shot->id == held_->id;
  other_ = itself ? nullptr : std::move(shot);
  otherPlan_->setTable(table);
  otherWords_->setText(tr("Choose the shot that is to be compared."));
  showIn(*otherPlan_, *otherWords_, other_);
  showValues();
}

void CompareView::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  showValues();
}

void CompareView::showValues() {
  if (!held_) return;
  const std::vector<ComparedValue> lines = comparedValues(*held_, other_ ? *other_ : *held_, numbers_);
  values_->setRowCount(static_cast<int>(lines.size()));
  for (int row = 0; row < values_->rowCount(); ++row) {
    const ComparedValue& line = lines[static_cast<std::size_t>(row)];
    setFigure(values_, row, 0, line.name);
    setFigure(values_, row, 1, line.first, true);
    setFigure(values_, row, 2, other_ ? line.second : QString(), true);
    setFigure(values_, row, 3, other_ ? line.difference : QString(), true);
  }
}

}  // namespace ferrule
