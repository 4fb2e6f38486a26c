// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <QTemporaryDir>

namespace ferrule {

/// How a call of the program ended.
struct Ended {
  int status = -1;  ///< exit status; -1 when it crashed, hung or did not start
  QString out;
  QStringList progress;  ///< the lines on standard error that only tell how far it is
  QStringList words;     ///< the other lines on standard error
};

/// A folder of its own in which the real program is called, as a person in a shell would.
class Workplace {
 public:
  /// A path within the folder.
  [[nodiscard]] QString path(const QString& name) const { return folder_.filePath(name); }
  void write(const QString& name, const QByteArray& content) const;
  [[nodiscard]] QByteArray content(const QString& name) const;
  /// A film of nothing but cloth.
  void writeEmptyCloth(const QString& name, int width, int height, int images) const;
  /// Every file below the folder with its content's length, sorted; a record's two side files are left out.
  [[nodiscard]] QStringList files() const;

  enum class Rights {
    Mine,
    NoMoreThanFilesSay,  ///< root gives up its right to write what is read-only
  };
  /// Runs the program in the folder until it ends.
  [[nodiscard]] Ended run(const QStringList& words, Rights rights = Rights::Mine) const;
  /// The same, and sends it a signal as soon as it says how far it is.
  [[nodiscard]] Ended runAndSignal(const QStringList& words, int signal) const;

 private:
  QTemporaryDir folder_;
};

/// A path below tests/data.
[[nodiscard]] QString dataPath(const QString& name);

}  // namespace ferrule
