#include "reference_inputs.hpp"
#include "reference_runs.hpp"
#include "ropewalk/brake/auxiliary.hpp"
#include "ropewalk/brake/band.hpp"
#include "ropewalk/brake/disc.hpp"
#include "ropewalk/brake/heat.hpp"
#include "ropewalk/brake/holding.hpp"
#include "ropewalk/brake/stop.hpp"
#include "ropewalk/overtravel/stopping.hpp"

namespace ropewalk::test {

std::map<std::string, Run, std::less<>> brake_runs() {
  return {
      row<brake::BandLeverTension>(),
      row<brake::BandMeanPressure>(),
      row<brake::BandPressure>(),
      row<brake::BandTensionRatio>(),
      row<brake::BandTorqueReversed>(),
      row<brake::BrakingPower>(),
      row<brake::CaliperTorque>(),
      row<brake::CoolingWaterFlow>(),
      row<brake::EddyStableSpeed>(),
      row<brake::EddyTorque>(),
      row<brake::EddyUnstableSpeed>(),
      row<brake::FrictionHeatFlux>(),
      row<brake::HeatRise>(),
      row<brake::HoistingDeceleration>(),
      row<brake::LoweringDeceleration>(),
      row<brake::LoweringHeat>(),
      row<brake::PadRadiusUniformWear>(),
      row<brake::StopTensionFactor>(),
      row<brake::SuddenStopFactor>(),
      row<brake::SurfaceRise>(),
      row<brake::SurfaceRiseOfStop>(),
      row<overtravel::AllowedSpeed>(),
      row<overtravel::StoppingDistance>(),
      row<overtravel::TripHeightShift>(),
      {"brake.required_factor",
       [](const ReferenceCase& one) {
         return Outputs{{"value", to_si(brake::required_factor(text(one.inputs, "key")).value)}};
       }},
  };
}

}  // namespace ropewalk::test
