/// How much a stroke takes of the life of the rope, at every place it is bent.
///
/// Damage of half a bending cycle is ½ / N, with N the life at the tension of the tight side there
/// (Palmgren 1924 and Miner 1945: damages add). In every life model of ropewalk N is a power of the
/// tension, whose exponent depends on D/d at most. So one evaluation per stroke serves all places
/// with one exponent, up to a factor each: places fall into groups, a stroke has one *severity* per
/// group.
#pragma once

#include <span>
#include <vector>

#include "ropewalk/fatigue/model.hpp"
#include "ropewalk/line/tackle.hpp"

namespace ropewalk::line {

/// What a life model needs to know of the rope.
struct RopeProperties {
  Length diameter = fatigue::not_given<Length>();
  Stress wire_strength = fatigue::not_given<Stress>();
  Force breaking_force = fatigue::not_given<Force>();
  Length bend_length = fatigue::not_given<Length>();
  Number life_factor = from_si<Number>(1.0);
};

/// Loads of a campaign as columns, SI numbers.
struct LoadColumns {
  std::span<const double> hook_load;
  std::span<const double> count;
};

class Severity {
 public:
  /// Damage of half a cycle at one place, over the severity of its group.
  struct Share {
    std::size_t group = 0;
    double up = 1.0;
    double down = 1.0;
  };

  /// Damage by a life model. Throws as fatigue::cycles does for an argument that is missing.
  Severity(const fatigue::LifeModel& model, const RopeProperties& rope, const Tackle& tackle);
  /// Bending cycles: every half cycle counts ½, whatever the load.
  static Severity bending_cycles(const Tackle& tackle);

  [[nodiscard]] std::size_t groups() const noexcept { return references_.size(); }
  /// One per contact of the tackle, in that order.
  [[nodiscard]] std::span<const Share> contacts() const noexcept { return contacts_; }
  [[nodiscard]] const Share& dead_line_sheave() const noexcept { return dead_line_sheave_; }

  /// Severity of every row in one group, all its strokes together. Throws InadmissibleError for a
  /// load under which the rope has no life.
  [[nodiscard]] std::vector<double> of(std::size_t group, const LoadColumns& loads) const;

 private:
  struct Reference {
    fatigue::BendPoint point;  ///< without tension
    double tension = 0.0;      ///< over hook load
    double exponent = 0.0;
  };

  Severity() = default;
  [[nodiscard]] Share share_of(const Contact& contact);
  [[nodiscard]] fatigue::BendPoint point_of(const Contact& contact) const;
  [[nodiscard]] double life(fatigue::BendPoint point, double tension) const;

  std::optional<fatigue::LifeModel> model_;
  RopeProperties rope_;
  std::vector<Reference> references_;
  std::vector<Share> contacts_;
  Share dead_line_sheave_;
};

/// Share of the damage, summed over the rope, that comes from bends outside the published range of
/// the model: each stroke at each place by its own tension, the drum by its first layer. Throws
/// InadmissibleError for a load under which the rope has no life.
[[nodiscard]] double share_outside_validity(const fatigue::LifeModel& model,
                                            const RopeProperties& rope, const Tackle& tackle,
                                            const LoadColumns& loads,
                                            std::span<const double> height_from,
                                            std::span<const double> height_to);

}  // namespace ropewalk::line
