// A mass is not a weight: gravity is missing.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr Force weight = 23'500.0 * pound;
#else
constexpr Force weight = 23'500.0 * pound * standard_gravity;
#endif
