// Strokes per second are not radians per second.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr AngularVelocity rotation = 2.0 / second;
#else
constexpr AngularVelocity rotation = 2.0 / second * turn;
#endif
