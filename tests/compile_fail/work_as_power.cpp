// A work is not a power: the time is missing.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr Power power = 3.0 * ton_mile;
#else
constexpr Power power = 3.0 * ton_mile / hour;
#endif
