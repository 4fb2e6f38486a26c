// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/session_shots.h"

#include "app/words/trade_words.h"

namespace ferrule {

Result<ShotList> shotsOfSession(const QString& record, SessionId session) {
  auto open = Record::open(record.toStdString());
  if (!open) return tl::make_unexpected(open.error());
  const auto sessions = open->sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  const auto found = std::ranges::find(*sessions, session, &SessionSummary::id);
  if (found == sessions->end()) return failure(ErrorCode::NotFound, "session", open->path());
  ShotList list{record, QString::fromStdString(found->name), {}};
  const auto frames = open->frames(session);
  if (!frames) return tl::make_unexpected(frames.error());
  for (const FrameSummary& frame : *frames) {
    const auto shots = open->shots(frame.id);
    if (!shots) return tl::make_unexpected(shots.error());
    for (const ShotSummary& shot : *shots) {
      const QString words = QStringLiteral("%1 · %2").arg(shot.number).arg(shotWords(shot));
      list.shots.push_back({session, shot.id, words, shot.outcome});
    }
  }
  return list;
}

}  // namespace ferrule
