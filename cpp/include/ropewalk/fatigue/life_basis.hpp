/// What a life counts to, and how far it can be trusted: the part all life models have in common.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "ropewalk/fatigue/bend_group.hpp"

namespace ropewalk::fatigue {

/// The end to which bending cycles are counted.
enum class Basis : std::uint8_t {
  discard,       ///< to the number of visible broken wires at which the rope is taken off
  breakage,      ///< to the break of the rope or of a strand
  design,        ///< to the limit of a proof of competence; no estimate of a mean life
  as_reference,  ///< to the same end as the reference life the user gave
};
[[nodiscard]] std::string_view basis_text(Basis basis) noexcept;
/// "discard", "breakage", "design" or "as reference". Throws LookupError for anything else.
[[nodiscard]] Basis parse_basis(std::string_view where, std::string_view text);

/// The range of one group in which a model is published.
struct ValidityRange {
  BendGroup group{};
  double low = 0.0;
  double high = 0.0;
  std::string source;
  std::string standing;

  /// As printed, for messages. Refers to `source`.
  [[nodiscard]] Interval printed() const noexcept {
    return {.low = low, .high = high, .source = source};
  }
  /// Widened by the rounding of a ratio: a point that lies on the printed limit is inside.
  [[nodiscard]] Interval checked() const noexcept {
    constexpr double slack = 1e-9;
    return {.low = low * (1.0 - slack), .high = high * (1.0 + slack)};
  }
};

/// The ranges that data table "fatigue_validity" gives for a model.
[[nodiscard]] std::vector<ValidityRange> published_validity(std::string_view model);

/// What every life model carries beside its constants.
struct LifeModelFrame {
  Basis basis = Basis::as_reference;
  /// Standard deviation of lg N under equal conditions. None of the models is published with one
  /// that ropewalk could vouch for; whoever has one from tests gives it.
  std::optional<double> scatter;
  std::vector<ValidityRange> validity;
};

/// The point at which a user knows the life, for models that give a ratio of lives only.
struct ReferenceLife {
  double cycles = 0.0;
  Force rope_tension = not_given<Force>();
  Length rope_diameter = not_given<Length>();
  Length sheave_diameter = not_given<Length>();
};

namespace detail {

/// Throws InadmissibleError unless `value` is in `range`; returns it.
double require(std::string_view where, std::string_view field, double value, const Interval& range,
               std::string_view unit = "");
/// The same for a standard deviation of lg N that may be absent.
std::optional<double> require_scatter(std::string_view where, std::optional<double> scatter);
/// Throws InadmissibleError unless every number of the reference is one a rope can have.
ReferenceLife require_reference(std::string_view where, const ReferenceLife& reference);

/// Whatever is finite: fitted constants can have either sign.
inline constexpr Interval fitted_range = any_finite();
inline constexpr double ln10 = 2.302585092994045684017991454684364208;

}  // namespace detail
}  // namespace ropewalk::fatigue
