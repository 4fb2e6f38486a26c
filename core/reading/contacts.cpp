// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/contacts.h"

#include <algorithm>
#include <cmath>

#include "core/reading/least_time.h"

namespace ferrule {

namespace {

/// Centres at a contact may seem this far from two radii apart, m: two position errors and their drift.
constexpr double kGap_m = 0.006;
/// How well the distance of two radii is known when it helps to find the time, m.
constexpr double kGapUncertainty_m = 0.0015;
/// The jump of at least one ball lies this near to the line of centres; more when a second impact is mixed in.
constexpr double kLeastCosine = 0.86;
constexpr double kLeastCosineAlone = 0.96;
constexpr double kLeastCosineInRack = 0.3;

/// A ball that turns is told from noise from this speed on.
constexpr double kTurnSpeed_mps = 0.3;

double cosine(TableVector a, TableVector b) {
  const double lengths = length(a) * length(b);
  return lengths > 0.0 ? dot(a, b) / lengths : 0.0;
}

/// The ball's centre at a time near a knot: from both sides, the surer one counting more.
TablePoint placeNear(const Knot& knot, double time_s) {
  const TablePoint before = knot.pieceBefore.at(time_s);
  const TablePoint after = knot.pieceAfter.at(time_s);
  const double ub = knot.pieceBefore.positionUncertainty_m(time_s);
  const double ua = knot.pieceAfter.positionUncertainty_m(time_s);
  const double wb = 1.0 / (ub * ub + 1e-9);
  const double wa = 1.0 / (ua * ua + 1e-9);
  return before + (wa / (wa + wb)) * (after - before);
}

struct Pairing {
  double time_s = 0.0;
  double gap_m = 0.0;
  TablePoint first;
  TablePoint second;
};

/// The time at which two knots agree best with one contact.
Pairing pairUp(const Knot& a, const Knot& b, double radius_m, double imageInterval_s) {
  const double low_s = std::max(a.from_s, b.from_s) - 0.6 * imageInterval_s;
  const double high_s = std::max(low_s, std::min(a.to_s, b.to_s) + 0.6 * imageInterval_s);
  const auto cost = [&](double time_s) {
    const double gap = (distance(placeNear(a, time_s), placeNear(b, time_s)) - 2.0 * radius_m) / kGapUncertainty_m;
    return disagreement(a, time_s) + disagreement(b, time_s) + gap * gap;
  };
  Pairing pairing;
  pairing.time_s = leastTime_s(low_s, high_s, cost);
  pairing.first = placeNear(a, pairing.time_s);
  pairing.second = placeNear(b, pairing.time_s);
  pairing.gap_m = distance(pairing.first, pairing.second) - 2.0 * radius_m;
  return pairing;
}

bool near(double a_s, double b_s, double limit_s) {
  return std::abs(a_s - b_s) <= limit_s;
}

class Search {
 public:
  Search(const std::vector<BallMotion>& motions, double radius_m, double imageInterval_s)
      : motions_(motions), radius_m_(radius_m), interval_s_(imageInterval_s) {}

  std::vector<Contact> run() {
    for (std::size_t a = 0; a < motions_.size(); ++a) {
      for (std::size_t b = a + 1; b < motions_.size(); ++b)
        pairKnots(a, b);
    }
    explainTurns();
    explainStarts();
    std::ranges::stable_sort(contacts_, {}, &Contact::time_s);
    heedCause();
    return std::move(contacts_);
  }

 private:
  void pairKnots(std::size_t a, std::size_t b) {
    for (std::size_t i = 0; i < motions_[a].knots.size(); ++i) {
      for (std::size_t j = 0; j < motions_[b].knots.size(); ++j) {
        const Knot& ka = motions_[a].knots[i];
        const Knot& kb = motions_[b].knots[j];
        const double slack_s = 1.2 * interval_s_ + 2.0 * (ka.timeUncertainty_s + kb.timeUncertainty_s);
        if (!near(ka.time_s, kb.time_s, slack_s)) continue;
        const Pairing pairing = pairUp(ka, kb, radius_m_, interval_s_);
        const double spread_m = std::hypot(ka.pieceBefore.positionUncertainty_m(pairing.time_s),
                                           kb.pieceBefore.positionUncertainty_m(pairing.time_s));
        if (std::abs(pairing.gap_m) > kGap_m + 2.0 * spread_m) continue;
        const TableVector line = unit(pairing.second - pairing.first);
        // Toward each other before; pushed apart by it.
        const double closing_mps = dot(ka.before - kb.before, line);
        if (closing_mps <= 0.0 || closing_mps < ka.velocityUncertainty_mps + kb.velocityUncertainty_mps) continue;
        const double cosA = cosine(ka.jump(), -line);
        const double cosB = cosine(kb.jump(), line);
        // In a rack a ball is thrown back by those behind it, so that its own jump says nothing.
        const double needed = std::min(cosA, cosB) < 0.0 ? kLeastCosineAlone : kLeastCosine;
        if (std::max(cosA, cosB) < needed) continue;
        add(a, b, i, j, pairing, line);
      }
    }
  }

  void add(std::size_t a, std::size_t b, std::optional<std::size_t> i, std::optional<std::size_t> j,
           const Pairing& pairing, TableVector line) {
    const TableVector va = i ? motions_[a].knots[*i].before : motions_[a].velocityAt(pairing.time_s);
    const TableVector vb = j ? motions_[b].knots[*j].before : motions_[b].velocityAt(pairing.time_s);
    Contact contact;
    contact.time_s = pairing.time_s;
    double uncertainty_s = 1e9;
    if (i) uncertainty_s = std::min(uncertainty_s, motions_[a].knots[*i].timeUncertainty_s);
    if (j) uncertainty_s = std::min(uncertainty_s, motions_[b].knots[*j].timeUncertainty_s);
    contact.timeUncertainty_s = uncertainty_s;
    contact.first = a;
    contact.second = b;
    contact.firstKnot = i;
    contact.secondKnot = j;
    contact.firstPosition = pairing.first;
    contact.secondPosition = pairing.second;
    contact.line = line;
    if (std::abs(dot(vb, line)) > std::abs(dot(va, line))) {
      std::swap(contact.first, contact.second);
      std::swap(contact.firstKnot, contact.secondKnot);
      std::swap(contact.firstPosition, contact.secondPosition);
      contact.line = -line;
    }
    contacts_.push_back(contact);
  }

  /// Nothing moves the object balls before the cue ball meets the first of them: in a rack, where all start within one
  /// image, the paths alone may tell another order.
  void heedCause() {
    const auto cueHit = std::ranges::find_if(contacts_, [&](const Contact& contact) {
      return motions_[contact.first].ball.isCueBall() || motions_[contact.second].ball.isCueBall();
    });
    if (cueHit == contacts_.end()) return;
    const double first_s = cueHit->time_s;
    for (Contact& contact : std::ranges::subrange(contacts_.begin(), cueHit)) {
      const double early_s = first_s - contact.time_s;
      if (early_s > 2.0 * interval_s_ || !restedUntil(contact.first, contact.time_s) ||
          !restedUntil(contact.second, contact.time_s)) {
        continue;
      }
      contact.time_s = first_s;
      contact.timeUncertainty_s = std::hypot(contact.timeUncertainty_s, early_s);
    }
    // The cue ball's own stands first among equal ones.
    std::rotate(contacts_.begin(), cueHit, cueHit + 1);
    std::ranges::stable_sort(contacts_, {}, &Contact::time_s);
  }

  /// Whether a ball lay still from the beginning until about then.
  [[nodiscard]] bool restedUntil(std::size_t ball, double time_s) const {
    const MotionPiece& start = motions_[ball].pieces.front();
    return start.resting && start.end_s > time_s - 2.0 * interval_s_;
  }

  [[nodiscard]] bool explained(std::size_t ball, std::size_t knot) const {
    return std::ranges::any_of(contacts_, [&](const Contact& contact) {
      return (contact.first == ball && contact.firstKnot == knot) ||
             (contact.second == ball && contact.secondKnot == knot);
    });
  }

  /// A moving ball that was thrown back beside a ball that started then has hit it, whatever way that one went: in a
  /// rack the balls behind may have turned it.
  void explainTurns() {
    for (std::size_t a = 0; a < motions_.size(); ++a) {
      for (std::size_t i = 0; i < motions_[a].knots.size(); ++i) {
        const Knot& turn = motions_[a].knots[i];
        if (length(turn.before) < kTurnSpeed_mps || explained(a, i)) continue;
        std::optional<std::size_t> met;
        std::size_t metKnot = 0;
        Pairing pairing;
        double least_m = 2.0 * kGap_m;
        for (std::size_t b = 0; b < motions_.size(); ++b) {
          if (b == a) continue;
          for (std::size_t j = 0; j < motions_[b].knots.size(); ++j) {
            const Knot& start = motions_[b].knots[j];
            if (!start.pieceBefore.resting || !near(start.time_s, turn.time_s, 2.0 * interval_s_)) continue;
            const TablePoint place = start.pieceBefore.position;
            const TablePoint there = nearestApproach(a, i, place, start.time_s);
            const double gap_m = std::abs(distance(there, place) - 2.0 * radius_m_);
            if (gap_m >= least_m || cosine(turn.before, place - there) < kLeastCosineInRack) continue;
            if (cosine(turn.jump(), there - place) < kLeastCosine) continue;
            least_m = gap_m;
            met = b;
            metKnot = j;
            pairing = {start.time_s, gap_m, there, place};
          }
        }
        if (met) add(a, *met, i, metKnot, pairing, unit(pairing.second - pairing.first));
      }
    }
  }

  /// A ball that starts from rest was pushed by another, though no pair of jumps told which: in a rack, where the blow
  /// runs through resting balls, or when the ball that came was not measured well.
  void explainStarts() {
    for (std::size_t b = 0; b < motions_.size(); ++b) {
      if (motions_[b].ball.isCueBall()) continue;
      for (std::size_t j = 0; j < motions_[b].knots.size(); ++j) {
        const Knot& start = motions_[b].knots[j];
        if (!start.pieceBefore.resting || explained(b, j)) continue;
        explainStart(b, j, start);
      }
    }
  }

  void explainStart(std::size_t b, std::size_t j, const Knot& start) {
    std::optional<std::size_t> pusher;
    std::optional<std::size_t> pusherKnot;
    double best = kLeastCosineInRack;
    Pairing pairing;
    const TablePoint place = start.pieceBefore.position;
    for (std::size_t a = 0; a < motions_.size(); ++a) {
      if (a == b) continue;
      std::optional<std::size_t> knot;
      for (std::size_t i = 0; i < motions_[a].knots.size(); ++i) {
        const Knot& there = motions_[a].knots[i];
        // A cue ball that gave its speed away at once seems to have left earlier than it did.
        const bool struckThen = motions_[a].ball.isCueBall() && there.pieceBefore.resting &&
                                start.time_s > there.from_s - interval_s_ && start.time_s < there.to_s + interval_s_;
        if (struckThen || near(there.time_s, start.time_s, 2.0 * interval_s_)) knot = i;
      }
      const bool cameMoving = length(motions_[a].velocityAt(start.time_s - interval_s_)) > 0.05;
      if (!knot && !cameMoving && !creptAway(a, start.time_s)) continue;
      TablePoint there = nearestApproach(a, knot, place, start.time_s);
      if (motions_[a].ball.isCueBall() && (knot ? motions_[a].knots[*knot].pieceBefore.resting : !cameMoving)) {
        // Struck and at the other ball between two images: it came along the line on which that one left.
        const TablePoint met = place - (2.0 * radius_m_) * unit(start.after);
        const double kept_mps = knot ? length(motions_[a].knots[*knot].after) : 0.0;
        const double speed_mps = std::hypot(length(start.after), kept_mps);
        if (distance(there, met) < 2.5 * interval_s_ * speed_mps) there = met;
      }
      const double gap_m = distance(there, place) - 2.0 * radius_m_;
      if (gap_m > 2.0 * kGap_m) continue;
      const double along = cosine(start.after, place - there);
      if (along <= best) continue;
      best = along;
      pusher = a;
      pusherKnot = knot;
      pairing = {start.time_s, gap_m, there, place};
    }
    if (pusher) add(*pusher, b, pusherKnot, j, pairing, unit(pairing.second - pairing.first));
  }

  /// Whether this is the cue ball and left its place about then too slowly to tell a jump.
  [[nodiscard]] bool creptAway(std::size_t a, double time_s) const {
    const auto& pieces = motions_[a].pieces;
    if (!motions_[a].ball.isCueBall() || pieces.size() < 2 || !pieces.front().resting) return false;
    return time_s > pieces.front().end_s - interval_s_ && time_s < pieces[1].start_s + interval_s_;
  }

  /// The place of ball a nearest to a point around a time; its own jump may lie anywhere within the image gap.
  [[nodiscard]] TablePoint nearestApproach(std::size_t a, std::optional<std::size_t> knot, TablePoint point,
                                           double time_s) const {
    if (knot && motions_[a].knots[*knot].pieceBefore.resting) return motions_[a].knots[*knot].pieceBefore.position;
    TablePoint best = motions_[a].at(time_s);
    for (int i = -24; i <= 24; ++i) {
      const double t = time_s + i * interval_s_ / 16.0;
      const TablePoint there = knot ? placeNear(motions_[a].knots[*knot], t) : motions_[a].at(t);
      if (std::abs(distance(there, point) - 2.0 * radius_m_) < std::abs(distance(best, point) - 2.0 * radius_m_)) {
        best = there;
      }
    }
    return best;
  }

  const std::vector<BallMotion>& motions_;
  double radius_m_;
  double interval_s_;
  std::vector<Contact> contacts_;
};

}  // namespace

std::vector<Contact> contactsOf(const std::vector<BallMotion>& motions, double radius_m, double imageInterval_s) {
  return Search(motions, radius_m, imageInterval_s).run();
}

}  // namespace ferrule
