// A force is not larger or smaller than a stress.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr bool holds = 130.0 * kip > 30.0 * ksi;
#else
constexpr bool holds = 130.0 * kip > 30.0 * kip;
#endif
