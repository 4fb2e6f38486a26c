// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/hand_keeping.h"

#include <nlohmann/json.hpp>

#include "core/measure/record_entries.h"

namespace ferrule {

namespace {

constexpr const char* kDraft = "hand-session";

std::optional<PlayerId> playerOf(const KeptHand& hand, std::size_t shot) {
  const auto seat = hand.session.shooterOf(shot);
  if (!seat || indexOf(*seat) >= hand.place.players.size()) return std::nullopt;
  return hand.place.players[indexOf(*seat)];
}

std::optional<RulingEntry> rulingOf(const HandSession& session, std::size_t shot) {
  const auto ruled = session.rulingOf(shot);
  if (!ruled) return std::nullopt;
  return entryOf(*ruled);
}

/// Brings the frame's shots in the record to the first count ones of the session.
Result<void> bringTo(Record& record, const KeptHand& hand, std::size_t count) {
  const auto kept = record.shots(hand.place.frame);
  if (!kept) return tl::make_unexpected(kept.error());
  for (std::size_t there = kept->size(); there > count; --there) {
    if (auto done = record.removeLastShot(hand.place.frame); !done) return done;
  }
  for (std::size_t shot = kept->size(); shot < count; ++shot) {
    const auto done = record.appendShot(hand.place.frame, hand.session.readingOf(shot), {}, playerOf(hand, shot),
                                        rulingOf(hand.session, shot));
    if (!done) return tl::make_unexpected(done.error());
    const std::string& suggestion = hand.session.state().shots[shot].suggestion;
    if (suggestion.empty()) continue;
    const SuggestionEntry entry{plannerName(), true, {}, {}, suggestion};
    if (auto noted = record.keepSuggestion(*done, entry); !noted) return noted;
  }
  return {};
}

std::string draftOf(const KeptHand& hand) {
  nlohmann::ordered_json players = nlohmann::ordered_json::array();
  for (const PlayerId player : hand.place.players)
    players.push_back(player.value);
  return nlohmann::ordered_json{{"session", hand.place.session.value},
                                {"frame", hand.place.frame.value},
                                {"players", std::move(players)},
                                {"started_ms", hand.place.started},
                                {"hand", nlohmann::ordered_json::parse(handText(hand.session))}}
      .dump();
}

std::optional<KeptHand> draftFrom(const std::string& text) {
  const auto json = nlohmann::ordered_json::parse(text, nullptr, false);
  if (json.is_discarded() || !json.contains("hand")) return std::nullopt;
  auto session = handFromText(json["hand"].dump());
  if (!session) return std::nullopt;
  try {
    HandPlace place{SessionId{json.at("session").get<std::int64_t>()},
                    FrameId{json.at("frame").get<std::int64_t>()},
                    {},
                    json.at("started_ms").get<std::int64_t>()};
    for (const auto& player : json.at("players"))
      place.players.push_back(PlayerId{player.get<std::int64_t>()});
    return KeptHand{std::move(*session), std::move(place)};
  } catch (const nlohmann::json::exception&) {
    return std::nullopt;
  }
}

/// All shots, and the frame done.
Result<void> endFrame(Record& record, const KeptHand& hand) {
  if (auto done = bringTo(record, hand, hand.session.state().shots.size()); !done) return done;
  return record.completeFrame(hand.place.frame);
}

Result<FrameId> newFrameIn(Record& record, const HandTerms& terms, SessionId session) {
  return record.addFrame(
      {session, terms.game ? std::string(toText(*terms.game)) : std::string(), std::nullopt, std::nullopt});
}

}  // namespace

Result<KeptHand> beginHandSession(Record& record, const HandTerms& terms, SessionKind kind, UtcMilliseconds now) {
  const auto players = playersNamed(record, terms.players);
  if (!players) return tl::make_unexpected(players.error());
  const auto session = record.addSession({terms.name, now, terms.tableName, terms.table, *players, kind});
  if (!session) return tl::make_unexpected(session.error());
  const auto frame = newFrameIn(record, terms, *session);
  if (!frame) return tl::make_unexpected(frame.error());
  KeptHand hand{HandSession(terms), {*session, *frame, *players, now}};
  if (auto kept = keepHandSession(record, hand); !kept) return tl::make_unexpected(kept.error());
  return hand;
}

Result<void> keepHandSession(Record& record, const KeptHand& hand) {
  // The draft first: it holds everything, and what the record then lacks follows from it.
  if (auto done = record.keepDraft(kDraft, draftOf(hand)); !done) return done;
  const std::size_t shots = hand.session.state().shots.size();
  return bringTo(record, hand, shots == 0 ? 0 : shots - 1);
}

Result<KeptHand> nextHandFrame(Record& record, const KeptHand& hand) {
  if (auto done = endFrame(record, hand); !done) return tl::make_unexpected(done.error());
  HandTerms terms = hand.session.terms();
  ++terms.frame;
  terms.breaker = otherSeat(terms.breaker);
  const auto frame = newFrameIn(record, terms, hand.place.session);
  if (!frame) return tl::make_unexpected(frame.error());
  KeptHand next{HandSession(std::move(terms)), hand.place};
  next.place.frame = *frame;
  if (auto kept = keepHandSession(record, next); !kept) return tl::make_unexpected(kept.error());
  return next;
}

Result<void> endHandSession(Record& record, const KeptHand& hand) {
  if (auto done = endFrame(record, hand); !done) return done;
  return record.keepDraft(kDraft, std::nullopt);
}

Result<std::optional<KeptHand>> resumeHandSession(Record& record) {
  const auto draft = record.draft(kDraft);
  if (!draft) return tl::make_unexpected(draft.error());
  if (!*draft) return std::optional<KeptHand>();
  auto hand = draftFrom(**draft);
  if (!hand) return failure(ErrorCode::RecordBroken, record.path(), "drafts.content");
  return hand;
}

}  // namespace ferrule
