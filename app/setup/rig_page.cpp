// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/rig_page.h"

#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/setup/figure_table.h"
#include "app/setup/lines_panel.h"
#include "app/words/joining.h"
#include "app/words/trade_words.h"
#include "core/camera/rig_calibration.h"
#include "core/camera/rig_from_lines.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr int kWidest_px = 860;

QTableWidget* listOf(const char* name, const QStringList& heads) {
  QTableWidget* table = figureTable(name, heads);
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table->setMaximumWidth(kWidest_px);
  return table;
}

void put(QTableWidget* table, int row, const QStringList& words) {
  for (int column = 0; column < words.size(); ++column)
    setFigure(table, row, column, words[column], column > 0);
}

void fitRows(QTableWidget* table) {
  table->setFixedHeight(table->horizontalHeader()->sizeHint().height() + table->rowCount() * kFigureRow_px + 4);
}

}  // namespace

RigPage::RigPage(SetupDesk& desk, QWidget* parent) : SetupPage(desk, SetupStep::Rig, parent) {
  setObjectName(QStringLiteral("rigPage"));
  from_ = addQuiet({});
  from_->setObjectName(QStringLiteral("rigFrom"));
  QPushButton* make = button("makeRig", tr("&Make the rig"));
  addButtons({make});
  lines_ = new LinesPanel(desk);
  column()->addWidget(lines_, 6);
  result_ = new QLabel;
  result_->setObjectName(QStringLiteral("rigResult"));
  result_->setWordWrap(true);
  column()->addWidget(result_);
  tags_ = listOf("rigTags", {tr("Tag"), tr("Off in the picture"), tr("Off on its rail"), tr("Found by the others")});
  tags_->setAccessibleName(tr("How well each tag agrees"));
  column()->addWidget(tags_);
  noses_ = listOf("rigNoses", {tr("Cushion"), tr("Straight to (rms)"), tr("At most")});
  noses_->setAccessibleName(tr("How straight each cushion's nose comes out"));
  column()->addWidget(noses_);
  gain_ = new QLabel;
  gain_->setObjectName(QStringLiteral("rigGain"));
  gain_->setWordWrap(true);
  column()->addWidget(gain_);
  column()->addStretch(1);
  connect(make, &QPushButton::clicked, &desk, &SetupDesk::makeRig);
  RigPage::refresh();
}

void RigPage::refresh() {
  lines_->refresh(numbers());
  const SetupState& state = desk().state();
  const QString film = state.film.isEmpty() ? tr("no film yet") : QFileInfo(state.film).fileName();
  const QString lens = state.withoutBoard     ? tr("the lens from the cushions")
                       : state.lens.isEmpty() ? tr("no lens yet")
                                              : QFileInfo(state.lens).fileName();
  from_->setText(state.withoutTags ? tr("From %1, with %2, the cushions and the sights.").arg(film, lens)
                                   : tr("From %1, with %2 and the tags on the rails.").arg(film, lens));
  const auto& rig = desk().rig();
  for (QWidget* each : std::initializer_list<QWidget*>{tags_, noses_, gain_})
    each->setVisible(rig.has_value());
  if (!rig) {
    result_->setText(tr("No rig yet."));
    return;
  }
  const auto mm = [&](double length_m, int decimals = 2) {
    return tr("%1 mm").arg(numbers().fixed(millimetresFromMetres(length_m), decimals));
  };
  const TablePoint3 eye = cameraPosition(*rig);
  const QString along =
      eye.x >= 0.0 ? tr("%1 toward the foot").arg(mm(eye.x, 0)) : tr("%1 toward the head").arg(mm(-eye.x, 0));
  const QString across =
      eye.y >= 0.0 ? tr("%1 to the left").arg(mm(eye.y, 0)) : tr("%1 to the right").arg(mm(-eye.y, 0));
  const QString place =
      tr("The camera sits %1 above the cloth, %2 and %3 of the table's middle.").arg(mm(eye.z, 0), along, across);
  QString verdict;
  if (rig->verdict == kNosesBent) {
    const auto worst = std::ranges::max_element(rig->noses, {}, &NoseStraightness::max_m);
    verdict =
        tr("The cushions come out bent by up to %1: the lens belongs to another camera, or the film was corrected "
           "before. Calibrate the lens of this camera.")
            .arg(mm(worst->max_m, 1));
  } else if (rig->verdict == kTagsDisagree) {
    verdict = tr("The cushions come out straight but the tags disagree by %1: measure their places and heights again.")
                  .arg(mm(rig->tagRms_m, 1));
  } else if (isFromCushions(*rig)) {
    verdict = tr("Camera and cushions agree.");
  } else {
    verdict = tr("The tags agree to %1 (%2 px).").arg(mm(rig->tagRms_m), numbers().fixed(rig->poseRms_px, 2));
  }
  result_->setText(sentencesOf({verdict, place}));
  tags_->setVisible(!rig->tags.empty());
  tags_->setRowCount(static_cast<int>(rig->tags.size()));
  for (int row = 0; row < tags_->rowCount(); ++row) {
    const TagResidual& tag = rig->tags[static_cast<std::size_t>(row)];
    put(tags_, row,
        {QString::number(tag.id), tr("%1 px").arg(numbers().fixed(tag.rms_px, 2)), mm(tag.rms_m),
         mm(tag.leaveOneOut_m)});
  }
  fitRows(tags_);
  noses_->setVisible(!rig->noses.empty());
  noses_->setRowCount(static_cast<int>(rig->noses.size()));
  for (int row = 0; row < noses_->rowCount(); ++row) {
    const NoseStraightness& nose = rig->noses[static_cast<std::size_t>(row)];
    put(noses_, row, {atStart(cushionWords(nose.cushion)), mm(nose.rms_m), mm(nose.max_m)});
  }
  fitRows(noses_);
  const Table& table = desk().rigTable().table;
  const auto middle = desk().errorMap() ? desk().errorMap()->at({0.0, 0.0}) : std::nullopt;
  const auto far =
      desk().errorMap() ? desk().errorMap()->at({0.45 * table.length_m, 0.45 * table.width_m}) : std::nullopt;
  if (!middle || !far) return gain_->setText({});
  QString words = tr("A ball lies within %1 of its place at the middle and within %2 near a corner (95\u00a0%).")
                      .arg(mm(middle->reach95_m(), 1), mm(far->reach95_m(), 1));
  if (isFromCushions(*rig)) {
    words = sentencesOf(
        {words, tr("Four tags and a lens from a board bring this to about 1 mm: some %1 less in the corner.")
                    .arg(mm(std::max(0.0, far->reach95_m() - 0.001), 0))});
  }
  gain_->setText(words);
}

}  // namespace ferrule
