// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/shot_table.h"

#include <algorithm>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

QString word(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}
QString word(const std::string& text) {
  return QString::fromStdString(text);
}

const QString kNone = QStringLiteral("-");

QString measured(const std::optional<Measured>& value, double unitsPerOne, int decimals) {
  if (!value) return kNone;
  return QStringLiteral("%1 ±%2")
      .arg(value->value * unitsPerOne, 0, 'f', decimals)
      .arg(2.0 * value->standardUncertainty * unitsPerOne, 0, 'f', decimals);
}

QString target(const std::optional<Target>& target) {
  if (!target) return kNone;
  return word(toText(target->ball)) + ' ' + word(toText(target->pocket));
}

QString pocketed(const std::vector<PocketedBall>& balls) {
  QStringList all;
  for (const PocketedBall& ball : balls)
    all << word(toText(ball.ball)) + ' ' + word(toText(ball.pocket));
  return all.isEmpty() ? kNone : all.join(QStringLiteral(", "));
}

QString outcome(const ShotReading& shot) {
  QString text = word(toText(shot.outcome));
  if (shot.target && shot.target->missSide) text += ' ' + word(toText(*shot.target->missSide));
  return shot.outcomeVerdict == Verdict::Ask ? text + QStringLiteral(" ?") : text;
}

QString ruling(const RuledShot& ruled) {
  const Ruling& ruling = ruled.ruling;
  QStringList words{word(toText(ruling.shooter))};
  for (const Foul& foul : ruling.fouls)
    words << word(toText(foul.kind));
  if (ruling.result) {
    words << QStringLiteral("%1 wins: %2")
                 .arg(word(toText(ruling.result->value.winner)), word(toText(ruling.result->value.why)));
  }
  const QString text = words.join(QStringLiteral(", "));
  return ruling.sureness == Verdict::Ask ? text + QStringLiteral(" ?") : text;
}

QStringList cells(const ShotReading& shot) {
  const double degree = degreesFromRadians(1.0);
  return {QString::number(shot.number),
          QString::number(shot.strike_s, 'f', 2),
          QString::number(shot.rest_s - shot.strike_s, 'f', 2),
          measured(shot.delivery.aim_rad, degree, 2),
          measured(shot.delivery.speed_mps, 1.0, 2),
          measured(shot.delivery.side, 1.0, 2),
          measured(shot.delivery.height, 1.0, 2),
          shot.firstContact ? word(toText(*shot.firstContact)) : kNone,
          target(shot.target),
          pocketed(shot.pocketed),
          outcome(shot)};
}

}  // namespace

QStringList shotTable(const std::vector<ShotReading>& shots, const std::vector<RuledShot>& rulings) {
  std::vector<QStringList> rows{{QStringLiteral("shot"), QStringLiteral("strike s"), QStringLiteral("lasts s"),
                                 QStringLiteral("aim deg"), QStringLiteral("speed m/s"), QStringLiteral("side R"),
                                 QStringLiteral("height R"), QStringLiteral("first"), QStringLiteral("target"),
                                 QStringLiteral("pocketed"), QStringLiteral("outcome")}};
  // Numbers to the right, words to the left.
  constexpr qsizetype kFirstWord = 7;
  for (const ShotReading& shot : shots)
    rows.push_back(cells(shot));
  if (!shots.empty() && rulings.size() == shots.size()) {
    rows.front() << QStringLiteral("ruling");
    for (std::size_t i = 0; i < rulings.size(); ++i)
      rows[i + 1] << ruling(rulings[i]);
  }
  QList<qsizetype> widths(rows.front().size(), 0);
  for (const QStringList& row : rows) {
    for (qsizetype i = 0; i < row.size(); ++i)
      widths[i] = std::max(widths[i], row[i].size());
  }
  QStringList lines;
  for (const QStringList& row : rows) {
    QStringList padded;
    for (qsizetype i = 0; i < row.size(); ++i) {
      padded << (i < kFirstWord ? row[i].rightJustified(widths[i]) : row[i].leftJustified(widths[i]));
    }
    QString line = padded.join(QStringLiteral("  "));
    while (line.endsWith(' '))
      line.chop(1);
    lines << line;
  }
  return lines;
}

}  // namespace ferrule
