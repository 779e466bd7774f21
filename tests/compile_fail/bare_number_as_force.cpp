// A bare number is no force.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr Force load = 400'000.0;
#else
constexpr Force load = 400'000.0 * pound_force;
#endif
