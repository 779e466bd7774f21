// A stress is not a force: the area is missing.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr Force pull = 30.0 * ksi;
#else
constexpr Force pull = 30.0 * ksi * square_inch;
#endif
