// A bare ton has three meanings and is not defined.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr Force load = 250.0 * ton;
#else
constexpr Force load = 250.0 * short_ton_force;
#endif
