// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress/progress_words.h"

#include <algorithm>

#include "app/words/joining.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct ProgressWords {
  Q_DECLARE_TR_FUNCTIONS(ProgressWords)
};

constexpr std::int64_t kDay_ms = 24LL * 3600 * 1000;
const QString kDot = QStringLiteral(" \u00b7 ");

QString paragraph(const QString& text) {
  return QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped());
}

}  // namespace

QString periodWords(const ProgressColumn& column, const ReportWords& words) {
  const HistoryFilter& filter = column.wanted.filter;
  QStringList parts{QString::fromStdString(column.wanted.player)};
  if (filter.from_ms && filter.until_ms) {
    parts << ProgressWords::tr("%1 to %2").arg(words.date(*filter.from_ms), words.date(*filter.until_ms - kDay_ms));
  } else if (filter.from_ms) {
    parts << ProgressWords::tr("since %1").arg(words.date(*filter.from_ms));
  }
  if (filter.table) parts << QString::fromStdString(*filter.table);
  if (filter.game) parts << gameWords(*filter.game);
  if (filter.occasion == Occasion::Practice) parts << ProgressWords::tr("practice");
  if (filter.occasion == Occasion::Match) parts << ProgressWords::tr("matches");
  if (filter.occasion == Occasion::Lesson) parts << ProgressWords::tr("lessons");
  return listOf(parts);
}

QString workWords(const PlayerProgress& progress, std::int64_t now_ms, const ReportWords& words) {
  if (progress.work.empty()) {
    return paragraph(
        ProgressWords::tr("There is not yet enough to say what to work on first; every further session helps."));
  }
  const std::int64_t last = progress.history.sessions.back().started_ms;
  const std::int64_t retest = std::max(last, now_ms) + kRetestDays * kDay_ms;
  QString text;
  int number = 1;
  for (const WorkItem& item : progress.work) {
    text += QStringLiteral("<p><b>%1. %2</b><br>%3<br>%4<br>%5</p>")
                .arg(words.numbers().whole(number++), words.name(item.kind).toHtmlEscaped(),
                     words.evidence(item).toHtmlEscaped(),
                     ProgressWords::tr("Drill: %1").arg(words.name(item.drill)).toHtmlEscaped(),
                     words.target(item, retest).toHtmlEscaped());
    if (item.tiesWithNext)
      text += paragraph(ProgressWords::tr("This one and the next are about equal; take either first."));
  }
  return text;
}

QString basisWords(const DataQuality& quality, const ReportWords& words) {
  if (quality.shots == 0) return paragraph(ProgressWords::tr("There is no shot of this player in this selection."));
  QString text = paragraph(words.sessions(quality.sessions) + kDot + words.shots(quality.shots) + kDot +
                           ProgressWords::tr("pots tried: %1").arg(words.numbers().whole(quality.attempts)));
  const auto share = [&](int part) { return words.percent(static_cast<double>(part) / quality.shots); };
  text += paragraph(ProgressWords::tr("Not tracked: %1. Changed by a person: %2. Waiting for a person: %3.")
                        .arg(share(quality.untracked), share(quality.corrected), share(quality.asked)));
  if (quality.attempts > 0) {
    text +=
        paragraph(ProgressWords::tr("Pocket named by a person: %1 of %2; never mixed with pockets read from the balls.")
                      .arg(words.numbers().whole(quality.called), words.numbers().whole(quality.attempts)));
  }
  for (const TableLeftOut& table : quality.leftOut) {
    text += paragraph(ProgressWords::tr("Left out, since its pockets differ: %1 (mouth %2 mm, %3).")
                          .arg(QString::fromStdString(table.name),
                               words.numbers().fixed(1000.0 * table.cornerMouth_m, 0), words.shots(table.shots)));
  }
  if (quality.futureSessions > 0) {
    text += paragraph(
        ProgressWords::tr("Dated in the future: %1. Check the clock.").arg(words.sessions(quality.futureSessions)));
  }
  return text;
}

QString listedWords(const PlayedSession& session, const PlayedShot& shot, const ReportWords& words) {
  return words.numbers().whole(shot.number) + kDot + words.date(session.started_ms) + kDot +
         QString::fromStdString(session.name);
}

}  // namespace ferrule
