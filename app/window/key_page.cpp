// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/key_page.h"

#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QKeySequence>
#include <QLabel>
#include <QLineEdit>
#include <QSortFilterProxyModel>
#include <QStandardItemModel>
#include <QTableView>
#include <QVBoxLayout>

#include "app/window/actions.h"
#include "app/words/joining.h"

namespace ferrule {

namespace {

constexpr QSize kPageSize{760, 560};

QString plain(QString words) {
  // A mnemonic that stands in brackets of its own, as where the script has no letters of the keyboard.
  static const QRegularExpression bracketed(QStringLiteral("\\(&.\\)"));
  return words.remove(bracketed).remove(QLatin1Char('&'));
}

QString shownKeys(const char* keys) {
  QStringList shown;
  for (const QKeySequence& key : QKeySequence::listFromString(QString::fromLatin1(keys), QKeySequence::PortableText))
    shown << key.toString(QKeySequence::NativeText);
  return listOf(shown);
}

}  // namespace

KeyPage::KeyPage(QWidget* parent) : QDialog(parent), table_(new QTableView) {
  setObjectName(QStringLiteral("keyPage"));
  setWindowTitle(tr("Keys"));
  resize(kPageSize);
  auto* model = new QStandardItemModel(0, 4, this);
  model->setHorizontalHeaderLabels({tr("Menu"), tr("Action"), tr("Keys"), tr("What it does")});
  for (const ActionRow& action : actionRows()) {
    QList<QStandardItem*> row;
    for (const QString& words :
         {plain(menuTitle(action.menu)), plain(QCoreApplication::translate("Actions", action.text)),
          shownKeys(action.keys), QCoreApplication::translate("Actions", action.help)})
      row << new QStandardItem(words);
    model->appendRow(row);
  }
  auto* found = new QSortFilterProxyModel(this);
  found->setSourceModel(model);
  found->setFilterKeyColumn(-1);
  found->setFilterCaseSensitivity(Qt::CaseInsensitive);

  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 16, 16, 16);
  column->setSpacing(8);
  auto* find = new QLineEdit;
  find->setObjectName(QStringLiteral("findKey"));
  find->setAccessibleName(tr("Find an action"));
  find->setPlaceholderText(tr("Find: a word, or a key such as Ctrl"));
  find->setClearButtonEnabled(true);
  connect(find, &QLineEdit::textChanged, found, &QSortFilterProxyModel::setFilterFixedString);
  column->addWidget(find);
  table_->setObjectName(QStringLiteral("keyTable"));
  table_->setAccessibleName(tr("Keys"));
  table_->setModel(found);
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setTabKeyNavigation(false);
  table_->setShowGrid(false);
  table_->setAlternatingRowColors(true);
  table_->verticalHeader()->hide();
  table_->horizontalHeader()->setStretchLastSection(true);
  table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  table_->resizeColumnsToContents();
  column->addWidget(table_, 1);
  auto* mouse = new QLabel(tr("Wheel: enlarge. Drag: move, or scrub on the time line. Double click: whole table."));
  mouse->setWordWrap(true);
  column->addWidget(mouse);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  column->addWidget(buttons);
}

}  // namespace ferrule
