#include "reference_runs.hpp"

#include <algorithm>
#include <limits>
#include <tuple>
#include <utility>

#include "ropewalk/design_factor/design_factor.hpp"
#include "ropewalk/design_factor/minimum.hpp"
#include "ropewalk/drillstring/drag.hpp"
#include "ropewalk/drillstring/tool_joint.hpp"
#include "ropewalk/drillstring/weight.hpp"
#include "ropewalk/fatigue/discard_wire_breaks.hpp"
#include "ropewalk/fatigue/en13001.hpp"
#include "ropewalk/fatigue/en81_50.hpp"
#include "ropewalk/fatigue/endurance.hpp"
#include "ropewalk/fatigue/feyrer_factors.hpp"
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

/// A quantity among the inputs; throws if the case has it not, or not as a number.
template <class Q>
Q quantity(const Inputs& inputs, std::string_view name) {
  return from_si<Q>(inputs.find(name)->second.number.value());
}

const std::string& text(const Inputs& inputs, std::string_view name) {
  return inputs.find(name)->second.text;
}

int whole(const Inputs& inputs, std::string_view name) {
  return static_cast<int>(to_si(quantity<Number>(inputs, name)));
}

/// A formula of one row, its arguments found by their names.
template <class F>
Outputs run_row(const ReferenceCase& one) {
  const auto call = [&]<class... P>(const P&... parameter) {
    return Model<F>{}(quantity<typename P::quantity>(one.inputs, parameter.name)...);
  };
  return {{"result", to_si(std::apply(call, F::parameters))}};
}

template <class F>
std::pair<const std::string, Run> row() {
  return {std::string(F::name), run_row<F>};
}

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

template <class Q>
double known(const rope::Known<Q>& property) {
  return property ? to_si(property->value) : std::numeric_limits<double>::quiet_NaN();
}

Outputs outputs_of(const rope::RopeData& found) {
  return {{"breaking_force", known(found.breaking_force)},
          {"mass_per_length", known(found.mass_per_length)},
          {"metallic_area", known(found.metallic_area)}};
}

/// All inputs as plain texts and numbers.
bool is_plain(const Inputs& inputs) {
  return std::none_of(inputs.begin(), inputs.end(),
                      [](const auto& input) { return input.second.composite; });
}

}  // namespace

const std::map<std::string, Run, std::less<>>& reference_runs() {
  static const std::map<std::string, Run, std::less<>> table{
      row<design_factor::DesignFactor>(),
      row<design_factor::Derated>(),
      row<drillstring::BuoyancyFactor>(),
      row<drillstring::BuoyedWeightPerLength>(),
      row<drillstring::JointedMassPerLength>(),
      row<drillstring::SlantPull>(),
      row<drillstring::ToolJointMass>(),
      row<drillstring::TubeMassPerLength>(),
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
  return table;
}

bool can_run(const ReferenceCase& one) {
  return reference_runs().contains(one.function) && is_plain(one.inputs) && is_plain(one.construct);
}

}  // namespace ropewalk::test
