#include "reference_runs.hpp"

#include <algorithm>
#include <limits>

#include "reference_inputs.hpp"
#include "ropewalk/design_factor/design_factor.hpp"
#include "ropewalk/design_factor/minimum.hpp"
#include "ropewalk/drawworks/inertia.hpp"
#include "ropewalk/drawworks/power.hpp"
#include "ropewalk/drawworks/sizes.hpp"
#include "ropewalk/drawworks/stand.hpp"
#include "ropewalk/drillstring/drag.hpp"
#include "ropewalk/drillstring/tool_joint.hpp"
#include "ropewalk/drillstring/weight.hpp"
#include "ropewalk/drum/drum.hpp"
#include "ropewalk/drum/fleet.hpp"
#include "ropewalk/drum/layer.hpp"
#include "ropewalk/drum/length.hpp"
#include "ropewalk/drum/pressure.hpp"
#include "ropewalk/drum/wraps.hpp"
#include "ropewalk/fatigue/discard_wire_breaks.hpp"
#include "ropewalk/fatigue/en13001.hpp"
#include "ropewalk/fatigue/en81_50.hpp"
#include "ropewalk/fatigue/endurance.hpp"
#include "ropewalk/fatigue/feyrer_factors.hpp"
#include "ropewalk/fatigue/model.hpp"
#include "ropewalk/fatigue/optimal_diameter.hpp"
#include "ropewalk/fatigue/shigley.hpp"
#include "ropewalk/reeving/kinematics.hpp"
#include "ropewalk/reeving/line_tension.hpp"
#include "ropewalk/reeving/tensions.hpp"
#include "ropewalk/rope/catalog.hpp"
#include "ropewalk/rope/factors.hpp"
#include "ropewalk/sheave/bend_ratio.hpp"
#include "ropewalk/sheave/groove.hpp"
#include "ropewalk/sheave/pressure.hpp"
#include "ropewalk/sheave/strength_efficiency.hpp"
#include "ropewalk/sheave/tread_diameter.hpp"
#include "ropewalk/work/drilling.hpp"
#include "ropewalk/work/trip.hpp"

namespace ropewalk::test {

namespace {

Outputs run_tensions(const ReferenceCase& one) {
  reeving::Stringing stringing{
      .lines = whole(one.construct, "lines"),
      .sheave_friction = {quantity<Number>(one.construct, "sheave_friction")}};
  const auto turns = one.construct.find("dead_line_sheave_turns");
  stringing.dead_line_sheave_turns = turns != one.construct.end() && turns->second.text == "true";
  const reeving::Tensions found =
      reeving::tensions(reeving::Arrangement(stringing), quantity<Force>(one.inputs, "hook_load"),
                        reeving::motion_named(text(one.inputs, "motion")));
  Outputs outputs{{"fast_line", to_si(found.fast_line)},
                  {"dead_line", to_si(found.dead_line)},
                  {"crown_load", to_si(found.crown_load)},
                  {"efficiency", to_si(found.efficiency)}};
  for (std::size_t i = 0; i < found.lines.size(); ++i) {
    outputs["lines[" + std::to_string(i) + "]"] = to_si(found.lines[i]);
  }
  return outputs;
}

Outputs run_line_speeds(const ReferenceCase& one) {
  const auto speeds = reeving::line_speeds(whole(one.construct, "lines"),
                                           quantity<Speed>(one.inputs, "block_speed"));
  Outputs outputs;
  for (std::size_t i = 0; i < speeds.size(); ++i) {
    outputs["result[" + std::to_string(i) + "]"] = to_si(speeds[i]);
  }
  return outputs;
}

drum::Drum drum_of(const Inputs& construct) {
  const bool nested = text(construct, "layer_height") == "nested";
  return drum::Drum(
      {.barrel_diameter = quantity<Length>(construct, "barrel_diameter"),
       .rope_diameter = quantity<Length>(construct, "rope_diameter"),
       .laps_per_layer = quantity<Number>(construct, "laps_per_layer"),
       .layers = whole(construct, "layers"),
       .layer_height = nested ? drum::nested_layer_height() : drum::stacked_layer_height()});
}

Outputs run_reel_capacity_handbook(const ReferenceCase& one) {
  const auto length = [&](std::string_view name) { return quantity<Length>(one.inputs, name); };
  const auto found = drum::reel_capacity_handbook(length("flange_depth"), length("barrel_diameter"),
                                                  length("traverse"), length("rope_diameter"));
  return {{"result", to_si(found.value)}};
}

Outputs run_fleet_angle_limit(const ReferenceCase& one) {
  const drum::FleetAngleLimits found = drum::fleet_angle_limits(text(one.inputs, "groove"));
  return {{"minimum", to_si(found.minimum)}, {"maximum", to_si(found.maximum)}};
}

template <class Q>
double known(const rope::Known<Q>& property) {
  return property ? to_si(property->value) : std::numeric_limits<double>::quiet_NaN();
}

Outputs outputs_of(const rope::RopeData& found) {
  return {{"breaking_force", known(found.breaking_force)},
          {"mass_per_length", known(found.mass_per_length)},
          {"metallic_area", known(found.metallic_area)}};
}

fatigue::LifeModel drucker_tachau(const Inputs&) { return fatigue::DruckerTachau(); }

fatigue::LifeModel feyrer_form(const Inputs& construct) {
  const auto constant = [&](std::string_view name) {
    return to_si(quantity<Number>(construct, name));
  };
  return fatigue::FeyrerForm({.b0 = constant("b0"),
                              .b1 = constant("b1"),
                              .b2 = constant("b2"),
                              .b3 = constant("b3"),
                              .b4 = constant("b4"),
                              .b5 = constant("b5")},
                             fatigue::parse_basis("reference case", text(construct, "basis")));
}

fatigue::LifeModel handbook_life(const Inputs& construct) {
  return fatigue::HandbookRelativeLife(
      {.cycles = to_si(quantity<Number>(construct, "reference_life")),
       .rope_tension = quantity<Force>(construct, "reference_tension"),
       .rope_diameter = quantity<Length>(construct, "reference_rope_diameter"),
       .sheave_diameter = quantity<Length>(construct, "reference_sheave_diameter")});
}

fatigue::LifeModel power_law(const Inputs& construct) {
  return fatigue::PowerLaw(to_si(quantity<Number>(construct, "scale")),
                           to_si(quantity<Number>(construct, "exponent")),
                           fatigue::parse_basis("reference case", text(construct, "basis")));
}

/// Bending cycles of the model that `make` constructs.
Run run_cycles(fatigue::LifeModel (*make)(const Inputs&)) {
  return [make](const ReferenceCase& one) {
    fatigue::BendPoint bend{.rope_tension = quantity<Force>(one.inputs, "rope_tension"),
                            .rope_diameter = quantity<Length>(one.inputs, "rope_diameter"),
                            .sheave_diameter = quantity<Length>(one.inputs, "sheave_diameter")};
    if (one.inputs.contains("wire_strength")) {
      bend.wire_strength = quantity<Stress>(one.inputs, "wire_strength");
    }
    return Outputs{{"cycles", fatigue::cycles(make(one.construct), bend).cycles}};
  };
}

/// Slope of life against tension at a ratio D/d, on a rope of 1 m.
Run run_tension_exponent(fatigue::LifeModel (*make)(const Inputs&)) {
  return [make](const ReferenceCase& one) {
    const fatigue::BendPoint bend{
        .rope_diameter = meter,
        .sheave_diameter = quantity<Number>(one.inputs, "bend_ratio") * meter};
    return Outputs{{"result", fatigue::tension_exponent(make(one.construct), bend).value()}};
  };
}

/// All inputs as plain texts and numbers.
bool is_plain(const Inputs& inputs) {
  return std::none_of(inputs.begin(), inputs.end(),
                      [](const auto& input) { return input.second.composite; });
}

std::map<std::string, Run, std::less<>> subject_runs() {
  return {
      row<design_factor::DesignFactor>(),
      row<design_factor::Derated>(),
      row<drawworks::DrumSpeed>(),
      row<drawworks::HoistingSpeed>(),
      row<drawworks::HookEquivalentMass>(),
      row<drawworks::HookPower>(),
      row<drawworks::PowerForDepth>(),
      row<drawworks::ReflectedInertia>(),
      row<drawworks::StandPeakSpeed>(),
      row<drawworks::StandTime>(),
      row<drillstring::BuoyancyFactor>(),
      row<drillstring::BuoyedWeightPerLength>(),
      row<drillstring::JointedMassPerLength>(),
      row<drillstring::SlantPull>(),
      row<drillstring::ToolJointMass>(),
      row<drillstring::TubeMassPerLength>(),
      row<drum::BarrelHoopStress>(),
      row<drum::BarrelPressure>(),
      row<drum::ClampForce>(),
      row<drum::CutLength>(),
      row<drum::FleetAngle>(),
      row<drum::FleetDistance>(),
      row<drum::HoldingRatio>(),
      row<drum::LapsInTraverse>(),
      row<drum::MixedLayerHeight>(),
      row<drum::PitchedLayerHeight>(),
      row<drum::ReelCapacity>(),
      row<fatigue::BendingLoad>(),
      row<fatigue::DiscardLimitingForce>(),
      row<fatigue::DiscardWireBreaks>(),
      row<fatigue::En13001StaticFactor>(),
      row<fatigue::En81EquivalentSheaves>(),
      row<fatigue::En81SafetyFactor>(),
      row<fatigue::En81SheaveWeight>(),
      row<fatigue::FatigueTension>(),
      row<fatigue::FleetAngleFactor>(),
      row<fatigue::HoistRopeTension>(),
      row<fatigue::LengthFactor>(),
      row<fatigue::OptimalRopeDiameter>(),
      row<fatigue::ReverseBendingCycles>(),
      row<fatigue::SizeFactor>(),
      row<reeving::Efficiency>(),
      row<reeving::FastLineFactor>(),
      row<reeving::FastLineTension>(),
      row<reeving::FastLineTensionAtEfficiency>(),
      row<rope::AreaFromFactor>(),
      row<rope::BreakingForceFromFactor>(),
      row<sheave::BearingPressure>(),
      row<sheave::BendRatio>(),
      row<sheave::GrooveDepthMax>(),
      row<sheave::GrooveDepthMin>(),
      row<sheave::GrooveRadiusNewMax>(),
      row<sheave::GrooveRadiusNewMin>(),
      row<sheave::GrooveRadiusWornMin>(),
      row<sheave::StrengthEfficiency>(),
      row<work::Casing>(),
      row<work::Coring>(),
      row<work::Drilling>(),
      row<work::Lift>(),
      row<work::RoundTrip>(),
      row<work::ShortTrip>(),
      {"fatigue.DruckerTachau.cycles", run_cycles(drucker_tachau)},
      {"fatigue.DruckerTachau.tension_exponent", run_tension_exponent(drucker_tachau)},
      {"fatigue.FeyrerForm.tension_exponent", run_tension_exponent(feyrer_form)},
      {"fatigue.HandbookRelativeLife.cycles", run_cycles(handbook_life)},
      {"fatigue.PowerLaw.cycles", run_cycles(power_law)},
      {"Reeving.tensions", run_tensions},
      {"Reeving.line_speeds", run_line_speeds},
      {"Rope",
       [](const ReferenceCase& one) {
         return outputs_of(rope::find(text(one.inputs, "construction"), text(one.inputs, "grade"),
                                      quantity<Length>(one.inputs, "diameter")));
       }},
      {"Rope.metric",
       [](const ReferenceCase& one) {
         return outputs_of(rope::from_factors(text(one.inputs, "rope_class"),
                                              quantity<Stress>(one.inputs, "wire_grade"),
                                              quantity<Length>(one.inputs, "diameter")));
       }},
      {"design_factor.minimum",
       [](const ReferenceCase& one) {
         const auto found =
             design_factor::minimum(text(one.inputs, "operation"), text(one.inputs, "standard"));
         return Outputs{{"value", to_si(found.value)}};
       }},
      {"drawworks.size_for_depth",
       [](const ReferenceCase& one) {
         const auto found = drawworks::size_for_depth(quantity<Length>(one.inputs, "depth"),
                                                      text(one.inputs, "standard"));
         return Outputs{{"hook_load", to_si(found.hook_load.value())},
                        {"power[1]", to_si(found.power_to)}};
       }},
      {"drum.Drum.capacity",
       [](const ReferenceCase& one) {
         return Outputs{{"result", to_si(drum_of(one.construct).capacity())}};
       }},
      {"drum.Drum.lap_length",
       [](const ReferenceCase& one) {
         const int layer = whole(one.inputs, "layer");
         return Outputs{{"result", to_si(drum_of(one.construct).lap_length(layer))}};
       }},
      {"drum.dead_wraps_minimum",
       [](const ReferenceCase& one) {
         const auto found = drum::dead_wraps_minimum(text(one.inputs, "standard"));
         return Outputs{{"value", to_si(found.value)}};
       }},
      {"drum.fleet_angle_limit", run_fleet_angle_limit},
      {"drum.layer_factor",
       [](const ReferenceCase& one) {
         return Outputs{{"result", to_si(drum::layer_factor(whole(one.inputs, "layers")).value)}};
       }},
      {"drum.reel_capacity_handbook", run_reel_capacity_handbook},
      {"fatigue.core_factor",
       [](const ReferenceCase& one) {
         return Outputs{
             {"value",
              fatigue::core_factor(text(one.inputs, "core"), whole(one.inputs, "strands")).value}};
       }},
      {"fatigue.lubrication_factor",
       [](const ReferenceCase& one) {
         return Outputs{
             {"value", fatigue::lubrication_factor(text(one.inputs, "lubrication")).value}};
       }},
      {"fatigue.round_groove_factor",
       [](const ReferenceCase& one) {
         const auto ratio = quantity<Number>(one.inputs, "groove_radius_ratio");
         return Outputs{{"value", fatigue::round_groove_factor(ratio).value}};
       }},
      {"fatigue.shaped_groove_factor",
       [](const ReferenceCase& one) {
         const auto angle = quantity<Angle>(one.inputs, "groove_angle");
         return Outputs{
             {"value", fatigue::shaped_groove_factor(text(one.inputs, "groove"), angle).value}};
       }},
      {"fatigue.en81_groove_equivalent",
       [](const ReferenceCase& one) {
         const auto angle = quantity<Angle>(one.inputs, "groove_angle");
         return Outputs{
             {"result", fatigue::en81_groove_equivalent(text(one.inputs, "groove"), angle)}};
       }},
      {"sheave.bearing_pressure_limit",
       [](const ReferenceCase& one) {
         const auto found = sheave::bearing_pressure_limit(text(one.inputs, "groove_material"),
                                                           text(one.inputs, "rope_class"),
                                                           text(one.inputs, "lay"));
         return Outputs{{"result", to_si(found.value)}};
       }},
      {"sheave.groove_radius_table",
       [](const ReferenceCase& one) {
         const auto found = sheave::groove_radius_table(
             quantity<Length>(one.inputs, "rope_diameter"), text(one.inputs, "state"));
         return Outputs{{"result", to_si(found.value)}};
       }},
      {"sheave.tread_diameter",
       [](const ReferenceCase& one) {
         const auto found =
             sheave::tread_diameter(text(one.inputs, "construction"), text(one.inputs, "condition"),
                                    quantity<Length>(one.inputs, "rope_diameter"));
         return Outputs{{"result", to_si(found.value)}};
       }},
  };
}

}  // namespace

const std::map<std::string, Run, std::less<>>& reference_runs() {
  static const std::map<std::string, Run, std::less<>> table = [] {
    std::map<std::string, Run, std::less<>> all = subject_runs();
    all.merge(hoist_runs());
    all.merge(compensator_runs());
    all.merge(brake_runs());
    all.merge(indicator_runs());
    return all;
  }();
  return table;
}

bool can_run(const ReferenceCase& one) {
  return reference_runs().contains(one.function) && is_plain(one.inputs) && is_plain(one.construct);
}

}  // namespace ropewalk::test
