// A force and a length have no sum.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr auto sum = 400.0 * kip + 10.0 * foot;
#else
constexpr Force sum = 400.0 * kip + 10.0 * kilonewton;
#endif
