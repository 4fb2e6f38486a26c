// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/rig_choice.h"

#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/session/known_rigs.h"
#include "app/session/path_field.h"
#include "app/window/card.h"

namespace ferrule {

namespace {

QString nameOf(const RigInUse& rig) {
  return rig.name.isEmpty() ? QFileInfo(rig.rig).fileName() : rig.name;
}

}  // namespace

RigChoice::RigChoice(QWidget* parent) : QWidget(parent) {
  known_ = new QComboBox;
  known_->setObjectName(QStringLiteral("knownRigs"));
  known_->setAccessibleName(tr("Rig"));
  known_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  rig_ = new PathField("rigFile", tr("Choose a rig file"), tr("Rig files (*.json);;All files (*)"));
  rig_->setPlaceholder(tr("rig.json, from Set-up or calibrate rig"));
  table_ = new PathField("rigTable", tr("Choose a table file"), tr("Table files (*.json);;All files (*)"));
  table_->setPlaceholder(tr("table.json, or a usual size such as 9ft"));
  files_ = new QWidget;
  auto* files = new QVBoxLayout(files_);
  files->setContentsMargins(0, 0, 0, 0);
  files->setSpacing(4);
  files->addWidget(rig_);
  files->addWidget(table_);
  none_ = new QuietLabel(
      tr("There is no rig yet. It tells where the camera sits over the table; Set-up makes one from a film or still."));
  none_->setObjectName(QStringLiteral("noRig"));
  none_->setWordWrap(true);
  make_ = new QPushButton(tr("Make one in Set-&up"));
  make_->setObjectName(QStringLiteral("makeRig"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(known_);
  column->addWidget(files_);
  column->addWidget(none_);
  column->addWidget(make_, 0, Qt::AlignLeft);
  setFocusProxy(known_);
  connect(known_, &QComboBox::currentIndexChanged, this, [this] {
    showFiles();
    emit chosenChanged();
  });
  connect(make_, &QPushButton::clicked, this, &RigChoice::setUpWanted);
  // A rig file usually lies beside its table.
  connect(rig_, &PathField::pathChanged, this, [this](const QString& path) {
    const QString beside = QFileInfo(path).path() + QStringLiteral("/table.json");
    if (table_->path().isEmpty() && QFileInfo::exists(path) && QFileInfo::exists(beside)) table_->setPath(beside);
    emit chosenChanged();
  });
  refresh();
}

void RigChoice::refresh() {
  const QVariant before = known_->currentData();
  const bool wasFiles = known_->count() > 0 && !before.isValid();
  const QSignalBlocker quiet(known_);
  known_->clear();
  for (const RigInUse& rig : knownRigs()) {
    known_->addItem(nameOf(rig), QStringList{rig.name, rig.rig, rig.table});
    known_->setItemData(known_->count() - 1, QStringLiteral("%1\n%2").arg(rig.rig, rig.table), Qt::ToolTipRole);
  }
  const int rigs = known_->count();
  known_->addItem(tr("Other files…"));
  // The row for other files has no data: looked for, it would be found in place of the rig in use.
  const int again = before.isValid() ? known_->findData(before) : -1;
  const bool typed = wasFiles && !rig_->path().isEmpty();
  known_->setCurrentIndex(typed ? rigs : std::max(again, 0));
  none_->setVisible(rigs == 0);
  make_->setVisible(rigs == 0);
  showFiles();
  emit chosenChanged();
}

void RigChoice::showFiles() {
  files_->setVisible(!known_->currentData().isValid());
}

void RigChoice::chooseFiles(const QString& rig, const QString& table) {
  known_->setCurrentIndex(known_->count() - 1);
  rig_->setPath(rig);
  table_->setPath(table);
}

std::optional<RigInUse> RigChoice::chosen() const {
  const QStringList known = known_->currentData().toStringList();
  if (known.size() == 3) return RigInUse{known[0], known[1], known[2]};
  if (rig_->path().isEmpty()) return std::nullopt;
  // Told apart by their folder: every set-up calls its files the same.
  const QString folder = QFileInfo(rig_->path()).dir().dirName();
  const QString file = QFileInfo(rig_->path()).fileName();
  return RigInUse{folder.isEmpty() || folder == QLatin1String(".") ? file : folder + '/' + file, rig_->path(),
                  table_->path()};
}

}  // namespace ferrule
