#include "common.hpp"
#include "records.hpp"

#include <array>

#include "ropewalk/base/interpolation.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/brake/auxiliary.hpp"
#include "ropewalk/brake/balance.hpp"
#include "ropewalk/brake/band.hpp"
#include "ropewalk/brake/disc.hpp"
#include "ropewalk/brake/heat.hpp"
#include "ropewalk/brake/holding.hpp"
#include "ropewalk/brake/stop.hpp"

namespace ropewalk::bindings {

namespace {

template <class Q>
Q brake_argument(std::string_view where, std::string_view field, const SiArgument& given) {
  return from_si<Q>(si_number(where, field, unit_text<Q>(), given.value));
}

py::dict required_record(const brake::RequiredFactor& row) {
  py::dict record;
  record["key"] = std::string(row.key);
  record["standard"] = std::string(row.standard);
  record["edition"] = std::string(row.edition);
  record["value"] = to_si(row.value);
  record["base"] = std::string(row.base);
  record["condition"] = std::string(row.condition);
  record["source"] = citation(row.provenance.source);
  record["standing"] = std::string(row.provenance.standing);
  return record;
}

brake::LoweringBrakes lowering_brakes(std::string_view where, const SiArgument& eddy_peak_torque,
                                      const SiArgument& critical_speed,
                                      const SiArgument& motor_torque_limit,
                                      const SiArgument& motor_power_limit,
                                      const SiArgument& friction_torque) {
  return {.eddy_peak = brake_argument<Torque>(where, "eddy_peak_torque", eddy_peak_torque),
          .eddy_critical = brake_argument<AngularVelocity>(where, "critical_speed", critical_speed),
          .motor_torque = brake_argument<Torque>(where, "motor_torque_limit", motor_torque_limit),
          .motor_power = brake_argument<Power>(where, "motor_power_limit", motor_power_limit),
          .friction = brake_argument<Torque>(where, "friction_torque", friction_torque)};
}

py::object speed_or_none(const std::optional<AngularVelocity>& speed) {
  if (speed) return py::float_(to_si(*speed));
  return py::none();
}

py::dict balance_record(const SiArgument& eddy_peak_torque, const SiArgument& critical_speed,
                        const SiArgument& motor_torque_limit, const SiArgument& motor_power_limit,
                        const SiArgument& friction_torque, const SiArgument& load_torque) {
  constexpr std::string_view where = "brake.LoweringBrakes.balance";
  const brake::LoweringBalance found =
      lowering_balance(lowering_brakes("brake.LoweringBrakes", eddy_peak_torque, critical_speed,
                                       motor_torque_limit, motor_power_limit, friction_torque),
                       brake_argument<Torque>(where, "load_torque", load_torque));
  constexpr std::array<const char*, 4> names{"held", "held by motor", "stable", "runaway"};
  std::vector<std::pair<double, bool>> speeds;
  for (const brake::BalanceSpeed& one : found.speeds) {
    speeds.emplace_back(to_si(one.rotation), one.stable);
  }
  py::dict record;
  record["state"] = names[static_cast<std::size_t>(found.state)];
  record["speeds"] = speeds;
  record["stable"] = speed_or_none(found.stable);
  record["unstable"] = speed_or_none(found.unstable);
  record["largest_load"] = to_si(found.largest_load);
  return record;
}

brake::Stop stop_of(const std::string& direction, const SiArgument& travel_speed,
                    const SiArgument& hook_load, const SiArgument& drum_load,
                    const SiArgument& delay_force, const SiArgument& brake_force,
                    const SiArgument& delay, const SiArgument& build_up,
                    const SiArgument& rotating_mass) {
  constexpr std::string_view where = "brake.Stop";
  return {.direction = brake::stop_direction_named(direction),
          .speed = brake_argument<Speed>(where, "travel_speed", travel_speed),
          .hook_load = brake_argument<Force>(where, "hook_load", hook_load),
          .drum_load = brake_argument<Force>(where, "drum_load", drum_load),
          .delay_force = brake_argument<Force>(where, "delay_force", delay_force),
          .brake_force = brake_argument<Force>(where, "brake_force", brake_force),
          .delay = brake_argument<Time>(where, "delay", delay),
          .build_up = brake_argument<Time>(where, "build_up", build_up),
          .rotating_mass = brake_argument<Mass>(where, "rotating_mass", rotating_mass)};
}

py::object fall_back_record(const std::optional<brake::FallBack>& found) {
  if (!found) return py::none();
  py::dict record;
  record["falls"] = found->falls;
  record["holds"] = found->holds;
  record["distance"] = to_si(found->distance);
  record["time"] = to_si(found->time);
  record["highest_speed"] = to_si(found->highest_speed);
  return record;
}

py::dict rigid_record(const brake::RigidStop& found) {
  py::dict record;
  record["stops"] = found.stops;
  record["stands_early"] = found.stands_early;
  record["slack"] = found.slack;
  record["time"] = to_si(found.time);
  record["distance"] = to_si(found.distance);
  record["highest_speed"] = to_si(found.highest_speed);
  record["deceleration"] = to_si(found.deceleration);
  record["fall_back"] = fall_back_record(found.fall_back);
  return record;
}

py::array_t<double> brake_column(const std::vector<double>& values) {
  return py::array_t<double>(static_cast<py::ssize_t>(values.size()), values.data());
}

py::dict elastic_record(const brake::ElasticStop& found) {
  py::dict record;
  record["stops"] = found.stops;
  record["time"] = to_si(found.time);
  record["drum_distance"] = to_si(found.drum_distance);
  record["block_distance"] = to_si(found.block_distance);
  record["peak"] = to_si(found.peak);
  record["least"] = to_si(found.least);
  record["fall_back"] = fall_back_record(found.fall_back);
  record["times"] = brake_column(found.times);
  record["drum_travel"] = brake_column(found.drum_travel);
  record["block_travel"] = brake_column(found.block_travel);
  record["drum_speed"] = brake_column(found.drum_speed);
  record["block_speed"] = brake_column(found.block_speed);
  record["hook_force"] = brake_column(found.hook_force);
  return record;
}

/// Rises after lowering and after rest, one pair per row of heat, lowering and rest.
std::pair<py::array_t<double>, py::array_t<double>> temperature_rows(
    const SiArgument& heated_mass, const SiArgument& specific_heat, const SiArgument& heat_loss,
    const SiArgument& first_rise, const SiArgument& heat, const SiArgument& lowering_time,
    const SiArgument& rest_time) {
  constexpr std::string_view where = "brake.temperature_over_trip";
  const Columns columns(where, {{"heat", "J", heat.value},
                                {"lowering_time", "s", lowering_time.value},
                                {"rest_time", "s", rest_time.value}});
  std::vector<brake::HeatedStroke> strokes;
  for (std::size_t i = 0; i < columns.rows(); ++i) {
    const std::vector<double> row = columns.row(i);
    strokes.push_back({.heat = from_si<Energy>(row[0]),
                       .lowering = from_si<Time>(row[1]),
                       .rest = from_si<Time>(row[2])});
  }
  const std::vector<brake::StrokeRise> rises = brake::temperature_over_trip(
      {.mass = brake_argument<Mass>(where, "heated_mass", heated_mass),
       .specific_heat = brake_argument<SpecificHeat>(where, "specific_heat", specific_heat),
       .heat_loss = brake_argument<HeatLoss>(where, "heat_loss", heat_loss)},
      brake_argument<Temperature>(where, "first_rise", first_rise), strokes);
  std::vector<double> lowered;
  std::vector<double> rested;
  for (const brake::StrokeRise& rise : rises) {
    lowered.push_back(to_si(rise.lowered));
    rested.push_back(to_si(rise.rested));
  }
  return {brake_column(lowered), brake_column(rested)};
}

/// Friction by a table of the caller's over temperature; never beyond the table.
double friction_at(const std::vector<double>& temperatures, const std::vector<double>& frictions,
                   double temperature) {
  constexpr std::string_view where = "brake.FrictionTable.at";
  const Curve curve("friction over temperature", temperatures, frictions, Paper::linear);
  const std::optional<double> friction = curve.at(temperature);
  if (!friction) {
    throw ValidityError(where, "temperature",
                        "temperature = " + quantity_text(temperature, "K") + " is outside [" +
                            number_text(temperatures.front()) + ", " +
                            quantity_text(temperatures.back(), "K") + "], the friction table");
  }
  return *friction;
}

void bind_brake_balance(py::module_& m) {
  m.def("lowering_balance", &balance_record, py::arg("eddy_peak_torque"), py::arg("critical_speed"),
        py::arg("motor_torque_limit"), py::arg("motor_power_limit"), py::arg("friction_torque"),
        py::arg("load_torque"),
        "State, speeds [rad/s] with their stability, first stable and unstable speed of a load "
        "lowered on its brakes, and the "
        "largest load torque [N*m] they take.");
  m.def("temperature_over_trip", &temperature_rows, py::arg("heated_mass"),
        py::arg("specific_heat"), py::arg("heat_loss"), py::arg("first_rise"), py::arg("heat"),
        py::arg("lowering_time"), py::arg("rest_time"),
        "Rise of temperature [K] when each stand is down, and when its rest is over.");
  m.def("friction_at", &friction_at, py::arg("temperatures"), py::arg("frictions"),
        py::arg("temperature"), "Friction by a table over temperature [K].");
  m.def(
      "required_factors",
      [] {
        std::vector<py::dict> records;
        for (const brake::RequiredFactor& row : brake::required_factors())
          records.push_back(required_record(row));
        return records;
      },
      "Every holding factor that is asked for, as required_factor() gives it.");
  m.def(
      "required_factor",
      [](const std::string& key) { return required_record(brake::required_factor(key)); },
      py::arg("key"), "The holding factor of a key, with its source.");
}

void bind_brake_stop(py::module_& m) {
  m.def(
      "rigid_stop",
      [](const std::string& direction, const SiArgument& speed, const SiArgument& hook_load,
         const SiArgument& drum_load, const SiArgument& delay_force, const SiArgument& brake_force,
         const SiArgument& delay, const SiArgument& build_up, const SiArgument& rotating_mass) {
        return rigid_record(
            brake::rigid_stop(stop_of(direction, speed, hook_load, drum_load, delay_force,
                                      brake_force, delay, build_up, rotating_mass)));
      },
      py::arg("direction"), py::arg("travel_speed"), py::arg("hook_load"), py::arg("drum_load"),
      py::arg("delay_force"), py::arg("brake_force"), py::arg("delay"), py::arg("build_up"),
      py::arg("rotating_mass"), "A stop on a line that does not stretch, in SI at the hook.");
  m.def(
      "elastic_stop",
      [](const std::string& direction, const SiArgument& speed, const SiArgument& hook_load,
         const SiArgument& drum_load, const SiArgument& delay_force, const SiArgument& brake_force,
         const SiArgument& delay, const SiArgument& build_up, const SiArgument& rotating_mass,
         const SiArgument& line_stiffness, const SiArgument& damping_ratio,
         const SiArgument& time_limit) {
        constexpr std::string_view where = "brake.Stop.on_line";
        return elastic_record(brake::elastic_stop(
            stop_of(direction, speed, hook_load, drum_load, delay_force, brake_force, delay,
                    build_up, rotating_mass),
            {.stiffness = brake_argument<ForcePerLength>(where, "line_stiffness", line_stiffness),
             .damping_ratio = brake_argument<Number>(where, "damping_ratio", damping_ratio)},
            brake_argument<Time>(where, "time_limit", time_limit)));
      },
      py::arg("direction"), py::arg("travel_speed"), py::arg("hook_load"), py::arg("drum_load"),
      py::arg("delay_force"), py::arg("brake_force"), py::arg("delay"), py::arg("build_up"),
      py::arg("rotating_mass"), py::arg("line_stiffness"), py::arg("damping_ratio"),
      py::arg("time_limit"), "A stop on an elastic line, with its course, in SI at the hook.");
}

}  // namespace

void bind_brake(py::module_& core) {
  py::module_ m = submodule(core, "brake", "Brakes of a hoist: torque, balance, heat, stops.");
  bind_row<brake::BandTensionRatio>(m, "Tension of the tight over the slack end of a band.");
  bind_row<brake::BandTorque>(m, "Torque of band brakes that the rim helps.");
  bind_row<brake::BandTorqueReversed>(m, "Torque of band brakes the rim turns against.");
  bind_row<brake::BandLeverTension>(m, "Tension the lever puts into each band for a torque.");
  bind_row<brake::BandPressure>(m, "Pressure of a band on its rim.");
  bind_row<brake::BandMeanPressure>(m, "Mean pressure on the linings of band brakes.");
  bind_row<brake::PadRadiusUniformWear>(m, "Radius at which a worn-in pad acts.");
  bind_row<brake::PadRadiusUniformPressure>(m, "Radius at which a new pad acts.");
  bind_row<brake::CaliperTorque>(m, "Torque of calipers.");
  bind_row<brake::SpringPadForce>(m, "Force of a pad pressed on by springs.");
  bind_row<brake::EddyTorque>(m, "Torque of an eddy-current brake.");
  bind_row<brake::EddyStableSpeed>(m, "Speed at which a load settles on an eddy-current brake.");
  bind_row<brake::EddyUnstableSpeed>(m, "Speed above which a load runs away.");
  bind_row<brake::MotorBrakeTorque>(m, "Largest braking torque of a motor.");
  bind_row<brake::BrakingPower>(m, "Heat of a brake.");
  bind_row<brake::HoldingFactor>(m, "Static torque of a brake over that of its load.");
  bind_row<brake::LoweringHeat>(m, "Heat of a load that is lowered.");
  bind_row<brake::HeatRise>(m, "Rise of temperature of a body.");
  bind_row<brake::FrictionHeatFlux>(m, "Heat per rubbed area.");
  bind_row<brake::SurfaceRise>(m, "Rise of a surface under a constant heat flux.");
  bind_row<brake::SurfaceRiseOfStop>(m, "Largest rise of a surface during a stop.");
  bind_row<brake::CoolingWaterFlow>(m, "Cooling water that carries a heat away.");
  bind_row<brake::LoweringDeceleration>(m, "Deceleration of a block that is lowered.");
  bind_row<brake::HoistingDeceleration>(m, "Deceleration of a block that is hoisted.");
  bind_row<brake::SuddenStopFactor>(m, "Largest over static tension when the drum stops dead.");
  bind_row<brake::StopTensionFactor>(m,
                                     "Largest over static tension when the drum is braked evenly.");
  bind_brake_balance(m);
  bind_brake_stop(m);
}

}  // namespace ropewalk::bindings
