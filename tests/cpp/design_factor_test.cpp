#include <gtest/gtest.h>

#include "ropewalk/design_factor/design_factor.hpp"
#include "ropewalk/design_factor/minimum.hpp"

namespace ropewalk::design_factor {
namespace {

constexpr Number number(double x) { return from_si<Number>(x); }

TEST(DesignFactorTest, AllowedTensionHasExactlyTheMinimum) {
  for (const double strength : {1.0, 103.4, 192.0, 1e5}) {
    for (const double least : {1.0, 2.0, 2.5, 3.0, 7.0}) {
      const Force tension = allowed_rope_tension(strength * kip, number(least));
      EXPECT_NEAR(design_factor(strength * kip, tension), least, 1e-15 * least);
    }
  }
}

TEST(DesignFactorTest, DeratingIsAWeakerRope) {
  for (const double kept : {0.5, 0.86, 0.96, 1.0}) {
    EXPECT_NEAR(derated(192.0 * kip, number(kept), 50.0 * kip),
                design_factor(kept * 192.0 * kip, 50.0 * kip), 1e-15);
  }
  EXPECT_EQ(derated(192.0 * kip, number(1.0), 50.0 * kip), design_factor(192.0 * kip, 50.0 * kip));
}

TEST(DesignFactorTest, HalvesWhenTheTensionDoubles) {
  const Number once = design_factor(192.0 * kip, 20.0 * kip);
  EXPECT_DOUBLE_EQ(once, 2.0 * design_factor(192.0 * kip, 40.0 * kip));
}

TEST(DesignFactorTest, RefusesASlackRope) {
  EXPECT_THROW((void)design_factor(192.0 * kip, 0.0 * kip), InadmissibleError);
  EXPECT_THROW((void)derated(192.0 * kip, number(1.01), 40.0 * kip), InadmissibleError);
  EXPECT_THROW((void)allowed_rope_tension(192.0 * kip, number(0.9)), InadmissibleError);
}

TEST(MinimumTest, EveryRowIsFoundByItsNamesAndHasASource) {
  const auto rows = minimums();
  EXPECT_FALSE(rows.empty());
  for (const Minimum& row : rows) {
    const Minimum found = minimum(row.operation, row.standard);
    EXPECT_EQ(found.value, row.value);
    EXPECT_EQ(found.edition, row.edition);
    EXPECT_GE(row.value, number(1.0));
    EXPECT_FALSE(row.basis.empty());
    EXPECT_FALSE(citation(row.provenance.source).empty());
    EXPECT_TRUE(row.provenance.standing == "published" || row.provenance.standing == "from memory");
  }
}

TEST(MinimumTest, RareOperationsAreAllowedLess) {
  // Every standard here lets rare, watched operations go down to 2.
  for (const Minimum& row : minimums()) {
    const bool rare = row.operation == "setting casing" || row.operation == "pulling on stuck pipe";
    EXPECT_EQ(row.value == number(2.0), rare) << row.standard << ", " << row.operation;
  }
}

TEST(MinimumTest, OffersWhatThereIs) {
  const auto refusal = [](std::string_view operation, std::string_view standard) {
    try {
      (void)minimum(operation, standard);
    } catch (const LookupError& error) {
      return error.field() + ": " + error.detail();
    }
    return std::string("found");
  };
  EXPECT_EQ(refusal("Setting  Casing", "api rp 9b"), "found");
  EXPECT_EQ(refusal("fishing", "Michigan"),
            "operation: 'Michigan' has no minimum design factor for 'fishing'; it has: rotary "
            "drilling, hoisting other, setting casing, pulling on stuck pipe");
  EXPECT_EQ(refusal("rotary drilling", "Texas"),
            "standard: there are no minimum design factors of the standard 'Texas'; there are "
            "those of: API RP 9B, Wyoming drilling, Wyoming servicing, Michigan");
}

}  // namespace
}  // namespace ropewalk::design_factor
