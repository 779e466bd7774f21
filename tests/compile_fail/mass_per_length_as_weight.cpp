// Pipe of 19.5 lb/ft does not weigh anything yet: gravity is missing.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr ForcePerLength weight = 19.5 * pound_per_foot;
#else
constexpr ForcePerLength weight = 19.5 * pound_per_foot * standard_gravity;
#endif
