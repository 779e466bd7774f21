#include "ropewalk/drawworks/stroke.hpp"

#include <algorithm>
#include <cmath>

#include "ropewalk/base/require.hpp"
#include "ropewalk/drawworks/parameters.hpp"
#include "ropewalk/drum/length.hpp"
#include "ropewalk/drum/parameters.hpp"

#include "layer_links.hpp"
#include "power_run.hpp"
#include "root.hpp"

namespace ropewalk::drawworks {

namespace {

constexpr std::string_view hoist_where = "drawworks.hoist";
constexpr std::string_view lower_where = "drawworks.lower";

/// A share of the stroke that is nothing but rounding.
constexpr double rounding = 1e-13;

void check(const Hoist& on, std::string_view where, Force hook_load, const Travel& travel,
           const Limits& limits) {
  require(where, argument::hook_load, hook_load);
  require(where, drum::argument::block_height.named("base_height"), travel.base_height);
  require(where, argument::travel, travel.travel);
  check_limits(where, limits);
  const StringUp& strung = on.string_up();
  const Number lines = from_si<Number>(strung.reeving.lines());
  const Length full = drum::height_when_full(strung.drum, strung.wraps_at_lowest, lines);
  const Length spare = 1e-9 * strung.drum.capacity() / lines;  // as the drum itself allows
  const Length top = travel.base_height + travel.travel;
  if (top <= full + spare) return;
  throw InadmissibleError(where, "travel",
                          "travel = " + quantity_text(travel.travel) + " from base_height = " +
                              quantity_text(travel.base_height) + " ends at " + quantity_text(top) +
                              " above the lowest position, and the drum is full at " +
                              quantity_text(full));
}

/// Why the motors would be overloaded for too long, if so.
std::string overloaded(const Hoist& on, const Stroke& stroke) {
  const std::optional<Time> most = on.string_up().machine.motors.overload_time;
  if (!most || stroke.time_overloaded <= *most) return {};
  return "the motors would give more than their rating for " +
         quantity_text(stroke.time_overloaded) + " in gear " + std::to_string(stroke.gear) +
         ", overload_time allows " + quantity_text(*most);
}

/// Why lines that must stay tight would not, if so.
std::string slack(const Hoist& on, Force hook_load, Acceleration downward) {
  const Mass moved = hook_load / standard_gravity + on.string_up().sheave_mass;
  if (moved * downward < hook_load) return {};
  return "the lines would go slack: " + quantity_text(downward) + " takes " +
         quantity_text(Force(moved * downward)) + ", the load is " + quantity_text(hook_load);
}

/// Why the fast line would carry more than it may while a load going down is slowed down, if so.
std::string beyond_line(const Hoist& on, Force hook_load, Acceleration deceleration) {
  const StringUp& strung = on.string_up();
  if (!strung.line_limit) return {};
  const Mass moved = hook_load / standard_gravity + strung.sheave_mass;
  const Force tension = on.lowering_factor() * (hook_load + moved * deceleration);
  if (tension <= *strung.line_limit) return {};
  return "the fast line would carry " + quantity_text(tension) +
         " while the block slows down with " + quantity_text(deceleration) + ", its limit is " +
         quantity_text(*strung.line_limit);
}

/// Builds a stroke piece by piece. Numbers are SI; u is speed squared.
class Walk {
 public:
  Walk(const std::vector<LayerLinks>& layers, double travel, Stroke& stroke)
      : layers_(layers), travel_(travel), stroke_(stroke) {}

  [[nodiscard]] bool done() const noexcept { return at_ >= layers_.size(); }
  [[nodiscard]] const LayerLinks& here() const noexcept { return layers_[at_]; }
  [[nodiscard]] double left_in_layer() const noexcept { return here().end - x_; }
  [[nodiscard]] double left() const noexcept { return travel_ - x_; }
  [[nodiscard]] double speed() const noexcept { return v_; }
  /// A length that is nothing but rounding.
  [[nodiscard]] double tiny() const noexcept { return rounding * travel_; }

  /// Constant acceleration over a length, 0: cruise.
  void accelerate(double a, double length) {
    change_to(std::sqrt(v_ * v_ + 2.0 * a * length), length);
  }

  /// Full power up to a speed.
  void drive_to(double last) {
    const double w0 = v_ / here().terminal;
    const PowerRun run = power_run(w0, last / here().terminal);
    add(Piece::Governed::by_power, run.travel * here().tau * here().terminal, run.time * here().tau,
        last);
  }

  /// The rest of the stroke, to rest.
  void stop(double deceleration) {
    while (!done()) {
      // Told by what is left of the way: the root of a difference would lose half its digits.
      const double after = std::max(travel_ - here().end, 0.0);
      change_to(std::sqrt(2.0 * deceleration * after), left_in_layer());
    }
    stroke_.time = from_si<Time>(t_);
  }

 private:
  /// Constant acceleration to a speed over a length.
  void change_to(double last, double length) {
    add(Piece::Governed::by_acceleration, length, 2.0 * length / (v_ + last), last);
  }

  void add(Piece::Governed governed, double length, double duration, double last) {
    const LayerLinks& layer = here();
    const PieceEnergy energy =
        layer.energy(length, last * last - v_ * v_,
                     governed == Piece::Governed::by_power ? layer.motor_power * duration : -1.0);
    const bool by_power = governed == Piece::Governed::by_power;
    const double force = length > 0.0 ? energy.drive / length : 0.0;
    // Full power is that of the overload, where there is one: over the rating all along.
    const double share = by_power
                             ? (layer.motor_power > layer.rated_power * (1.0 + 1e-9) ? 1.0 : 0.0)
                             : layer.overloaded_share(force, v_, last);
    stroke_.time_overloaded += from_si<Time>(share * duration);
    Piece piece{.governed = governed,
                .layer = layer.layer,
                .start = from_si<Time>(t_),
                .duration = from_si<Time>(duration),
                .begin = from_si<Length>(x_),
                .length = from_si<Length>(length),
                .first = from_si<Speed>(v_),
                .last = from_si<Speed>(last),
                .first_power = from_si<Power>(by_power ? layer.motor_power : force * v_),
                .last_power = from_si<Power>(by_power ? layer.motor_power : force * last)};
    if (by_power) {
      piece.terminal = from_si<Speed>(layer.terminal);
      piece.tau = from_si<Time>(layer.tau);
    }
    for (const Power& power : {piece.first_power, piece.last_power}) {
      stroke_.peak_power = std::max(stroke_.peak_power, power);
      stroke_.peak_braking = std::max(stroke_.peak_braking, -power);
    }
    give(energy.drive);
    stroke_.lifted += from_si<Energy>(energy.lifted);
    stroke_.lost += from_si<Energy>(energy.lost);
    stroke_.peak_speed = std::max(stroke_.peak_speed, piece.last);
    stroke_.pieces.push_back(piece);
    x_ += length;
    t_ += duration;
    v_ = last;
    while (!done() && x_ >= here().end - tiny()) next_layer();
  }

  /// The hook keeps its speed, so that what turns gives up some of its energy to the brakes
  /// (hoisting), or takes some of what the load would have given them (lowering).
  void next_layer() {
    if (at_ + 1 < layers_.size()) {
      const double turning = layers_[at_ + 1].turning_kinetic - here().turning_kinetic;
      stroke_.braked -= from_si<Energy>(0.5 * turning * v_ * v_);
    }
    ++at_;
  }

  void give(double energy) {
    (energy > 0.0 ? stroke_.driven : stroke_.braked) += from_si<Energy>(std::abs(energy));
  }

  const std::vector<LayerLinks>& layers_;
  double travel_;
  Stroke& stroke_;
  std::size_t at_ = 0;
  double x_ = 0.0;
  double t_ = 0.0;
  double v_ = 0.0;
};

/// Length over which to speed up with `a` until a speed, a layer, or the point where to brake.
double speed_up_length(const Walk& walk, double a, double target, double deceleration) {
  const double u = walk.speed() * walk.speed();
  const double to_target = (target * target - u) / (2.0 * a);
  const double to_brake = (2.0 * deceleration * walk.left() - u) / (2.0 * (a + deceleration));
  return std::min({to_target, to_brake, walk.left_in_layer()});
}

/// Speed to which to drive at full power until a speed, a layer, or the point where to brake.
double full_power_speed(const Walk& walk, double target, double deceleration) {
  const LayerLinks& layer = walk.here();
  const auto travel_to = [&](double v) {
    return power_run(walk.speed() / layer.terminal, v / layer.terminal).travel * layer.tau *
           layer.terminal;
  };
  const auto short_of = [&](const auto& excess) {
    return excess(target) <= 0.0 ? target : rising_root(excess, walk.speed(), target);
  };
  const double to_brake =
      short_of([&](double v) { return travel_to(v) + 0.5 * v * v / deceleration - walk.left(); });
  const double to_layer = short_of([&](double v) { return travel_to(v) - walk.left_in_layer(); });
  return std::min(to_brake, to_layer);
}

/// Up to speed and along at it, until it is time to brake.
void run_up(Walk& walk, const Limits& limits) {
  const double deceleration = to_si(limits.deceleration);
  while (!walk.done()) {
    const LayerLinks& layer = walk.here();
    const double v = walk.speed();
    const double to_brake = walk.left() - 0.5 * v * v / deceleration;
    if (to_brake <= walk.tiny()) return;
    const double knee = std::min(layer.knee, layer.cap);
    // So near to the terminal speed that the rest of the way there takes forever.
    const double highest = std::min(layer.cap, layer.terminal * (1.0 - 1e-12));
    if (v < knee * (1.0 - rounding)) {
      const double length = speed_up_length(walk, layer.acceleration, knee, deceleration);
      if (length > 0.01 * walk.tiny()) {
        walk.accelerate(layer.acceleration, length);
        continue;
      }
    }
    const double faster =
        v < highest * (1.0 - rounding) ? full_power_speed(walk, highest, deceleration) : v;
    if (faster > v) {
      walk.drive_to(faster);
    } else {
      walk.accelerate(0.0, std::min(to_brake, walk.left_in_layer()));
    }
  }
}

}  // namespace

void check_limits(std::string_view where, const Limits& limits) {
  constexpr Interval below_g =
      above_up_to(from_si<Acceleration>(0.0), standard_gravity, "beyond g the lines go slack");
  require(where, argument::speed_limit.named("speed"), limits.speed);
  require(where, argument::start_acceleration.named("acceleration"), limits.acceleration);
  require(where, Parameter<Acceleration>{"deceleration", below_g}, limits.deceleration);
}

Stroke hoist(const Hoist& on, Force hook_load, const Travel& travel, const Limits& limits,
             int gear) {
  check(on, hoist_where, hook_load, travel, limits);
  Stroke stroke{.gear = gear};
  std::vector<LayerLinks> layers;
  for (const LayerSpan& span : layers_upward(on, travel)) {
    const Drive drive = on.drive(gear, span.layer, limits.overload);
    const Force pull = drive.steady_pull(from_si<Speed>(0.0));
    if (hook_load >= pull) {
      stroke.reason = "hook load " + quantity_text(hook_load) + " is not below " +
                      quantity_text(pull) + ", the pull of gear " + std::to_string(gear) +
                      " on layer " + std::to_string(span.layer);
      return stroke;
    }
    layers.push_back(hoisting_links(on, gear, span, hook_load, limits, drive));
  }
  stroke.reason = slack(on, hook_load, limits.deceleration);
  if (!stroke.reason.empty()) return stroke;
  stroke.possible = true;
  Walk walk(layers, to_si(travel.travel), stroke);
  run_up(walk, limits);
  walk.stop(to_si(limits.deceleration));
  if (std::string reason = overloaded(on, stroke); !reason.empty()) {
    return {.reason = std::move(reason), .gear = gear};
  }
  return stroke;
}

Stroke hoist(const Hoist& on, Force hook_load, const Travel& travel, const Limits& limits) {
  Stroke best = hoist(on, hook_load, travel, limits, 1);
  for (int gear = 2; gear <= on.gears(); ++gear) {
    Stroke other = hoist(on, hook_load, travel, limits, gear);
    if (other.possible && (!best.possible || other.time < best.time)) best = std::move(other);
  }
  return best;
}

Stroke lower(const Hoist& on, Force hook_load, const Travel& travel, const Limits& limits) {
  check(on, lower_where, hook_load, travel, limits);
  Stroke stroke;
  std::vector<LayerLinks> layers;
  for (const LayerSpan& span : layers_downward(on, travel)) {
    layers.push_back(lowering_links(on, span, hook_load, limits));
  }
  stroke.reason = beyond_line(on, hook_load, limits.deceleration);
  if (!stroke.reason.empty()) return stroke;
  stroke.possible = true;
  Walk walk(layers, to_si(travel.travel), stroke);
  run_up(walk, limits);
  walk.stop(to_si(limits.deceleration));
  return stroke;
}

std::vector<Point> curve(const Stroke& stroke, int points_per_piece) {
  std::vector<Point> points;
  const int count = std::max(points_per_piece, 2);
  for (const Piece& piece : stroke.pieces) {
    for (int i = 0; i < count; ++i) {
      const double share = static_cast<double>(i) / (count - 1);
      Point point{};
      point.layer = piece.layer;
      if (piece.governed == Piece::Governed::by_power) {
        point.speed = piece.first + share * (piece.last - piece.first);
        const PowerRun run = power_run(to_si(Number(piece.first / piece.terminal)),
                                       to_si(Number(point.speed / piece.terminal)));
        point.time = piece.start + run.time * piece.tau;
        point.travel = piece.begin + run.travel * piece.tau * piece.terminal;
      } else {
        point.speed = piece.first + share * (piece.last - piece.first);
        point.time = piece.start + share * piece.duration;
        point.travel = piece.begin + 0.5 * share * piece.duration * (piece.first + point.speed);
      }
      point.power = piece.first_power + share * (piece.last_power - piece.first_power);
      points.push_back(point);
    }
  }
  return points;
}

}  // namespace ropewalk::drawworks
