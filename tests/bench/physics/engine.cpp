// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/physics/engine.h"

#include <ode/ode.h>

#include <array>
#include <cmath>
#include <cstdarg>

#include "core/physics/ball_collision.h"
#include "core/physics/bed.h"
#include "tests/support/processor_time.h"

namespace ferrule::bench {

namespace {

/// Of the capsules that stand for noses; their surface lies where the nose is.
constexpr double kNoseRadius_m = 5e-4;
/// Slower slip is rolling.
constexpr double kGrip_mps = 2e-3;
constexpr double kStill_mps = 1e-3;
constexpr double kStill_radps = 0.1;
constexpr double kLongest_s = 60.0;
constexpr int kMostContacts = 2;

Vector3 vectorOf(const dReal* v) {
  return {v[0], v[1], v[2]};
}

void ignoreMessage(int, const char*, va_list) {}

class Engine {
 public:
  Engine(const Table& table, const PhysicsParameters& p) : bed_(bedOf(table, p.ballRadius_m)), p_(p) {
    world_ = dWorldCreate();
    space_ = dSimpleSpaceCreate(nullptr);
    still_ = dSimpleSpaceCreate(nullptr);
    contacts_ = dJointGroupCreate(0);
    dWorldSetGravity(world_, 0.0, 0.0, -p.gravity_mps2);
    dWorldSetERP(world_, 0.2);
    dWorldSetCFM(world_, 0.0);
    dWorldSetContactSurfaceLayer(world_, 1e-6);
    dWorldSetAutoDisableFlag(world_, 1);
    dWorldSetAutoDisableLinearThreshold(world_, kStill_mps);
    dWorldSetAutoDisableAngularThreshold(world_, kStill_radps);
    dWorldSetAutoDisableSteps(world_, 10);
    dWorldSetAutoDisableTime(world_, 0.0);
    cloth_ = dCreatePlane(still_, 0.0, 0.0, 1.0, 0.0);
    for (const RailLine& nose : bed_.noses)
      addLine(nose);
    for (const PocketWell& well : bed_.wells) {
      for (const RailLine& facing : well.facings)
        addLine(facing);
    }
  }
  Engine(const Engine&) = delete;
  Engine& operator=(const Engine&) = delete;
  ~Engine() {
    dJointGroupDestroy(contacts_);
    dSpaceDestroy(space_);
    dSpaceDestroy(still_);
    dWorldDestroy(world_);
  }

  void add(const BallState& state) {
    Ball ball;
    ball.body = dBodyCreate(world_);
    dMass mass;
    dMassSetSphereTotal(&mass, p_.ballMass_kg, p_.ballRadius_m);
    dBodySetMass(ball.body, &mass);
    dBodySetPosition(ball.body, state.position.x, state.position.y, state.position.z);
    dBodySetLinearVel(ball.body, state.velocity.x, state.velocity.y, state.velocity.z);
    dBodySetAngularVel(ball.body, state.spin.x, state.spin.y, state.spin.z);
    dBodySetGyroscopicMode(ball.body, 0);
    ball.geometry = dCreateSphere(space_, p_.ballRadius_m);
    dGeomSetBody(ball.geometry, ball.body);
    ball.end.ball = state.ball;
    balls_.push_back(ball);
    if (length(state.velocity) == 0.0) dBodyDisable(ball.body);
  }

  /// False once nothing moves any more.
  bool step(double step_s) {
    bool moving = false;
    for (Ball& ball : balls_) {
      if (!ball.body || !dBodyIsEnabled(ball.body)) continue;
      moving = true;
      if (lost(ball)) continue;
      resist(ball.body, step_s);
    }
    dSpaceCollide(space_, this, &Engine::meet);
    dSpaceCollide2(reinterpret_cast<dGeomID>(space_), reinterpret_cast<dGeomID>(still_), this, &Engine::meet);
    dWorldStep(world_, step_s);
    dJointGroupEmpty(contacts_);
    return moving;
  }

  [[nodiscard]] std::vector<FinalBall> after() const {
    std::vector<FinalBall> all;
    for (const Ball& ball : balls_) {
      all.push_back(ball.end);
      if (ball.body) all.back().position = planOf(TablePoint3{} + vectorOf(dBodyGetPosition(ball.body)));
    }
    return all;
  }

 private:
  struct Ball {
    dBodyID body = nullptr;
    dGeomID geometry = nullptr;
    FinalBall end;
  };

  void addLine(const RailLine& line) {
    const dGeomID capsule = dCreateCapsule(still_, kNoseRadius_m, line.length_m);
    const TablePoint middle = line.start + (0.5 * line.length_m) * line.along - kNoseRadius_m * line.inward;
    dGeomSetPosition(capsule, middle.x, middle.y, bed_.noseHeight_m);
    dMatrix3 turn;
    dRFromZAxis(turn, line.along.x, line.along.y, 0.0);
    dGeomSetRotation(capsule, turn);
  }

  /// Takes a ball away that is over a hole or has left the table.
  bool lost(Ball& ball) {
    const TablePoint place = planOf(TablePoint3{} + vectorOf(dBodyGetPosition(ball.body)));
    for (const PocketWell& well : bed_.wells) {
      if (distance(place, well.hole) >= well.holeRadius_m) continue;
      ball.end.fate = BallFate::Pocketed;
      ball.end.pocket = well.name;
    }
    if (ball.end.fate == BallFate::OnTable &&
        (std::abs(place.x) > bed_.halfLength_m + 0.1 || std::abs(place.y) > bed_.halfWidth_m + 0.1)) {
      ball.end.fate = BallFate::OffTable;
    }
    if (ball.end.fate == BallFate::OnTable) return false;
    ball.end.position = place;
    dGeomDestroy(ball.geometry);
    dBodyDestroy(ball.body);
    ball.body = nullptr;
    return true;
  }

  void resist(dBodyID body, double step_s) const {
    if (dBodyGetPosition(body)[2] > p_.ballRadius_m + 1e-4) return;
    const Vector3 v = vectorOf(dBodyGetLinearVel(body));
    const Vector3 w = vectorOf(dBodyGetAngularVel(body));
    if (length(clothSlip(v, w, p_.ballRadius_m)) < kGrip_mps) {
      // A force at the centre of a ball that grips slows it by 5/7 of force over mass.
      const double force = 1.4 * p_.ballMass_kg * p_.rollingFriction * p_.gravity_mps2;
      const Vector3 against = -force * unit(horizontal(planOf(v)));
      dBodyAddForce(body, against.x, against.y, 0.0);
    }
    const double decay = std::min(p_.spinDecay_radps2, std::abs(w.z) / step_s);
    dBodyAddTorque(body, 0.0, 0.0, w.z > 0.0 ? -decay * inertia_kgm2(p_) : decay * inertia_kgm2(p_));
  }

  static Vector3 surfaceSpeed(dBodyID body, const dReal* point) {
    if (!body) return {};
    dVector3 speed;
    dBodyGetPointVel(body, point[0], point[1], point[2], speed);
    return vectorOf(speed);
  }

  static void meet(void* self, dGeomID one, dGeomID other) { static_cast<Engine*>(self)->meet(one, other); }

  void meet(dGeomID one, dGeomID other) {
    const dBodyID first = dGeomGetBody(one);
    const dBodyID second = dGeomGetBody(other);
    std::array<dContact, kMostContacts> found{};
    const int count = dCollide(one, other, kMostContacts, &found[0].geom, sizeof(dContact));
    for (int i = 0; i < count; ++i) {
      dContact& contact = found[static_cast<std::size_t>(i)];
      const Vector3 n = vectorOf(contact.geom.normal);
      const Vector3 between = surfaceSpeed(first, contact.geom.pos) - surfaceSpeed(second, contact.geom.pos);
      const Vector3 slip = between - dot(between, n) * n;
      const double slip_mps = length(slip);
      dSurfaceParameters& surface = contact.surface;
      surface.mode = dContactApprox1 | dContactBounce;
      surface.bounce_vel = kLeastBounce_mps;
      if (first && second) {
        surface.bounce = p_.ballRestitution;
        surface.mu = p_.ballFriction.at(slip_mps);
      } else if (one == cloth_ || other == cloth_) {
        surface.bounce = p_.slateRestitution;
        surface.bounce_vel = 0.1;
        surface.mu = p_.slidingFriction;
      } else {
        surface.bounce = p_.cushionRestitution;
        surface.mu = p_.cushionFriction;
      }
      if (slip_mps > 1e-9) {
        surface.mode |= dContactFDir1;
        const Vector3 along = slip / slip_mps;
        contact.fdir1[0] = along.x;
        contact.fdir1[1] = along.y;
        contact.fdir1[2] = along.z;
      }
      dJointAttach(dJointCreateContact(world_, contacts_, &contact), first, second);
    }
  }

  Bed bed_;
  PhysicsParameters p_;
  dWorldID world_ = nullptr;
  dSpaceID space_ = nullptr;
  dSpaceID still_ = nullptr;
  dJointGroupID contacts_ = nullptr;
  dGeomID cloth_ = nullptr;
  std::vector<Ball> balls_;
};

}  // namespace

EngineRun playInEngine(const Table& table, const PhysicsParameters& p, const Scene& scene, double step_s,
                       double mostTime_s) {
  static const bool ready = dInitODE2(0) != 0;
  if (!ready) return {};
  // It complains of contacts that its solver cannot separate, once a step.
  dSetMessageHandler(&ignoreMessage);
  Engine engine(table, p);
  for (const BallAt& place : scene.before) {
    BallState state = ballAtRest(place.ball, place.position, p);
    if (place.ball.isCueBall()) state = *struckBall(state.position, scene.strike, p);
    engine.add(state);
  }
  EngineRun run;
  const double start_s = processorTime_s();
  const auto most = static_cast<long>(kLongest_s / step_s);
  for (long i = 0; i < most && !run.ended; ++i) {
    run.ended = !engine.step(step_s);
    if (i % 1024 == 0 && processorTime_s() - start_s > mostTime_s) break;
  }
  run.time_s = processorTime_s() - start_s;
  run.after = engine.after();
  return run;
}

}  // namespace ferrule::bench
