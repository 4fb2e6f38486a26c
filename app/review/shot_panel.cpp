// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/shot_panel.h"

#include <QEvent>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollBar>
#include <QTableView>
#include <QVBoxLayout>

#include "app/review/correction_words.h"
#include "app/review/cue_section.h"
#include "app/review/event_list_model.h"
#include "app/review/judgement_section.h"
#include "app/review/shot_words.h"
#include "app/review/tip_point_view.h"
#include "app/window/inks.h"
#include "app/words/joining.h"
#include "app/words/miss_sentence.h"
#include "app/words/trade_words.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr int kMargin_px = 16;
constexpr int kEventRow_px = 24;

}  // namespace

ShotPanel::ShotPanel(QWidget* parent) : QScrollArea(parent), events_(new EventListModel(this)) {
  setObjectName(QStringLiteral("shotPanel"));
  setAccessibleName(tr("Details of the shot"));
  setFrameShape(QFrame::NoFrame);
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setBackgroundRole(QPalette::Base);
  setMinimumWidth(260);
  rebuild();
}

void ShotPanel::setShot(std::shared_ptr<const StoredShot> shot, const MeasuredTable& measured,
                        const std::vector<std::string>& players, const std::optional<KeptSuggestion>& kept) {
  shot_ = std::move(shot);
  kept_ = kept;
  measured_ = measured;
  players_ = players;
  rebuild();
}

void ShotPanel::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  events_->setNumbers(numbers);
  rebuild();
}

void ShotPanel::setTime(double time_s, double spacing_s) {
  time_s_ = time_s;
  spacing_s_ = spacing_s;
  if (eventView_ == nullptr) return;
  const int row = events_->rowAt(time_s_, spacing_s_);
  if (row < 0) {
    eventView_->clearSelection();
  } else if (eventView_->currentIndex().row() != row || !eventView_->selectionModel()->hasSelection()) {
    eventView_->selectRow(row);
  }
}

QLabel* ShotPanel::label(const QString& text, double factor, bool bold, bool quiet) {
  auto* made = new QLabel(text);
  made->setTextFormat(Qt::PlainText);
  made->setWordWrap(true);
  made->setFont(withTabularFigures(scaled(font(), factor, bold)));
  if (quiet) {
    QPalette colours = palette();
    // On a base-coloured panel labels draw with the base's text role.
    for (const auto role : {QPalette::WindowText, QPalette::Text})
      colours.setColor(role, inksFor(palette()).quiet);
    made->setPalette(colours);
  }
  made->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return made;
}

QLabel* ShotPanel::sectionTitle(const QString& text) {
  QLabel* title = label(text, 0.88, true, true);
  title->setContentsMargins(0, 12, 0, 0);
  return title;
}

void ShotPanel::rebuild() {
  const int scroll = verticalScrollBar()->value();
  auto* content = new QWidget;
  content->setBackgroundRole(QPalette::Base);
  content->setAutoFillBackground(true);
  auto* column = new QVBoxLayout(content);
  column->setContentsMargins(kMargin_px, 12, kMargin_px, kMargin_px);
  column->setSpacing(4);
  eventView_ = nullptr;
  if (shot_) {
    const ShotReading& reading = shot_->reading;
    QLabel* heading = label(shotHeading(reading), 1.18, true, false);
    heading->setObjectName(QStringLiteral("shotHeading"));
    column->addWidget(heading);
    QStringList under;
    if (!shot_->playerName.empty()) under << QString::fromStdString(shot_->playerName);
    const QString geometry = geometryWords(reading, measured_, numbers_);
    if (!geometry.isEmpty()) under << geometry;
    if (!under.isEmpty()) column->addWidget(label(under.join(QStringLiteral(" · ")), 1.0, false, true));
    if (const QString corrected = correctedWords(*shot_); !corrected.isEmpty()) {
      QLabel* mark = label(tr("* Corrected by a person: %1").arg(corrected), 1.0, false, false);
      mark->setObjectName(QStringLiteral("correctedMark"));
      column->addWidget(mark);
    }
    addStruck(*column);
    addCue(*column);
    addHappened(*column);
    addMiss(*column);
    addChoice(*column);
    addLines(*column, tr("Where everything rested"), restWords(reading, measured_, numbers_),
             QStringLiteral("restLines"));
    QStringList outcome = outcomeLines(*shot_);
    if (cameraMoved_m_) {
      outcome << tr("The camera moved by %1 mm while this shot was played: its places are doubtful.")
                     .arg(numbers_.fixed(millimetresFromMetres(*cameraMoved_m_), 1));
    }
    addLines(*column, tr("Result"), outcome, QStringLiteral("outcomeLines"));
    addLines(*column, tr("Ruling"), rulingLines(*shot_, players_), QStringLiteral("rulingLines"));
    addCorrections(*column);
  } else {
    column->addWidget(label(tr("Choose a shot to read what was struck and what happened."), 1.0, false, true));
  }
  column->addStretch(1);
  setWidget(content);
  verticalScrollBar()->setValue(scroll);
  setTime(time_s_, spacing_s_);
}

void ShotPanel::addStruck(QVBoxLayout& column) {
  column.addWidget(sectionTitle(tr("What was struck")));
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(4);
  grid->setColumnStretch(2, 1);
  grid->setColumnMinimumWidth(0, 88);
  int row = 0;
  for (const ValueLine& line : deliveryLines(shot_->reading.delivery, numbers_)) {
    grid->addWidget(label(line.name, 1.0, false, false), row, 0, Qt::AlignTop);
    if (line.shown.value.isEmpty()) {
      const QString words = tr("not observable: %1").arg(line.whyNot);
      grid->addWidget(label(words, 1.0, false, true), row, 1, 1, 2);
    } else {
      QLabel* value = label(line.shown.value, 1.0, true, false);
      value->setWordWrap(false);
      value->setAlignment(Qt::AlignRight);
      value->setAccessibleName(QStringLiteral("%1 %2 %3").arg(line.name, line.shown.value, line.shown.uncertainty));
      grid->addWidget(value, row, 1);
      grid->addWidget(label(line.shown.uncertainty, 0.85, false, true), row, 2, Qt::AlignBottom);
    }
    ++row;
  }
  column.addLayout(grid);
  const Delivery& delivery = shot_->reading.delivery;
  if (delivery.side || delivery.height) {
    auto* tip = new QHBoxLayout;
    tip->setSpacing(12);
    tip->setContentsMargins(0, 8, 0, 0);
    auto* face = new TipPointView;
    face->setPoint(delivery.side, delivery.height);
    tip->addWidget(face);
    const QString words = delivery.side && delivery.height
                              ? tipWords(*delivery.side, *delivery.height, measured_.balls.radius_m(), numbers_)
                              : tr("Only one direction of the offset can be seen: the band holds the tip point.");
    tip->addWidget(label(words + QLatin1Char('\n') + tr("Dotted ring: miscue limit."), 1.0, false, true), 1);
    column.addLayout(tip);
  }
  column.addWidget(label(tr("± one standard uncertainty. R: ball radius, + right and above."), 0.85, false, true));
}

void ShotPanel::addCue(QVBoxLayout& column) {
  const auto cue = cueOf(*shot_);
  if (!cue) return;
  column.addWidget(sectionTitle(tr("The cue before the strike")));
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(4);
  grid->setColumnStretch(2, 1);
  int row = 0;
  for (const ValueLine& line : cueRows(*cue, shot_->reading.delivery.aim_rad, numbers_)) {
    grid->addWidget(label(line.name, 1.0, false, false), row, 0);
    QLabel* value = label(line.shown.value, 1.0, true, false);
    value->setWordWrap(false);
    value->setAlignment(Qt::AlignRight);
    value->setAccessibleName(QStringLiteral("%1 %2 %3").arg(line.name, line.shown.value, line.shown.uncertainty));
    grid->addWidget(value, row, 1);
    grid->addWidget(label(line.shown.uncertainty, 0.85, false, true), row, 2, Qt::AlignBottom);
    ++row;
  }
  column.addLayout(grid);
  QLabel* notes = label(sentencesOf(cueNotes(*cue, numbers_)), 0.85, false, true);
  notes->setObjectName(QStringLiteral("cueNotes"));
  column.addWidget(notes);
}

void ShotPanel::addHappened(QVBoxLayout& column) {
  const ShotReading& reading = shot_->reading;
  column.addWidget(sectionTitle(tr("What happened")));
  column.addWidget(label(reading.firstContact ? tr("First contact: %1").arg(ballWords(*reading.firstContact))
                                              : tr("The cue ball met no ball."),
                         1.0, false, false));
  QStringList fallen;
  for (const PocketedBall& ball : reading.pocketed) {
    fallen << tr("%1, %2", "ball and pocket").arg(ballWords(ball.ball), pocketWords(ball.pocket));
  }
  column.addWidget(
      label(fallen.isEmpty() ? tr("Nothing fell.") : tr("Fell: %1").arg(listApart(fallen)), 1.0, false, false));
  const QString error = lineErrorWords(reading, measured_, numbers_);
  if (!error.isEmpty()) column.addWidget(label(error, 1.0, false, false));

  events_->setShot(reading);
  auto* view = new QTableView;
  view->setObjectName(QStringLiteral("eventList"));
  view->setAccessibleName(tr("Events of the shot, seconds after the strike"));
  view->setModel(events_);
  view->setFrameShape(QFrame::NoFrame);
  view->setShowGrid(false);
  view->setFont(withTabularFigures(font()));
  view->horizontalHeader()->hide();
  view->verticalHeader()->hide();
  view->verticalHeader()->setDefaultSectionSize(kEventRow_px);
  view->verticalHeader()->setMinimumSectionSize(kEventRow_px);
  view->horizontalHeader()->setSectionResizeMode(EventListModel::Time, QHeaderView::ResizeToContents);
  view->horizontalHeader()->setSectionResizeMode(EventListModel::Words, QHeaderView::Stretch);
  view->setSelectionBehavior(QAbstractItemView::SelectRows);
  view->setSelectionMode(QAbstractItemView::SingleSelection);
  view->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  view->setTextElideMode(Qt::ElideRight);
  view->setTabKeyNavigation(false);
  view->setFixedHeight(events_->rowCount() * kEventRow_px + 2);
  connect(view, &QTableView::clicked, this,
          [this](const QModelIndex& at) { emit timeChosen(events_->timeOf(at.row())); });
  connect(view, &QTableView::activated, this,
          [this](const QModelIndex& at) { emit timeChosen(events_->timeOf(at.row())); });
  eventView_ = view;
  column.addWidget(view);
}

void ShotPanel::addMiss(QVBoxLayout& column) {
  const ShotReading& reading = shot_->reading;
  if (reading.outcome != Outcome::Miss || !reading.target) return;
  const QString sentence = missSentence(*reading.target, reading.missAccount, numbers_);
  if (sentence.isEmpty()) return;
  column.addWidget(sectionTitle(tr("Why it missed")));
  QLabel* words = label(sentence, 1.0, false, false);
  words->setObjectName(QStringLiteral("missWords"));
  column.addWidget(words);
  if (!reading.missAccount) return;
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(2);
  grid->setColumnStretch(2, 1);
  int row = 0;
  for (const MissPart& part : missParts(*reading.missAccount, numbers_)) {
    grid->addWidget(label(part.name, 1.0, false, false), row, 0);
    QLabel* value = label(part.shown.value, 1.0, true, false);
    value->setWordWrap(false);
    value->setAlignment(Qt::AlignRight);
    grid->addWidget(value, row, 1);
    grid->addWidget(label(part.shown.uncertainty, 0.85, false, true), row, 2, Qt::AlignBottom);
    ++row;
  }
  column.addLayout(grid);
  column.addWidget(label(tr("Turn of the object ball's line, + to the left seen along the shot."), 0.85, false, true));
}

void ShotPanel::addChoice(QVBoxLayout& column) {
  if (!kept_) return;
  column.addWidget(sectionTitle(tr("Suggested and taken")));
  QLabel* words = label(choiceWords(*kept_, shot_->suggestion->shown), 1.0, false, false);
  words->setObjectName(QStringLiteral("choiceWords"));
  column.addWidget(words);
  const auto rows = planRows(*kept_, numbers_);
  if (rows.empty()) return;
  auto* grid = new QGridLayout;
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(2);
  grid->setColumnStretch(1, 1);
  grid->setColumnStretch(2, 1);
  grid->addWidget(label(tr("suggested", "column"), 0.88, true, true), 0, 1);
  grid->addWidget(label(tr("taken", "column"), 0.88, true, true), 0, 2);
  int row = 1;
  for (const PlanRow& plan : rows) {
    grid->addWidget(label(plan.name, 1.0, false, false), row, 0, Qt::AlignTop);
    grid->addWidget(label(plan.suggested, 1.0, false, false), row, 1, Qt::AlignTop);
    grid->addWidget(label(plan.taken, 1.0, true, false), row, 2, Qt::AlignTop);
    ++row;
  }
  column.addLayout(grid);
}

void ShotPanel::addCorrections(QVBoxLayout& column) {
  const auto lines = correctionLines(*shot_, numbers_);
  if (lines.empty()) return;
  column.addWidget(sectionTitle(tr("Corrections")));
  for (const CorrectionLine& line : lines) {
    QLabel* words = label(line.words, 1.0, false, false);
    words->setObjectName(QStringLiteral("correctionLine"));
    column.addWidget(words);
    auto* row = new QHBoxLayout;
    row->addWidget(label(line.by, 0.85, false, true), 1);
    auto* back = new QPushButton(tr("Take back"));
    back->setObjectName(QStringLiteral("takeBack"));
    back->setAccessibleName(tr("Take back: %1").arg(line.words));
    connect(back, &QPushButton::clicked, this, [this, id = line.id] { emit takeBackWanted(id); });
    row->addWidget(back);
    column.addLayout(row);
  }
}

void ShotPanel::addLines(QVBoxLayout& column, const QString& title, const QStringList& lines, const QString& name) {
  if (lines.isEmpty()) return;
  column.addWidget(sectionTitle(title));
  QLabel* text = label(lines.join(QLatin1Char('\n')), 1.0, false, false);
  text->setObjectName(name);
  column.addWidget(text);
}

void ShotPanel::changeEvent(QEvent* event) {
  QScrollArea::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) rebuild();
}

}  // namespace ferrule
