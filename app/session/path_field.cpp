// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/path_field.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QToolButton>

namespace ferrule {

PathField::PathField(const char* name, const QString& title, const QString& filter, QWidget* parent)
    : QWidget(parent), title_(title), filter_(filter) {
  line_ = new QLineEdit;
  line_->setObjectName(QString::fromLatin1(name));
  auto* button = new QToolButton;
  button->setObjectName(QString::fromLatin1(name) + QStringLiteral("Button"));
  button->setText(QStringLiteral("…"));
  button->setToolTip(title);
  button->setAccessibleName(title);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(4);
  row->addWidget(line_, 1);
  row->addWidget(button);
  setFocusProxy(line_);
  setAccessible(title);
  connect(line_, &QLineEdit::textChanged, this, [this] {
    line_->setToolTip(path());
    emit pathChanged(path());
  });
  connect(line_, &QLineEdit::returnPressed, this, &PathField::entered);
  connect(button, &QToolButton::clicked, this, &PathField::choose);
}

QString PathField::path() const {
  return line_->text().trimmed();
}

void PathField::setPath(const QString& path) {
  line_->setText(path);
}

void PathField::setPlaceholder(const QString& words) {
  line_->setPlaceholderText(words);
}

void PathField::setAccessible(const QString& name) {
  line_->setAccessibleName(name);
}

void PathField::choose() {
  const QString folder = path().isEmpty() ? QString() : QFileInfo(path()).path();
  const QString chosen = QFileDialog::getOpenFileName(this, title_, folder, filter_);
  if (!chosen.isEmpty()) setPath(chosen);
}

}  // namespace ferrule
