// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/keep_page.h"

#include <QFileDialog>
#include <QFormLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/setup/rig_in_use.h"

namespace ferrule {

KeepPage::KeepPage(SetupDesk& desk, QWidget* parent) : SetupPage(desk, SetupStep::Done, parent) {
  setObjectName(QStringLiteral("keepPage"));
  QFormLayout* form = addForm();
  saved_ = new QLabel;
  saved_->setObjectName(QStringLiteral("savedWords"));
  saved_->setWordWrap(true);
  form->addRow(tr("This set-up"), saved_);
  used_ = new QLabel;
  used_->setObjectName(QStringLiteral("usedWords"));
  used_->setWordWrap(true);
  form->addRow(tr("In use"), used_);
  QPushButton* save = button("saveSetup", tr("&Save into a folder…"));
  QPushButton* check = button("checkAgain", tr("&Check again with a film…"));
  QPushButton* again = button("startAgain", tr("Start a &new set-up"));
  addButtons({save, check, again});
  addQuiet(
      tr("table.json, lens.json and rig.json are written. Check again after another day, another film, or a ladder "
         "against the camera: it takes less than a minute."));
  addCaution(
      tr("Look at every fixing again twice a year. A loose bracket, a hot smell or a rig that wanders means: power "
         "off, and nobody plays under it. A projector hangs by the same rules as a camera; never look into its "
         "beam, and switch it to black when somebody bends over the table. Local codes come first."));
  column()->addStretch(1);
  connect(save, &QPushButton::clicked, this, [this] {
    const QString folder =
        QFileDialog::getExistingDirectory(this, tr("Save the set-up into a folder"), this->desk().state().folder);
    if (!folder.isEmpty()) this->desk().save(folder);
  });
  connect(check, &QPushButton::clicked, this, &KeepPage::checkAgainWanted);
  connect(again, &QPushButton::clicked, this, [this] {
    const auto answer = QMessageBox::question(
        this, tr("Start a new set-up"),
        tr("What was put in for this one is forgotten; files that were saved into a folder stay. Start a new set-up?"));
    if (answer == QMessageBox::Yes) this->desk().startAgain();
  });
  KeepPage::refresh();
}

void KeepPage::refresh() {
  const SetupState& state = desk().state();
  saved_->setText(state.folder.isEmpty() ? (desk().rig() ? tr("not saved yet") : tr("no rig yet")) : state.folder);
  const auto used = rigInUse();
  used_->setText(!used                  ? tr("none yet")
                 : used->name.isEmpty() ? used->rig
                                        : tr("%1: %2", "table, its rig file").arg(used->name, used->rig));
}

}  // namespace ferrule
