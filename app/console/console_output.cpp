// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/console_output.h"

#include <unistd.h>

#include <QDate>
#include <cstdio>
#include <string>

#include "app/words/error_sentence.h"

namespace ferrule {

namespace {

void print(std::FILE* stream, const QString& line) {
  const QByteArray bytes = line.toUtf8() + '\n';
  std::fwrite(bytes.constData(), 1, static_cast<std::size_t>(bytes.size()), stream);
  std::fflush(stream);
}

}  // namespace

void printResult(const QString& line) {
  print(stdout, line);
}

void printNote(const QString& line) {
  print(stderr, line);
}

int reportError(const Error& error) {
  printNote(errorSentence(error));
  return 1;
}

JobControl consoleJob() {
  JobControl job;
  const bool terminal = isatty(STDERR_FILENO) != 0;
  job.report = [terminal, shown = std::string()](double share, std::string_view step) mutable {
    std::string text(step);
    if (share >= 0.0) text.append(" ").append(std::to_string(static_cast<int>(100.0 * share))).append(" %");
    if (text == shown) return;
    // A log file gets a line for every tenth, a terminal one line that changes.
    const bool tenth = share < 0.0 || static_cast<int>(100.0 * share) % 10 == 0;
    if (terminal) {
      std::fprintf(stderr, "\r%s   %s", text.c_str(), share >= 1.0 ? "\n" : "");
    } else if (tenth) {
      std::fprintf(stderr, "%s\n", text.c_str());
    }
    std::fflush(stderr);
    shown = std::move(text);
  };
  return job;
}

QString counted(long count, const char* thing) {
  return QStringLiteral("%1 %2%3").arg(count).arg(QLatin1String(thing), QLatin1String(count == 1 ? "" : "s"));
}

}  // namespace ferrule
