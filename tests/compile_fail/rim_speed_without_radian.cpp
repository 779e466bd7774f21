// Rotation times radius is a rim speed only once the radian is taken out.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr Speed rim = 120.0 * rpm * (15.0 * inch);
#else
constexpr Speed rim = rim_speed(120.0 * rpm, 15.0 * inch);
#endif
