/// The reference cases: published values, read from reference-cases/<subject>/*.toml.
///
/// The format and the rule by which a value agrees with a printed one are described in
/// reference-cases/README.md. The Python suite runs every case; this reader serves those that the
/// C++ interface can run.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ropewalk::test {

/// A number with the digits a publication prints, and its unit as text.
struct PrintedNumber {
  double value;
  double half_unit;  ///< half a unit of the last printed digit
  std::string unit;
};

/// Reads "0.8420", "4.92e4 lbf" or "12 ft/min"; nothing if the text does not begin with a number.
[[nodiscard]] std::optional<PrintedNumber> parse_printed(std::string_view text);

/// Coherent SI value of one unit of the cases: "lbf", "ft/min", "" for a plain number. Nothing if
/// the cases have no such unit.
[[nodiscard]] std::optional<double> unit_in_si(std::string_view unit);

/// Half a unit of the last printed digit, or what a case states: "0.5 %" or "0.002".
[[nodiscard]] double tolerance_of(const PrintedNumber& printed,
                                  const std::optional<std::string>& stated);

/// What a publication prints for one attribute of a result, and how far off is still equal.
struct Expected {
  std::string attribute;
  PrintedNumber printed;
  double tolerance;  ///< absolute, in the unit of the printed number

  /// Whether a value in coherent SI rounds to what is printed. A value on the limit agrees.
  [[nodiscard]] bool agrees_with_si(double value) const;
};

/// One input: its text, and its number in coherent SI if it is one.
struct Input {
  std::string text;
  std::optional<double> number{};
  bool composite = false;  ///< a list, or an object that a call makes: neither text nor number
};
using Inputs = std::map<std::string, Input, std::less<>>;

/// One call and what is printed for its result.
struct ReferenceCase {
  std::string id;  ///< subject/file/case
  std::string source;
  std::string function;
  Inputs construct;
  Inputs inputs;
  double multiply_by = 1.0;  ///< what the result is multiplied by before it is compared
  std::vector<Expected> expected;
};

/// All cases of one subject, a table spread into one case per row, in order of file and place.
/// Throws std::runtime_error naming file and case for what it cannot read.
[[nodiscard]] std::vector<ReferenceCase> read_reference_cases(std::string_view subject);

}  // namespace ropewalk::test
