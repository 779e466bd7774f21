#include "ropewalk/drum/pressure.hpp"

#include "ropewalk/base/require.hpp"
#include "ropewalk/base/table.hpp"

namespace ropewalk::drum {

Sourced<Number> layer_factor(int layers) {
  constexpr std::string_view where = "drum.layer_factor";
  const double asked = static_cast<double>(layers);
  require(where, argument::layers, from_si<Number>(asked));
  const Table& printed = table("drum_layer_factors");
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    if (printed.number(row, "layers") == asked) {
      return {from_si<Number>(printed.number(row, "layer_factor")),
              {printed.text(row, "source"), printed.text(row, "standing")}};
    }
  }
  const std::string count = std::to_string(layers);
  throw LookupError(where, "layers",
                    "there is no layer factor for " + count +
                        " layers, only for 1 and 2; more are considered case by case, between 1 "
                        "and " +
                        count);
}

}  // namespace ropewalk::drum
