// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/hand_service.h"

#include <utility>

namespace ferrule {

HandService::HandService(QObject* parent) : QObject(parent), keeper_(QStringLiteral("hand keeper")) {}

void HandService::ask(std::function<Result<void>(Record&)> work) {
  keeper_.ask([this, work = std::move(work)](KeptRecord& kept) {
    const auto record = kept.toWrite(WhenMissing::Make);
    const Result<void> done = record ? work(**record) : tl::make_unexpected(record.error());
    if (!done) emit failed(done.error());
  });
}

void HandService::open(const QString& record) {
  keeper_.ask([record](KeptRecord& kept) { kept.setPath(record); });
  ask([this, record](Record& opened) -> Result<void> {
    auto hand = resumeHandSession(opened);
    if (!hand) return tl::make_unexpected(hand.error());
    emit this->opened(record, *hand ? std::make_shared<const KeptHand>(std::move(**hand)) : nullptr);
    return {};
  });
}

void HandService::begin(const HandTerms& terms, SessionKind kind, UtcMilliseconds now) {
  ask([this, terms, kind, now](Record& record) -> Result<void> {
    auto hand = beginHandSession(record, terms, kind, now);
    if (!hand) return tl::make_unexpected(hand.error());
    emit begun(std::make_shared<const KeptHand>(std::move(*hand)));
    return {};
  });
}

void HandService::keep(const KeptHand& hand) {
  ask([hand](Record& record) { return keepHandSession(record, hand); });
}

void HandService::nextFrame(const KeptHand& hand) {
  ask([this, hand](Record& record) -> Result<void> {
    auto next = nextHandFrame(record, hand);
    if (!next) return tl::make_unexpected(next.error());
    emit begun(std::make_shared<const KeptHand>(std::move(*next)));
    return {};
  });
}

void HandService::end(const KeptHand& hand) {
  ask([this, hand](Record& record) -> Result<void> {
    if (auto done = endHandSession(record, hand); !done) return done;
    emit ended();
    return {};
  });
}

}  // namespace ferrule
