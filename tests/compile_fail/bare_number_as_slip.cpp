// The length of a slip is a length: a bare number could be feet.
#include "ropewalk/line/run.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
const line::Program program{.slip = 20.0};
#else
const line::Program program{.slip = 20.0 * meter};
#endif
