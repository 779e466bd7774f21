// A moment of inertia is no mass: it takes the radius on which it is felt.
#include "ropewalk/units/customary.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
constexpr Mass at_the_rim = 30.0 * kilogram_square_meter;
#else
constexpr Mass at_the_rim = mass_on_rim(30.0 * kilogram_square_meter, 0.5 * meter);
#endif
