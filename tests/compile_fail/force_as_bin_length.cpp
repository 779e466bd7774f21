// A force is no length of a bin.
#include "ropewalk/line/cases.hpp"

using namespace ropewalk;

#ifdef MUST_FAIL
const line::CaseOptions options{.bin = 0.1 * newton};
#else
const line::CaseOptions options{.bin = 0.1 * meter};
#endif
