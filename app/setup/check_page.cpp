// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/check_page.h"

#include <QFileDialog>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/setup/camera_page.h"
#include "app/setup/chain_row.h"
#include "app/window/inks.h"
#include "app/words/check_sentence.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

/// Less is written as 0.0 mm and says nothing.
constexpr double kShown_m = 0.0001;
constexpr int kRow_px = 24;
constexpr int kWidest_px = 860;

QListWidget* quietList(const char* name, const QString& accessible) {
  auto* list = new QListWidget;
  list->setObjectName(QLatin1String(name));
  list->setAccessibleName(accessible);
  list->setSelectionMode(QAbstractItemView::NoSelection);
  list->setWordWrap(true);
  list->setMaximumWidth(kWidest_px);
  list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  return list;
}

void fitRows(QListWidget* list) {
  list->setFixedHeight(list->count() * kRow_px + 8);
}

QString faultWords(RigFault fault) {
  switch (fault) {
    case RigFault::None:
      return CheckPage::tr("Everything fits");
    case RigFault::CameraMoved:
      return CheckPage::tr("The camera has moved");
    case RigFault::WrongLens:
      return CheckPage::tr("Lens of another camera");
    case RigFault::CorrectedTwice:
      return CheckPage::tr("Corrected twice");
    case RigFault::NotCorrected:
      return CheckPage::tr("Not corrected");
    case RigFault::WrongImageSize:
      return CheckPage::tr("Other size of picture");
    case RigFault::TagHeight:
      return CheckPage::tr("Tags at another height");
    case RigFault::TagMisplaced:
      return CheckPage::tr("A tag at another place");
    case RigFault::TagsSwapped:
      return CheckPage::tr("Two tags swapped");
    case RigFault::TagTurned:
      return CheckPage::tr("A tag turned");
    case RigFault::TableSize:
      return CheckPage::tr("Other size of table");
    case RigFault::Unexplained:
      return CheckPage::tr("Something does not fit");
  }
  return {};
}

}  // namespace

CheckPage::CheckPage(SetupDesk& desk, QWidget* parent) : SetupPage(desk, SetupStep::Check, parent) {
  setObjectName(QStringLiteral("checkPage"));
  chain_ = new ChainRow;
  auto* scroll = new QScrollArea;
  scroll->setWidget(chain_);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setFixedHeight(176);
  scroll->setFocusPolicy(Qt::NoFocus);
  scroll->setAccessibleName(tr("Every correction between sensor and table, in order"));
  column()->addWidget(scroll);
  QPushButton* run = button("runCheck", tr("&Check this film"));
  QPushButton* other = button("checkOther", tr("Check &another film…"));
  QPushButton* add = button("addCorrection", tr("Add a &lens to the chain…"));
  addButtons({run, other, add});
  verdict_ = new QLabel;
  verdict_->setObjectName(QStringLiteral("checkVerdict"));
  verdict_->setFont(scaled(font(), 1.4, true));
  sentence_ = new QLabel;
  sentence_->setObjectName(QStringLiteral("checkSentence"));
  sentence_->setWordWrap(true);
  cost_ = new QLabel;
  cost_->setObjectName(QStringLiteral("checkCost"));
  cost_->setWordWrap(true);
  evidenceHead_ = new QLabel(tr("What the film shows"));
  evidenceHead_->setFont(scaled(font(), 1.0, true));
  evidence_ = quietList("checkEvidence", tr("What the film shows"));
  ruledOutHead_ = new QLabel(tr("What else was tried"));
  ruledOutHead_->setFont(scaled(font(), 1.0, true));
  ruledOut_ = quietList("checkTried", tr("What else was tried"));
  for (QWidget* each :
       std::initializer_list<QWidget*>{verdict_, sentence_, cost_, evidenceHead_, evidence_, ruledOutHead_, ruledOut_})
    column()->addWidget(each);
  column()->addStretch(1);

  connect(run, &QPushButton::clicked, this, [this] {
    const QString film = this->desk().state().film;
    if (film.isEmpty()) {
      emit this->desk().said(tr("There is no film of the table yet; choose one in the step Camera."));
    } else {
      this->desk().check(film);
    }
  });
  connect(other, &QPushButton::clicked, this, [this] {
    const QString film = askForFilm(this, this->desk().state().film);
    if (!film.isEmpty()) this->desk().check(film);
  });
  connect(add, &QPushButton::clicked, this, [this] {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Add a lens to the chain"), {}, tr("Lens files (*.json);;All files (*)"));
    if (!path.isEmpty()) this->desk().addLensToChain(path);
  });
  CheckPage::refresh();
}

void CheckPage::showChain() {
  const auto& rig = desk().rig();
  const auto& look = desk().filmLook();
  const qint64 picture = look ? look->picture.cacheKey() : 0;
  if (rig_ == rig && picture_ == picture) return;
  rig_ = rig;
  picture_ = picture;
  if (rig) {
    chain_->setRig(*rig, desk().rigTable(), look ? look->picture : QImage(), desk().state().film);
  } else {
    chain_->clear();
  }
}

void CheckPage::showCheck() {
  const auto& film = desk().filmCheck();
  for (QWidget* each :
       std::initializer_list<QWidget*>{sentence_, cost_, evidenceHead_, evidence_, ruledOutHead_, ruledOut_})
    each->setVisible(film.has_value());
  if (!film) {
    verdict_->setText(desk().rig() ? tr("Not checked yet") : tr("There is no rig yet"));
    return;
  }
  const SelfCheck& check = film->check;
  const auto mm = [&](double length_m, int decimals) {
    return tr("%1 mm").arg(numbers().fixed(millimetresFromMetres(length_m), decimals));
  };
  verdict_->setText(tr("%1 (sure to %2\u00a0%)", "what the check found, how sure")
                        .arg(faultWords(check.verdict), numbers().fixed(100.0 * check.confidence, 0)));
  sentence_->setText(checkSentence(check, desk().checkNames()));
  const bool costs = check.verdict != RigFault::None && check.costMax_m >= kShown_m;
  cost_->setVisible(costs);
  if (costs) {
    cost_->setText(
        tr("As it is, a ball's place is off by %1 (rms), by %2 at the worst place: %3 toward the foot and %4 to "
           "the left of the middle.")
            .arg(mm(check.costRms_m, 1), mm(check.costMax_m, 1), mm(check.costliest.x, 0), mm(check.costliest.y, 0)));
  }
  evidence_->clear();
  for (const CheckFinding& finding : check.findings) {
    auto* item = new QListWidgetItem(findingLine(finding), evidence_);
    item->setSizeHint({0, kRow_px});
    if (isSound(finding)) continue;
    QFont bold = evidence_->font();
    bold.setBold(true);
    item->setFont(bold);
  }
  fitRows(evidence_);
  ruledOut_->clear();
  for (const Explanation& each : check.explanations) {
    if (each.fault == check.verdict) continue;
    auto* item = new QListWidgetItem(
        tr("%1: probability %2\u00a0%, misses what is seen by %3 standard deviations")
            .arg(faultWords(each.fault), numbers().fixed(100.0 * each.probability, 0), numbers().fixed(each.misfit, 1)),
        ruledOut_);
    item->setSizeHint({0, kRow_px});
  }
  fitRows(ruledOut_);
}

void CheckPage::refresh() {
  showChain();
  showCheck();
}

}  // namespace ferrule
