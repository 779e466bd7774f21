// A formula takes no bare numbers where a unit belongs.
#include "ropewalk/sheave/pressure.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
const Stress p = sheave::bearing_pressure(30.0 * kip, 1.25, 50.0);
#else
const Stress p = sheave::bearing_pressure(30.0 * kip, 1.25 * inch, 50.0 * inch);
#endif
