#include "ropewalk/deadline/indicator.hpp"

#include <utility>

#include "ropewalk/base/require.hpp"

namespace ropewalk::deadline {

Indicator::Indicator(reeving::Arrangement arrangement, int lines_set)
    : arrangement_(std::move(arrangement)), lines_set_(lines_set) {
  constexpr std::string_view where = "deadline.WeightIndicator";
  require(where, params::lines.named("lines_set"), from_si<Number>(lines_set));
  if (!reeving::has_dead_line(arrangement_.lines())) {
    throw InadmissibleError(where, "lines",
                            "lines = " + std::to_string(arrangement_.lines()) +
                                ": an odd number has its dead end on the traveling block and no "
                                "dead line");
  }
}

Number Indicator::ratio(reeving::Motion motion) const {
  const reeving::RelativeTensions relative = reeving::relative_tensions(arrangement_, motion);
  return from_si<Number>(lines_set_ * relative.dead_line / relative.sum);
}

Number Indicator::error_of(const Indicator& believed, reeving::Motion motion) const {
  return ratio(motion) / believed.ratio(motion) - 1.0;
}

}  // namespace ropewalk::deadline
