/// Ratings of load-carrying parts between crown and elevator, as API Spec 8A and 8C have them.
///
/// The formulas are from memory of API Spec 8A, API Spec 8C and ISO 13535, which agree in them, and
/// have not been compared with a printed copy. A part is rated by its maker, on the nameplate;
/// these say what stands behind the number on it.
#pragma once

#include <algorithm>

#include "ropewalk/base/model.hpp"
#include "ropewalk/base/parameters.hpp"

namespace ropewalk::suspension {

namespace argument {
inline constexpr Parameter<Force> load_rating{"load_rating", params::positive_force_range};
inline constexpr Parameter<Stress> yield_strength{"yield_strength", params::stress_range};
inline constexpr Parameter<Number> block_sheaves{"block_sheaves",
                                                 whole_between(1, 64, params::guard)};
inline constexpr Parameter<Force> sheave_bearing_rating{"sheave_bearing_rating",
                                                        params::positive_force_range};
}  // namespace argument

/// Design safety factor on yield by load rating, API Spec 8A and 8C, ISO 13535.
///
///   SF = 3                          R ≤ 150 short tons
///   SF = 3 − 0.75 (R − 150)/350     150 < R ≤ 500
///   SF = 2.25                       R > 500
///
/// R  load_rating  force; 1 short ton = 2000 lbf
///
/// The SI editions put 1334 kN and 4448 kN for the bounds, the same within 0.02 %. The rating is
/// static; what is dynamic lowers the margin left (API Spec 8A, 1.1.3).
struct DesignSafetyFactor {
  static constexpr std::string_view name = "suspension.design_safety_factor";
  static constexpr std::tuple parameters{argument::load_rating};

  static constexpr Number formula(Force load_rating) noexcept {
    const double tons = load_rating / short_ton_force;
    return from_si<Number>(std::clamp(3.0 - 0.75 * (tons - 150.0) / 350.0, 2.25, 3.0));
  }
};
inline constexpr Model<DesignSafetyFactor> design_safety_factor{};

/// Stress in tension that the load rating may cause in a primary-load part.
///
///   σ = σ_y / SF
///
/// σ_y  yield_strength  stress, minimum specified
/// SF   design safety factor for load_rating, see DesignSafetyFactor
struct AllowableStress {
  static constexpr std::string_view name = "suspension.allowable_stress";
  static constexpr std::tuple parameters{argument::yield_strength, argument::load_rating};

  static constexpr Stress formula(Stress yield_strength, Force load_rating) noexcept {
    return yield_strength / DesignSafetyFactor::formula(load_rating);
  }
};
inline constexpr Model<AllowableStress> allowable_stress{};

/// Shear stress that the load rating may cause in a primary-load part.
///
///   τ = 0.58 σ_y / SF
///
/// The yield strength in shear is put at 0.58 of that in tension (von Mises: 1/√3 = 0.577). Symbols
/// as for AllowableStress.
struct AllowableShear {
  static constexpr std::string_view name = "suspension.allowable_shear";
  static constexpr std::tuple parameters{argument::yield_strength, argument::load_rating};

  static constexpr Stress formula(Stress yield_strength, Force load_rating) noexcept {
    return 0.58 * yield_strength / DesignSafetyFactor::formula(load_rating);
  }
};
inline constexpr Model<AllowableShear> allowable_shear{};

/// Load of the test that verifies a design, API Spec 8C.
///
///   F = max(0.8 R SF, 2 R)
///
/// Symbols as for DesignSafetyFactor.
struct VerificationLoad {
  static constexpr std::string_view name = "suspension.verification_load";
  static constexpr std::tuple parameters{argument::load_rating};

  static constexpr Force formula(Force load_rating) noexcept {
    return load_rating * std::max(0.8 * to_si(DesignSafetyFactor::formula(load_rating)), 2.0);
  }
};
inline constexpr Model<VerificationLoad> verification_load{};

/// Load of the proof test of a part that is made, where it is asked for, API Spec 8C: 1.5 R.
struct ProofLoad {
  static constexpr std::string_view name = "suspension.proof_load";
  static constexpr std::tuple parameters{argument::load_rating};

  static constexpr Force formula(Force load_rating) noexcept { return 1.5 * load_rating; }
};
inline constexpr Model<ProofLoad> proof_load{};

/// Bearing rating of a block by the bearings of its sheaves, API Spec 8A and 8C.
///
///   W_b = N_s W_r / 714    W_b in short tons, W_r in lbf;   W_b = N_s W_r / 0.357 in one unit
///
/// N_s  block_sheaves          number of sheaves in the block
/// W_r  sheave_bearing_rating  force, of the bearing of one sheave at 100 rpm for 3000 hours with
///                             90 % of bearings surviving
///
/// It makes ratings comparable and lets bearings live reasonably long; it is no limit of strength.
struct BearingRating {
  static constexpr std::string_view name = "suspension.bearing_rating";
  static constexpr std::tuple parameters{argument::block_sheaves, argument::sheave_bearing_rating};

  static constexpr Force formula(Number block_sheaves, Force sheave_bearing_rating) noexcept {
    return block_sheaves * (sheave_bearing_rating / pound_force) / 714.0 * short_ton_force;
  }
};
inline constexpr Model<BearingRating> bearing_rating{};

}  // namespace ropewalk::suspension
