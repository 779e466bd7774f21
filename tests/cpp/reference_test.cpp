/// The published values of reference-cases, through the scalar C++ interface.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <set>

#include "reference_cases.hpp"
#include "reference_runs.hpp"

namespace ropewalk::test {

void PrintTo(const ReferenceCase& one, std::ostream* out) { *out << one.id; }

namespace {

constexpr std::array subjects{
    "brake",   "compensator", "deadline", "design_factor", "drawworks",  "drillstring",
    "drum",    "dynamics",    "fatigue",  "mast",          "overtravel", "rainflow",
    "reeving", "rope",        "sheave",   "suspension",    "work"};

std::vector<ReferenceCase> cases_to_run() {
  std::vector<ReferenceCase> cases;
  for (const std::string_view subject : subjects) {
    for (ReferenceCase& one : read_reference_cases(subject)) {
      if (can_run(one)) cases.push_back(std::move(one));
    }
  }
  return cases;
}

class ReferenceCases : public ::testing::TestWithParam<ReferenceCase> {};

TEST_P(ReferenceCases, AgreesWithPrint) {
  const ReferenceCase& one = GetParam();
  const Outputs outputs = reference_runs().find(one.function)->second(one);
  for (const Expected& expected : one.expected) {
    const auto found = outputs.find(expected.attribute);
    ASSERT_NE(found, outputs.end()) << one.function << " gives no " << expected.attribute;
    EXPECT_TRUE(expected.agrees_with_si(found->second * one.multiply_by))
        << one.function << " gives " << expected.attribute << " = " << found->second << " SI; "
        << one.source << " has " << expected.printed.value << " " << expected.printed.unit
        << " (tolerance " << expected.tolerance << ")";
  }
}

/// The id with what a test name cannot have replaced; the index keeps it unique.
std::string test_name(const ::testing::TestParamInfo<ReferenceCase>& info) {
  std::string name = info.param.id + "_" + std::to_string(info.index);
  std::replace_if(
      name.begin(), name.end(), [](unsigned char c) { return std::isalnum(c) == 0; }, '_');
  return name;
}

INSTANTIATE_TEST_SUITE_P(Printed, ReferenceCases, ::testing::ValuesIn(cases_to_run()), test_name);

TEST(ReferenceCasesRead, WhatOnlyPythonRuns) {
  std::set<std::string> left_out;
  for (const std::string_view subject : subjects) {
    for (const ReferenceCase& one : read_reference_cases(subject)) {
      if (!can_run(one)) left_out.insert(one.function);
    }
  }
  const std::set<std::string> objects_and_lists{"compensator.heave",
                                                "drawworks.Hoist.motor_torque",
                                                "drawworks.Hoist.speed",
                                                "drillstring.DrillString.bha_excess_weight",
                                                "drillstring.DrillString.hook_load",
                                                "drillstring.DrillString.weight_in_air",
                                                "drillstring.DrillString.weight_in_mud",
                                                "fatigue.equivalent_force_ratio",
                                                "fatigue.fatigue_safety_factor",
                                                "fatigue.force_spectrum_factor",
                                                "fatigue.miner_sum",
                                                "mast.Mast.leg_loads",
                                                "rainflow.count"};
  EXPECT_EQ(left_out, objects_and_lists);
}

}  // namespace
}  // namespace ropewalk::test
