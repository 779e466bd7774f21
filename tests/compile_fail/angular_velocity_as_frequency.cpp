// A rotation in rad/s is not a number of turns per second: they differ by 2 pi.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr Frequency turns = 120.0 * rpm;
#else
constexpr Frequency turns = turns_per_time(120.0 * rpm);
#endif
