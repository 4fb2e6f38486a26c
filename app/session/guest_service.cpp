// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/guest_service.h"

#include <algorithm>

namespace ferrule {

namespace {

Result<std::optional<GuestOfSession>> guestOf(Record& record, SessionId session) {
  const auto sessions = record.sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  const auto summary = std::ranges::find(*sessions, session, &SessionSummary::id);
  const auto players = record.players();
  if (!players) return tl::make_unexpected(players.error());
  std::optional<GuestOfSession> found;
  QStringList others;
  for (const Player& player : *players) {
    const bool sat =
        summary != sessions->end() && std::ranges::find(summary->players, player.name) != summary->players.end();
    if (sat && player.guest && !found) found = GuestOfSession{player.id, QString::fromStdString(player.name), {}};
    if (!sat && !player.guest) others << QString::fromStdString(player.name);
  }
  if (found) found->others = others;
  return found;
}

}  // namespace

GuestService::GuestService(QObject* parent) : QObject(parent), keeper_(QStringLiteral("guest keeper")) {}

void GuestService::ask(const QString& record, std::function<Result<void>(Record&)> work) {
  keeper_.ask([this, record, work = std::move(work)](KeptRecord& kept) {
    if (kept.path() != record) kept.setPath(record);
    const auto opened = kept.toWrite(WhenMissing::Refuse);
    const Result<void> done = opened ? work(**opened) : tl::make_unexpected(opened.error());
    if (!done) emit failed(done.error());
  });
}

void GuestService::look(const QString& record, SessionId session) {
  ask(record, [this, session](Record& opened) -> Result<void> {
    const auto guest = guestOf(opened, session);
    if (!guest) return tl::make_unexpected(guest.error());
    if (*guest) emit found(**guest);
    return {};
  });
}

void GuestService::name(const QString& record, PlayerId guest, const QString& name) {
  ask(record, [this, guest, name](Record& opened) -> Result<void> {
    const auto before = person(opened, guest);
    if (!before) return tl::make_unexpected(before.error());
    const auto known = opened.playerNamed(name.toStdString());
    if (!known) return tl::make_unexpected(known.error());
    Named done{before->details, std::nullopt};
    if (*known && (*known)->id != guest) {
      auto report = joinPeople(opened, guest, (*known)->id);
      if (!report) return tl::make_unexpected(report.error());
      if (report->ending != JoinReport::Ending::Joined) {
        emit refused(report->ending, name);
        return {};
      }
      done.joined = std::move(report->joined);
    } else {
      PersonDetails after = before->details;
      after.player.name = name.toStdString();
      after.player.guest = false;
      if (auto renamed = updatePerson(opened, after); !renamed) return renamed;
    }
    last_ = std::move(done);
    emit named(QString::fromStdString(before->details.player.name), name);
    return {};
  });
}

void GuestService::takeBack(const QString& record, UtcMilliseconds now) {
  ask(record, [this, now](Record& opened) -> Result<void> {
    if (!last_) return {};
    auto done = last_->joined ? partPeople(opened, *last_->joined, {}, now) : updatePerson(opened, last_->before);
    if (!done) return done;
    const QString guest = QString::fromStdString(last_->before.player.name);
    last_.reset();
    emit takenBack(guest);
    return {};
  });
}

}  // namespace ferrule
