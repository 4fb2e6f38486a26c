// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/setup_place.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QToolButton>

#include "app/projector/projector_desk.h"
#include "app/setup/camera_page.h"
#include "app/setup/check_page.h"
#include "app/setup/keep_page.h"
#include "app/setup/lens_page.h"
#include "app/setup/map_page.h"
#include "app/setup/projector_page.h"
#include "app/setup/rig_page.h"
#include "app/setup/setup_words.h"
#include "app/setup/table_page.h"
#include "app/setup/tags_page.h"
#include "app/window/card.h"
#include "app/window/inks.h"
#include "app/window/message_bar.h"
#include "app/window/tool_button.h"
#include "app/window/undo_row.h"
#include "app/window/vertical_scroll.h"

namespace ferrule {

QString ownSetupFolder() {
  return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) + QStringLiteral("/ferrule/setup");
}

SetupPlace::SetupPlace(const ActionSet& actions, const QString& folder, ProjectorDesk* projector, QWidget* parent)
    : Place(parent), desk_(folder), projector_(projector != nullptr ? projector : new ProjectorDesk(this)) {
  setObjectName(QStringLiteral("setupPlace"));
  setAccessibleName(tr("Set-up"));
  message_ = new MessageBar;
  message_->setObjectName(QStringLiteral("setupMessage"));
  auto* keep = new KeepPage(desk_);
  pages_ = {new TablePage(desk_),
            new BallsPage(desk_),
            new CameraPage(desk_),
            new LensPage(desk_),
            new TagsPage(desk_),
            new RigPage(desk_),
            new CheckPage(desk_),
            new MapPage(desk_),
            new ProjectorPage(desk_, *projector_),
            keep};
  stack_ = new QStackedWidget;
  for (SetupPage* page : pages_) {
    auto* scroll = new VerticalScroll(page);
    stack_->addWidget(scroll);
  }
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->setSpacing(0);
  whole->addWidget(message_);
  whole->addWidget(makeSteps());
  whole->addWidget(stack_, 1);
  whole->addWidget(makeFoot(actions));
  connect(&desk_, &SetupDesk::changed, this, &SetupPlace::refresh);
  connect(&desk_, &SetupDesk::said, message_, &MessageBar::tell);
  connect(keep, &KeepPage::checkAgainWanted, this, &SetupPlace::checkAgain);
  connect(&desk_.job(), &BackgroundJob::runningChanged, this, [this] {
    working_->setVisible(desk_.job().isRunning());
    progress_->setRange(0, 0);
    work_->clear();
  });
  connect(&desk_.job(), &BackgroundJob::progressed, this, [this](double share, const QString& step) {
    progress_->setRange(0, share < 0.0 ? 0 : 100);
    if (share >= 0.0) progress_->setValue(qRound(100.0 * share));
    work_->setText(workWords(step));
  });
  refresh();
}

QWidget* SetupPlace::makeSteps() {
  auto* bar = new QWidget;
  auto* row = new QHBoxLayout(bar);
  row->setContentsMargins(16, 12, 16, 4);
  row->setSpacing(4);
  title_ = new ElidedLabel;
  title_->setMinimumWidth(40);
  title_->setObjectName(QStringLiteral("setupTitle"));
  title_->setFont(scaled(font(), 1.3, true));
  row->addWidget(title_);
  row->addSpacing(12);
  steps_.setExclusive(true);
  for (int i = 0; i < kSetupSteps; ++i) {
    auto* button = new QToolButton;
    button->setObjectName(QStringLiteral("step%1").arg(i));
    button->setCheckable(true);
    button->setAutoRaise(true);
    button->setToolTip(stepTask(static_cast<SetupStep>(i)));
    steps_.addButton(button, i);
    row->addWidget(button);
  }
  row->addStretch(1);
  connect(&steps_, &QButtonGroup::idClicked, this, [this](int id) { showStep(static_cast<SetupStep>(id)); });
  return bar;
}

QWidget* SetupPlace::makeFoot(const ActionSet& actions) {
  auto* foot = new QWidget;
  auto* row = new QHBoxLayout(foot);
  row->setContentsMargins(16, 8, 16, 8);
  row->setSpacing(8);
  working_ = new QWidget;
  auto* work = new QHBoxLayout(working_);
  work->setContentsMargins(0, 0, 0, 0);
  work->setSpacing(8);
  progress_ = new QProgressBar;
  progress_->setObjectName(QStringLiteral("setupProgress"));
  progress_->setTextVisible(false);
  progress_->setFixedWidth(160);
  work_ = new QLabel;
  QToolButton* stop = raisedButton(actions.at(ActionId::StopWork));
  work->addWidget(progress_);
  work->addWidget(stop);
  work->addWidget(work_);
  working_->hide();
  edits_ = new UndoRow(actions, QStringLiteral("Setup"));
  row->addWidget(edits_);
  row->addWidget(working_);
  row->addStretch(1);
  for (const ActionId id : {ActionId::StepBack, ActionId::StepOn}) {
    row->addWidget(raisedButton(actions.at(id)));
  }
  return foot;
}

void SetupPlace::showEvent(QShowEvent* event) {
  Place::showEvent(event);
  if (opened_) return;
  opened_ = true;
  desk_.reopen();
}

void SetupPlace::showStep(SetupStep step) {
  message_->tell({});
  desk_.go(step);
  refresh();
}

void SetupPlace::refresh() {
  const SetupState& state = desk_.state();
  title_->setText(state.name.isEmpty() ? tr("New set-up") : state.name);
  for (int i = 0; i < kSetupSteps; ++i) {
    const auto step = static_cast<SetupStep>(i);
    QAbstractButton* button = steps_.button(i);
    const bool done = desk_.isDone(step);
    button->setText(done ? tr("%1 ✓", "a step that is done").arg(stepWords(step)) : stepWords(step));
    button->setAccessibleName(done ? tr("%1, done", "a step").arg(stepWords(step)) : stepWords(step));
    button->setChecked(step == state.step);
    QFont font = this->font();
    font.setBold(step == state.step);
    button->setFont(font);
  }
  stack_->setCurrentIndex(static_cast<int>(state.step));
  pages_[static_cast<std::size_t>(state.step)]->refresh();
  edits_->setSteps(desk_.undoName(), desk_.redoName());
  emit actionsChanged();
}

void SetupPlace::checkAgain() {
  const QString film = askForFilm(this, desk_.state().film);
  if (!film.isEmpty()) desk_.checkAgain(film);
}

bool SetupPlace::act(ActionId action) {
  const int step = static_cast<int>(desk_.state().step);
  switch (action) {
    case ActionId::StepBack:
      showStep(static_cast<SetupStep>(std::max(0, step - 1)));
      return true;
    case ActionId::StepOn:
      showStep(static_cast<SetupStep>(std::min(kSetupSteps - 1, step + 1)));
      return true;
    case ActionId::Undo:
      desk_.undo();
      return true;
    case ActionId::Redo:
      desk_.redo();
      return true;
    case ActionId::CheckAgain:
      checkAgain();
      return true;
    case ActionId::StopWork:
      desk_.cancel();
      return true;
    default:
      return false;
  }
}

void SetupPlace::setNumbers(const Numbers& numbers) {
  for (SetupPage* page : pages_)
    page->setNumbers(numbers);
}

}  // namespace ferrule
