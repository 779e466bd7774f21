// A formula takes all its arguments.
#include "ropewalk/sheave/pressure.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
const Stress p = sheave::bearing_pressure(30.0 * kip, 1.25 * inch);
#else
const Stress p = sheave::bearing_pressure(30.0 * kip, 1.25 * inch, 50.0 * inch);
#endif
