// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/answer_service.h"

#include "core/measure/correct_shot.h"

namespace ferrule {

namespace {

Result<std::vector<RuledAgain>> sayIn(Record& record, const SaidOfRecorded& said) {
  const auto report = sayOfShot(record, said.shot, RulingSaid{said.said}, said.who, said.when);
  if (!report) return tl::make_unexpected(report.error());
  const auto shot = record.shot(said.shot);
  if (!shot) return tl::make_unexpected(shot.error());
  const auto shots = record.shots(shot->frame);
  if (!shots) return tl::make_unexpected(shots.error());
  std::vector<RuledAgain> all;
  for (const ShotSummary& summary : *shots) {
    const auto stored = record.shot(summary.id);
    if (!stored) return tl::make_unexpected(stored.error());
    const auto ruled = stored->ruling ? rulingFromText(stored->ruling->content) : std::nullopt;
    if (ruled) all.push_back({summary.id, {*ruled, std::nullopt}, stored->reading});
  }
  return all;
}

}  // namespace

AnswerService::AnswerService(QObject* parent) : QObject(parent), keeper_(QStringLiteral("answer keeper")) {}

void AnswerService::say(const QString& record, const SaidOfRecorded& said) {
  keeper_.ask([this, record, said](KeptRecord& kept) {
    if (kept.path() != record) kept.setPath(record);
    const auto opened = kept.toWrite(WhenMissing::Refuse);
    const auto ruled = opened ? sayIn(**opened, said) : tl::make_unexpected(opened.error());
    if (!ruled) {
      emit failed(ruled.error());
    } else {
      emit ruledAgain(*ruled);
    }
  });
}

}  // namespace ferrule
