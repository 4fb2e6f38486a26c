// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/run_panel.h"

#include <QAction>
#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QListWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <array>

#include "app/drills/drill_desk.h"
#include "app/window/inks.h"
#include "app/window/plain_parts.h"
#include "app/window/tool_button.h"
#include "app/window/wrapping_row.h"
#include "app/words/drill_words.h"
#include "app/words/joining.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

constexpr int kPadRow_px = 34;
constexpr int kLeastList_px = 120;

std::optional<bool> metOf(Qt::CheckState state) {
  if (state == Qt::PartiallyChecked) return std::nullopt;
  return state == Qt::Checked;
}

Qt::CheckState stateOf(const std::optional<bool>& met) {
  if (!met) return Qt::PartiallyChecked;
  return *met ? Qt::Checked : Qt::Unchecked;
}

}  // namespace

RunPanel::RunPanel(DrillDesk& desk, const ActionSet& actions, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName(QStringLiteral("runPanel"));
  turn_ = wordsLabel("tryTurn");
  turn_->setFont(scaled(font(), 1.3, true));
  asked_ = wordsLabel("tryAsked");
  auto* grid = new QGridLayout;
  grid->setSpacing(4);
  constexpr std::array kPad{ActionId::LogMade, ActionId::LogMissed, ActionId::LogThick, ActionId::LogThin,
                            ActionId::LogScratch};
  for (std::size_t i = 0; i < kPad.size(); ++i) {
    QToolButton* button = raisedButton(actions.at(kPad[i]));
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    button->setMinimumHeight(kPadRow_px);
    grid->addWidget(button, static_cast<int>(i / 2), static_cast<int>(i % 2));
  }
  auto* edits = new WrappingRow;
  edits->setSpacing(4);
  for (const ActionId id : {ActionId::Undo, ActionId::Redo, ActionId::EndSession}) {
    QToolButton* button = toolButton(actions.at(id));
    if (id == ActionId::EndSession) button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    edits->addWidget(button);
  }
  goals_ = new QVBoxLayout;
  goals_->setSpacing(4);
  score_ = wordsLabel("runScore");
  tries_ = new QListWidget;
  tries_->setObjectName(QStringLiteral("runTries"));
  tries_->setAccessibleName(tr("Tries of this run"));
  tries_->setFrameShape(QFrame::NoFrame);
  tries_->setWordWrap(true);
  tries_->setMinimumHeight(kLeastList_px);
  tries_->setFocusPolicy(Qt::TabFocus);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 12, 16, 12);
  column->setSpacing(12);
  column->addWidget(turn_);
  column->addWidget(asked_);
  column->addLayout(grid);
  column->addLayout(goals_);
  column->addLayout(edits);
  column->addWidget(score_);
  column->addWidget(tries_, 1);
}

void RunPanel::showGoals(const Numbers& numbers) {
  const std::vector<DrillGoal>& goals = desk_.played().stations[desk_.station()].goals;
  while (boxes_.size() + 1 > goals.size() && !boxes_.empty()) {
    boxes_.back()->deleteLater();
    boxes_.pop_back();
  }
  while (boxes_.size() + 1 < goals.size()) {
    auto* box = new QCheckBox;
    const std::size_t goal = boxes_.size() + 1;
    box->setObjectName(QStringLiteral("goal%1").arg(goal));
    box->setTristate(true);
    box->setToolTip(tr("Met, missed, or not said; a place put in for the cue ball decides what it can"));
    connect(box, &QCheckBox::clicked, this, [this, box, goal] { desk_.say(goal, metOf(box->checkState())); });
    goals_->addWidget(box);
    boxes_.push_back(box);
  }
  for (std::size_t i = 0; i < boxes_.size(); ++i) {
    boxes_[i]->setText(atStart(goalWords(goals[i + 1], numbers)));
    boxes_[i]->setCheckState(stateOf(desk_.said()[i]));
  }
}

void RunPanel::refresh(const Numbers& numbers) {
  const KeptRun* run = desk_.run();
  if (run == nullptr) return;
  const Drill played = desk_.played();
  const std::size_t stations = played.stations.size();
  const QString turn =
      tr("Try %1 of %2")
          .arg(numbers.whole(static_cast<long long>(run->trials.size()) + 1), numbers.whole(trialsOf(played)));
  turn_->setText(stations > 1
                     ? listOf({turn, tr("set-up %1").arg(numbers.whole(static_cast<long long>(desk_.station()) + 1))})
                     : turn);
  const DrillStation& station = played.stations[desk_.station()];
  const QString words = stationWords(station, desk_.table(), numbers);
  const QString goal = atStart(goalWords(station.goals.front(), numbers));
  asked_->setText(words.isEmpty() ? goal : toldOf(goal, words));
  showGoals(numbers);

  const DrillScore score = scoreOf(played, run->trials);
  QStringList lines{tr("Met in full: %1").arg(shareWords(score.all, numbers))};
  if (score.goals.size() > 1) {
    for (std::size_t i = 0; i < score.goals.size(); ++i)
      lines << toldOf(atStart(goalWords(station.goals[i], numbers)), shareWords(score.goals[i].share, numbers));
  }
  if (score.thick + score.thin > 0)
    lines << tr("Missed thick %1, thin %2").arg(numbers.whole(score.thick), numbers.whole(score.thin));
  score_->setText(lines.join(QLatin1Char('\n')));

  tries_->clear();
  for (std::size_t i = run->trials.size(); i-- > 0;) {
    const DrillTrial& trial = run->trials[i];
    const auto met = trial.succeeded();
    QString line = QStringLiteral("%1. %2").arg(numbers.whole(static_cast<long long>(i) + 1), !met ? tr("not all known")
                                                                                              : *met ? tr("met")
                                                                                                     : tr("missed"));
    if (trial.missSide) line = listOf({line, missWords(*trial.missSide)});
    const auto& goals = played.stations[trial.station].goals;
    for (std::size_t k = 0; k < trial.goals.size() && k < goals.size(); ++k) {
      if (!trial.goals[k].figure) continue;
      line = listOf({line, figureWords(goals[k].kind, *trial.goals[k].figure, numbers)});
    }
    tries_->addItem(line);
  }
}

}  // namespace ferrule
