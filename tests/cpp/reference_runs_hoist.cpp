#include "reference_inputs.hpp"
#include "ropewalk/mast/derrick_load.hpp"
#include "ropewalk/mast/legs.hpp"
#include "ropewalk/mast/rating.hpp"
#include "ropewalk/reeving/line_tension.hpp"
#include "ropewalk/suspension/bounce.hpp"
#include "ropewalk/suspension/rating.hpp"
#include "ropewalk/suspension/wear.hpp"

namespace ropewalk::test {

namespace {

/// Leg loads of the textbook layout: dead line at leg A, fast line between C and D.
Outputs run_leg_loads(const ReferenceCase& one) {
  const Length half = 0.5 * quantity<Length>(one.construct, "base_width");
  if (text(one.construct, "dead_line") != "A" || text(one.construct, "fast_line") != "CD") {
    throw std::runtime_error(one.id + ": only the layout of the textbook is run here");
  }
  const mast::LegShares shares(mast::Layout{.base_width = 2.0 * half,
                                            .base_depth = 2.0 * half,
                                            .dead_line = {.across = -half, .along = -half},
                                            .fast_line = {.across = 0.0 * half, .along = half}});
  const Force hook_load = quantity<Force>(one.inputs, "hook_load");
  const Number lines = quantity<Number>(one.inputs, "lines");
  const Force fast_line = reeving::fast_line_tension_at_efficiency(
      hook_load, lines, quantity<Number>(one.inputs, "reeving_efficiency"));
  const auto loads =
      shares.loads(hook_load + quantity_or_none<Force>(one.inputs, "crown_block_weight"),
                   hook_load / lines, fast_line);
  Outputs outputs;
  double total = 0.0;
  double largest = 0.0;
  for (std::size_t leg = 0; leg < mast::legs; ++leg) {
    const double load = to_si(loads[leg]);
    outputs["legs[" + std::to_string(leg) + "]"] = load;
    total += load;
    largest = std::max(largest, load);
  }
  outputs["total"] = total;
  outputs["efficiency_factor"] = total / (4.0 * largest);
  return outputs;
}

Outputs run_bounce(const ReferenceCase& one) {
  const auto spring_rate = quantity<ForcePerLength>(one.inputs, "spring_rate");
  const auto damping = quantity_or_none<Damping>(one.inputs, "damping_up");
  const suspension::Bounce bounce({.sprung_weight = quantity<Force>(one.inputs, "sprung_weight"),
                                   .spring_rate = spring_rate,
                                   .damping_up = damping,
                                   .damping_down = damping,
                                   .friction = quantity_or_none<Force>(one.inputs, "friction")},
                                  -quantity<Force>(one.inputs, "overpull") / spring_rate,
                                  quantity_or_none<Speed>(one.inputs, "start_speed"));
  Outputs outputs{{"highest", to_si(bounce.highest())},
                  {"lowest", to_si(bounce.lowest())},
                  {"largest_spring_force", to_si(bounce.spring_force(bounce.lowest()))}};
  const auto& turns = bounce.turns();
  for (std::size_t i = 0; i < turns.size(); ++i) {
    outputs["turns[0][" + std::to_string(i) + "]"] = to_si(turns[i].time);
    outputs["turns[1][" + std::to_string(i) + "]"] = to_si(turns[i].height);
  }
  return outputs;
}

}  // namespace

std::map<std::string, Run, std::less<>> hoist_runs() {
  return {
      row<mast::DerrickLoad>(),
      row<mast::EfficiencyFactor>(),
      row<mast::EquivalentLoad>(),
      row<mast::ExtraLegLoad>(),
      row<mast::RatingAtLines>(),
      row<mast::StaticDerrickLoad>(),
      row<mast::Std4aCapacity>(),
      row<reeving::CrownLoad>(),
      row<reeving::LoweringCrownLoad>(),
      row<suspension::BearingRating>(),
      row<suspension::DampingRatio>(),
      row<suspension::DesignSafetyFactor>(),
      row<suspension::LinkLoad>(),
      row<suspension::Overshoot>(),
      row<suspension::ProofLoad>(),
      row<suspension::VerificationLoad>(),
      row<suspension::WornBoreCapacity>(),
      row<suspension::WornCapacityByArea>(),
      row<suspension::WornCapacityByBending>(),
      {"mast.Mast.leg_loads_at_efficiency", run_leg_loads},
      {"suspension.HookBounce", run_bounce},
  };
}

}  // namespace ropewalk::test
