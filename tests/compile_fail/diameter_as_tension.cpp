// Arguments in the wrong order: a diameter stands where the tension belongs.
#include "ropewalk/sheave/pressure.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
const Stress p = sheave::bearing_pressure(1.25 * inch, 30.0 * kip, 50.0 * inch);
#else
const Stress p = sheave::bearing_pressure(30.0 * kip, 1.25 * inch, 50.0 * inch);
#endif
