// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/record/record_impl.h"
#include "core/record/recorded_shot.h"

namespace ferrule {

namespace {

constexpr const char* kShots =
    " FROM shots s JOIN frames f ON f.id = s.frame_id JOIN sessions e ON e.id = f.session_id ";
constexpr const char* kOfPlayer = " WHERE s.player_id = ? AND s.number > 0 AND e.started_ms >= ? AND e.started_ms < ? ";
constexpr const char* kInOrder = " ORDER BY e.started_ms, e.id, f.number, s.number";

/// json_extract reads a whole text: only rulings that end a frame are looked into.
constexpr const char* kWon =
    "CASE WHEN r.content IS NULL OR instr(r.content, '\"result\":null') OR instr(r.content, '\"result\": null') THEN 0 "
    "ELSE coalesce(json_extract(r.content, '$.result.winner') = json_extract(r.content, '$.shooter'), 0) END";

QString shotsQuery() {
  return QStringLiteral(
             "SELECT f.session_id, s.frame_id, s.id, s.strike_ms, p.rest_s, s.number, s.strike_s, s.rest_s, s.outcome, "
             "s.verdict, s.scratch, s.first_contact, s.target_ball, s.target_pocket, s.target_cut_rad, "
             "s.target_line_error_rad, s.target_miss_side, d.aim_rad, d.aim_u_rad, d.speed_mps, d.speed_u_mps, d.side, "
             "d.side_u, d.height, d.height_u, c.before_x_m, c.before_y_m, c.after_x_m, c.after_y_m, t.before_x_m, "
             "t.before_y_m, EXISTS(SELECT 1 FROM corrections k WHERE k.entity = 'shot' AND k.entity_id = s.id AND "
             "k.cause_id IS NULL), "
             "EXISTS(SELECT 1 FROM corrections k WHERE k.entity = 'shot' AND k.entity_id = s.id AND k.field IN "
             "('target_ball', 'target_pocket')), r.shot_id IS NOT NULL, coalesce(r.fouls, '') <> '', ") +
         QLatin1String(kWon) +
         QStringLiteral(
             ", g.shown, g.choice_loss, g.delivery_loss, f.game, g.pot_chance, g.leave_x_m, g.leave_y_m, g.next_ball, "
             "g.asked_speed_mps, g.asked_side, g.asked_height, n.after_x_m, n.after_y_m, a.outcome, "
             "coalesce((SELECT fouls FROM rulings WHERE shot_id = a.id), '') <> '', "
             "(SELECT direct_chance FROM suggestions WHERE shot_id = a.id), "
             "CASE WHEN s.outcome = 'pot' THEN (SELECT max(v.kind = 'cushion' AND v.ball = 'cue') FROM events v "
             "WHERE v.shot_id = s.id) END") +
         QLatin1String(kShots) +
         QStringLiteral(
             "LEFT JOIN shots p ON p.frame_id = s.frame_id AND p.number = s.number - 1 "
             "LEFT JOIN deliveries d ON d.shot_id = s.id "
             "LEFT JOIN positions c ON c.shot_id = s.id AND c.ball = 'cue' "
             "LEFT JOIN positions t ON t.shot_id = s.id AND t.ball = s.target_ball "
             "LEFT JOIN rulings r ON r.shot_id = s.id "
             "LEFT JOIN suggestions g ON g.shot_id = s.id "
             "LEFT JOIN positions n ON n.shot_id = s.id AND n.ball = g.next_ball "
             "LEFT JOIN shots a ON s.outcome = 'safety' AND a.frame_id = s.frame_id AND a.number = s.number + 1 "
             "AND a.player_id <> s.player_id") +
         QLatin1String(kOfPlayer) + QLatin1String(kInOrder);
}

std::optional<Measured> measuredIn(const Row& row, std::size_t at) {
  if (row[at].isNull() || row[at + 1].isNull()) return std::nullopt;
  return Measured{row[at].toDouble(), row[at + 1].toDouble()};
}

std::optional<TablePoint> placeIn(const Row& row, std::size_t at) {
  if (row[at].isNull() || row[at + 1].isNull()) return std::nullopt;
  return TablePoint{row[at].toDouble(), row[at + 1].toDouble()};
}

SuggestionFigures figuresIn(const Row& row) {
  SuggestionFigures figures;
  figures.shown = row[36].toBool();
  figures.choiceLoss = optionalRealOf(row[37]);
  figures.deliveryLoss = optionalRealOf(row[38]);
  figures.potChance = optionalRealOf(row[40]);
  figures.leave = placeIn(row, 41);
  if (!row[43].isNull()) figures.nextBall = ballFromText(textOf(row[43]));
  figures.askedSpeed_mps = optionalRealOf(row[44]);
  figures.askedSide = optionalRealOf(row[45]);
  figures.askedHeight = optionalRealOf(row[46]);
  return figures;
}

void putBall(Position& position, BallName ball, const Row& row, std::size_t at) {
  if (const auto place = placeIn(row, at)) position.push_back({ball, *place});
}

/// Nothing where a word is not one of ours.
std::optional<RecordedShot> shotIn(const Row& row) {
  RecordedShot shot;
  shot.id = ShotId{row[2].toLongLong()};
  shot.session = SessionId{row[0].toLongLong()};
  shot.frame = FrameId{row[1].toLongLong()};
  shot.struckAt = optionalIntegerOf(row[3]);
  shot.restBefore_s = optionalRealOf(row[4]);
  ShotReading& reading = shot.reading;
  reading.number = row[5].toInt();
  reading.strike_s = row[6].toDouble();
  reading.rest_s = row[7].toDouble();
  const auto outcome = outcomeFromText(textOf(row[8]));
  const auto verdict = verdictFromText(textOf(row[9]));
  if (!outcome || !verdict) return std::nullopt;
  reading.outcome = *outcome;
  reading.outcomeVerdict = *verdict;
  reading.scratch = row[10].toBool();
  if (!row[11].isNull()) {
    reading.firstContact = ballFromText(textOf(row[11]));
    if (!reading.firstContact) return std::nullopt;
  }
  if (!row[12].isNull() && !row[13].isNull()) {
    const auto ball = ballFromText(textOf(row[12]));
    const auto pocket = pocketFromText(textOf(row[13]));
    if (!ball || !pocket) return std::nullopt;
    reading.target = Target{*ball, *pocket, optionalRealOf(row[14]), optionalRealOf(row[15]), {}};
    if (!row[16].isNull()) reading.target->missSide = missSideFromText(textOf(row[16]));
  }
  reading.delivery.aim_rad = measuredIn(row, 17);
  reading.delivery.speed_mps = measuredIn(row, 19);
  reading.delivery.side = measuredIn(row, 21);
  reading.delivery.height = measuredIn(row, 23);
  putBall(reading.before, kCueBall, row, 25);
  putBall(reading.after, kCueBall, row, 27);
  if (reading.target && !reading.target->ball.isCueBall()) putBall(reading.before, reading.target->ball, row, 29);
  shot.corrected = row[31].toBool();
  shot.targetByPerson = row[32].toBool();
  shot.ruled = row[33].toBool();
  shot.fouled = row[34].toBool();
  shot.wonFrame = row[35].toBool();
  shot.suggestion = figuresIn(row);
  shot.game = textOf(row[39]);
  shot.nextBallAt = placeIn(row, 47);
  if (!row[52].isNull()) shot.cushionMet = row[52].toBool();
  if (!row[49].isNull()) {
    const auto reply = outcomeFromText(textOf(row[49]));
    if (!reply) return std::nullopt;
    shot.reply = RecordedReply{*reply, row[50].toBool(), optionalRealOf(row[51])};
  }
  return shot;
}

}  // namespace

Result<std::vector<RecordedShot>> Record::shotsOf(PlayerId player, const SessionPeriod& period) {
  Connection& connection = impl_->connection;
  const std::vector<QVariant> values{bound(player.value), bound(period.from), bound(period.until)};
  const auto rows = connection.rows(shotsQuery(), values);
  if (!rows) return tl::make_unexpected(rows.error());
  std::vector<RecordedShot> shots;
  std::vector<std::int64_t> ids;
  shots.reserve(rows->size());
  ids.reserve(rows->size());
  for (const Row& row : *rows) {
    auto shot = shotIn(row);
    if (!shot) return impl_->senseless("shots");
    shots.push_back(std::move(*shot));
    ids.push_back(row[2].toLongLong());
  }
  const auto fallen =
      connection.rows(QStringLiteral("SELECT s.id, o.ball, o.pocket") + QLatin1String(kShots) +
                          QStringLiteral("JOIN pocketed o ON o.shot_id = s.id") + QLatin1String(kOfPlayer) +
                          QLatin1String(kInOrder) + QStringLiteral(", o.number"),
                      values);
  if (!fallen) return tl::make_unexpected(fallen.error());
  std::size_t at = 0;
  for (const Row& row : *fallen) {
    while (at < ids.size() && ids[at] != row[0].toLongLong())
      ++at;
    const auto ball = ballFromText(textOf(row[1]));
    const auto pocket = pocketFromText(textOf(row[2]));
    // Another program may have written between the two questions.
    if (at == ids.size()) break;
    if (!ball || !pocket) return impl_->senseless("pocketed");
    shots[at].reading.pocketed.push_back({*ball, *pocket});
  }
  const auto given = connection.rows(QStringLiteral("SELECT s.id, t.tag") + QLatin1String(kShots) +
                                         QStringLiteral("JOIN tags t ON t.entity = 'shot' AND t.entity_id = s.id") +
                                         QLatin1String(kOfPlayer) + QLatin1String(kInOrder) + QStringLiteral(", t.tag"),
                                     values);
  if (!given) return tl::make_unexpected(given.error());
  at = 0;
  for (const Row& row : *given) {
    while (at < ids.size() && ids[at] != row[0].toLongLong())
      ++at;
    if (at == ids.size()) break;
    shots[at].tags.push_back(textOf(row[1]));
  }
  return shots;
}

}  // namespace ferrule
