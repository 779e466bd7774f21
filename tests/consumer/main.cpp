// A project of its own that uses an installed ropewalk: headers, library, tables, errors.
#include <cmath>
#include <iostream>

#include "ropewalk/base/table.hpp"
#include "ropewalk/sheave/pressure.hpp"

int main() {
  using namespace ropewalk;
  const Stress p = sheave::bearing_pressure(30'000.0 * pound_force, 1.25 * inch, 50.0 * inch);
  std::cout << "p = " << p / psi << " psi, " << embedded_files().size() << " tables\n";
  try {
    (void)sheave::bearing_pressure(30'000.0 * pound_force, -1.25 * inch, 50.0 * inch);
    return 1;
  } catch (const InadmissibleError& error) {
    std::cout << error.what() << '\n';
  }
  return std::abs(p / psi - 960.0) < 1e-9 && table("sources").rows() > 0 ? 0 : 1;
}
