// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLineEdit;

namespace ferrule {

/// A file's path, to be typed or chosen in a dialog.
class PathField : public QWidget {
  Q_OBJECT
 public:
  /// name: of the line edit; its button is named after it. title and filter: of the dialog.
  PathField(const char* name, const QString& title, const QString& filter, QWidget* parent = nullptr);

  [[nodiscard]] QString path() const;
  void setPath(const QString& path);
  void setPlaceholder(const QString& words);
  void setAccessible(const QString& name);

 signals:
  void pathChanged(const QString& path);
  void entered();

 private:
  void choose();

  QString title_;
  QString filter_;
  QLineEdit* line_;
};

}  // namespace ferrule
