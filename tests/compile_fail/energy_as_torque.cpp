// An energy is not a torque: the radian is missing.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr Torque torque = 500.0 * joule;
#else
constexpr Torque torque = 500.0 * joule / radian;
#endif
