// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/read_shot.h"

#include <algorithm>
#include <cmath>

#include "core/reading/contacts.h"
#include "core/reading/cushion_hits.h"
#include "core/reading/delivery_fit.h"
#include "core/reading/jaw_touch.h"
#include "core/reading/miss_account.h"
#include "core/reading/outcome.h"
#include "core/reading/path_fit.h"
#include "core/reading/pocket_opening.h"
#include "core/reading/pocketing.h"
#include "core/reading/shot_flags.h"
#include "core/reading/table_priors.h"
#include "core/reading/target.h"

namespace ferrule {

namespace {

/// A ball that comes back after being away this long, or from a hand, is not the struck ball's path any more.
constexpr double kLongestGap_s = 0.6;
constexpr double kNearPocket_m = 0.16;
/// Two first hits closer than this in time, or than this in the cue ball's way, are not told apart.
/// 3 mm: common practice, no source.
constexpr double kSplitWay_m = 0.003;

/// A jump of this share of the speed is an impact; a hop after an elevated stroke makes smaller ones.
constexpr double kLargeJump = 0.25;

/// A path of fewer points does not tell a struck ball's speed.
constexpr std::size_t kFewestForPath = 3;

/// A course is taken over at least this way, from a place that is known so well.
constexpr double kLeastChord_m = 0.05;
constexpr double kPlaceUncertainty_m = 0.0004;

/// A ball that met a jaw falls no sooner than this later: an order, not a measurement.
constexpr double kFallAfterTouch_s = 0.001;

/// A ball that seems to rest may creep on for this long.
constexpr double kRollEnd_s = 0.4;

/// One ball with what became of it.
struct Follower {
  BallName ball;
  BallMotion motion;
  BallEnd fate;
  double lastSeen_s = 0.0;
  std::vector<Knot> jawTouches;  ///< shortly before it fell
};

/// taken: becomes whether a hand took the ball up; what it did then is not part of the path.
MeasuredPath struckPath(BallName ball, const CutShot& cut, const std::array<Pocket, 6>& all, bool& taken) {
  MeasuredPath path;
  taken = false;
  for (const ImageReading& reading : cut.readings) {
    const BallSample* sample = sampleOf(reading, ball);
    if (sample == nullptr) continue;
    if (sample->inHand && reading.time_s > cut.strike_s) taken = true;
    if (taken || !isMeasured(*sample)) continue;
    if (!path.empty() && reading.time_s - path.back().time_s > kLongestGap_s && path.back().time_s > cut.strike_s) {
      const bool fell = std::ranges::any_of(
          all, [&](const Pocket& pocket) { return distance(pocket.hole, path.back().position) < kNearPocket_m; });
      if (fell) break;
    }
    path.push_back({reading.time_s, sample->position, std::hypot(sample->standardUncertainty_m, kBestUncertainty_m)});
  }
  return path;
}

class ShotStory {
 public:
  ShotStory(const CutShot& cut, const MeasuredTable& measured, const ReadingKnowledge& knowledge)
      : cut_(cut),
        measured_(measured),
        knowledge_(knowledge),
        priors_(tablePriors(parametersFor(measured.balls), knowledge.table)),
        radius_m_(measured.balls.radius_m()),
        interval_s_(imageInterval_s(cut.readings)) {}

  std::optional<ShotReading> read(int number) {
    reading_.number = number;
    reading_.strike_s = cut_.strike_s;
    follow();
    const Follower* cue = follower(kCueBall);
    // A cue ball may have fallen before the film began.
    if (cue == nullptr && (!cut_.begunBefore || followers_.empty())) return std::nullopt;
    noteBefore();
    noteContacts();
    noteCushions();
    noteFates();
    std::ranges::stable_sort(reading_.events, {}, &ShotEvent::time_s);
    if (cut_.begunBefore) {
      forgetBeginning();
    } else {
      noteDelivery(*cue);
    }
    noteRest();
    if (!cut_.begunBefore) noteTarget();
    reading_.flags = shotFlags(cut_, motions_, contacts_, doubts_, radius_m_, interval_s_);
    judgeFirstContact();
    const Judged judged = judgeOutcome(reading_, measured_.table, radius_m_, doubts_);
    reading_.outcome = judged.outcome;
    reading_.outcomeVerdict = std::ranges::any_of(reading_.flags, leavesOutcomeOpen) ? Verdict::Ask : judged.verdict;
    return reading_;
  }

 private:
  void follow() {
    const auto all = pockets(measured_.table);
    const double end_s = cut_.readings.back().time_s;
    for (const BallName ball : ballsIn(cut_.readings)) {
      bool taken = false;
      MeasuredPath path = withoutStrays(struckPath(ball, cut_, all, taken));
      if (path.empty()) continue;
      // A ball that was taken up was there until then, and is not away.
      BallEnd fate = fateOf(path, taken ? path.back().time_s : end_s, measured_.table, radius_m_);
      const double lastSeen_s = path.back().time_s;
      const MeasuredPath onTable(path.begin(), path.begin() + static_cast<std::ptrdiff_t>(fate.pointsOnTable));
      BallMotion motion = motionOf(ball, onTable, interval_s_);
      std::vector<Knot> touches = jawTouches(path, fate, motion, measured_.table, radius_m_, interval_s_);
      // It was not over the edge yet.
      for (const Knot& touch : touches)
        fate.time_s = std::max(fate.time_s, touch.time_s + kFallAfterTouch_s);
      followers_.push_back({ball, std::move(motion), fate, lastSeen_s, std::move(touches)});
    }
    for (const Follower& follower : followers_)
      motions_.push_back(follower.motion);
  }

  [[nodiscard]] const Follower* follower(BallName ball) const {
    const auto found = std::ranges::find(followers_, ball, &Follower::ball);
    return found == followers_.end() ? nullptr : &*found;
  }
  [[nodiscard]] const RestingPlace* placeBefore(BallName ball) const {
    for (const auto& [name, place] : cut_.before) {
      if (name == ball) return &place;
    }
    return nullptr;
  }

  void noteBefore() {
    for (int number = 0; number < BallName::kCount; ++number) {
      const BallName ball(number);
      if (const RestingPlace* place = placeBefore(ball)) {
        reading_.before.push_back({ball, place->position});
      } else if (const Follower* late = follower(ball)) {
        reading_.before.push_back({ball, late->motion.path.front().position});
      }
    }
  }

  void noteContacts() {
    contacts_ = contactsOf(motions_, radius_m_, interval_s_);
    std::erase_if(contacts_, [&](const Contact& c) { return c.time_s < cut_.strike_s - interval_s_; });
    for (const Contact& contact : contacts_) {
      ShotEvent event;
      event.time_s = contact.time_s;
      event.kind = EventKind::Ball;
      event.ball = motions_[contact.first].ball;
      event.other = motions_[contact.second].ball;
      event.position = contact.firstPosition;
      event.timeUncertainty_s = contact.timeUncertainty_s;
      event.verdict = contact.firstKnot && contact.secondKnot ? Verdict::Certain : Verdict::Proposed;
      reading_.events.push_back(event);
    }
    std::vector<const Contact*> cueHits;
    for (const Contact& contact : contacts_) {
      if (motions_[contact.first].ball.isCueBall() || motions_[contact.second].ball.isCueBall()) {
        cueHits.push_back(&contact);
      }
    }
    if (cueHits.empty()) return;
    firstHit_ = *cueHits.front();
    const auto other = [&](const Contact& c) {
      return motions_[motions_[c.first].ball.isCueBall() ? c.second : c.first].ball;
    };
    reading_.firstContact = other(*cueHits.front());
    for (std::size_t i = 1; i < cueHits.size(); ++i) {
      if (other(*cueHits[i]) == *reading_.firstContact) continue;
      const double between_s = cueHits[i]->time_s - cueHits.front()->time_s;
      const double unsure_s = 2.0 * std::hypot(cueHits[i]->timeUncertainty_s, cueHits.front()->timeUncertainty_s);
      const std::size_t cue =
          motions_[cueHits.front()->first].ball.isCueBall() ? cueHits.front()->first : cueHits.front()->second;
      const double way_m = length(motions_[cue].velocityAt(cueHits.front()->time_s - interval_s_)) * between_s;
      if (between_s < unsure_s || way_m < kSplitWay_m) doubts_.splitHit = true;
    }
  }

  void noteCushions() {
    const auto faces = railFaces(measured_.table);
    for (std::size_t b = 0; b < motions_.size(); ++b) {
      for (std::size_t k = 0; k < motions_[b].knots.size(); ++k) {
        const Knot& knot = motions_[b].knots[k];
        if (knot.time_s < cut_.strike_s) continue;
        // What a contact at the same joint explains is taken off; a cushion may have come in the same gap.
        TableVector jump = knot.jump();
        for (const Contact& contact : contacts_) {
          const bool explains =
              (contact.first == b && contact.firstKnot == k) || (contact.second == b && contact.secondKnot == k);
          if (explains) jump = jump - dot(jump, contact.line) * contact.line;
        }
        if (length(jump) < std::max(0.05, 4.0 * knot.velocityUncertainty_mps)) continue;
        noteCushion(motions_[b].ball, knot, cushionOf(faces, knot, jump, radius_m_), Verdict::Certain);
      }
      for (const Knot& touch : followers_[b].jawTouches)
        noteCushion(motions_[b].ball, touch, cushionOf(faces, touch, touch.jump(), radius_m_), Verdict::Proposed);
    }
  }

  void noteCushion(BallName ball, const Knot& knot, const std::optional<CushionName>& cushion, Verdict verdict) {
    if (!cushion) return;
    ShotEvent event;
    event.time_s = knot.time_s;
    event.kind = EventKind::Cushion;
    event.ball = ball;
    event.cushion = cushion;
    event.position = knot.position;
    event.timeUncertainty_s = knot.timeUncertainty_s;
    event.verdict = verdict;
    reading_.events.push_back(event);
  }

  /// Which of two balls was hit first is a person's call when the film cannot tell: split-hit rule.
  void judgeFirstContact() {
    if (!doubts_.splitHit) return;
    for (ShotEvent& event : reading_.events) {
      if (event.kind == EventKind::Ball && (event.ball.isCueBall() || event.other == kCueBall)) {
        event.verdict = Verdict::Ask;
        return;
      }
    }
  }

  void noteFates() {
    std::vector<const Follower*> fallen;
    for (const Follower& follower : followers_) {
      const BallEnd& fate = follower.fate;
      if (fate.fate == Fate::Lost) doubts_.lostBall = true;
      if (fate.fate != Fate::Pocketed && fate.fate != Fate::OffTable) {
        reading_.after.push_back({follower.ball, restOf(follower)});
        continue;
      }
      ShotEvent event;
      event.time_s = fate.time_s;
      event.kind = fate.fate == Fate::Pocketed ? EventKind::Pocket : EventKind::OffTable;
      event.ball = follower.ball;
      event.pocket = fate.pocket;
      event.position = fate.position;
      event.timeUncertainty_s = fate.timeUncertainty_s;
      // A camera over the table does not see where a ball goes that leaves it.
      event.verdict = fate.certain && fate.fate == Fate::Pocketed ? Verdict::Certain : Verdict::Proposed;
      reading_.events.push_back(event);
      if (follower.ball.isCueBall()) reading_.scratch = true;
      if (fate.fate == Fate::Pocketed) fallen.push_back(&follower);
      if (!fate.certain) doubts_.unsurePocket = true;
    }
    std::ranges::stable_sort(fallen, {}, [](const Follower* f) { return f->fate.time_s; });
    for (const Follower* follower : fallen)
      reading_.pocketed.push_back({follower->ball, *follower->fate.pocket});
    doubts_.unfinished = !cut_.atRest;
  }

  [[nodiscard]] static TablePoint restOf(const Follower& follower) {
    const MeasuredPath& path = follower.motion.path;
    const MotionPiece& last = follower.motion.pieces.back();
    if (!last.resting) return path.back().position;
    // The first moments of rest may still be the end of a roll.
    const double from_s = std::min(last.start_s + kRollEnd_s, path.back().time_s - kStillWindow_s);
    MeasuredPath rest;
    for (const PathPoint& point : path) {
      if (point.time_s >= std::max(from_s, last.start_s)) rest.push_back(point);
    }
    return restingPlace(rest).position;
  }

  void noteDelivery(const Follower& cue) {
    const RestingPlace* place = placeBefore(kCueBall);
    if (place == nullptr) return;
    // The path counts until the first event, or the first large jump that no event explains.
    double until_s = cue.motion.path.back().time_s + 1.0;
    for (const Knot& knot : cue.motion.knots) {
      const bool strike = knot.pieceBefore.resting && knot.time_s < cut_.strike_s + 2.0 * interval_s_;
      if (strike || knot.time_s < cut_.strike_s || length(knot.jump()) < kLargeJump * length(knot.before)) continue;
      until_s = knot.time_s - std::min(2.0 * knot.timeUncertainty_s, 0.25 * interval_s_);
      break;
    }
    for (const ShotEvent& event : reading_.events) {
      if (!event.ball.isCueBall() && event.other != kCueBall) continue;
      until_s = std::min(until_s, event.time_s);
      break;
    }
    std::vector<PathPoint> points;
    // Only points of pieces: a point that fits neither neighbour is a wrong measurement.
    for (const MotionPiece& piece : cue.motion.pieces) {
      for (std::size_t i = piece.first; i <= piece.last; ++i) {
        if (std::ranges::find(piece.strays, i) != piece.strays.end()) continue;
        const PathPoint& point = cue.motion.path[i];
        if (point.time_s <= cut_.strike_s - 0.5 * interval_s_ || point.time_s >= until_s) continue;
        points.push_back(point);
      }
    }
    const PathFit fit = fitStruckPath(*place, points, cut_.strike_s);
    DeliveryPriors priors = priors_;
    PathFit start = fit;
    if (points.size() < kFewestForPath || !fit.usable) {
      if (const auto guess = startFromFirstContact(*place)) {
        start = *guess;
        priors.aimSpread_rad = 0.15;
        priors.speedSpread = 0.3;
      }
    }
    Delivery& delivery = reading_.delivery;
    delivery.whyNoStrike = delivery.whyNoSide = delivery.whyNoHeight = delivery.whyNoElevation = NotShown::NotFollowed;
    if (start.usable) {
      DeliveryWindow window =
          deliveryWindow({motions_, contacts_, reading_.events, cut_.before, cut_.strike_s, interval_s_, radius_m_});
      window.camera = knowledge_.camera;
      delivered_ = fitDelivery(measured_.table, window, start, priors);
      delivery = delivered_.delivery;
    }
    if (delivered_.usable) {
      reading_.strike_s = delivered_.strike_s;
      return;
    }
    if (!fit.usable || points.size() < kFewestForPath) return;
    // The cue ball's own way still tells where it was sent and how fast.
    reading_.strike_s = fit.strike_s;
    delivery.aim_rad = fit.aim_rad;
    delivery.speed_mps = fit.speed_mps;
    delivery.whyNoStrike.reset();
  }

  /// What the film does not show is not told: how the cue ball was struck and what it met first.
  void forgetBeginning() {
    Delivery& delivery = reading_.delivery;
    delivery.whyNoStrike = delivery.whyNoSide = delivery.whyNoHeight = delivery.whyNoElevation = NotShown::NotFollowed;
    reading_.firstContact.reset();
    firstHit_.reset();
    doubts_.splitHit = false;
    doubts_.begunBefore = true;
  }

  /// A cue ball that met another ball before it was measured on its way: both together carry on what it had.
  /// Source: conservation of momentum of equal balls.
  [[nodiscard]] std::optional<PathFit> startFromFirstContact(const RestingPlace& place) const {
    if (!firstHit_ || !firstHit_->firstKnot || !firstHit_->secondKnot) return std::nullopt;
    const BallMotion& first = motions_[firstHit_->first];
    const BallMotion& second = motions_[firstHit_->second];
    if (!first.ball.isCueBall()) return std::nullopt;
    const TableVector sum = first.knots[*firstHit_->firstKnot].after + second.knots[*firstHit_->secondKnot].after;
    const double speed_mps = length(sum);
    if (!(speed_mps > 0.1)) return std::nullopt;
    // The way to the other ball's surface on this course.
    const TableVector to = firstHit_->secondPosition - place.position;
    const double along_m = dot(to, unit(sum));
    const double across_m = std::min(std::abs(dot(to, perpendicular(unit(sum)))), 2.0 * radius_m_);
    const double way_m = std::max(0.0, along_m - std::sqrt(4.0 * radius_m_ * radius_m_ - across_m * across_m));
    PathFit fit;
    fit.usable = true;
    fit.strike_s = firstHit_->time_s - way_m / speed_mps;
    fit.start = place.position;
    fit.aim_rad.value = direction(sum);
    fit.speed_mps.value = speed_mps;
    return fit;
  }

  void noteRest() {
    double rest_s = reading_.strike_s;
    for (const Follower& follower : followers_) {
      if (!follower.motion.moved()) continue;
      const bool gone = follower.fate.fate == Fate::Pocketed || follower.fate.fate == Fate::OffTable;
      rest_s =
          std::max(rest_s, gone ? std::max(follower.fate.time_s, follower.lastSeen_s) : follower.motion.restTime_s());
    }
    reading_.rest_s = rest_s;
  }

  [[nodiscard]] std::optional<FirstHit> describeFirstHit() const {
    if (!firstHit_) return std::nullopt;
    const bool cueCame = motions_[firstHit_->first].ball.isCueBall();
    const std::size_t cue = cueCame ? firstHit_->first : firstHit_->second;
    const std::size_t other = cueCame ? firstHit_->second : firstHit_->first;
    const auto& cueKnot = cueCame ? firstHit_->firstKnot : firstHit_->secondKnot;
    const auto& otherKnot = cueCame ? firstHit_->secondKnot : firstHit_->firstKnot;
    FirstHit hit;
    hit.ball = motions_[other].ball;
    hit.ballPlace = cueCame ? firstHit_->secondPosition : firstHit_->firstPosition;
    hit.cueCourse =
        cueKnot ? motions_[cue].knots[*cueKnot].before : motions_[cue].velocityAt(firstHit_->time_s - interval_s_);
    hit.line = cueCame ? firstHit_->line : -firstHit_->line;
    hit.ballCourse = otherKnot ? motions_[other].knots[*otherKnot].after
                               : motions_[other].velocityAt(firstHit_->time_s + interval_s_);
    for (const MotionPiece& piece : motions_[other].pieces) {
      hit.ballTravel_m += distance(piece.at(piece.start_s), piece.at(piece.end_s));
    }
    hit.ballMetRail = std::ranges::any_of(reading_.events, [&](const ShotEvent& event) {
      return event.kind == EventKind::Cushion && event.ball == hit.ball;
    });
    if (length(hit.ballCourse) <= 0.0 || length(hit.cueCourse) <= 0.0) return std::nullopt;
    if (otherKnot) {
      // Over a longer way the direction is much surer than at one moment; a ball that was just hit hardly curves.
      const MotionPiece& way = motions_[other].knots[*otherKnot].pieceAfter;
      const TableVector chord = way.at(way.end_s) - hit.ballPlace;
      if (length(chord) > kLeastChord_m) {
        hit.ballCourse = length(hit.ballCourse) * unit(chord);
        hit.courseUncertainty_rad =
            std::hypot(way.positionUncertainty_m(way.end_s), kPlaceUncertainty_m) / length(chord);
      } else {
        hit.courseUncertainty_rad = motions_[other].knots[*otherKnot].velocityUncertainty_mps / length(hit.ballCourse);
      }
    }
    return hit;
  }

  void noteTarget() {
    // A break is not played at one ball and one pocket.
    if (isBreak(reading_.before, measured_.table, radius_m_)) return;
    const std::optional<FirstHit> hit = describeFirstHit();
    const PocketedBall* made = nullptr;
    for (const PocketedBall& pocketed : reading_.pocketed) {
      if (pocketed.ball.isCueBall()) continue;
      if (made == nullptr || pocketed.ball == reading_.firstContact) made = &pocketed;
    }
    if (const auto& call = knowledge_.call) {
      reading_.target = targetOfCall(measured_.table, call->ball, call->pocket, hit);
      // A pot that was made missed on no side.
      if (std::ranges::find(reading_.pocketed, *call) != reading_.pocketed.end()) reading_.target->missSide.reset();
    } else if (made != nullptr) {
      reading_.target = targetOfPot(measured_.table, *made, hit);
    } else if (hit) {
      reading_.target = targetOfMiss(measured_.table, *hit);
    }
    if (reading_.target) describeTarget(*reading_.target, hit);
  }

  void describeTarget(Target& target, const std::optional<FirstHit>& hit) {
    target.rattled = rattled(target, measured_.table, reading_, radius_m_);
    if (!hit || hit->ball != target.ball) return;
    describeLine(target, measured_.table, *hit, radius_m_);
    if (!target.lineError_rad) return;
    const Pocket pocket = pockets(measured_.table)[static_cast<std::size_t>(target.pocket)];
    if (const auto simulator = Simulator::create(measured_.table, priors_.middle)) {
      const auto opening = pocketOpening(*simulator, pocket, hit->ballPlace, length(hit->ballCourse));
      if (opening) target.opening_m = opening->width_m;
    }
    if (!delivered_.usable) return;
    MissEvidence evidence;
    evidence.strike = delivered_.best;
    evidence.delivery = delivered_.delivery;
    evidence.priors = priors_;
    evidence.target = target.ball;
    evidence.aimedAt = pocket.mouth;
    evidence.lineError_rad = {*target.lineError_rad, target.lineErrorUncertainty_rad.value_or(0.0)};
    reading_.missAccount = missAccount(measured_.table, evidence);
  }

  const CutShot& cut_;
  const MeasuredTable& measured_;
  ReadingKnowledge knowledge_;
  DeliveryPriors priors_;
  double radius_m_;
  double interval_s_;
  std::vector<Follower> followers_;
  std::vector<BallMotion> motions_;
  std::vector<Contact> contacts_;
  std::optional<Contact> firstHit_;
  Doubts doubts_;
  DeliveryFit delivered_;
  ShotReading reading_;
};

}  // namespace

std::optional<ShotReading> readShot(const CutShot& cut, const MeasuredTable& measured, int number,
                                    const ReadingKnowledge& knowledge) {
  if (cut.readings.empty()) return std::nullopt;
  return ShotStory(cut, measured, knowledge).read(number);
}

}  // namespace ferrule
