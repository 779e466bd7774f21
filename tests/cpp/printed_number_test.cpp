/// The rule by which a value agrees with a printed one, on numbers a reader can check.
#include <gtest/gtest.h>

#include <cmath>

#include "reference_cases.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk::test {
namespace {

TEST(PrintedNumbers, HalfAUnitOfTheLastDigit) {
  const auto half_unit = [](std::string_view printed) {
    return parse_printed(printed).value().half_unit;
  };
  EXPECT_DOUBLE_EQ(half_unit("0.842"), 0.0005);
  EXPECT_DOUBLE_EQ(half_unit("0.8420"), 0.00005);
  EXPECT_DOUBLE_EQ(half_unit("12"), 0.5);
  EXPECT_DOUBLE_EQ(half_unit("12."), 0.5);
  EXPECT_DOUBLE_EQ(half_unit("49200 lbf"), 0.5);
  EXPECT_DOUBLE_EQ(half_unit("4.92e4 lbf"), 50.0);
  EXPECT_DOUBLE_EQ(half_unit("6.894757E+03 psi"), 0.0005);
  EXPECT_DOUBLE_EQ(half_unit("-3.10 ft/min"), 0.005);
}

TEST(PrintedNumbers, ValueAndUnit) {
  const PrintedNumber printed = parse_printed("-3.10e2 ft/min").value();
  EXPECT_DOUBLE_EQ(printed.value, -310.0);
  EXPECT_EQ(printed.unit, "ft/min");
  EXPECT_EQ(parse_printed("0.5").value().unit, "");
}

TEST(PrintedNumbers, RefusesWhatIsNone) {
  for (const std::string_view text :
       {"", "lbf", "49,200 lbf", ".5", "1e", "1_000", "nan", "6x19 IWRC", "12lbf"}) {
    EXPECT_FALSE(parse_printed(text)) << text;
  }
}

TEST(PrintedNumbers, StatedTolerance) {
  const PrintedNumber printed = parse_printed("12.3").value();
  EXPECT_DOUBLE_EQ(tolerance_of(printed, std::nullopt), 0.05);
  EXPECT_DOUBLE_EQ(tolerance_of(printed, "0.5 %"), 0.0615);
  EXPECT_DOUBLE_EQ(tolerance_of(printed, "0.2"), 0.2);
  EXPECT_DOUBLE_EQ(tolerance_of(parse_printed("-50").value(), "10 %"), 5.0);
}

TEST(PrintedNumbers, AgreesIfItRoundsToThePrint) {
  const PrintedNumber printed = parse_printed("0.123").value();
  const Expected expected{"result", printed, printed.half_unit};
  for (const double value : {0.1225, 0.12329, 0.1235}) {
    EXPECT_TRUE(expected.agrees_with_si(value)) << value;
  }
  for (const double value : {0.12249, 0.12351, -0.123, 0.0, std::nan(""), HUGE_VAL}) {
    EXPECT_FALSE(expected.agrees_with_si(value)) << value;
  }
}

TEST(PrintedNumbers, ComparesInThePrintedUnit) {
  const PrintedNumber printed = parse_printed("550 psi").value();
  const Expected expected{"result", printed, printed.half_unit};
  EXPECT_TRUE(expected.agrees_with_si(to_si(550.4 * psi)));
  EXPECT_FALSE(expected.agrees_with_si(to_si(550.6 * psi)));
  EXPECT_FALSE(unit_in_si("ton"));
}

}  // namespace
}  // namespace ropewalk::test
