// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/erase_sentence.h"

#include <QLocale>

namespace ferrule {

namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

QString kindWords(ErasedKind kind) {
  switch (kind) {
    case ErasedKind::Sessions:
      return EraseWords::tr("Sessions in which nobody else played");
    case ErasedKind::Frames:
      return EraseWords::tr("Frames of these sessions");
    case ErasedKind::Placements:
      return EraseWords::tr("Placed balls of these sessions");
    case ErasedKind::Fingerprints:
      return EraseWords::tr("Table fingerprints of these sessions");
    case ErasedKind::Seats:
      return EraseWords::tr("Seats in sessions with others");
    case ErasedKind::Shots:
      return EraseWords::tr("Shots");
    case ErasedKind::Positions:
      return EraseWords::tr("Places of balls");
    case ErasedKind::Deliveries:
      return EraseWords::tr("Deliveries");
    case ErasedKind::Events:
      return EraseWords::tr("Contacts and falls");
    case ErasedKind::Pocketed:
      return EraseWords::tr("Pocketed balls");
    case ErasedKind::Tracks:
      return EraseWords::tr("Tracks");
    case ErasedKind::Rulings:
      return EraseWords::tr("Rulings");
    case ErasedKind::Suggestions:
      return EraseWords::tr("Suggestions");
    case ErasedKind::Explanations:
      return EraseWords::tr("Accounts of misses");
    case ErasedKind::Corrections:
      return EraseWords::tr("Corrections");
    case ErasedKind::Notes:
      return EraseWords::tr("Notes");
    case ErasedKind::Tags:
      return EraseWords::tr("Tags");
    case ErasedKind::Consents:
      return EraseWords::tr("Lines of consent");
    case ErasedKind::Groups:
      return EraseWords::tr("Groups");
    case ErasedKind::DrillRuns:
      return EraseWords::tr("Runs of drills");
    case ErasedKind::DrillTries:
      return EraseWords::tr("Tries in these runs");
    case ErasedKind::Drafts:
      return EraseWords::tr("Sessions under way");
    case ErasedKind::NotesWithoutAuthor:
      return EraseWords::tr("Notes about others that lose their author's name");
    case ErasedKind::CorrectionsWithoutAuthor:
      return EraseWords::tr("Corrections of others' shots that lose their author's name");
    case ErasedKind::NamesInCorrections:
      return EraseWords::tr("Corrections of others' shots that lose the name");
    case ErasedKind::NamesInRulings:
      return EraseWords::tr("Rulings on others' shots that lose the name");
  }
  return {};
}

EraseSection goes(const ErasePreview& preview) {
  EraseSection section{EraseWords::tr("What goes with %1").arg(text(preview.player.name)), {}};
  section.lines << EraseWords::tr("The player's name, playing hand and whether a minor");
  for (const ErasedRows& rows : preview.rows)
    section.lines << EraseWords::tr("%1: %2").arg(kindWords(rows.kind), QLocale().toString(qlonglong{rows.rows}));
  return section;
}

EraseSection films(const ErasePreview& preview) {
  EraseSection section{EraseWords::tr("Films: the files are yours and are deleted only when you ask for it"), {}};
  for (const ErasedFilm& film : preview.films) {
    section.lines << (film.shared ? EraseWords::tr("%1 (others play in it too: it stays in the record)")
                                  : EraseWords::tr("%1 (the record forgets it)"))
                         .arg(text(film.path));
  }
  return section;
}

EraseSection mentions(const ErasePreview& preview) {
  EraseSection section{EraseWords::tr("Texts of others with the name, which is taken out"), {}};
  for (const Mention& mention : preview.mentions)
    section.lines << EraseWords::tr("\"%1\" becomes \"%2\"").arg(text(mention.text), text(mention.withoutName));
  return section;
}

EraseSection backups(const ErasePreview& preview) {
  EraseSection section{EraseWords::tr("Older copies beside the record that hold the name"), {}};
  for (const std::string& backup : preview.backups)
    section.lines << text(backup);
  return section;
}

EraseSection stays(const ErasePreview& preview) {
  EraseSection section{EraseWords::tr("What stays"), {}};
  if (preview.othersShots > 0) {
    section.lines << EraseWords::tr(
                         "Others' shots in sessions with this player: %1, with %2 places of balls, which name "
                         "nobody")
                         .arg(QLocale().toString(preview.othersShots), QLocale().toString(preview.othersPositions));
  }
  if (preview.guardianLines > 0) {
    section.lines << EraseWords::tr("Consents of others that name this person as giver or writer, as evidence: %1")
                         .arg(QLocale().toString(preview.guardianLines));
  }
  section.lines << EraseWords::tr("A random number without a name, so that no merge brings the player back");
  section.lines << EraseWords::tr("Reports, exports and copies that were made of the record elsewhere");
  return section;
}

QString fileWords(const FileFate& file) {
  switch (file.fate) {
    case FileFate::Fate::Deleted:
      return EraseWords::tr("%1 was deleted.").arg(text(file.path));
    case FileFate::Fate::Gone:
      return EraseWords::tr("%1 was not there any more.").arg(text(file.path));
    case FileFate::Fate::Another:
      return EraseWords::tr("%1 is another file by now and was left alone.").arg(text(file.path));
    case FileFate::Fate::Failed:
      return EraseWords::tr("%1 could not be deleted (%2); delete it yourself.")
          .arg(text(file.path), text(file.detail));
  }
  return {};
}

}  // namespace

QString namesLeftWords(const std::optional<long>& namesLeft) {
  if (!namesLeft) {
    return EraseWords::tr(
        "The record's file could not be written anew, because another program uses it or the disk is "
        "full: old pages may still hold the name. Close the other programs and run \"ferrule erase "
        "--compact\" with the same name.");
  }
  if (*namesLeft == 0) return EraseWords::tr("The name is nowhere in the record's files any more.");
  return EraseWords::tr("The name, or its letters within other words, still stands in the record's files: %1 times.")
      .arg(QLocale().toString(qlonglong{*namesLeft}));
}

std::vector<EraseSection> erasePreviewWords(const ErasePreview& preview) {
  std::vector<EraseSection> sections{goes(preview)};
  for (EraseSection section : {mentions(preview), films(preview), backups(preview), stays(preview)}) {
    if (!section.lines.isEmpty()) sections.push_back(std::move(section));
  }
  return sections;
}

QStringList eraseReportWords(const EraseReport& report) {
  QStringList lines{EraseWords::tr("%1 was erased.").arg(text(report.erased.player.name))};
  for (const FileFate& file : report.files)
    lines << fileWords(file);
  lines << namesLeftWords(report.namesLeft);
  return lines;
}

}  // namespace ferrule
