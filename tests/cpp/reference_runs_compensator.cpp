#include "reference_inputs.hpp"
#include "ropewalk/compensator/active.hpp"
#include "ropewalk/compensator/gas_spring.hpp"
#include "ropewalk/compensator/hanging.hpp"
#include "ropewalk/compensator/rayleigh.hpp"
#include "ropewalk/compensator/spectrum.hpp"

namespace ropewalk::test {

std::map<std::string, Run, std::less<>> compensator_runs() {
  return {
      row<compensator::ActiveLineSpeed>(),   row<compensator::ActiveWork>(),
      row<compensator::CycleExceedance>(),   row<compensator::ExpectedMaximum>(),
      row<compensator::GasLoad>(),           row<compensator::GasStiffness>(),
      row<compensator::HangingRatio>(),      row<compensator::HeaveAcceleration>(),
      row<compensator::JonswapNormalizer>(), row<compensator::MeanOfHighest>(),
      row<compensator::MeanPeriodRatio>(),   row<compensator::MostProbableMaximum>(),
      row<compensator::NaturalPeriod>(),     row<compensator::NeededGasVolume>(),
      row<compensator::PeakFactor>(),        row<compensator::PiersonMoskowitz>(),
      row<compensator::SteepestHeight>(),    row<compensator::StrokeExceedance>(),
      row<compensator::ZeroCrossingRatio>(),
  };
}

}  // namespace ropewalk::test
