// An angle is not a plain number: in_radians() says which number it is.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr double wrap = 180.0 * degree;
#else
constexpr double wrap = in_radians(180.0 * degree);
#endif
