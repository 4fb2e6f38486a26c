// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/session_place.h"

#include <QFileDialog>
#include <QGridLayout>
#include <QLabel>
#include <QListWidget>
#include <QMenu>
#include <QSettings>
#include <QSplitter>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/projector/projector_desk.h"
#include "app/session/ball_tray.h"
#include "app/session/film_page.h"
#include "app/session/guest_bar.h"
#include "app/session/live_page.h"
#include "app/session/question_panel.h"
#include "app/session/session_light.h"
#include "app/session/session_page.h"
#include "app/session/session_words.h"
#include "app/session/start_form.h"
#include "app/session/suggestion_panel.h"
#include "app/session/table_editor.h"
#include "app/setup/rig_in_use.h"
#include "app/window/card.h"
#include "app/window/inks.h"
#include "app/window/message_bar.h"
#include "app/window/own_record.h"
#include "app/window/plain_parts.h"
#include "app/window/tool_button.h"
#include "app/window/vertical_scroll.h"
#include "app/window/wrapping_row.h"
#include "app/words/error_sentence.h"

namespace ferrule {

namespace {

constexpr int kPadRow_px = 34;

}  // namespace

SessionPlace::SessionPlace(const ActionSet& actions, HandDesk::Clock clock, ProjectorDesk* projector, QWidget* parent)
    : Place(parent),
      desk_(clock),
      film_(clock),
      live_(clock),
      projector_(projector != nullptr ? projector : new ProjectorDesk(this)) {
  setObjectName(QStringLiteral("sessionPlace"));
  setAccessibleName(tr("Session"));
  message_ = new MessageBar;
  message_->setObjectName(QStringLiteral("sessionMessage"));
  start_ = new StartForm;
  columns_ = sessionColumns(makeTable(), makePanel(actions));
  stack_ = new QStackedWidget;
  stack_->addWidget(start_);
  stack_->addWidget(columns_);
  filmPage_ = new FilmPage(film_, actions);
  stack_->addWidget(filmPage_);
  livePage_ = new LivePage(live_, *projector_, actions);
  stack_->addWidget(livePage_);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  guest_ = new GuestBar(clock);
  column->addWidget(message_);
  column->addWidget(guest_);
  column->addWidget(stack_, 1);

  connect(guest_, &GuestBar::failed, this, [this](const Error& error) { tell(errorSentence(error)); });
  connect(&desk_, &HandDesk::sessionEnded, this,
          [this](SessionId session) { guest_->ask(desk_.recordPath(), session); });
  connect(&film_, &FilmDesk::sessionEnded, this,
          [this](SessionId session) { guest_->ask(QString::fromStdString(film_.options().record), session); });
  connect(&live_, &LiveDesk::sessionEnded, this,
          [this](SessionId session) { guest_->ask(QString::fromStdString(live_.options().record), session); });
  connect(&desk_, &HandDesk::changed, this, &SessionPlace::refresh);
  connect(&desk_, &HandDesk::failed, this, [this](const Error& error) { tell(errorSentence(error)); });
  const auto tellJudged = [this](int shots) {
    if (shots > 0) tell(tr("%n shot(s) now stand beside what would have been suggested: see Review.", nullptr, shots));
  };
  connect(&desk_, &HandDesk::judged, this, tellJudged);
  connect(&film_, &FilmDesk::judged, this, tellJudged);
  connect(&live_, &LiveDesk::judged, this, tellJudged);
  connect(&desk_, &HandDesk::photoTaken, this, [this](int balls) {
    tell(tr("%n ball(s) stand where the photo shows them. One look is not sure of the names: check them.", nullptr,
            balls));
  });
  connect(start_, &StartForm::beginWanted, &desk_, &HandDesk::begin);
  connect(start_, &StartForm::beginWanted, guest_, &GuestBar::close);
  connect(start_, &StartForm::filmWanted, guest_, &GuestBar::close);
  connect(start_, &StartForm::liveWanted, guest_, &GuestBar::close);
  connect(start_, &StartForm::resumeWanted, &desk_, &HandDesk::resume);
  connect(start_, &StartForm::failed, this, [this](const Error& error) { tell(errorSentence(error)); });
  connectFilm();
  connectLive();
  connect(table_, &TableEditor::ballPut, &desk_, &HandDesk::put);
  connect(table_, &TableEditor::ballTaken, &desk_, &HandDesk::take);
  connect(table_, &TableEditor::ballFell, &desk_, &HandDesk::fell);
  connect(table_, &TableEditor::ballChosen, &desk_, &HandDesk::choose);
  connect(table_, &TableEditor::pocketChosen, &desk_, &HandDesk::aimAt);
  connect(table_, &PictureView::pointed, table_, &PictureView::setLit);
  connect(tray_, &BallTray::ballWanted, &desk_, &HandDesk::bring);
  refresh();
}

QWidget* SessionPlace::makeTable() {
  table_ = new TableEditor;
  tray_ = new BallTray;
  title_ = sessionTitle("handTitle");
  auto* card = new Card;
  auto* cardColumn = new QVBoxLayout(card);
  cardColumn->setContentsMargins(1, 1, 1, 1);
  cardColumn->setSpacing(0);
  cardColumn->addWidget(table_, 1);
  cardColumn->addWidget(tray_);
  return titledMiddle(title_, card);
}

QWidget* SessionPlace::makePanel(const ActionSet& actions) {
  turn_ = wordsLabel("turn");
  turn_->setFont(scaled(font(), 1.3, true));
  aim_ = wordsLabel("aim");
  ruling_ = wordsLabel("lastRuling");
  shots_ = new QListWidget;
  shots_->setObjectName(QStringLiteral("loggedShots"));
  shots_->setAccessibleName(tr("Shots of this frame"));
  shots_->setFrameShape(QFrame::NoFrame);
  shots_->setWordWrap(true);
  shots_->setFocusPolicy(Qt::TabFocus);

  question_ = new QuestionPanel(actions, false);
  connect(question_, &QuestionPanel::answered, &desk_, &HandDesk::answer);
  pad_ = new QWidget;
  auto* grid = new QGridLayout(pad_);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setSpacing(4);
  constexpr std::array kPad{ActionId::LogMade, ActionId::LogMissed, ActionId::LogThick,
                            ActionId::LogThin, ActionId::LogSafety, ActionId::LogScratch,
                            ActionId::LogFoul, ActionId::LogBreak,  ActionId::LogFell};
  for (std::size_t i = 0; i < kPad.size(); ++i) {
    QAction* action = actions.at(kPad[i]);
    QToolButton* button = raisedButton(action);
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    button->setMinimumHeight(kPadRow_px);
    const bool alone = i + 1 == kPad.size() && i % 2 == 0;
    grid->addWidget(button, static_cast<int>(i / 2), static_cast<int>(i % 2), 1, alone ? 2 : 1);
  }
  auto* edits = new QHBoxLayout;
  edits->setSpacing(4);
  for (const ActionId id : {ActionId::Undo, ActionId::Redo})
    edits->addWidget(toolButton(actions.at(id)));
  edits->addStretch(1);
  auto* steps = new WrappingRow;
  steps->setSpacing(4);
  for (const ActionId id : {ActionId::RackBalls, ActionId::BallsFromPhoto, ActionId::NextFrame, ActionId::EndSession}) {
    QToolButton* button = toolButton(actions.at(id));
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    steps->addWidget(button);
  }

  suggestion_ = new SuggestionPanel(actions.at(ActionId::ShowSuggestion));
  connect(suggestion_, &SuggestionPanel::levelChosen, this, [this] {
    if (desk_.suggestions().isWanted()) desk_.showSuggestion(true, suggestion_->level());
  });
  connect(suggestion_, &SuggestionPanel::planChosen, &desk_.suggestions(), &SuggestionDesk::showPlan);
  connect(suggestion_, &SuggestionPanel::strikeWished, &desk_.suggestions(), &SuggestionDesk::tryStrike);

  auto* panel = new QWidget;
  panel->setObjectName(QStringLiteral("sessionPanel"));
  auto* column = new QVBoxLayout(panel);
  column->setContentsMargins(16, 12, 16, 12);
  column->setSpacing(12);
  column->addWidget(turn_);
  column->addWidget(aim_);
  column->addWidget(question_);
  column->addWidget(pad_);
  column->addLayout(edits);
  column->addLayout(steps);
  column->addWidget(suggestion_);
  light_ = new SessionLight(*projector_);
  connect(light_, &SessionLight::chosenChanged, this, &SessionPlace::showLight);
  connect(projector_, &ProjectorDesk::said, this, &SessionPlace::tell);
  column->addWidget(light_);
  column->addWidget(ruling_);
  column->addWidget(shots_, 1);
  auto* scrolled = new VerticalScroll(panel);
  scrolled->setObjectName(QStringLiteral("sessionScroll"));
  return scrolled;
}

bool SessionPlace::act(ActionId action) {
  if (stack_->currentWidget() == filmPage_ && filmPage_->act(action)) return true;
  if (stack_->currentWidget() == livePage_) return actLive(action);
  if (stack_->currentWidget() == columns_ && question_->act(action)) return true;
  switch (action) {
    case ActionId::StopWork:
      film_.stop();
      return true;
    case ActionId::Undo:
      desk_.undo();
      return true;
    case ActionId::Redo:
      desk_.redo();
      return true;
    case ActionId::LogMade:
      log(Outcome::Pot);
      return true;
    case ActionId::LogThick:
      log(Outcome::Miss, MissSide::Under);
      return true;
    case ActionId::LogThin:
      log(Outcome::Miss, MissSide::Over);
      return true;
    case ActionId::LogMissed:
      log(Outcome::Miss);
      return true;
    case ActionId::LogSafety:
      log(Outcome::Safety);
      return true;
    case ActionId::LogScratch:
      log(Outcome::Scratch);
      return true;
    case ActionId::LogFoul:
      chooseFoul();
      return true;
    case ActionId::LogBreak:
      log(Outcome::Break);
      return true;
    case ActionId::LogFell:
      if (desk_.hand() == nullptr) return true;
      tell(desk_.chosenFell() ? QString()
                              : tr("Put the shot in first; then choose the ball that fell with it, and its pocket."));
      return true;
    case ActionId::ShowSuggestion:
      desk_.showSuggestion(!desk_.suggestions().isWanted(), suggestion_->level());
      return true;
    case ActionId::RackBalls:
      desk_.rack();
      return true;
    case ActionId::BallsFromPhoto:
      choosePhoto();
      return true;
    case ActionId::NextFrame:
      desk_.nextFrame();
      return true;
    case ActionId::EndSession:
      desk_.end();
      return true;
    case ActionId::ZoomIn:
      table_->zoomIn();
      return true;
    case ActionId::ZoomOut:
      table_->zoomOut();
      return true;
    case ActionId::ZoomFit:
      table_->fit();
      return true;
    default:
      return false;
  }
}

void SessionPlace::log(Outcome outcome, std::optional<MissSide> missSide) {
  if (desk_.hand() == nullptr) return;
  tell(desk_.log(outcome, missSide) ? QString() : tr("Choose the ball that was made and its pocket first."));
}

void SessionPlace::chooseFoul() {
  if (desk_.hand() == nullptr) return;
  auto* menu = new QMenu(this);
  menu->setObjectName(QStringLiteral("foulMenu"));
  menu->setAttribute(Qt::WA_DeleteOnClose);
  for (const FoulKind kind : calledFouls()) {
    QAction* action = menu->addAction(foulWords(kind, std::nullopt));
    connect(action, &QAction::triggered, this, [this, kind] { desk_.log(Outcome::Foul, {}, kind); });
  }
  menu->popup(pad_->mapToGlobal(QPoint(0, pad_->height())));
}

void SessionPlace::choosePhoto() {
  if (desk_.hand() == nullptr) return;
  const QString path = QFileDialog::getOpenFileName(this, tr("A photo of the table"), {},
                                                    tr("Pictures (*.jpg *.jpeg *.png);;All files (*)"));
  if (!path.isEmpty()) putFromPhoto(path);
}

void SessionPlace::putFromPhoto(const QString& path) {
  const auto rig = rigInUse();
  if (!rig) {
    tell(tr("A photo needs the rig of the camera that took it: make one in Set-up first."));
    return;
  }
  tell(tr("Looking for the balls…"));
  desk_.putFromPhoto({path.toStdString(), rig->rig.toStdString(), rig->table.toStdString()});
}

void SessionPlace::refresh() {
  const KeptHand* hand = desk_.hand();
  const KeptHand* broken = desk_.broken();
  if (goesOn_ && broken != nullptr) {
    goesOn_ = false;
    desk_.resume();
    return;
  }
  start_->setRecord(desk_.recordPath(),
                    broken != nullptr ? QString::fromStdString(broken->session.terms().name) : QString());
  if (hand == nullptr) {
    QWidget* page = start_;
    if (film_.state() != FilmState::None) page = filmPage_;
    if (live_.state() != LiveState::None) page = livePage_;
    stack_->setCurrentWidget(page);
    return;
  }
  stack_->setCurrentWidget(columns_);
  const HandSession& session = hand->session;
  const HandTerms& terms = session.terms();
  title_->setText(tr("%1, frame %2").arg(QString::fromStdString(terms.name)).arg(terms.frame));
  table_->setTable(terms.table);
  table_->setBalls(session.state().balls);
  table_->setAim(desk_.chosen(), desk_.pocket());
  table_->setPlan(desk_.shownPlan());
  suggestion_->setShooter(QString::fromStdString(desk_.shooter()));
  suggestion_->show(desk_.suggestions().isWanted(), desk_.suggestion(), desk_.shownPlan(), desk_.triedInVain(),
                    numbers_);
  showLight();
  tray_->setBalls(terms.table.balls, desk_.ballsOff());
  turn_->setText(turnWords(session));
  aim_->setText(aimWords(session, desk_.target(), desk_.pocket(), numbers_));
  question_->setQuestion(desk_.question(), seatNamesOf(terms));
  ruling_->setText(lastRulingWords(session));
  ruling_->setVisible(!ruling_->text().isEmpty());
  shots_->clear();
  for (std::size_t shot = session.state().shots.size(); shot-- > 0;)
    shots_->addItem(loggedWords(session, shot));
}

void SessionPlace::showLight() {
  const KeptHand* hand = desk_.hand();
  if (hand == nullptr) return;
  const MeasuredTable& table = hand->session.terms().table;
  light_->setSuggestion(desk_.shownPlan(), table);
  light_->setBalls(hand->session.state().balls, std::nullopt, table);
}

void SessionPlace::openRecord(const QString& path) {
  wantedRecord_ = path;
  if (isVisible()) desk_.openRecord(path);
}

void SessionPlace::showEvent(QShowEvent* event) {
  Place::showEvent(event);
  // No file is made for someone who never comes here.
  if (desk_.recordPath() != recordPath()) desk_.openRecord(recordPath());
}

bool SessionPlace::isBusy() const {
  return film_.state() == FilmState::Measuring ||
         (live_.state() != LiveState::None && live_.state() != LiveState::Done);
}

void SessionPlace::goOn() {
  goesOn_ = true;
  desk_.openRecord(recordPath());
}

QString SessionPlace::recordPath() const {
  return wantedRecord_.isEmpty() ? ownRecord() : wantedRecord_;
}

void SessionPlace::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  filmPage_->setNumbers(numbers);
  livePage_->setNumbers(numbers);
  refresh();
}

void SessionPlace::save(QSettings& settings) const {
  settings.setValue(QStringLiteral("session/columns"), columns_->saveState());
  settings.setValue(QStringLiteral("session/record"), wantedRecord_);
  start_->save(settings);
}

void SessionPlace::restore(const QSettings& settings) {
  columns_->restoreState(settings.value(QStringLiteral("session/columns")).toByteArray());
  wantedRecord_ = settings.value(QStringLiteral("session/record")).toString();
  start_->restore(settings);
  // Whoever corrects in Review answers here.
  const QString who = settings.value(QStringLiteral("review/who"), tr("Coach")).toString();
  film_.shots().setWho(who);
  live_.shots().setWho(who);
}

void SessionPlace::tell(const QString& sentence) {
  message_->tell(sentence);
}

}  // namespace ferrule
