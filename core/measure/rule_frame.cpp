// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/rule_frame.h"

#include <algorithm>

#include "core/measure/hand_session.h"

namespace ferrule {

namespace {

SaidOfShot saidOf(const FrameShot& shot, const std::vector<std::string>& players) {
  std::optional<Seat> seat;
  if (const auto& player = shot.sayings.player; player && player->name) seat = seatOf(players, *player->name);
  return refereeSayings(shot.sayings, shot.shot.reading, seat);
}

std::optional<RuledShot> ruledBefore(const StoredShot& shot) {
  return shot.ruling ? rulingFromText(shot.ruling->content) : std::nullopt;
}

/// By the edition in which the frame was ruled first.
RuleSet rulesOf(const std::vector<FrameShot>& shots, Game game) {
  for (const FrameShot& shot : shots) {
    if (const auto ruled = ruledBefore(shot.shot)) return worldRules(game, ruled->edition);
  }
  return worldRules(game);
}

std::vector<RuledAnew> ruleFilmed(const std::vector<FrameShot>& shots, const RuleSet& rules,
                                  const MeasuredTable& measured, const std::vector<std::string>& players) {
  FilmReferee referee(rules, measured);
  std::vector<RuledAnew> frame;
  for (const FrameShot& shot : shots) {
    FilmRuling ruling = referee.judge({shot.shot.reading, shot.shot.tracks}, saidOf(shot, players));
    ruling.ruled.said = shot.sayings.ruling;
    frame.push_back({std::move(ruling.ruled), ruling.shooter});
  }
  return frame;
}

/// What a person put in, from what the record keeps of it.
HandShot handShot(const FrameShot& shot) {
  const ShotReading& reading = shot.shot.reading;
  HandShot said;
  said.outcome = reading.outcome;
  if (const auto& target = reading.target) {
    said.ball = target->ball;
    said.pocket = target->pocket;
    said.missSide = target->missSide;
  }
  if (said.outcome != Outcome::Foul) return said;
  if (!shot.sayings.ruling.fouls.empty()) {
    said.foul = shot.sayings.ruling.fouls.front();
  } else if (const auto ruled = ruledBefore(shot.shot); ruled && !ruled->ruling.fouls.empty()) {
    said.foul = ruled->ruling.fouls.front().kind;
  }
  return said;
}

std::vector<RuledAnew> ruleByHand(const std::vector<FrameShot>& shots, const RuleSet& rules,
                                  const MeasuredTable& measured, const std::vector<std::string>& players) {
  const auto opening = shots.empty() ? std::nullopt : ruledBefore(shots.front().shot);
  const Seat breaker = opening ? opening->ruling.shooter : Seat::First;
  FrameLog log(newFrame(rules, breaker, surfaceLines(measured.table, measured.balls)));
  std::vector<RuledAnew> frame;
  for (const FrameShot& shot : shots) {
    const std::size_t entry = log.entries().size();
    log.add(handEvents(shot.shot.reading, handShot(shot)));
    const SaidOfShot said = saidOf(shot, players);
    for (const Testimony& testimony : said.testimonies)
      log.testify(entry, testimony);
    if (said.overrule) log.overrule(entry, said.overrule);
    if (said.chosen) log.choose(entry, said.chosen);
    const FrameEntry& ruled = log.entries().back();
    RuledAnew anew;
    anew.ruled.game = rules.game;
    anew.ruled.edition = rules.edition;
    if (const auto before = ruledBefore(shot.shot)) anew.ruled.frame = before->frame;
    anew.ruled.said = shot.sayings.ruling;
    anew.ruled.ruling = ruled.ruling;
    anew.ruled.points = ruled.after.points;
    if (ruled.after.result) anew.ruled.framesWon.at(indexOf(ruled.after.result->winner)) = 1;
    anew.shooter = ruled.ruling.shooter;
    frame.push_back(std::move(anew));
  }
  return frame;
}

}  // namespace

std::optional<Seat> seatOf(const std::vector<std::string>& players, const std::string& name) {
  const auto found = std::ranges::find(players, name);
  if (players.size() != 2 || found == players.end()) return std::nullopt;
  return found == players.begin() ? Seat::First : Seat::Second;
}

std::vector<RuledAnew> ruleFrame(const std::vector<FrameShot>& shots, Game game, const MeasuredTable& measured,
                                 const std::vector<std::string>& players, bool filmed) {
  const RuleSet rules = rulesOf(shots, game);
  return filmed ? ruleFilmed(shots, rules, measured, players) : ruleByHand(shots, rules, measured, players);
}

}  // namespace ferrule
