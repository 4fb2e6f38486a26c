// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/console/program.h"

#include <sys/prctl.h>
#include <unistd.h>

#include <QDirIterator>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <csignal>
#include <opencv2/core.hpp>
#include <opencv2/videoio.hpp>

namespace ferrule {

namespace {

/// Only a program that hangs takes so long, even under a sanitizer on a busy machine.
constexpr int kPatience_ms = 400'000;
/// Source: Linux, include/uapi/linux/capability.h, CAP_DAC_OVERRIDE.
constexpr unsigned long kMayIgnorePermissions = 1;

Ended endOf(QProcess& process, const QByteArray& saidBefore = {}) {
  Ended ended;
  if (process.state() != QProcess::NotRunning && !process.waitForFinished(kPatience_ms)) {
    process.kill();
    process.waitForFinished();
    return ended;
  }
  if (process.exitStatus() == QProcess::NormalExit && process.error() != QProcess::FailedToStart) {
    ended.status = process.exitCode();
  }
  ended.out = QString::fromUtf8(process.readAllStandardOutput());
  static const QRegularExpression kProgress("^(measuring|looking for tags|[a-z ]+ \\d+ %)$");
  const QString said = QString::fromUtf8(saidBefore + process.readAllStandardError());
  for (const QString& line : said.split('\n', Qt::SkipEmptyParts))
    (kProgress.match(line).hasMatch() ? ended.progress : ended.words) << line;
  return ended;
}

}  // namespace

void Workplace::write(const QString& name, const QByteArray& content) const {
  QFile file(path(name));
  if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size()) qFatal("%s", qPrintable(name));
}

QByteArray Workplace::content(const QString& name) const {
  QFile file(path(name));
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void Workplace::writeEmptyCloth(const QString& name, int width, int height, int images) const {
  cv::VideoWriter writer(path(name).toStdString(), cv::VideoWriter::fourcc('M', 'J', 'P', 'G'), 30.0, {width, height});
  const cv::Mat image(height, width, CV_8UC3, cv::Scalar(60, 110, 40));
  for (int i = 0; i < images; ++i)
    writer.write(image);
}

QStringList Workplace::files() const {
  QStringList files;
  QDirIterator all(folder_.path(), QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
  while (all.hasNext()) {
    const QFileInfo file(all.next());
    const bool beside = file.fileName().endsWith("-wal") || file.fileName().endsWith("-shm");
    if (!beside) files << file.filePath().mid(folder_.path().size() + 1) + ' ' + QString::number(file.size());
  }
  files.sort();
  return files;
}

Ended Workplace::run(const QStringList& words, Rights rights) const {
  QProcess process;
  process.setWorkingDirectory(folder_.path());
  if (rights == Rights::NoMoreThanFilesSay && ::geteuid() == 0) {
    process.setChildProcessModifier([] {
      if (::prctl(PR_CAPBSET_DROP, kMayIgnorePermissions, 0, 0, 0) != 0) ::_exit(99);
    });
  }
  process.start(QStringLiteral(FERRULE_PROGRAM), words);
  return endOf(process);
}

Ended Workplace::runAndSignal(const QStringList& words, int signal) const {
  QProcess process;
  process.setWorkingDirectory(folder_.path());
  process.start(QStringLiteral(FERRULE_PROGRAM), words);
  process.setReadChannel(QProcess::StandardError);
  QByteArray said;
  while (!said.contains(" %") && process.state() != QProcess::NotRunning) {
    process.waitForReadyRead(kPatience_ms);
    said += process.readAllStandardError();
  }
  if (process.processId() > 0) ::kill(static_cast<pid_t>(process.processId()), signal);
  return endOf(process, said);
}

QString dataPath(const QString& name) {
  return QStringLiteral(FERRULE_SOURCE_DIR "/tests/data/") + name;
}

}  // namespace ferrule
