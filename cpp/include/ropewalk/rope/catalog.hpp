/// Ropes as data: the catalog, ropes from factors, ropes from a certificate.
///
/// A rope is looked up by construction, grade and diameter, and only exactly: the nearest size is
/// offered in the message but never taken. Every property carries its own source, since the tables
/// differ in standing; a property that nothing is published for is missing rather than guessed.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "ropewalk/base/source.hpp"
#include "ropewalk/units/quantities.hpp"

namespace ropewalk::rope {

template <class Q>
using Known = std::optional<Sourced<Q>>;

/// A rope and what is known of it.
struct RopeData {
  std::string construction;     ///< "6x26WS IWRC", or a class, "6x19 IWRC"
  std::string_view rope_class;  ///< "6x19"
  std::string_view core;        ///< "IWRC", "FC", "WSC"
  std::string grade;            ///< "EIPS", "1770 MPa"
  std::string size;             ///< nominal diameter as the table prints it, "1.375 in"
  Length diameter;              ///< nominal
  Known<Force> breaking_force;
  Known<MassPerLength> mass_per_length;
  Known<Area> metallic_area;
  Known<Length> outer_wire_diameter;
  Known<Stress> modulus;           ///< on the metallic area, at 21 % to 65 % of the breaking force
  Known<Stress> modulus_low_load;  ///< the same, up to 20 %
  Known<Stress> wire_strength;
};

/// Weight of a rope per length in air: w = M g with standard gravity.
[[nodiscard]] ForcePerLength weight_per_length(MassPerLength mass_per_length) noexcept;

/// Every rope of the catalog: each construction in every grade and size its class has.
///
/// The plow-steel grades have no wire strength of their own. The one given is worked back from the
/// breaking force with the strength factor of the class, R = F / (K d²), and marked derived. The
/// metric grades are wire strengths.
[[nodiscard]] const std::vector<RopeData>& catalog();

/// What to look for in the catalog; what is left out is not asked for.
struct Wanted {
  std::optional<std::string_view> construction;
  std::optional<std::string_view> grade;
  std::optional<Length> diameter;
};

/// The ropes of the catalog that are wanted, at least one. Names are taken without regard to
/// capitals and spaces, other names the trade has for a construction or grade are known ("6x37
/// IWRC", "EIP"), sizes must be equal to one part in a million. Throws LookupError, as from the
/// function `where`, naming what there is, and the nearest sizes.
[[nodiscard]] std::vector<RopeData> search(std::string_view where, const Wanted& wanted);

/// One rope of the catalog, as search() finds it.
[[nodiscard]] RopeData find(std::string_view construction, std::string_view grade,
                            Length rope_diameter);

/// A rope of EN 12385-4 by class and core ("6x36 IWRC"), wire strength and diameter: breaking
/// force, mass and metallic area from the factors of the class; outer wire and modulus if the
/// constructions table has the class.
[[nodiscard]] RopeData from_factors(std::string_view rope_class, Stress wire_strength,
                                    Length rope_diameter);

/// What a maker's certificate states of a rope; the optional values may be missing.
struct Certificate {
  std::string construction;
  std::string grade;
  Length diameter;
  Force breaking_force;
  MassPerLength mass_per_length;
  std::optional<Area> metallic_area;
  std::optional<Length> outer_wire_diameter;
  std::optional<Stress> modulus;
  std::optional<Stress> wire_strength;
};

/// A rope as its certificate states it. Throws InadmissibleError for a value that cannot be, such
/// as more metal than the circle of the rope holds.
[[nodiscard]] RopeData from_certificate(const Certificate& certificate);

}  // namespace ropewalk::rope
