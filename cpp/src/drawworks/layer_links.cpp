#include "layer_links.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "ropewalk/drawworks/inertia.hpp"

namespace ropewalk::drawworks {

namespace {

[[nodiscard]] Number lines_of(const Hoist& on) {
  return from_si<Number>(on.string_up().reeving.lines());
}

[[nodiscard]] double mass_at_hook(const Hoist& on, int layer, MomentOfInertia at_drum) {
  return to_si(HookEquivalentMass::formula(at_drum, lines_of(on), 2.0 * on.layer_radius(layer)));
}

/// Height of the block at which a layer begins.
[[nodiscard]] double begin_height(const Hoist& on, int layer) {
  const auto& strung = on.string_up();
  const Length lowest = strung.drum.length_of(to_si(strung.wraps_at_lowest));
  return to_si(Length((strung.drum.length_before(layer) - lowest) / lines_of(on)));
}

}  // namespace

std::vector<LayerSpan> layers_upward(const Hoist& on, const Travel& travel) {
  const int first = on.layer_at(travel.base_height);
  const int last = on.layer_at(travel.base_height + travel.travel);
  std::vector<LayerSpan> spans;
  for (int layer = first; layer < last; ++layer) {
    spans.push_back({layer, begin_height(on, layer + 1) - to_si(travel.base_height)});
  }
  spans.push_back({last, to_si(travel.travel)});
  return spans;
}

std::vector<LayerSpan> layers_downward(const Hoist& on, const Travel& travel) {
  const std::vector<LayerSpan> up = layers_upward(on, travel);
  std::vector<LayerSpan> spans;
  for (auto span = up.rbegin(); span != up.rend(); ++span) {
    const double below = std::next(span) == up.rend() ? 0.0 : std::next(span)->end;
    spans.push_back({span->layer, to_si(travel.travel) - below});
  }
  return spans;
}

PieceEnergy LayerLinks::energy(double length, double gain, double full_power) const noexcept {
  // Work the lines do on the hook, or the hook on the lines.
  const double lines = std::abs(load) * length + (load > 0.0 ? 0.5 : -0.5) * hook_mass * gain;
  const bool up = load > 0.0;
  const double at_rope = up ? lines / rope_efficiency : -lines * rope_efficiency;
  const double drum = at_rope + 0.5 * drum_mass * gain;
  const double gear = drum >= 0.0 ? drum / gear_efficiency : drum * gear_efficiency;
  // Nothing drives a load down: what is left of a free fall is rounding.
  const double drive = up ? gear + 0.5 * motor_mass * gain : std::min(gear, 0.0);
  return {.drive = full_power >= 0.0 ? full_power : drive,
          .lifted = load * length,
          .lost = std::abs(lines * (up ? 1.0 / rope_efficiency - 1.0 : 1.0 - rope_efficiency)) +
                  (gear - drum)};
}

double LayerLinks::overloaded_share(double force, double first, double last) const noexcept {
  // Motors at their rating must not be taken for overloaded because of rounding.
  constexpr double rounding = 1.0 + 1e-9;
  if (force > rated_force * rounding) return 1.0;
  if (!(force > 0.0)) return 0.0;
  const double most = rated_power * rounding / force;  // speed at which rated power is reached
  const auto [slow, fast] = std::minmax(first, last);
  if (fast <= most) return 0.0;
  return slow >= most ? 1.0 : (fast - most) / (fast - slow);
}

LayerLinks hoisting_links(const Hoist& on, int gear, const LayerSpan& span, Force hook_load,
                          const Limits& limits, const Drive& drive) {
  const Machine& machine = on.string_up().machine;
  const Gear& chosen = machine.gears[static_cast<std::size_t>(gear - 1)];
  const double load = to_si(hook_load);
  const double mass = to_si(hook_load / standard_gravity + drive.turning_mass);
  const double acceleration = std::min(to_si(limits.acceleration),
                                       to_si(drive.acceleration(hook_load, from_si<Speed>(0.0))));
  const double power = to_si(drive.power);
  const MomentOfInertia rotors = static_cast<double>(machine.motors.count) *
                                 ReflectedInertia::formula(machine.motors.inertia, chosen.ratio);
  LayerLinks links{};
  links.layer = span.layer;
  links.end = span.end;
  links.acceleration = acceleration;
  links.knee = power / (load + mass * acceleration);
  links.cap = std::min(to_si(limits.speed), to_si(drive.top_speed));
  links.terminal = power / load;
  links.tau = mass * power / (load * load);
  links.motor_power = power / to_si(drive.efficiency);
  links.rated_power = static_cast<double>(machine.motors.count) * to_si(machine.motors.power);
  links.rated_force = links.rated_power / to_si(drive.base_speed);
  links.load = load;
  links.hook_mass = to_si(hook_load / standard_gravity + on.string_up().sheave_mass);
  links.rope_efficiency = to_si(drive.efficiency / chosen.efficiency);
  links.gear_efficiency = to_si(chosen.efficiency);
  links.drum_mass = mass_at_hook(on, span.layer, machine.drum_inertia + chosen.inertia);
  links.motor_mass = mass_at_hook(on, span.layer, rotors);
  links.turning_kinetic = links.drum_mass + links.motor_mass;
  return links;
}

LayerLinks lowering_links(const Hoist& on, const LayerSpan& span, Force hook_load,
                          const Limits& limits) {
  const Machine& machine = on.string_up().machine;
  LayerLinks links{};
  links.layer = span.layer;
  links.end = span.end;
  links.knee = links.terminal = std::numeric_limits<double>::infinity();  // no power governs
  links.rated_power = links.rated_force = std::numeric_limits<double>::infinity();
  links.cap = to_si(limits.speed);
  links.load = -to_si(hook_load);
  links.hook_mass = to_si(hook_load / standard_gravity + on.string_up().sheave_mass);
  links.rope_efficiency = to_si(on.lowering_factor() * lines_of(on) * machine.drum_efficiency);
  links.gear_efficiency = 1.0;
  links.drum_mass = mass_at_hook(on, span.layer, machine.drum_inertia);
  // The load must turn the drum, through the friction of the lines: η (W − m a) = m_d a.
  const double free_fall = links.rope_efficiency * to_si(hook_load) /
                           (links.rope_efficiency * links.hook_mass + links.drum_mass);
  links.acceleration = std::min(to_si(limits.acceleration), free_fall);
  links.turning_kinetic = links.drum_mass;
  return links;
}

}  // namespace ropewalk::drawworks
