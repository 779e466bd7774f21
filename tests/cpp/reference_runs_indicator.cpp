#include "reference_inputs.hpp"
#include "ropewalk/deadline/anchor.hpp"
#include "ropewalk/deadline/friction.hpp"
#include "ropewalk/deadline/indicator.hpp"
#include "ropewalk/deadline/sensor.hpp"
#include "ropewalk/dynamics/factors.hpp"
#include "ropewalk/dynamics/stiffness.hpp"
#include "ropewalk/dynamics/string.hpp"

namespace ropewalk::test {

std::map<std::string, Run, std::less<>> indicator_runs() {
  return {
      row<deadline::AnchorCapacity>(),       row<deadline::ClampsNeeded>(),
      row<deadline::FrictionFromReadings>(), row<deadline::FrictionUncertainty>(),
      row<deadline::HoistingRatio>(),        row<deadline::HookLoadFromReadings>(),
      row<deadline::HookLoadHoisting>(),     row<deadline::HookLoadLowering>(),
      row<deadline::LoweringRatio>(),        row<deadline::TensionFromDeflection>(),
      row<deadline::TensionFromPin>(),       row<dynamics::DropFactor>(),
      row<dynamics::LineStiffness>(),        row<dynamics::LockedStiffness>(),
      row<dynamics::NaturalFrequency>(),     row<dynamics::PickupFactor>(),
      row<dynamics::RampFactor>(),           row<dynamics::SeriesStiffness>(),
      row<dynamics::StaticStretch>(),        row<dynamics::StepFactor>(),
      row<dynamics::TroughFactor>(),         row<dynamics::SlackSpeed>(),
      row<dynamics::StopFactor>(),           row<dynamics::StringFrequency>(),
      row<dynamics::StringStiffness>(),      row<dynamics::WaveForce>(),
      row<dynamics::WaveReturnTime>(),
  };
}

}  // namespace ropewalk::test
