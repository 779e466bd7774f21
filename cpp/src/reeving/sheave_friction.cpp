#include "ropewalk/reeving/sheave_friction.hpp"

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/table.hpp"

namespace ropewalk::reeving {

Sourced<Number> sheave_friction(std::string_view bearing) {
  const Table& printed = table("sheave_frictions");
  std::vector<std::string> bearings;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    const std::string_view name = printed.text(row, "bearing");
    if (same_name(name, bearing)) {
      return {from_si<Number>(printed.number(row, "sheave_friction")),
              {printed.text(row, "source"), printed.text(row, "standing")}};
    }
    add_name(bearings, name);
  }
  throw LookupError("reeving.sheave_friction", "sheave_friction",
                    "there is no sheave friction for '" + std::string(bearing) +
                        "' bearings; there is: " + joined(bearings));
}

}  // namespace ropewalk::reeving
