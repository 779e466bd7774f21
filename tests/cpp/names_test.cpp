#include "ropewalk/base/names.hpp"

#include <gtest/gtest.h>

#include "ropewalk/base/error.hpp"
#include "ropewalk/base/source.hpp"
#include "ropewalk/units/customary.hpp"

namespace ropewalk {
namespace {

TEST(Names, CapitalsSpacesAndTheTimesSignDoNotCount) {
  EXPECT_TRUE(same_name("6x19 IWRC", " 6\u00d719   iwrc "));
  EXPECT_TRUE(same_name("", "  "));
  EXPECT_FALSE(same_name("6x19 IWRC", "6x19IWRC"));
  EXPECT_FALSE(same_name("6x19", "6x19S"));
}

TEST(Names, AnyNameOfACellDoes) {
  EXPECT_TRUE(among_names("xip", "EIP;XIPS;XIP"));
  EXPECT_TRUE(among_names("6x21 filler", "6x21 filler;6x21F"));
  EXPECT_FALSE(among_names("IP", "EIP;XIPS;XIP"));
  EXPECT_FALSE(among_names("", ""));
}

TEST(Names, AreListedOnce) {
  std::vector<std::string> names;
  for (const std::string_view name : {"IPS", "EIPS", "IPS"}) add_name(names, name);
  EXPECT_EQ(joined(names), "IPS, EIPS");
  EXPECT_EQ(joined({}), "");
}

TEST(Sizes, AreEqualToOnePartInAMillion) {
  EXPECT_TRUE(same_size(1.375 * inch, 34.925 * millimeter));
  EXPECT_TRUE(same_size((1.0 + 9e-7) * inch, inch));
  EXPECT_FALSE(same_size((1.0 + 2e-6) * inch, inch));
  EXPECT_FALSE(same_size(1.375 * inch, 35.0 * millimeter));
}

TEST(Sizes, TheNearestAreOffered) {
  const std::vector<Length> sizes{1.5 * inch, 1.0 * inch, 1.25 * inch};
  EXPECT_EQ(nearest_sizes(1.3 * inch, sizes),
            "nearest sizes 1.25 in (31.75 mm) and 1.5 in (38.1 mm)");
  EXPECT_EQ(nearest_sizes(2.0 * inch, sizes), "largest size 1.5 in (38.1 mm)");
  EXPECT_EQ(nearest_sizes(0.5 * inch, sizes), "smallest size 1 in (25.4 mm)");
  EXPECT_EQ(nearest_sizes(inch, {}), "no sizes");
}

TEST(Sizes, AreWrittenInInchesAndMillimeters) {
  EXPECT_EQ(size_text(1.375 * inch), "1.375 in (34.925 mm)");
  EXPECT_EQ(size_text(24.0 * millimeter), "0.944882 in (24 mm)");
}

TEST(Sources, AreCitedByKey) {
  EXPECT_EQ(
      citation("lyons-4-25"),
      "W. C. Lyons (ed.); Standard Handbook of Petroleum and Natural Gas Engineering; vol. 1, "
      "Gulf Publishing (1996), Table 4-25; p. 578");
  EXPECT_EQ(citation("given"), "given by the caller");
  EXPECT_THROW((void)citation("nobody"), LookupError);
  for (const auto& key : source_keys()) EXPECT_FALSE(citation(key).empty()) << key;
}

}  // namespace
}  // namespace ropewalk
