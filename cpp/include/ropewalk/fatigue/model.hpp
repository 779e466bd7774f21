/// Bending-over-sheave life under one face: a closed set of models, one call.
#pragma once

#include <span>
#include <string>
#include <variant>
#include <vector>

#include "ropewalk/fatigue/drucker_tachau.hpp"
#include "ropewalk/fatigue/en13001.hpp"
#include "ropewalk/fatigue/en81_life.hpp"
#include "ropewalk/fatigue/feyrer.hpp"
#include "ropewalk/fatigue/handbook_life.hpp"
#include "ropewalk/fatigue/power_law.hpp"

namespace ropewalk::fatigue {

/// Closed on purpose: which model it is gets asked once per batch, not once per bend.
using LifeModel = std::variant<DruckerTachau, FeyrerForm, FeyrerSecondEdition, En81,
                               HandbookRelativeLife, PowerLaw, En13001>;

struct LifeValue {
  double cycles;
  RowStatus status;
};

/// Bending cycles at one point, times its life_factor. Throws InadmissibleError if an argument the
/// model needs is missing or cannot be; with Policy::raise ValidityError outside a published range.
[[nodiscard]] LifeValue cycles(const LifeModel& model, const BendPoint& point,
                               Policy policy = Policy::raise);

/// Bending cycles over many points, with a status per row; same bits as the call for one point.
/// Throws InadmissibleError if a column the model needs is not given.
[[nodiscard]] BatchReport cycles(const LifeModel& model, const BendColumns& columns,
                                 std::size_t rows, double* out, RowStatus* status, int threads = 1,
                                 const StopAsked& stop = {});

/// Slope d lg N / d lg S of the life against tension at a point; nothing if the model has none.
[[nodiscard]] std::optional<double> tension_exponent(const LifeModel& model,
                                                     const BendPoint& point);

/// A model in words and numbers.
struct ModelDescription {
  std::string name;   ///< "fatigue.DruckerTachau"
  std::string title;  ///< what it is, in a line
  std::string equation;
  std::string scale;     ///< "absolute", or who gives the constants or the reference life
  std::string source;    ///< citation, edition, place
  std::string standing;  ///< "published", "from memory", "derived" or "given"
  Basis basis;
  std::optional<double> scatter;    ///< standard deviation of lg N
  std::string scatter_standing;     ///< "given", or that none is published
  std::vector<BendArgument> needs;  ///< arguments without which it gives no life
  std::vector<ValidityRange> validity;
};
[[nodiscard]] ModelDescription describe(const LifeModel& model);

/// A range that a point leaves.
struct BrokenRange {
  ValidityRange range;
  double value;
};

/// Whether a model holds at a point and, if not, what is missing or which range is left.
struct Applicability {
  std::string model;
  std::vector<BendArgument> missing;  ///< not given, or not a possible number
  std::vector<BrokenRange> broken;

  [[nodiscard]] bool holds() const noexcept { return missing.empty() && broken.empty(); }
};
[[nodiscard]] Applicability applicability(const LifeModel& model, const BendPoint& point);

/// Which of the models hold at a point, in their order.
[[nodiscard]] std::vector<Applicability> models_at(const BendPoint& point,
                                                   std::span<const LifeModel> models);

}  // namespace ropewalk::fatigue
