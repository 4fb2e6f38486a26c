// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/ruling_sentence.h"

#include <QCoreApplication>

#include "app/words/joining.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct RulingSentence {
  Q_DECLARE_TR_FUNCTIONS(RulingSentence)
};

QString listed(const QStringList& words, const QString& lastJoint) {
  if (words.size() < 2) return words.join(QString());
  return listOf(words.mid(0, words.size() - 1)) + lastJoint + words.last();
}

void addWhatHappened(QStringList& sentences, const Ruling& ruling, const SeatNames& names) {
  QStringList fouls;
  for (const Foul& foul : ruling.fouls)
    fouls << foulWords(foul.kind, foul.ball);
  if (!fouls.isEmpty()) {
    sentences << RulingSentence::tr("Foul: %1.").arg(listed(fouls, RulingSentence::tr(" and ", "last of a list")));
  }
  if (ruling.pushOut) sentences << RulingSentence::tr("A push-out.");
  if (ruling.illegalBreak) sentences << RulingSentence::tr("The break was too weak, which is no foul.");
  if (ruling.shooterGroup) {
    sentences << RulingSentence::tr("%1 has %2.")
                     .arg(atStart(names.of(ruling.shooter)), groupWords(ruling.shooterGroup->value));
  }
}

/// Balls that come back, and new racks.
void addWhatComesBack(QStringList& sentences, const Ruling& ruling) {
  for (const auto& spotted : ruling.spotted)
    sentences << RulingSentence::tr("%1 is spotted.").arg(ballWordsAtStart(spotted.value.ball));
  for (const BallName ball : ruling.restored)
    sentences << RulingSentence::tr("%1 is put back.").arg(ballWordsAtStart(ball));
  if (ruling.racking == Racking::Full) sentences << RulingSentence::tr("All balls are racked.");
  if (ruling.racking == Racking::Rest) sentences << RulingSentence::tr("14 balls are racked without the apex.");
}

QString turnSentence(const Ruling& ruling, const SeatNames& names) {
  const QString player = atStart(names.of(ruling.next.value));
  const QString cueBall = cueBallWords(ruling.cueBall.value);
  if (!cueBall.isEmpty()) return RulingSentence::tr("%1 is at the table, %2.").arg(player, cueBall);
  if (ruling.next.value == ruling.shooter) return RulingSentence::tr("%1 plays on.").arg(player);
  return RulingSentence::tr("%1 is at the table.").arg(player);
}

QString optionsSentence(const Ruling& ruling, const SeatNames& names) {
  QStringList words;
  for (const Option& option : ruling.options)
    words << optionWords(option, ruling, names);
  return RulingSentence::tr("%1 may choose: %2.")
      .arg(atStart(names.of(ruling.chooser)), listed(words, RulingSentence::tr(" or ", "last of a list")));
}

QString pointsSentence(const RuledShot& ruled, const SeatNames& names) {
  const auto seat = indexOf(ruled.ruling.shooter);
  const int scored = ruled.ruling.points.value.at(seat);
  const QString change =
      scored > 0 ? QStringLiteral("+%1").arg(scored) : QString(QChar(0x2212)) + QString::number(-scored);
  return RulingSentence::tr("%1: %2, now %3.", "player, points of the shot, points in all")
      .arg(atStart(names.of(ruled.ruling.shooter)), change, QString::number(ruled.points.at(seat)));
}

class EvidenceLines {
 public:
  explicit EvidenceLines(const std::vector<ShotEvent>& events) : events_(events) {}

  void add(const Evidence& evidence) {
    QStringList seen;
    for (const int number : evidence.events) {
      if (number < 0 || number >= static_cast<int>(events_.size())) continue;
      seen << eventWords(events_[static_cast<std::size_t>(number)]);
    }
    QString line = ruleNumberWords(evidence.rule);
    if (!seen.isEmpty()) line = toldOf(line, listApart(seen));
    if (!lines_.contains(line)) lines_ << line;
  }
  [[nodiscard]] QStringList take() { return std::move(lines_); }

 private:
  const std::vector<ShotEvent>& events_;
  QStringList lines_;
};

}  // namespace

QString rulingSentence(const RuledShot& ruled, const SeatNames& names) {
  const Ruling& ruling = ruled.ruling;
  QStringList sentences;
  addWhatHappened(sentences, ruling, names);
  if (ruling.points.value != std::array<int, 2>{}) sentences << pointsSentence(ruled, names);
  if (ruling.result) {
    sentences << RulingSentence::tr("%1 wins the frame: %2.")
                     .arg(atStart(names.of(ruling.result->value.winner)), winWords(ruling.result->value.why));
  } else {
    addWhatComesBack(sentences, ruling);
    sentences << (ruling.options.empty() ? turnSentence(ruling, names) : optionsSentence(ruling, names));
  }
  if (!ruling.overruledBy.empty()) {
    sentences << RulingSentence::tr("Overruled by %1.").arg(QString::fromStdString(ruling.overruledBy));
  }
  return sentencesOf(sentences);
}

QStringList rulingEvidence(const RuledShot& ruled, const std::vector<ShotEvent>& events) {
  const Ruling& ruling = ruled.ruling;
  EvidenceLines lines(events);
  for (const Foul& foul : ruling.fouls)
    lines.add(foul.evidence);
  if (ruling.result) lines.add(ruling.result->evidence);
  if (ruling.shooterGroup) lines.add(ruling.shooterGroup->evidence);
  for (const auto& spotted : ruling.spotted)
    lines.add(spotted.evidence);
  if (!ruling.result) lines.add(ruling.next.evidence);
  return lines.take();
}

QStringList rulingQuestions(const RuledShot& ruled) {
  QStringList lines;
  for (const Question& question : ruled.ruling.questions)
    lines << questionWords(question.doubt);
  return lines;
}

}  // namespace ferrule
