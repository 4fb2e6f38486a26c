// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/film_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/session/measured_shot_list.h"
#include "app/session/measuring_pictures.h"
#include "app/session/measuring_words.h"
#include "app/session/question_panel.h"
#include "app/session/session_page.h"
#include "app/window/card.h"
#include "app/window/inks.h"
#include "app/window/tool_button.h"

namespace ferrule {

namespace {

constexpr int kSteps = 1000;  ///< of the progress bar

/// What the rig's check said before the film was measured.
QString checkedWords(const FilmDesk& desk, const Numbers& numbers) {
  const SelfCheck* check = desk.check();
  if (check == nullptr) return {};
  if (check->verdict != RigFault::None) return QLatin1Char(' ') + misfitWords(*check, desk.checkNames(), numbers);
  return QLatin1Char(' ') +
         FilmPage::tr("Film and rig belong together (sure to %1 %).").arg(numbers.fixed(100.0 * check->confidence, 0));
}

}  // namespace

FilmPage::FilmPage(FilmDesk& desk, const ActionSet& actions, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName(QStringLiteral("filmPage"));
  pictures_ = new MeasuringPictures;
  title_ = sessionTitle("measuringTitle");
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(sessionColumns(titledMiddle(title_, pictures_), makePanel(actions)));
  connect(&desk_, &FilmDesk::changed, this, &FilmPage::refresh);
  connect(&desk_, &FilmDesk::progressed, this, &FilmPage::showProgress);
  connect(&desk_, &FilmDesk::imageSeen, this, [this] { pictures_->setImage(*desk_.image()); });
  refresh();
}

QWidget* FilmPage::makePanel(const ActionSet& actions) {
  words_ = new QLabel;
  words_->setObjectName(QStringLiteral("measuringWords"));
  words_->setWordWrap(true);
  words_->setTextFormat(Qt::PlainText);
  words_->setFont(withTabularFigures(font()));
  progress_ = new QProgressBar;
  progress_->setObjectName(QStringLiteral("measuringProgress"));
  progress_->setAccessibleName(tr("Progress"));
  progress_->setTextVisible(false);
  stop_ = raisedButton(actions.at(ActionId::StopWork));
  question_ = new QuestionPanel(actions, true);
  connectQuestions(*question_, desk_.shots());
  shots_ = new MeasuredShotList;
  look_ = new QPushButton(tr("&Look at it in Review"));
  look_->setObjectName(QStringLiteral("lookAtIt"));
  close_ = new QPushButton(tr("&Another session"));
  close_->setObjectName(QStringLiteral("anotherSession"));
  connect(look_, &QPushButton::clicked, this, &FilmPage::lookWanted);
  connect(close_, &QPushButton::clicked, this, &FilmPage::closeWanted);

  auto* panel = new QWidget;
  panel->setObjectName(QStringLiteral("filmPanel"));
  auto* column = new QVBoxLayout(panel);
  column->setContentsMargins(16, 12, 16, 12);
  column->setSpacing(12);
  auto* working = new QHBoxLayout;
  working->setSpacing(8);
  working->addWidget(progress_, 1);
  working->addWidget(stop_);
  column->addLayout(working);
  column->addWidget(words_);
  column->addWidget(question_);
  column->addWidget(shots_, 1);
  column->addWidget(look_);
  column->addWidget(close_);
  return panel;
}

bool FilmPage::act(ActionId action) {
  if (action == ActionId::Undo) {
    desk_.shots().undo();
    return true;
  }
  return question_->act(action) || pictures_->act(action);
}

void FilmPage::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  refresh();
}

void FilmPage::refresh() {
  const bool running = desk_.state() == FilmState::Measuring;
  pictures_->setTable(desk_.table());
  if (desk_.image() == nullptr) pictures_->clear();
  title_->setText(desk_.sessionName());
  QStringList rows;
  const SeatNames names = seatNamesOf(desk_.options().players);
  question_->setQuestion(desk_.shots().question(), names);
  for (const auto& shot : desk_.shots().all())
    rows << measuredShotWords(*shot, names, numbers_);
  shots_->setRows(rows);
  progress_->setVisible(running);
  stop_->setVisible(running);
  look_->setVisible(!running);
  look_->setEnabled(!desk_.shots().all().empty());
  close_->setVisible(!running);
  showProgress();
}

void FilmPage::showProgress() {
  switch (desk_.state()) {
    case FilmState::None:
      words_->clear();
      return;
    case FilmState::Measuring:
      break;
    case FilmState::Done:
      words_->setText(measuredFilmWords(*desk_.report(), numbers_) + checkedWords(desk_, numbers_));
      return;
    case FilmState::Stopped:
      words_->setText(stoppedFilmWords(desk_.sessionName(), static_cast<int>(desk_.shots().all().size())));
      return;
  }
  const bool known = desk_.share() >= 0.0;
  progress_->setRange(0, known ? kSteps : 0);
  if (known) progress_->setValue(qRound(kSteps * desk_.share()));
  const long images = desk_.image() != nullptr ? desk_.image()->picture.number + 1 : 0;
  words_->setText(measuringWords(desk_.step(), images, desk_.share(), desk_.elapsed_s(), numbers_));
}

}  // namespace ferrule
