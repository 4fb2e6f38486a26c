// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/check_sentence.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "app/words/joining.h"
#include "app/words/trade_words.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

/// Carries the translation context; lupdate finds the sentences by tr().
struct CheckSentence {
  Q_DECLARE_TR_FUNCTIONS(CheckSentence)

 public:
  [[nodiscard]] static QString sentence(const SelfCheck& check, const CheckNames& names);
  [[nodiscard]] static QString line(const CheckFinding& finding);

 private:
  [[nodiscard]] static QString cushions(const std::string& what);
};

QString number(double value, int decimals) {
  return QLocale().toString(value, 'f', decimals);
}

QString mm(double length_m, int decimals = 0) {
  return number(millimetresFromMetres(length_m), decimals);
}

QString tagList(const std::vector<int>& tags) {
  QStringList words;
  for (const int tag : tags)
    words << QString::number(tag);
  return listOf(words);
}

QString CheckSentence::sentence(const SelfCheck& check, const CheckNames& names) {
  const QString film = QString::fromStdString(names.film);
  const QString rig = QString::fromStdString(names.rig);
  const QString table = QString::fromStdString(names.table);
  const auto amount = [&](std::size_t i) { return i < check.amounts.size() ? check.amounts[i] : 0.0; };
  switch (check.verdict) {
    case RigFault::None:
      return tr("%1 fits %2 and %3.").arg(film, rig, table);
    case RigFault::CameraMoved:
      return tr("The camera has moved by %1 mm and turned by %2 degrees since %3 was made; make the rig again from %4.")
          .arg(mm(amount(0)), number(degreesFromRadians(amount(1)), 2), rig, film);
    case RigFault::WrongLens:
      return tr("The lens in %1 belongs to another camera or another zoom than %2; calibrate the lens of this camera "
                "and make the rig again with it.")
          .arg(rig, film);
    case RigFault::CorrectedTwice:
      return tr("%1 was straightened before, and the lens in %2 straightens it a second time; switch off the lens "
                "correction of the camera or the editor and film again.")
          .arg(film, rig);
    case RigFault::NotCorrected:
      return tr("%1 is bent by its lens and %2 does not straighten it; calibrate the lens of this camera and make the "
                "rig again with it.")
          .arg(film, rig);
    case RigFault::WrongImageSize:
      return tr("The picture of %1 is %2 times the size that the lens in %3 was made for; film at the size, zoom and "
                "crop of the calibration, or calibrate again at this one and make the rig again.")
          .arg(film, number(amount(0), 3), rig);
    case RigFault::TagHeight:
      if (amount(0) > 0.0) {
        return tr("The tags lie %1 mm higher than %2 says; measure their height above the cloth, correct the file and "
                  "make the rig again.")
            .arg(mm(amount(0)), table);
      }
      return tr("The tags lie %1 mm lower than %2 says; measure their height above the cloth, correct the file and "
                "make "
                "the rig again.")
          .arg(mm(-amount(0)), table);
    case RigFault::TagMisplaced:
      return tr("Tag %1 lies %2 mm from where %3 has it; measure its corners, correct the file and make the rig again.")
          .arg(tagList(check.tags), mm(amount(0)), table);
    case RigFault::TagsSwapped:
      return tr("The tags %1 lie in each other's place; swap them, or correct %2, and make the rig again.")
          .arg(tagList(check.tags), table);
    case RigFault::TagTurned:
      return tr("Tag %1 is turned by %2 degrees from what %3 says; turn it, or correct the file, and make the rig "
                "again.")
          .arg(tagList(check.tags), number(degreesFromRadians(amount(0)), 0), table);
    case RigFault::TableSize:
      return tr("The table is %1 mm longer and %2 mm wider than %3 says (less than 0: shorter, narrower); measure it "
                "nose to nose, correct the file and make the rig again.")
          .arg(mm(amount(0)), mm(amount(1)), table);
    case RigFault::Unexplained:
      return tr("%1 does not fit %2 and %3, and no single fault explains it; measure the tags again, make the rig "
                "again from this film, and check again.")
          .arg(film, rig, table);
  }
  return {};
}

/// Cushions by the words of the files, alone or as a pair, in the words of people.
QString CheckSentence::cushions(const std::string& what) {
  QStringList words;
  for (const QString& name : QString::fromStdString(what).split(QStringLiteral(" and "))) {
    const auto cushion = cushionFromText(name.toStdString());
    words << (cushion ? cushionWords(*cushion) : name);
  }
  return atStart(words.size() == 2 ? tr("%1 and %2", "two cushions").arg(words[0], words[1]) : words.join(' '));
}

QString CheckSentence::line(const CheckFinding& finding) {
  const auto name = [&]() -> QString {
    switch (finding.kind) {
      case CheckFinding::Kind::Tag:
        return tr("Tag %1: from its place").arg(QString::fromStdString(finding.what));
      case CheckFinding::Kind::NoseStraight:
        return tr("%1: nose from a straight line", "a cushion").arg(cushions(finding.what));
      case CheckFinding::Kind::NosePlace:
        return tr("%1: nose from its place (+ inward)", "a cushion").arg(cushions(finding.what));
      case CheckFinding::Kind::Parallel:
        return tr("%1: from parallel", "two cushions").arg(cushions(finding.what));
      case CheckFinding::Kind::Length:
        return tr("Length nose to nose, seen minus measured");
      case CheckFinding::Kind::Width:
        return tr("Width nose to nose, seen minus measured");
      case CheckFinding::Kind::BallSize:
        return tr("Diameters of the balls, largest minus smallest");
      case CheckFinding::Kind::BallPlace:
        return tr("Deepest ball inside a cushion or another ball");
    }
    return {};
  }();
  if (!finding.found_m) return tr("%1: not seen").arg(name);
  const QString value =
      tr("%1: %2 mm (sound up to %3 mm)").arg(name, mm(*finding.found_m, 2), mm(finding.expected_m, 1));
  return isSound(finding) ? value : tr("%1 - too much").arg(value);
}

}  // namespace

bool isSound(const CheckFinding& finding) {
  return !finding.found_m || std::abs(*finding.found_m) <= finding.expected_m;
}

QString checkSentence(const SelfCheck& check, const CheckNames& names) {
  return CheckSentence::sentence(check, names);
}

QString findingLine(const CheckFinding& finding) {
  return CheckSentence::line(finding);
}

}  // namespace ferrule
