// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/merge_sentence.h"

#include <QCoreApplication>
#include <QStringList>

namespace ferrule {

namespace {

struct MergeSentence {
  Q_DECLARE_TR_FUNCTIONS(MergeSentence)
};

}  // namespace

QString mergeSentences(const MergeReport& report) {
  QStringList words;
  if (report.isEmpty()) {
    words << MergeSentence::tr("Nothing of it was new.");
  } else {
    QStringList counts;
    counts << MergeSentence::tr("%n player(s)", nullptr, report.players)
           << MergeSentence::tr("%n session(s)", nullptr, report.sessions)
           << MergeSentence::tr("%n shot(s)", nullptr, report.shots)
           << MergeSentence::tr("%n drill run(s)", nullptr, report.drillRuns);
    words << MergeSentence::tr("New: %1.", "a list of counts").arg(counts.join(QStringLiteral(", ")));
  }
  if (report.framesUpdated > 0) {
    words << MergeSentence::tr("%n frame(s) had been corrected or gone on with there and are now as there.", nullptr,
                               report.framesUpdated);
  }
  if (report.framesApart > 0) {
    words << MergeSentence::tr("%n frame(s) were changed in both records and stay as they are here.", nullptr,
                               report.framesApart);
  }
  for (const auto& [there, here] : report.renamed) {
    words << MergeSentence::tr(
                 "%1 of the other record is called %2 here; if both are one person, join them in Players.")
                 .arg(QString::fromStdString(there), QString::fromStdString(here));
  }
  if (report.erasedHere > 0) {
    words << MergeSentence::tr("%n player(s) who were erased here were left out.", nullptr, report.erasedHere);
  }
  if (!report.erasedThere.empty()) {
    QStringList names;
    for (const std::string& name : report.erasedThere)
      names << QString::fromStdString(name);
    words << MergeSentence::tr("Erased there, and still here: %1.").arg(names.join(QStringLiteral(", ")));
  }
  return words.join(QLatin1Char(' '));
}

}  // namespace ferrule
