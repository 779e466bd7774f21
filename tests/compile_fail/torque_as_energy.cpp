// A torque is not an energy, though both are newton meters: torque times angle is.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr Energy work = 500.0 * newton_meter;
#else
constexpr Energy work = 500.0 * newton_meter * turn;
#endif
