// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/editor_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/drills/drill_desk.h"
#include "app/drills/drill_edits.h"
#include "app/drills/zone_editor.h"
#include "app/window/plain_parts.h"
#include "app/window/tool_button.h"
#include "app/window/wrapping_row.h"
#include "app/words/drill_words.h"
#include "app/words/joining.h"
#include "app/words/name_list.h"
#include "app/words/trade_words.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr int kTextHeight_px = 96;
constexpr double kMostReach_mm = 1000.0;

QCheckBox* check(const QString& text, const char* name) {
  auto* made = new QCheckBox(text);
  made->setObjectName(QString::fromLatin1(name));
  return made;
}

}  // namespace

EditorPanel::EditorPanel(DrillDesk& desk, const ActionSet& actions, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName(QStringLiteral("editorPanel"));
  faults_ = wordsLabel("drillFaults");
  keep_ = namedButton(tr("Keep the drill"), "keepDrill");
  auto* drop = namedButton(tr("Do not keep"), "dropDrill");
  connect(keep_, &QPushButton::clicked, &desk_, &DrillDesk::keepDraft);
  connect(drop, &QPushButton::clicked, &desk_, &DrillDesk::dropDraft);
  auto* ends = new WrappingRow;
  ends->setSpacing(4);
  ends->addWidget(keep_);
  ends->addWidget(drop);
  for (const ActionId id : {ActionId::Undo, ActionId::Redo})
    ends->addWidget(toolButton(actions.at(id)));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 12, 16, 12);
  column->setSpacing(12);
  column->addWidget(makeForm());
  column->addWidget(makeSetUps());
  column->addWidget(faults_);
  column->addLayout(ends);
  column->addStretch(1);
}

QWidget* EditorPanel::makeForm() {
  const auto change = [this](auto edit) {
    return [this, edit] {
      Drill draft = desk_.drill();
      edit(draft);
      desk_.change(draft);
    };
  };
  auto* box = new QWidget;
  auto* form = new QFormLayout(box);
  form->setContentsMargins(0, 0, 0, 0);
  form->setVerticalSpacing(8);
  form->setRowWrapPolicy(QFormLayout::WrapLongRows);
  title_ = new QLineEdit;
  title_->setObjectName(QStringLiteral("editTitle"));
  connect(title_, &QLineEdit::editingFinished, this,
          change([this](Drill& draft) { draft.title = title_->text().trimmed().toStdString(); }));
  form->addRow(tr("&Name"), title_);
  text_ = new QPlainTextEdit;
  text_->setObjectName(QStringLiteral("editText"));
  text_->setTabChangesFocus(true);
  text_->setFixedHeight(kTextHeight_px);
  form->addRow(tr("What it is f&or"), text_);
  tags_ = new QLineEdit;
  tags_->setObjectName(QStringLiteral("editTags"));
  tags_->setPlaceholderText(tr("Words with commas"));
  connect(tags_, &QLineEdit::editingFinished, this,
          change([this](Drill& draft) { draft.tags = namesIn(tags_->text()); }));
  form->addRow(tr("&Kinds"), tags_);
  ask_ = new QComboBox;
  ask_->setObjectName(QStringLiteral("editAsk"));
  ask_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  for (const auto& [words, ask] :
       std::initializer_list<std::pair<QString, DrillAsk>>{{tr("Pot"), DrillAsk::Pot},
                                                           {tr("Pot and leave"), DrillAsk::PotAndRest},
                                                           {tr("Leave alone"), DrillAsk::Rest},
                                                           {tr("Hit and hide"), DrillAsk::ContactAndHide},
                                                           {tr("Clear the table"), DrillAsk::Clear},
                                                           {tr("As it is"), DrillAsk::Other}})
    ask_->addItem(words, static_cast<int>(ask));
  connect(ask_, &QComboBox::activated, this,
          [this] { desk_.change(withAsk(desk_.drill(), static_cast<DrillAsk>(ask_->currentData().toInt()))); });
  form->addRow(tr("&Asked"), ask_);
  trials_ = new QSpinBox;
  trials_->setObjectName(QStringLiteral("editTrials"));
  trials_->setRange(1, kMostTrials);
  connect(trials_, &QSpinBox::editingFinished, this,
          change([this](Drill& draft) { draft.stations[desk_.station()].trials = trials_->value(); }));
  form->addRow(tr("&Tries"), trials_);
  reach_ = new QDoubleSpinBox;
  reach_->setObjectName(QStringLiteral("editReach"));
  reach_->setRange(1.0, kMostReach_mm);
  reach_->setDecimals(0);
  reach_->setSuffix(QStringLiteral(" mm"));
  connect(reach_, &QDoubleSpinBox::editingFinished, this, [this] { widenZone(reach_->value()); });
  reachLabel_ = new QLabel(tr("&Zone's radius"));
  reachLabel_->setBuddy(reach_);
  form->addRow(reachLabel_, reach_);
  jump_ = check(tr("A jump shot: show the caution"), "editJump");
  connect(jump_, &QCheckBox::clicked, this, change([this](Drill& draft) {
            std::erase(draft.cautions, DrillCaution::Jump);
            if (jump_->isChecked()) draft.cautions.push_back(DrillCaution::Jump);
          }));
  form->addRow(jump_);
  turns_ = check(tr("Means the same from the other end"), "editTurns");
  connect(turns_, &QCheckBox::clicked, this, change([this](Drill& draft) { draft.turnsRound = turns_->isChecked(); }));
  form->addRow(turns_);
  // Text that is typed counts once it is left.
  text_->installEventFilter(this);
  return box;
}

QWidget* EditorPanel::makeSetUps() {
  auto* box = new QWidget;
  auto* row = new WrappingRow(box);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(4);
  ball_ = new QComboBox;
  ball_->setObjectName(QStringLiteral("editBall"));
  ball_->setAccessibleName(tr("Ball"));
  auto* bring = namedButton(tr("Put it on the table"), "bringBall");
  connect(bring, &QPushButton::clicked, this, &EditorPanel::bringBall);
  auto* more = namedButton(tr("One set-up more"), "addSetUp");
  less_ = namedButton(tr("Remove this set-up"), "removeSetUp");
  connect(more, &QPushButton::clicked, this, &EditorPanel::addSetUp);
  connect(less_, &QPushButton::clicked, this, &EditorPanel::removeSetUp);
  inTurn_ = check(tr("Set-ups in turn, try by try"), "editInTurn");
  connect(inTurn_, &QCheckBox::clicked, this, [this] {
    Drill draft = desk_.drill();
    draft.order = inTurn_->isChecked() ? StationOrder::InTurn : StationOrder::Blocks;
    desk_.change(draft);
  });
  for (QWidget* widget : std::initializer_list<QWidget*>{ball_, bring, more, less_, inTurn_})
    row->addWidget(widget);
  return box;
}

bool EditorPanel::eventFilter(QObject* object, QEvent* event) {
  if (object == text_ && event->type() == QEvent::FocusOut) {
    Drill draft = desk_.drill();
    draft.text = text_->toPlainText().trimmed().toStdString();
    desk_.change(draft);
  }
  return QWidget::eventFilter(object, event);
}

void EditorPanel::addSetUp() {
  Drill draft = desk_.drill();
  draft.stations.push_back(draft.stations[desk_.station()]);
  desk_.change(draft);
  desk_.showStation(draft.stations.size() - 1);
}

void EditorPanel::removeSetUp() {
  Drill draft = desk_.drill();
  if (draft.stations.size() < 2) return;
  draft.stations.erase(draft.stations.begin() + static_cast<std::ptrdiff_t>(desk_.station()));
  desk_.change(draft);
}

void EditorPanel::bringBall() {
  const auto ball = ballFromText(ball_->currentData().toString().toStdString());
  if (!ball) return;
  const Table& table = desk_.table().table;
  desk_.change(withBall(desk_.drill(), desk_.station(), *ball, ball->isCueBall() ? headSpot(table) : footSpot(table),
                        0.0, desk_.table()));
}

void EditorPanel::widenZone(double reach_mm) {
  const Zone* zone = zoneOf(desk_.drill().stations[desk_.station()]);
  if (zone == nullptr) return;
  Zone wider = *zone;
  wider.reach_widths = metresFromMillimetres(reach_mm) / desk_.table().table.width_m;
  desk_.change(withZone(desk_.drill(), desk_.station(), wider));
}

void EditorPanel::refresh() {
  if (!desk_.isEditing()) return;
  const Drill& draft = desk_.drill();
  const DrillStation& station = draft.stations[desk_.station()];
  title_->setText(QString::fromStdString(draft.title));
  const QString text = QString::fromStdString(draft.text);
  if (text_->toPlainText().trimmed() != text && !text_->hasFocus()) text_->setPlainText(text);
  QStringList tags;
  for (const std::string& tag : draft.tags)
    tags << QString::fromStdString(tag);
  tags_->setText(listOf(tags));
  ask_->setCurrentIndex(ask_->findData(static_cast<int>(askOf(station))));
  trials_->setValue(station.trials);
  const Zone* zone = zoneOf(station);
  const bool round = zone != nullptr && zone->corners.size() == 1;
  reach_->setVisible(round);
  reachLabel_->setVisible(round);
  if (round) reach_->setValue(millimetresFromMetres(zone->reach_widths * desk_.table().table.width_m));
  inTurn_->setChecked(draft.order == StationOrder::InTurn);
  inTurn_->setVisible(draft.stations.size() > 1);
  turns_->setChecked(draft.turnsRound);
  jump_->setChecked(std::ranges::find(draft.cautions, DrillCaution::Jump) != draft.cautions.end());
  less_->setEnabled(draft.stations.size() > 1);
  ball_->clear();
  const Position balls = setUpOf(station, desk_.table());
  for (int number = 0; number < BallName::kCount; ++number) {
    const BallName ball(number);
    if (ballIn(balls, ball) == nullptr) ball_->addItem(ballWordsAtStart(ball), QString::fromStdString(toText(ball)));
  }
  QStringList faults;
  for (const DrillFinding& finding : faultsOf(draft, desk_.table())) {
    const QString sentence = faultSentence(finding);
    if (!faults.contains(sentence)) faults << sentence;
  }
  faults_->setText(faults.join(QLatin1Char('\n')));
  faults_->setVisible(!faults.isEmpty());
  keep_->setEnabled(faults.isEmpty());
}

}  // namespace ferrule
