// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/detail_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/drills/drill_desk.h"
#include "app/progress/chart_view.h"
#include "app/report/drill_charts.h"
#include "app/window/inks.h"
#include "app/window/plain_parts.h"
#include "app/window/wrapping_row.h"
#include "app/words/drill_words.h"
#include "app/words/joining.h"

namespace ferrule {

namespace {

constexpr int kBetweenCounts_ms = 2000;

}  // namespace

DetailPanel::DetailPanel(DrillDesk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName(QStringLiteral("drillPanel"));
  text_ = wordsLabel("drillText");
  caution_ = wordsLabel("drillCaution");
  caution_->setFont(scaled(font(), 1.0, true));
  goals_ = wordsLabel("drillGoals");
  places_ = wordsLabel("drillPlaces");
  sides_ = new QCheckBox(tr("Left and right exchanged"));
  sides_->setObjectName(QStringLiteral("mirrorSides"));
  ends_ = new QCheckBox(tr("Head and foot exchanged"));
  ends_->setObjectName(QStringLiteral("mirrorEnds"));
  for (QCheckBox* box : {sides_, ends_}) {
    connect(box, &QCheckBox::clicked, this, [this] { desk_.mirror({sides_->isChecked(), ends_->isChecked()}); });
  }
  anew_ = namedButton(tr("Spread the balls anew"), "throwAnew");
  connect(anew_, &QPushButton::clicked, &desk_, &DrillDesk::throwAnew);
  chart_ = new ChartView;
  chart_->setObjectName(QStringLiteral("drillHistory"));
  history_ = wordsLabel("drillChange");
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 12, 16, 12);
  column->setSpacing(12);
  column->addWidget(text_);
  column->addWidget(caution_);
  column->addWidget(goals_);
  column->addWidget(sides_);
  column->addWidget(ends_);
  column->addWidget(places_);
  column->addWidget(anew_, 0, Qt::AlignLeft);
  column->addWidget(makeBegin());
  column->addWidget(chart_);
  column->addWidget(history_);
  column->addWidget(makeCount());
  column->addWidget(makeOwn());
  column->addStretch(1);
}

QWidget* DetailPanel::makeBegin() {
  auto* box = new QWidget;
  auto* form = new QFormLayout(box);
  form->setContentsMargins(0, 0, 0, 0);
  form->setVerticalSpacing(8);
  form->setRowWrapPolicy(QFormLayout::WrapLongRows);
  player_ = narrowBox();
  player_->setObjectName(QStringLiteral("runPlayer"));
  player_->setEditable(true);
  player_->setToolTip(tr("Whose run it is; may stay empty"));
  form->addRow(tr("&Player"), player_);
  table_ = narrowBox();
  table_->setObjectName(QStringLiteral("runTable"));
  table_->setEditable(true);
  for (const TableSize& size : tableSizes())
    table_->addItem(QString::fromUtf8(size.name));
  table_->setToolTip(tr("A usual size, or the path of a table file"));
  connect(table_, &QComboBox::textActivated, this, [this] { takeTable(); });
  connect(table_->lineEdit(), &QLineEdit::editingFinished, this, [this] { takeTable(); });
  form->addRow(tr("&Table"), table_);
  // A label's size is rounded down from its text's, which cuts the last letter.
  for (QWidget* field : std::initializer_list<QWidget*>{player_, table_}) {
    QWidget* label = form->labelForField(field);
    label->setMinimumWidth(label->sizeHint().width() + 2);
  }
  begin_ = namedButton(tr("Begin a run"), "beginRun");
  connect(begin_, &QPushButton::clicked, this, [this] {
    if (takeTable()) desk_.beginRun(player_->currentText().trimmed().toStdString());
  });
  form->addRow(begin_);
  resume_ = namedButton({}, "resumeRun");
  connect(resume_, &QPushButton::clicked, &desk_, &DrillDesk::resumeRun);
  form->addRow(resume_);
  return box;
}

QWidget* DetailPanel::makeCount() {
  auto* box = new QWidget;
  auto* column = new QVBoxLayout(box);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  auto* words = new QLabel(tr("Or find the tries in a session that was recorded:"));
  words->setWordWrap(true);
  session_ = narrowBox();
  session_->setObjectName(QStringLiteral("countedSession"));
  session_->setAccessibleName(tr("Recorded session"));
  count_ = namedButton(tr("Count its tries"), "countSession");
  connect(count_, &QPushButton::clicked, this, [this] {
    if (session_->currentIndex() >= 0) desk_.countSession(SessionId{session_->currentData().toLongLong()});
  });
  column->addWidget(words);
  column->addWidget(session_);
  countsOn_ = new QCheckBox(tr("Count on while it is played"));
  countsOn_->setObjectName(QStringLiteral("countsOn"));
  countsOn_->setToolTip(tr("For a session that is live or being measured from a film"));
  counting_.setInterval(kBetweenCounts_ms);
  connect(&counting_, &QTimer::timeout, this, [this] {
    if (session_->currentIndex() >= 0) desk_.countGrowingSession(SessionId{session_->currentData().toLongLong()});
  });
  connect(countsOn_, &QCheckBox::toggled, this, [this](bool on) { on ? counting_.start() : counting_.stop(); });
  column->addWidget(count_, 0, Qt::AlignLeft);
  column->addWidget(countsOn_);
  return box;
}

QWidget* DetailPanel::makeOwn() {
  auto* box = new QWidget;
  auto* row = new WrappingRow(box);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(4);
  edit_ = namedButton(tr("Edit"), "editDrill");
  remove_ = namedButton(tr("Delete"), "removeDrill");
  remove_->setToolTip(tr("Its runs stay; undo brings it back"));
  auto* copy = namedButton(tr("Copy and change"), "copyDrill");
  auto* write = namedButton(tr("Export…"), "exportDrill");
  connect(edit_, &QPushButton::clicked, this, &DetailPanel::editWanted);
  connect(remove_, &QPushButton::clicked, this, &DetailPanel::removeWanted);
  connect(copy, &QPushButton::clicked, this, &DetailPanel::copyWanted);
  connect(write, &QPushButton::clicked, this, &DetailPanel::exportWanted);
  for (QPushButton* each : {copy, edit_, remove_, write})
    row->addWidget(each);
  return box;
}

void DetailPanel::putTable(const QString& table) {
  table_->setCurrentText(table);
  takeTable();
}

bool DetailPanel::takeTable() {
  const QString table = table_->currentText().trimmed();
  auto measured = measuredTableFrom(table.toStdString());
  if (!measured) {
    emit failed(measured.error());
    return false;
  }
  desk_.setTable(QFileInfo(table).completeBaseName().toStdString(), *measured);
  return true;
}

void DetailPanel::refresh(const Numbers& numbers) {
  const Drill played = desk_.played();
  const DrillStation& station = played.stations[desk_.station()];
  text_->setText(drillText(played));
  QStringList cautions;
  for (const DrillCaution caution : played.cautions)
    cautions << cautionSentence(caution);
  caution_->setText(cautions.join(QLatin1Char('\n')));
  caution_->setVisible(!cautions.isEmpty());
  QStringList goals;
  for (const DrillGoal& goal : station.goals)
    goals << goalWords(goal, numbers);
  goals_->setText(tr("A try counts when: %1; %2 tries.").arg(listApart(goals), numbers.whole(trialsOf(played))));
  QStringList places;
  for (const BallAt& ball : setUpOf(station, desk_.table(), desk_.seed())) {
    if (!station.rack || ball.ball.isCueBall()) places << placeSentence(ball, desk_.table(), numbers);
  }
  if (!station.cueBall) places.prepend(tr("Cue ball in hand."));
  places_->setText(places.join(QLatin1Char('\n')));
  sides_->setChecked(desk_.mirroring().sides);
  ends_->setChecked(desk_.mirroring().ends);
  ends_->setEnabled(played.turnsRound);
  anew_->setVisible(station.loose.has_value());
  const QSignalBlocker quietPlayer(player_);
  const QString player = player_->currentText();
  player_->clear();
  for (const std::string& name : desk_.shelf().players)
    player_->addItem(QString::fromStdString(name));
  player_->setCurrentText(player);
  const QVariant session = session_->currentData();
  session_->clear();
  for (const SessionSummary& summary : desk_.shelf().sessions) {
    session_->addItem(QString::fromStdString(summary.name), QVariant::fromValue<qlonglong>(summary.id.value));
    session_->setItemData(session_->count() - 1, runDate(summary.started, numbers), Qt::ToolTipRole);
  }
  session_->setCurrentIndex(std::max(0, session_->findData(session)));
  session_->setEnabled(session_->count() > 0);
  count_->setEnabled(session_->count() > 0);
  begin_->setEnabled(desk_.wasRead());
  const KeptRun* broken = desk_.brokenRun();
  resume_->setVisible(broken != nullptr);
  if (broken != nullptr) {
    resume_->setText(tr("Go on with the last run (%1 of %2)")
                         .arg(numbers.whole(static_cast<long long>(broken->trials.size())),
                              numbers.whole(trialsOf(broken->played()))));
  }
  const bool own = desk_.isOwn(desk_.drill().key);
  edit_->setVisible(own);
  remove_->setVisible(own);
  showHistory(numbers);
}

namespace {

DrillHistory historyOfRuns(const std::vector<const KeptRun*>& runs) {
  std::vector<RunShare> shares;
  for (const KeptRun* run : runs)
    shares.push_back({run->started, scoreOf(run->terms.drill, run->trials).all});
  return historyOf(shares);
}

}  // namespace

void DetailPanel::showHistory(const Numbers& numbers) {
  const DrillHistory history = historyOfRuns(desk_.runsHere());
  const QString title = tr("Tries that met every goal");
  chart_->setChart(title, historyChart(history, title, numbers),
                   tr("No run yet: how the tries come out over the weeks will stand here."));
  history_->setVisible(!history.runs.empty());
  if (history.runs.empty()) return;
  QStringList lines;
  if (history.together) {
    lines << tr("All runs together: %1, between %2 and %3, of %4 tries.")
                 .arg(numbers.percent(history.together->value), numbers.percent(history.together->interval.least),
                      numbers.percent(history.together->interval.most), numbers.whole(history.together->shots));
  } else {
    lines << tr("Not enough yet: %1 of %2 tries.")
                 .arg(numbers.whole(history.together.error().have), numbers.whole(history.together.error().need));
  }
  if (history.best) {
    const RunShare& best = history.runs[*history.best];
    lines << tr("Best run: %1, %2.").arg(shareWords(best.share, numbers), runDate(best.started_ms, numbers));
  }
  lines << changeSentence(history, numbers);
  history_->setText(lines.join(QLatin1Char('\n')));
}

}  // namespace ferrule
