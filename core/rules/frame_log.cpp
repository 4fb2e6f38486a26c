// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/frame_log.h"

#include <utility>

#include "core/base/contract.h"

namespace ferrule {

namespace {

Ruling ruleOn(const GameState& state, const FrameEntry& entry, const std::vector<Testimony>& testimonies) {
  if (const auto* announcement = std::get_if<Announcement>(&entry.what)) return rule(state, *announcement);
  return rule(state, witnessed(std::get<ShotEvents>(entry.what), testimonies));
}

}  // namespace

FrameLog::FrameLog(GameState start) : start_(std::move(start)) {}

const GameState& FrameLog::state() const {
  return entries_.empty() ? start_ : entries_.back().after;
}

const GameState& FrameLog::stateBefore(std::size_t entry) const {
  FERRULE_REQUIRE(entry <= entries_.size());
  return entry == 0 ? start_ : entries_[entry - 1].after;
}

void FrameLog::add(ShotEvents shot) {
  FrameEntry entry;
  entry.what = std::move(shot);
  put(entries_.size(), std::move(entry));
}

void FrameLog::add(Announcement announcement) {
  FrameEntry entry;
  entry.what = announcement;
  put(entries_.size(), std::move(entry));
}

void FrameLog::testify(std::size_t entry, Testimony testimony) {
  FERRULE_REQUIRE(entry < entries_.size());
  FrameEntry wanted = entries_[entry];
  wanted.testimonies.push_back(std::move(testimony));
  put(entry, std::move(wanted));
}

void FrameLog::clearTestimonies(std::size_t entry) {
  FERRULE_REQUIRE(entry < entries_.size());
  FrameEntry wanted = entries_[entry];
  wanted.testimonies.clear();
  put(entry, std::move(wanted));
}

void FrameLog::overrule(std::size_t entry, std::optional<Overrule> overrule) {
  FERRULE_REQUIRE(entry < entries_.size());
  FERRULE_REQUIRE(!overrule || !overrule->who.empty());
  FrameEntry wanted = entries_[entry];
  wanted.overrule = std::move(overrule);
  put(entry, std::move(wanted));
}

void FrameLog::choose(std::size_t entry, std::optional<OptionKind> option) {
  FERRULE_REQUIRE(entry < entries_.size());
  FrameEntry wanted = entries_[entry];
  wanted.choices.option = option;
  put(entry, std::move(wanted));
}

void FrameLog::setVoided(std::size_t entry, bool voided) {
  FERRULE_REQUIRE(entry < entries_.size());
  FrameEntry wanted = entries_[entry];
  wanted.voided = voided;
  put(entry, std::move(wanted));
}

void FrameLog::restart(GameState start) {
  redone_.clear();
  undone_.push_back(swapIn({0, std::nullopt, std::move(start)}));
}

void FrameLog::undo() {
  if (undone_.empty()) return;
  Edit edit = std::move(undone_.back());
  undone_.pop_back();
  redone_.push_back(swapIn(std::move(edit)));
}

void FrameLog::redo() {
  if (redone_.empty()) return;
  Edit edit = std::move(redone_.back());
  redone_.pop_back();
  undone_.push_back(swapIn(std::move(edit)));
}

std::vector<std::size_t> FrameLog::open() const {
  std::vector<std::size_t> waiting;
  for (std::size_t i = 0; i < entries_.size(); ++i) {
    if (!entries_[i].voided && entries_[i].ruling.sureness == Verdict::Ask) waiting.push_back(i);
  }
  return waiting;
}

void FrameLog::put(std::size_t entry, std::optional<FrameEntry> wanted) {
  redone_.clear();
  undone_.push_back(swapIn({entry, std::move(wanted), std::nullopt}));
}

FrameLog::Edit FrameLog::swapIn(Edit edit) {
  Edit reverse{edit.entry, std::nullopt, std::nullopt};
  if (edit.startThen) {
    reverse.startThen = std::exchange(start_, std::move(*edit.startThen));
  } else if (!edit.entryThen) {
    FERRULE_REQUIRE(edit.entry + 1 == entries_.size());
    reverse.entryThen = std::move(entries_.back());
    entries_.pop_back();
  } else if (edit.entry == entries_.size()) {
    entries_.push_back(std::move(*edit.entryThen));
  } else {
    reverse.entryThen = std::exchange(entries_[edit.entry], std::move(*edit.entryThen));
  }
  ruleFrom(edit.entry);
  return reverse;
}

void FrameLog::ruleFrom(std::size_t entry) {
  for (std::size_t i = entry; i < entries_.size(); ++i) {
    FrameEntry& current = entries_[i];
    const GameState& before = stateBefore(i);
    current.automatic = ruleOn(before, current, {});
    current.ruling = current.testimonies.empty() ? current.automatic : ruleOn(before, current, current.testimonies);
    if (current.overrule) current.ruling = overruled(std::move(current.ruling), *current.overrule);
    current.after = current.voided ? before : apply(before, current.ruling, current.choices);
  }
}

}  // namespace ferrule
