// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/live_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/picture/plan_view.h"
#include "app/session/film_words.h"
#include "app/session/live_words.h"
#include "app/session/measured_shot_list.h"
#include "app/session/measuring_pictures.h"
#include "app/session/measuring_words.h"
#include "app/session/question_panel.h"
#include "app/session/session_light.h"
#include "app/session/session_page.h"
#include "app/session/session_words.h"
#include "app/session/suggestion_panel.h"
#include "app/window/card.h"
#include "app/window/inks.h"
#include "app/window/plain_parts.h"
#include "app/window/tool_button.h"
#include "app/window/vertical_scroll.h"

namespace ferrule {

namespace {

constexpr int kCount_ms = 250;
constexpr int kLeastList_px = 140;

}  // namespace

LivePage::LivePage(LiveDesk& desk, ProjectorDesk& projector, const ActionSet& actions, QWidget* parent)
    : QWidget(parent), desk_(desk) {
  setObjectName(QStringLiteral("livePage"));
  pictures_ = new MeasuringPictures;
  title_ = sessionTitle("liveTitle");
  light_ = new SessionLight(projector);
  connect(light_, &SessionLight::chosenChanged, this, &LivePage::showLight);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(sessionColumns(titledMiddle(title_, pictures_), makePanel(actions)));
  counting_.setInterval(kCount_ms);
  connect(&counting_, &QTimer::timeout, this, &LivePage::showCounts);
  connect(&desk_, &LiveDesk::changed, this, &LivePage::refresh);
  connect(&desk_, &LiveDesk::checked, this, &LivePage::showCheck);
  connect(&desk_, &LiveDesk::imageSeen, this, [this] {
    pictures_->setImage(*desk_.image());
    showLight();
  });
  refresh();
}

QWidget* LivePage::makePanel(const ActionSet& actions) {
  turn_ = wordsLabel("liveTurn");
  turn_->setFont(scaled(font(), 1.3, true));
  score_ = wordsLabel("liveScore");
  counts_ = wordsLabel("liveCounts");
  counts_->setFont(withTabularFigures(font()));
  check_ = wordsLabel("liveCheck");
  film_ = wordsLabel("liveFilm");
  film_->setFont(withTabularFigures(font()));
  exposure_ = wordsLabel("liveExposure");
  suggestion_ = new SuggestionPanel(actions.at(ActionId::ShowSuggestion));
  connect(suggestion_, &SuggestionPanel::levelChosen, this, [this] {
    if (desk_.suggestion().isWanted()) desk_.showSuggestion(true, suggestion_->level());
  });
  connect(suggestion_, &SuggestionPanel::planChosen, &desk_.suggestion(), &SuggestionDesk::showPlan);
  connect(suggestion_, &SuggestionPanel::strikeWished, &desk_.suggestion(), &SuggestionDesk::tryStrike);
  question_ = new QuestionPanel(actions, true);
  connectQuestions(*question_, desk_.shots());
  shots_ = new MeasuredShotList;
  shots_->setObjectName(QStringLiteral("liveShots"));
  shots_->setMinimumHeight(kLeastList_px);
  end_ = raisedButton(actions.at(ActionId::EndSession));
  end_->setToolButtonStyle(Qt::ToolButtonTextOnly);
  end_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  look_ = new QPushButton(tr("&Look at it in Review"));
  look_->setObjectName(QStringLiteral("lookAtLive"));
  close_ = new QPushButton(tr("&Another session"));
  close_->setObjectName(QStringLiteral("anotherLive"));
  connect(look_, &QPushButton::clicked, this, &LivePage::lookWanted);
  connect(close_, &QPushButton::clicked, this, &LivePage::closeWanted);

  auto* panel = new QWidget;
  auto* column = new QVBoxLayout(panel);
  column->setContentsMargins(16, 12, 16, 12);
  column->setSpacing(12);
  column->addWidget(turn_);
  column->addWidget(score_);
  column->addWidget(suggestion_);
  column->addWidget(light_);
  column->addWidget(question_);
  column->addWidget(shots_, 1);
  column->addWidget(counts_);
  column->addWidget(film_);
  column->addWidget(exposure_);
  column->addWidget(check_);
  column->addWidget(end_);
  column->addWidget(look_);
  column->addWidget(close_);
  return new VerticalScroll(panel);
}

bool LivePage::act(ActionId action) {
  if (action == ActionId::Undo) {
    desk_.shots().undo();
    return true;
  }
  return question_->act(action) || pictures_->act(action);
}

std::optional<PlayerLevel> LivePage::level() const {
  return suggestion_->level();
}

void LivePage::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  light_->setNumbers(numbers);
  refresh();
}

void LivePage::refresh() {
  const LiveState state = desk_.state();
  const SeatNames names = seatNamesOf(desk_.options().players);
  pictures_->setTable(desk_.table());
  if (desk_.image() == nullptr) pictures_->clear();
  title_->setText(QString::fromStdString(desk_.options().session));
  turn_->setText(liveTurnWords(desk_, names));
  score_->setText(desk_.standing() ? scoreWords(*desk_.standing(), names) : QString());
  score_->setVisible(!score_->text().isEmpty());
  QStringList rows;
  question_->setQuestion(desk_.shots().question(), names);
  for (const auto& shot : desk_.shots().all())
    rows << measuredShotWords(*shot, names, numbers_);
  shots_->setRows(rows);
  showSuggestion();
  const bool over = state == LiveState::Done;
  light_->setVisible(state == LiveState::Running);
  showLight();
  suggestion_->setVisible(state == LiveState::Running && !desk_.options().game.empty());
  end_->setVisible(!over);
  end_->setEnabled(state == LiveState::Waiting || state == LiveState::Running);
  look_->setVisible(over);
  look_->setEnabled(!desk_.shots().all().empty());
  close_->setVisible(over);
  if (state == LiveState::None || over) {
    counting_.stop();
  } else if (!counting_.isActive()) {
    counting_.start();
  }
  showCounts();
  showCheck();
}

void LivePage::showLight() {
  if (desk_.state() != LiveState::Running) return;
  light_->setSuggestion(desk_.suggestion().shownPlan(), desk_.table());
  light_->setBalls(desk_.lastRest(), desk_.ballsNow(), desk_.table());
}

void LivePage::showCheck() {
  check_->setText(liveCheckWords(desk_, numbers_));
  check_->setVisible(!check_->text().isEmpty());
  QFont font = this->font();
  font.setBold(desk_.lastCheck() != nullptr && isMisfit(*desk_.lastCheck()));
  check_->setFont(font);
}

void LivePage::showCounts() {
  counts_->setText(countWords(desk_.counts(), desk_.imagesBehind(), numbers_));
  counts_->setVisible(desk_.state() != LiveState::None);
  const auto film = desk_.filmCounts();
  // A lamp that is seen by those who are filmed.
  film_->setText(film ? QStringLiteral("\u25CF ") + filmCountWords(*film, numbers_) : desk_.filmRefusal());
  film_->setVisible(!film_->text().isEmpty());
  const SeenImage* image = desk_.state() == LiveState::Running ? desk_.image() : nullptr;
  exposure_->setText(image != nullptr ? lightWords(*image, desk_.table().balls.radius_m(), numbers_) : QString());
  exposure_->setVisible(!exposure_->text().isEmpty());
}

void LivePage::showSuggestion() {
  SuggestionDesk& found = desk_.suggestion();
  suggestion_->setShooter(QString::fromStdString(desk_.shooter()));
  suggestion_->show(found.isWanted(), found.found(), found.shownPlan(), found.triedInVain(), numbers_);
  if (const PlayedPlan* plan = found.shownPlan()) {
    pictures_->plan().setSuggested(plan->ways, plan->ranked.chances.leave, std::nullopt);
  } else {
    pictures_->plan().setSuggested({}, std::nullopt, std::nullopt);
  }
}

}  // namespace ferrule
