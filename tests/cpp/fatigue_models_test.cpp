/// The life models: identities and limits, published points, ranges, bad input.
#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

#include "fatigue_examples.hpp"
#include "ropewalk/base/table.hpp"
#include "ropewalk/fatigue/en81_50.hpp"
#include "ropewalk/fatigue/model.hpp"
#include "ropewalk/sheave/pressure.hpp"

namespace ropewalk::fatigue {
namespace {

double life(const LifeModel& model, const BendPoint& at) {
  return cycles(model, at, Policy::ignore).cycles;
}

template <class ErrorType>
std::string message(const LifeModel& model, const BendPoint& at) {
  try {
    (void)cycles(model, at);
  } catch (const ErrorType& error) {
    return error.what();
  }
  return {};
}

// Identities

TEST(BendGroupTest, PressureRatioIsTheBearingPressureOverTheStrength) {
  const BendPoint at = point();
  const Stress pressure =
      sheave::bearing_pressure(at.rope_tension, at.rope_diameter, at.sheave_diameter);
  EXPECT_NEAR(value_of(BendGroup::pressure_ratio, at) * at.wire_strength / pressure, 1.0, 1e-15);
  // 30 000 lbf, 1-1/4 in, 50 in, 240 ksi: p = 960 psi, B = 0.0040.
  const BendPoint trade{.rope_tension = 30.0 * kip,
                        .rope_diameter = 1.25 * inch,
                        .sheave_diameter = 50.0 * inch,
                        .wire_strength = 240.0 * ksi};
  EXPECT_NEAR(value_of(BendGroup::pressure_ratio, trade), 0.0040, 1e-17);
}

TEST(LifeModelTest, FallsWithTensionAtItsOwnSlope) {
  for (const LifeModel& model : all_models()) {
    BendPoint heavier = point();
    heavier.rope_tension = 1.3 * heavier.rope_tension;
    const double slope = std::log(life(model, heavier) / life(model, point())) / std::log(1.3);
    EXPECT_LT(slope, 0.0) << name(model);
    EXPECT_NEAR(slope, tension_exponent(model, point()).value(), 1e-12) << name(model);
  }
}

TEST(LifeModelTest, RisesWithTheSheave) {
  for (const LifeModel& model : all_models()) {
    BendPoint larger = point();
    larger.sheave_diameter = 1.2 * larger.sheave_diameter;
    if (name(model) == "fatigue.En13001") {
      // D/d enters the proof through its factors only, which are the user's.
      EXPECT_EQ(life(model, larger), life(model, point()));
    } else {
      EXPECT_GT(life(model, larger), life(model, point())) << name(model);
    }
  }
}

TEST(LifeModelTest, LifeFactorMultiplies) {
  for (const LifeModel& model : all_models()) {
    BendPoint dry = point();
    dry.life_factor = from_si<Number>(0.2);
    EXPECT_DOUBLE_EQ(life(model, dry), 0.2 * life(model, point())) << name(model);
  }
}

TEST(LifeModelTest, RelativeModelsGiveTheReferenceLifeThere) {
  const BendPoint at{.rope_tension = reference().rope_tension,
                     .rope_diameter = reference().rope_diameter,
                     .sheave_diameter = reference().sheave_diameter};
  EXPECT_NEAR(life(En81(reference()), at), 1e5, 1e-7);
  EXPECT_NEAR(life(HandbookRelativeLife(reference()), at), 1e5, 1e-7);
  EXPECT_NEAR(life(HandbookRelativeLife(reference(), 2.3), at), 1e5, 1e-7);
}

TEST(FeyrerTest, IsItsEquationTermByTerm) {
  const FeyrerConstants b{1.1, 0.4, 6.3, -0.32, -1.7, 1.2};
  const double s = std::log10(100e3 / (28.0 * 28.0));
  const double r = 0.4 * std::log10(1960.0 / 1770.0);
  const double y = std::log10(25.0);
  const double expected = b.b0 + (b.b1 + b.b4 * y) * (s - r) + b.b2 * y + b.b3 * std::log10(28.0) +
                          1.0 / (b.b5 + std::log10(3000.0 / 28.0));
  BendPoint at = point();
  at.wire_strength = 1960.0 * megapascal;
  EXPECT_NEAR(std::log10(life(FeyrerForm(b, Basis::discard), at)), expected, 1e-13);
}

TEST(FeyrerTest, SecondEditionIsItsEquationTermByTerm) {
  const FeyrerSecondConstants b{1.1, 0.4, 6.3, -1.7};
  const double s = std::log10(100e3 / (28.0 * 28.0));
  const double y = std::log10(25.0);
  const double expected =
      b.b0 + (b.b1 + b.b3 * y) * s + b.b2 * y + std::log10(to_si(size_factor(28.0 * millimeter))) +
      std::log10(to_si(length_factor(from_si<Number>(3000.0 / 28.0)))) + std::log10(0.81);
  EXPECT_NEAR(std::log10(life(FeyrerSecondEdition(b, 0.81, Basis::discard), point())), expected,
              1e-13);
}

TEST(FeyrerTest, EditionsAgreeWhereSizeAndLengthCostNothing) {
  // At d = 16 mm and l/d = 60 both factors are 1; the first edition's terms are set to nothing
  // there. Its b4 is the second edition's b3.
  BendPoint at = point();
  at.rope_diameter = 16.0 * millimeter;
  at.bend_length = 0.96 * meter;
  at.sheave_diameter = 0.4 * meter;
  at.rope_tension = 30.0 * kilonewton;
  const double length_term = 1.0 / (1.2 + std::log10(60.0));
  const FeyrerForm first({1.5 - length_term, 0.4, 6.3, 0.0, -1.7, 1.2}, Basis::discard);
  const FeyrerSecondEdition second({1.5, 0.4, 6.3, -1.7}, 1.0, Basis::discard);
  EXPECT_NEAR(life(first, at) / life(second, at), 1.0, 1e-12);
}

// Published points

TEST(DruckerTachauTest, RunsThroughThePublishedPoints) {
  const Table& points = table("drucker_tachau_points");
  for (std::size_t row = 0; row < points.rows(); ++row) {
    BendPoint at = point();
    at.rope_tension = points.number(row, "pressure_ratio") * at.wire_strength *
                      (at.rope_diameter * at.sheave_diameter) / 2.0;
    const LifeValue value = cycles(DruckerTachau{}, at);
    EXPECT_NEAR(value.cycles, points.number(row, "cycles"), 1e-6 * value.cycles);
    EXPECT_EQ(value.status, RowStatus::ok);
  }
  // Slope of the straight between (2e5, 0.0028) and (1e6, 0.0014): lg 5 / lg 0.5.
  EXPECT_NEAR(tension_exponent(DruckerTachau{}, point()).value(), -std::log2(5.0), 1e-12);
}

TEST(HandbookTest, GivesThePrintedLivesAndTheirQuotient) {
  // The page's own example: D/d 30 against 16 gives 4.8 times the life (printed to one decimal).
  const HandbookRelativeLife model(reference());
  const auto at = [](double bend_ratio) {
    BendPoint p = point();
    p.sheave_diameter = bend_ratio * p.rope_diameter;
    return p;
  };
  EXPECT_NEAR(life(model, at(30.0)) / life(model, at(16.0)), 4.8, 0.05);
  const Table& curve = table("relative_bending_life");
  for (std::size_t row = 0; row < curve.rows(); ++row) {
    const double printed = curve.number(row, "relative_life") / 6.6;
    const double ratio = life(model, at(curve.number(row, "bend_ratio"))) / 1e5;
    EXPECT_NEAR(ratio, printed, 1e-12 * printed);
  }
  // Between points straight on log-log paper.
  const double middle = life(model, at(std::sqrt(25.0 * 30.0))) / 1e5;
  EXPECT_NEAR(middle, std::sqrt(10.0 / 6.6), 1e-12);
}

TEST(HandbookTest, LeastSquaresSlopeOfThePrintedPoints) {
  // 2.460 by a straight fit on log-log paper (derived from the seven printed points).
  const Table& curve = table("relative_bending_life");
  double sx = 0.0, sy = 0.0, sxx = 0.0, sxy = 0.0;
  for (std::size_t row = 0; row < curve.rows(); ++row) {
    const double x = std::log(curve.number(row, "bend_ratio"));
    const double y = std::log(curve.number(row, "relative_life"));
    sx += x, sy += y, sxx += x * x, sxy += x * y;
  }
  const auto n = static_cast<double>(curve.rows());
  EXPECT_NEAR((n * sxy - sx * sy) / (n * sxx - sx * sx), 2.4601, 1e-3);
}

TEST(En81LifeTest, InvertsTheSafetyFactorOfTheStandard) {
  // Two bends at the safety factors that the standard asks for N and M equivalent sheaves have
  // lives in the ratio N to M. The standard knows tension as a share of the breaking force;
  // F_min/d2 = 10^2.6834 N/mm2 stands for it in S/d2.
  const Length d = 10.0 * millimeter;
  const auto tension = [&](double bend_ratio, double sheaves) {
    const double factor = en81_safety_factor(from_si<Number>(bend_ratio), from_si<Number>(sheaves));
    return std::pow(10.0, 2.6834) / factor * megapascal * (d * d);
  };
  const auto at = [&](double bend_ratio, double sheaves) {
    return BendPoint{.rope_tension = tension(bend_ratio, sheaves),
                     .rope_diameter = d,
                     .sheave_diameter = bend_ratio * d};
  };
  const En81 model({1000.0, tension(40.0, 1.0), d, 40.0 * d});
  EXPECT_NEAR(life(model, at(40.0, 5.0)), 5000.0, 2.0);
  EXPECT_NEAR(life(model, at(40.0, 15.1)), 15100.0, 6.0);
  // lg 77.09 and lg 695.85e6 are printed to five digits, which is the difference left.
  EXPECT_NEAR(life(model, at(50.0, 5.0)), 5000.0, 2.0);
}

TEST(En13001LifeTest, IsTheProofAtUtilizationOne) {
  for (const double force : {60.0, 100.0, 200.0}) {
    BendPoint at = point();
    at.rope_tension = force * kilonewton;
    const Number bendings = from_si<Number>(life(En13001(0.9), at));
    const Number used =
        en13001_utilization
            .evaluate(Policy::ignore, at.rope_tension, at.breaking_force, from_si<Number>(0.9),
                      en13001_force_history(from_si<Number>(1.0), bendings))
            .first;
    EXPECT_NEAR(used, 1.0, 1e-14);
  }
}

// Ranges

TEST(LifeModelTest, SaysWhichRangeIsLeftAndWhoSaysSo) {
  const std::string text = message<ValidityError>(DruckerTachau{}, point());
  EXPECT_NE(text.find("fatigue.DruckerTachau(): pressure_ratio = "), std::string::npos) << text;
  EXPECT_NE(text.find("[0.0014, 0.0028]"), std::string::npos) << text;
  EXPECT_NE(text.find("Faires"), std::string::npos) << text;

  const Applicability found = applicability(DruckerTachau{}, point());
  ASSERT_EQ(found.broken.size(), 1U);
  EXPECT_NEAR(found.broken[0].value, 2.0 * 100e3 / (28.0 * 700.0 * 1770.0), 1e-15);
  EXPECT_FALSE(found.holds());
}

TEST(LifeModelTest, HandbookKnowsOneTensionOnly) {
  const HandbookRelativeLife model(reference());
  BendPoint at = point();
  EXPECT_EQ(cycles(model, at).status, RowStatus::ok);
  at.rope_tension = 0.9 * at.rope_tension;
  EXPECT_THROW((void)cycles(model, at), ValidityError);
  EXPECT_FALSE(tension_exponent(model, at).has_value());
  EXPECT_EQ(cycles(HandbookRelativeLife(reference(), 2.3), at).status, RowStatus::ok);
}

TEST(LifeModelTest, ListsWhatIsMissing) {
  const BendPoint bare{.rope_tension = 50.0 * kilonewton};
  const std::vector<LifeModel> models = all_models();
  const std::vector<Applicability> found = models_at(bare, models);
  ASSERT_EQ(found.size(), models.size());
  for (std::size_t i = 0; i < found.size(); ++i) {
    EXPECT_EQ(found[i].model, name(models[i]));
    EXPECT_FALSE(found[i].missing.empty());
    EXPECT_NE(message<InadmissibleError>(models[i], bare).find("is not given"), std::string::npos);
  }
}

TEST(LifeModelTest, NothingIsMissingFromWhatItSaysItNeeds) {
  for (const LifeModel& model : all_models()) {
    for (const BendArgument argument : describe(model).needs) {
      EXPECT_NE(argument, BendArgument::life_factor) << name(model);
    }
    EXPECT_TRUE(applicability(model, point()).missing.empty()) << name(model);
    EXPECT_FALSE(describe(model).source.empty());
    EXPECT_FALSE(describe(model).equation.empty());
    EXPECT_FALSE(describe(model).scatter.has_value());
    EXPECT_EQ(describe(model).scatter_standing, "none published");
  }
  EXPECT_EQ(describe(DruckerTachau(0.2)).scatter, 0.2);
}

TEST(LifeModelTest, RangesAreStatedInTheUnitOfTheirGroup) {
  const Table& ranges = table("fatigue_validity");
  for (std::size_t row = 0; row < ranges.rows(); ++row) {
    const auto found = published_validity(ranges.text(row, "model"));
    ASSERT_FALSE(found.empty());
    for (const ValidityRange& range : found) {
      if (name_of(range.group) == ranges.text(row, "group")) {
        EXPECT_EQ(unit_of(range.group), ranges.text(row, "unit"));
      }
      EXPECT_LT(range.low, range.high);
    }
  }
}

TEST(LifeModelTest, RefusesConstantsThatCannotBe) {
  const double nan = std::nan("");
  EXPECT_THROW(PowerLaw(-1.0, 2.0, Basis::discard), InadmissibleError);
  EXPECT_THROW(PowerLaw(1.0, 0.0, Basis::discard), InadmissibleError);
  EXPECT_THROW(PowerLaw(1.0, 2.0, Basis::discard, {}, PowerLaw::PressureRange{0.002, 0.001}),
               InadmissibleError);
  EXPECT_THROW(FeyrerForm({nan, 0.5, 6.5, -0.3, -1.8, 1.2}, Basis::discard), InadmissibleError);
  EXPECT_THROW(FeyrerSecondEdition({1.0, 0.5, 6.5, -1.8}, 0.0, Basis::discard), InadmissibleError);
  EXPECT_THROW(En13001(0.0), InadmissibleError);
  EXPECT_THROW(DruckerTachau(-0.1), InadmissibleError);
  ReferenceLife wrong = reference();
  wrong.cycles = 0.0;
  EXPECT_THROW(En81{wrong}, InadmissibleError);
  wrong = reference();
  wrong.rope_diameter = -1.0 * meter;
  EXPECT_THROW(HandbookRelativeLife{wrong}, InadmissibleError);
  EXPECT_THROW((void)parse_basis("fatigue.PowerLaw", "wear"), LookupError);
}

}  // namespace
}  // namespace ropewalk::fatigue
