// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress/progress_place.h"

#include <QCheckBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QScrollArea>
#include <QSettings>
#include <QSplitter>
#include <QStackedWidget>

#include "app/progress/chart_export.h"
#include "app/progress/chart_view.h"
#include "app/progress/filter_bar.h"
#include "app/progress/progress_words.h"
#include "app/window/message_bar.h"
#include "app/window/own_record.h"
#include "app/words/error_sentence.h"
#include "app/words/joining.h"

namespace ferrule {

bool ProgressPlace::act(ActionId action) {
  switch (action) {
    case ActionId::ShotsBehind:
      showShotsBehind();
      return true;
    case ActionId::ExportChart: {
      if (current() == nullptr || !current()->view->chart()) {
        message_->tell(tr("Choose a chart first: click it, or go to it with the Tab key."));
        return true;
      }
      const QString path = QFileDialog::getSaveFileName(this, tr("Export the chart"), tr("chart.svg"),
                                                        tr("Pictures (*.svg *.png);;Numbers (*.csv)"));
      if (!path.isEmpty()) exportChart(path);
      return true;
    }
    default:
      return false;
  }
}

void ProgressPlace::exportChart(const QString& path) {
  if (current() == nullptr || !current()->view->chart()) return;
  const auto written = writeChart(*current()->view->chart(), path);
  message_->tell(written ? tr("The chart is in %1.").arg(path) : errorSentence(written.error()));
}

void ProgressPlace::openRecord(const QString& path) {
  wantedRecord_ = path;
  if (isVisible()) read(path);
}

void ProgressPlace::forgetPlayer(const QString& name) {
  if (wantedPlayer_ == name) wantedPlayer_.clear();
  first_->forgetPlayer(name);
  second_->forgetPlayer(name);
}

void ProgressPlace::showEvent(QShowEvent* event) {
  Place::showEvent(event);
  const QString wanted = wantedRecord_.isEmpty() ? ownRecord() : wantedRecord_;
  if (stampOf(wanted) != stamp_) read(wanted);
}

void ProgressPlace::read(const QString& path) {
  if (wantedRecord_.isEmpty() && !QFileInfo::exists(path)) {
    emptyWords_->setText(tr("Progress needs shots: play a session, or open a record."));
    stack_->setCurrentIndex(0);
    return;
  }
  stamp_ = stampOf(path);
  busy_->setText(tr("Reading the record…"));
  service_.open(path);
}

void ProgressPlace::setNumbers(const Numbers& numbers) {
  const bool same = numbers_.locale() == numbers.locale() && numbers_.speedUnit() == numbers.speedUnit();
  numbers_ = numbers;
  if (same) return;
  first_->setNumbers(numbers);
  second_->setNumbers(numbers);
  ask();
}

void ProgressPlace::ask() {
  if (record_.isEmpty() || first_->player().isEmpty()) return;
  ProgressQuestion question;
  question.numbers = numbers_;
  question.wanted.push_back(first_->wanted());
  if (compare_->isChecked()) question.wanted.push_back(second_->wanted());
  busy_->setText(tr("Working it out…"));
  service_.ask(question);
}

void ProgressPlace::take(std::shared_ptr<const ProgressAnswer> answer) {
  answer_ = std::move(answer);
  busy_->clear();
  message_->tell({});
  first_->setChoices(answer_->columns[0]);
  if (answer_->columns.size() > 1) second_->setChoices(answer_->columns[1]);
  layOut();
  showPanel();
}

const ProgressPlace::Shown* ProgressPlace::current() const {
  return current_ ? &shown_[*current_] : nullptr;
}

QString ProgressPlace::columnWords(std::size_t column) const {
  const QString shots = (column == 0 ? first_ : second_)->shotWords();
  return listOf({periodWords(answer_->columns[column], ReportWords(numbers_)), shots});
}

void ProgressPlace::showPanel() {
  const ReportWords words(numbers_);
  QStringList work;
  QStringList basis;
  for (std::size_t c = 0; c < answer_->columns.size(); ++c) {
    const ProgressColumn& column = answer_->columns[c];
    const QString whose = answer_->columns.size() > 1
                              ? QStringLiteral("<p><b>%1</b></p>").arg(columnWords(c).toHtmlEscaped())
                              : QString();
    work << whose + workWords(column.progress, now_(), words);
    basis << whose + basisWords(column.progress.quality, words);
  }
  work_->setText(work.join(QString()));
  basis_->setText(basis.join(QString()));
  pointed_->setText(tr("Point at a part of a chart for its numbers; click it for the shots behind it."));
}

void ProgressPlace::showShotsBehind() {
  if (current() == nullptr || !current()->view->pointed()) {
    message_->tell(tr("Choose a part of a chart first: click it, or go to it with the arrow keys."));
    return;
  }
  const ProgressColumn& column = answer_->columns[current()->column];
  const Figure& figure = column.figures[current()->figure];
  const ChartSpot& spot = *current()->view->pointed();
  const ReportWords words(numbers_);
  ShotList list;
  list.record = record_;
  list.title = toldOf(figure.title, spot.words);
  const PlayerHistory& history = column.progress.history;
  for (const std::size_t place : shotsBehind(column.progress, figure.kind, spot)) {
    const PlayedShot& shot = history.shots[place];
    const PlayedSession& session = history.sessions[shot.session];
    list.shots.push_back({SessionId{session.id}, ShotId{shot.id}, listedWords(session, shot, words), shot.outcome});
  }
  if (list.shots.empty()) {
    message_->tell(tr("There is no shot behind this."));
    return;
  }
  emit shotsWanted(list);
}

void ProgressPlace::save(QSettings& settings) const {
  settings.setValue(QStringLiteral("progress/record"), wantedRecord_);
  settings.setValue(QStringLiteral("progress/player"), first_->player().isEmpty() ? wantedPlayer_ : first_->player());
  settings.setValue(QStringLiteral("progress/columns"), columns_->saveState());
}

void ProgressPlace::restore(const QSettings& settings) {
  wantedRecord_ = settings.value(QStringLiteral("progress/record")).toString();
  wantedPlayer_ = settings.value(QStringLiteral("progress/player")).toString();
  columns_->restoreState(settings.value(QStringLiteral("progress/columns")).toByteArray());
}

}  // namespace ferrule
