// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/set_up_section.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/session/camera_choice.h"
#include "app/setup/rig_in_use.h"
#include "app/window/inks.h"
#include "app/window/plain_parts.h"
#include "app/words/set_up_words.h"

namespace ferrule {

SetUpSection::SetUpSection(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("setUpSection"));
  camera_ = new CameraChoice;
  begin_ = namedButton({}, "watchSetUp");
  connect(begin_, &QPushButton::clicked, this, [this] {
    if (watch_.isRunning()) {
      watch_.stop();
      return;
    }
    std::shared_ptr<LiveSource> source = camera_->makeSource();
    if (source) {
      begin(source);
    } else {
      emit said(tr("Choose a camera first, or the film that stands in for one."));
    }
  });
  words_ = wordsLabel("setUpErrors");
  words_->setFont(withTabularFigures(font()));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  column->addWidget(camera_);
  column->addWidget(begin_, 0, Qt::AlignLeft);
  column->addWidget(words_);
  connect(&watch_, &SetUpWatch::seen, this, [this](const Position& balls) {
    balls_ = balls;
    check_ = checkSetUp(station_, table_, balls_);
    showCheck();
    emit checked();
  });
  connect(&watch_, &SetUpWatch::runningChanged, this, [this] {
    if (!watch_.isRunning()) check_.reset();
    showCheck();
    emit checked();
  });
  connect(&watch_, &SetUpWatch::said, this, &SetUpSection::said);
  connect(&watch_, &SetUpWatch::failed, this, &SetUpSection::failed);
  showCheck();
}

void SetUpSection::begin(const std::shared_ptr<LiveSource>& source) {
  const auto rig = rigInUse();
  if (!rig) {
    emit said(tr("The camera needs its rig to see where balls lie: make one in Set-up first."));
    return;
  }
  balls_.clear();
  emit tableFound(rig->table);
  watch_.start(rig->rig, rig->table, source);
}

void SetUpSection::setStation(const DrillStation& station, const MeasuredTable& table) {
  if (station_ == station && table_ == table) return;
  station_ = station;
  table_ = table;
  if (!check_) return;
  check_ = checkSetUp(station_, table_, balls_);
  showCheck();
}

void SetUpSection::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  showCheck();
}

void SetUpSection::showCheck() {
  begin_->setText(watch_.isRunning() ? tr("Stop looking") : tr("Check the set-up"));
  camera_->setVisible(!watch_.isRunning());
  words_->setVisible(watch_.isRunning());
  words_->setText(check_ ? setUpSentences(*check_, numbers_).join(QLatin1Char('\n')) : tr("Looking for the balls…"));
}

}  // namespace ferrule
