// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/map_page.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/setup/error_map_view.h"
#include "app/setup/figure_table.h"
#include "app/setup/setup_words.h"
#include "app/window/card.h"
#include "app/window/inks.h"
#include "app/words/joining.h"
#include "app/words/trade_words.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr int kTableRow_px = 26;
constexpr int kSide_px = 340;
/// Less says nothing that anybody could improve.
constexpr double kWorthNaming = 0.02;

}  // namespace

MapPage::MapPage(SetupDesk& desk, QWidget* parent) : SetupPage(desk, SetupStep::Map, parent) {
  setObjectName(QStringLiteral("mapPage"));
  auto* row = new QHBoxLayout;
  row->setSpacing(16);
  auto* left = new QVBoxLayout;
  auto* head = new QLabel(tr("A ball lies within so many millimetres of its place (95\u00a0%)"));
  head->setFont(scaled(font(), 1.0, true));
  head->setWordWrap(true);
  left->addWidget(head);
  map_ = new ErrorMapView;
  left->addWidget(map_, 1);
  row->addLayout(left, 1);
  auto* side = new QWidget;
  side->setFixedWidth(kSide_px);
  auto* right = new QVBoxLayout(side);
  right->setContentsMargins(0, 0, 0, 0);
  right->setSpacing(8);
  place_ = new QLabel;
  place_->setObjectName(QStringLiteral("budgetPlace"));
  place_->setWordWrap(true);
  place_->setFont(scaled(font(), 1.0, true));
  right->addWidget(place_);
  budget_ = figureTable("budget", {tr("Comes from"), tr("Standard uncertainty")});
  budget_->setAccessibleName(tr("Where the uncertainty comes from, at the marked place"));
  budget_->verticalHeader()->setDefaultSectionSize(kTableRow_px);
  budget_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  budget_->horizontalHeader()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
  right->addWidget(budget_);
  right->addWidget(makeShot());
  right->addStretch(1);
  row->addWidget(side);
  column()->addLayout(row, 1);
  connect(map_, &ErrorMapView::placeChosen, this, &MapPage::showBudget);
  MapPage::refresh();
}

QWidget* MapPage::makeShot() {
  auto* card = new Card;
  auto* form = new QFormLayout(card);
  form->setContentsMargins(12, 12, 12, 12);
  form->setVerticalSpacing(6);
  auto* head = new QLabel(tr("What it is worth in a shot"));
  head->setFont(scaled(font(), 1.0, true));
  form->addRow(head);
  pocket_ = new QComboBox;
  pocket_->setObjectName(QStringLiteral("worthPocket"));
  for (const PocketName name : kPocketNames)
    pocket_->addItem(pocketWords(name), static_cast<int>(name));
  pocket_->setCurrentIndex(pocket_->count() - 2);
  form->addRow(tr("&Pocket"), pocket_);
  objectX_ = millimetres("worthX", tr("The object ball, toward the foot"), -2500.0, 2500.0, 0);
  objectY_ = millimetres("worthY", tr("The object ball, to the left"), -2500.0, 2500.0, 0);
  objectX_->setValue(600.0);
  objectY_->setValue(200.0);
  // In some languages a row's words are longer than half of this narrow card.
  form->setRowWrapPolicy(QFormLayout::WrapLongRows);
  form->addRow(tr("Object ball &x"), objectX_);
  form->addRow(tr("Object ball &y"), objectY_);
  cut_ = new QDoubleSpinBox;
  cut_->setObjectName(QStringLiteral("worthCut"));
  cut_->setAccessibleName(tr("Cut angle; less than 0: to the right"));
  cut_->setRange(-85.0, 85.0);
  cut_->setDecimals(1);
  cut_->setSuffix(QStringLiteral("°"));
  cut_->setValue(30.0);
  form->addRow(tr("&Cut"), cut_);
  away_ = millimetres("worthAway", tr("How far the cue ball rolls before it meets the object ball"), 60.0, 2500.0, 0);
  away_->setValue(600.0);
  form->addRow(tr("Cue ball a&way"), away_);
  worth_ = new QLabel;
  worth_->setObjectName(QStringLiteral("worthWords"));
  first_ = new QLabel;
  first_->setObjectName(QStringLiteral("worthFirst"));
  for (QLabel* label : {worth_, first_}) {
    label->setWordWrap(true);
    form->addRow(label);
  }
  off_ = millimetres("worthOff", tr("Places that are off by so much"), 0.1, 50.0, 1);
  off_->setValue(5.0);
  form->addRow(tr("If places were &off by"), off_);
  stated_ = new QLabel;
  stated_->setObjectName(QStringLiteral("worthStated"));
  stated_->setWordWrap(true);
  form->addRow(stated_);
  for (QDoubleSpinBox* box : {objectX_, objectY_, cut_, away_, off_})
    connect(box, &QDoubleSpinBox::valueChanged, this, &MapPage::showWorth);
  connect(pocket_, &QComboBox::currentIndexChanged, this, &MapPage::showWorth);
  return card;
}

void MapPage::refresh() {
  map_->setMap(desk().errorMap(), desk().rig() ? desk().rigTable() : desk().state().measured);
  showBudget();
  showWorth();
}

void MapPage::showBudget() {
  const auto at = desk().errorMap() ? desk().errorMap()->at(map_->place()) : std::nullopt;
  budget_->setVisible(at.has_value());
  if (!at) {
    place_->setText(desk().errorMap() ? tr("The camera does not see this place.") : tr("There is no rig yet."));
    return;
  }
  const auto mm = [&](double length_m, int decimals) {
    return tr("%1 mm").arg(numbers().fixed(millimetresFromMetres(length_m), decimals));
  };
  place_->setText(tr("At x %1, y %2: within %3 (95\u00a0%)")
                      .arg(mm(map_->place().x, 0), mm(map_->place().y, 0), mm(at->reach95_m(), 1)));
  const auto put = [&](int row, const QString& words, const QString& value) {
    setFigure(budget_, row, 0, words);
    setFigure(budget_, row, 1, value, true);
  };
  budget_->setRowCount(static_cast<int>(at->budget.size()) + 1);
  int row = 0;
  for (const BudgetLine& line : at->budget)
    put(row++, componentWords(line.component), mm(line.u_m(), 2));
  put(row, tr("All together"), mm(at->u_m(), 2));
  QFont bold = budget_->font();
  bold.setBold(true);
  budget_->item(row, 0)->setFont(bold);
  budget_->item(row, 1)->setFont(bold);
  budget_->setFixedHeight(budget_->horizontalHeader()->sizeHint().height() + budget_->rowCount() * kTableRow_px + 4);
}

void MapPage::showWorth() {
  const auto& map = desk().errorMap();
  const MeasuredTable& measured = map ? desk().rigTable() : desk().state().measured;
  const double radius_m = measured.balls.radius_m();
  const Pocket pocket = pockets(measured.table).at(static_cast<std::size_t>(pocket_->currentIndex()));
  const TablePoint object{metresFromMillimetres(objectX_->value()), metresFromMillimetres(objectY_->value())};
  const TablePoint cue =
      cueBallForCut(object, pocket, radius_m, radiansFromDegrees(cut_->value()), metresFromMillimetres(away_->value()));
  const auto fits = [&](TablePoint p) {
    return std::abs(p.x) <= 0.5 * measured.table.length_m - radius_m &&
           std::abs(p.y) <= 0.5 * measured.table.width_m - radius_m;
  };
  first_->clear();
  stated_->clear();
  if (!fits(object) || !fits(cue)) {
    map_->setShot(std::nullopt);
    worth_->setText(tr("One of the balls would lie off the table; choose another place, cut or distance."));
    return;
  }
  map_->setShot(std::array{cue, object, pocket.mouth});
  const auto worth = map ? shotWorth(*map, cue, object, pocket) : std::nullopt;
  worth_->setText(worth ? worthWords(*worth, numbers()) : tr("There is no rig yet."));
  if (worth && !worth->shares.empty()) {
    QStringList parts;
    for (const auto& [component, share] : worth->shares) {
      if (share < kWorthNaming) continue;
      parts << tr("%1 %2\u00a0%", "component, its share")
                   .arg(componentWords(component), numbers().fixed(100.0 * share, 0));
    }
    first_->setText(tr("It comes from: %1. %2").arg(listOf(parts), cureWords(worth->shares.front().first)));
  }
  const auto stated = shotWorthOf(metresFromMillimetres(off_->value()), radius_m, cue, object, pocket);
  stated_->setText(stated ? worthWords(*stated, numbers())
                          : tr("With places so far off the cue ball may miss the object ball altogether."));
}

}  // namespace ferrule
