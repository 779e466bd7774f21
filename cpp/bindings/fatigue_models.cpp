#include "fatigue_models.hpp"

#include <limits>
#include <optional>

#include "ropewalk/fatigue/model.hpp"

namespace ropewalk::bindings {

namespace {

using fatigue::BendArgument;
using fatigue::LifeModel;

using Scatter = std::optional<double>;

/// The arguments of a bend as Python hands them over, in the order of BendArgument; None where the
/// caller has none.
using BendValues = std::array<py::object, fatigue::bend_arguments>;

std::string_view name_of(const LifeModel& model) {
  return std::visit([](const auto& m) { return m.name; }, model);
}

fatigue::ReferenceLife reference_of(double life, double tension, double rope_diameter,
                                    double sheave_diameter) {
  return {.cycles = life,
          .rope_tension = from_si<Force>(tension),
          .rope_diameter = from_si<Length>(rope_diameter),
          .sheave_diameter = from_si<Length>(sheave_diameter)};
}

fatigue::BendPoint point_of(const std::array<double, fatigue::bend_arguments>& x) {
  return {from_si<Force>(x[0]), from_si<Length>(x[1]), from_si<Length>(x[2]), from_si<Stress>(x[3]),
          from_si<Force>(x[4]), from_si<Length>(x[5]), from_si<Number>(x[6])};
}

/// The columns that were given, brought to one shape, in their places among all arguments.
class Bends {
 public:
  Bends(std::string_view where, const BendValues& values)
      : given_(places(values)), columns_(where, named(values, given_)) {
    for (std::size_t k = 0; k < given_.size(); ++k) {
      all_[given_[k]] = columns_.columns()[k];
    }
  }

  [[nodiscard]] const Columns& columns() const noexcept { return columns_; }
  [[nodiscard]] const fatigue::BendColumns& all() const noexcept { return all_; }
  [[nodiscard]] fatigue::BendPoint point(std::size_t row) const {
    std::array<double, fatigue::bend_arguments> x{};
    for (std::size_t a = 0; a < x.size(); ++a) {
      const bool factor = a == static_cast<std::size_t>(BendArgument::life_factor);
      const double absent = factor ? 1.0 : std::numeric_limits<double>::quiet_NaN();
      x[a] = all_[a].data == nullptr ? absent : all_[a].at(row);
    }
    return point_of(x);
  }

 private:
  static std::vector<std::size_t> places(const BendValues& values) {
    std::vector<std::size_t> given;
    for (std::size_t a = 0; a < values.size(); ++a) {
      if (!values[a].is_none()) given.push_back(a);
    }
    return given;
  }
  static std::vector<Columns::Named> named(const BendValues& values,
                                           const std::vector<std::size_t>& given) {
    std::vector<Columns::Named> named;
    for (const std::size_t a : given) {
      const fatigue::BendArgumentInfo& about = fatigue::bend_argument_infos[a];
      named.push_back({about.name, about.unit, values[a]});
    }
    return named;
  }

  std::vector<std::size_t> given_;
  Columns columns_;
  fatigue::BendColumns all_{};
};

/// Lives with their status; policy as for row functions.
SiResult cycles(const LifeModel& model, const BendValues& values,
                const std::string& outside_validity, int threads) {
  const std::string_view where = name_of(model);
  const Policy policy = parse_policy(where, outside_validity);
  check_threads(where, threads);
  const Bends bends(where, values);
  const auto one = [&](std::size_t row, Policy row_policy) {
    return fatigue::cycles(model, bends.point(row), row_policy);
  };
  if (bends.columns().scalar()) {
    const fatigue::LifeValue life =
        one(0, policy == Policy::raise ? Policy::raise : Policy::ignore);
    if (life.status != RowStatus::ok && policy == Policy::warn) {
      try {
        (void)one(0, Policy::raise);
      } catch (const Error& error) {
        warn_outside_validity(error.what());
      }
    }
    return {py::make_tuple(life.cycles, static_cast<int>(life.status))};
  }
  py::array_t<double> lives = bends.columns().make_values();
  py::array_t<std::uint8_t> status = bends.columns().make_status();
  double* out = lives.mutable_data();
  auto* status_out = reinterpret_cast<RowStatus*>(status.mutable_data());
  BatchReport report;
  {
    // Every argument has been checked and is held by `bends`; the loop touches raw memory only.
    const py::gil_scoped_release unlocked;
    report = fatigue::cycles(model, bends.all(), bends.columns().rows(), out, status_out, threads,
                             interrupt_asked);
  }
  return finish_batch(where, report, std::move(lives), std::move(status), policy, true,
                      [&](std::size_t row, Policy row_policy) { (void)one(row, row_policy); });
}

py::dict range_record(const fatigue::ValidityRange& range) {
  py::dict record;
  record["quantity"] = std::string(fatigue::name_of(range.group));
  record["unit"] = std::string(fatigue::unit_of(range.group));
  record["low"] = range.low;
  record["high"] = range.high;
  record["source"] = range.source;
  record["standing"] = range.standing;
  return record;
}

py::list names_of(const std::vector<BendArgument>& arguments) {
  py::list names;
  for (const BendArgument argument : arguments) {
    names.append(std::string(fatigue::info(argument).name));
  }
  return names;
}

py::dict description(const LifeModel& model) {
  const fatigue::ModelDescription about = fatigue::describe(model);
  py::dict record;
  record["name"] = about.name;
  record["title"] = about.title;
  record["equation"] = about.equation;
  record["scale"] = about.scale;
  record["source"] = about.source;
  record["standing"] = about.standing;
  record["basis"] = std::string(fatigue::basis_text(about.basis));
  record["scatter"] = about.scatter;
  record["scatter_standing"] = about.scatter_standing;
  record["needs"] = names_of(about.needs);
  py::list validity;
  for (const auto& range : about.validity) validity.append(range_record(range));
  record["validity"] = validity;
  return record;
}

py::dict applicability(const LifeModel& model, const BendValues& values) {
  const Bends bends(name_of(model), values);
  if (!bends.columns().scalar()) {
    throw InadmissibleError(name_of(model), "", "whether a model holds is asked for one point");
  }
  const fatigue::Applicability found = fatigue::applicability(model, bends.point(0));
  py::list broken;
  for (const auto& one : found.broken) {
    py::dict record = range_record(one.range);
    record["value"] = one.value;
    broken.append(record);
  }
  py::dict record;
  record["missing"] = names_of(found.missing);
  record["broken"] = broken;
  return record;
}

void bind_constructors(py::class_<BoundModel>& cls) {
  cls.def_static(
      "drucker_tachau", [](Scatter scatter) { return BoundModel{fatigue::DruckerTachau(scatter)}; },
      py::arg("scatter") = py::none());
  cls.def_static(
      "feyrer_form",
      [](double b0, double b1, double b2, double b3, double b4, double b5, const std::string& basis,
         Scatter scatter) {
        return BoundModel{
            fatigue::FeyrerForm({b0, b1, b2, b3, b4, b5},
                                fatigue::parse_basis(fatigue::FeyrerForm::name, basis), scatter)};
      },
      py::arg("b0"), py::arg("b1"), py::arg("b2"), py::arg("b3"), py::arg("b4"), py::arg("b5"),
      py::arg("basis"), py::arg("scatter") = py::none());
  cls.def_static(
      "feyrer_second_edition",
      [](double b0, double b1, double b2, double b3, double core_factor, const std::string& basis,
         Scatter scatter) {
        return BoundModel{fatigue::FeyrerSecondEdition(
            {b0, b1, b2, b3}, core_factor,
            fatigue::parse_basis(fatigue::FeyrerSecondEdition::name, basis), scatter)};
      },
      py::arg("b0"), py::arg("b1"), py::arg("b2"), py::arg("b3"), py::arg("core_factor"),
      py::arg("basis"), py::arg("scatter") = py::none());
  cls.def_static(
      "en81",
      [](double life, double tension, double rope, double sheave, Scatter scatter) {
        return BoundModel{fatigue::En81(reference_of(life, tension, rope, sheave), scatter)};
      },
      py::arg("reference_life"), py::arg("reference_tension"), py::arg("reference_rope_diameter"),
      py::arg("reference_sheave_diameter"), py::arg("scatter") = py::none());
  cls.def_static(
      "handbook_relative_life",
      [](double life, double tension, double rope, double sheave,
         std::optional<double> tension_exponent, Scatter scatter) {
        return BoundModel{fatigue::HandbookRelativeLife(reference_of(life, tension, rope, sheave),
                                                        tension_exponent, scatter)};
      },
      py::arg("reference_life"), py::arg("reference_tension"), py::arg("reference_rope_diameter"),
      py::arg("reference_sheave_diameter"), py::arg("tension_exponent") = py::none(),
      py::arg("scatter") = py::none());
  cls.def_static(
      "power_law",
      [](double scale, double exponent, const std::string& basis, Scatter scatter,
         std::optional<std::array<double, 2>> fitted_over) {
        std::optional<fatigue::PowerLaw::PressureRange> range;
        if (fitted_over) range = {(*fitted_over)[0], (*fitted_over)[1]};
        return BoundModel{fatigue::PowerLaw(
            scale, exponent, fatigue::parse_basis(fatigue::PowerLaw::name, basis), scatter, range)};
      },
      py::arg("scale"), py::arg("exponent"), py::arg("basis"), py::arg("scatter") = py::none(),
      py::arg("fitted_over") = py::none());
  cls.def_static(
      "en13001",
      [](double further_influences) { return BoundModel{fatigue::En13001(further_influences)}; },
      py::arg("further_influences"));
}

}  // namespace

void bind_life_models(py::module_& m) {
  py::class_<BoundModel> cls(m, "LifeModel",
                             "One model of bending-over-sheave life, on plain SI numbers.");
  bind_constructors(cls);
  cls.def(
      "cycles",
      [](const BoundModel& bound, const SiArgument& rope_tension,
         const OptionalSiArgument& rope_diameter, const OptionalSiArgument& sheave_diameter,
         const OptionalSiArgument& wire_strength, const OptionalSiArgument& breaking_force,
         const OptionalSiArgument& bend_length, const OptionalSiArgument& life_factor,
         const std::string& outside_validity, int threads) {
        return cycles(
            bound.model,
            {rope_tension.value, rope_diameter.value, sheave_diameter.value, wire_strength.value,
             breaking_force.value, bend_length.value, life_factor.value},
            outside_validity, threads);
      },
      py::arg("rope_tension"), py::arg("rope_diameter") = py::none(),
      py::arg("sheave_diameter") = py::none(), py::arg("wire_strength") = py::none(),
      py::arg("breaking_force") = py::none(), py::arg("bend_length") = py::none(),
      py::arg("life_factor") = py::none(), py::kw_only(), py::arg("outside_validity") = "raise",
      py::arg("threads") = 1,
      "Bending cycles and status; arguments in N, m, m, Pa, N, m and plain.");
  cls.def(
      "applicability",
      [](const BoundModel& bound, const OptionalSiArgument& rope_tension,
         const OptionalSiArgument& rope_diameter, const OptionalSiArgument& sheave_diameter,
         const OptionalSiArgument& wire_strength, const OptionalSiArgument& breaking_force,
         const OptionalSiArgument& bend_length, const OptionalSiArgument& life_factor) {
        return applicability(
            bound.model,
            {rope_tension.value, rope_diameter.value, sheave_diameter.value, wire_strength.value,
             breaking_force.value, bend_length.value, life_factor.value});
      },
      py::arg("rope_tension") = py::none(), py::arg("rope_diameter") = py::none(),
      py::arg("sheave_diameter") = py::none(), py::arg("wire_strength") = py::none(),
      py::arg("breaking_force") = py::none(), py::arg("bend_length") = py::none(),
      py::arg("life_factor") = py::none(), "Arguments missing at a point, and ranges it leaves.");
  cls.def(
      "tension_exponent",
      [](const BoundModel& bound, double bend_ratio) {
        const fatigue::BendPoint point{.rope_diameter = 1.0 * meter,
                                       .sheave_diameter = bend_ratio * meter};
        return fatigue::tension_exponent(bound.model, point);
      },
      py::arg("bend_ratio"), "Slope d lg N / d lg S at D/d; None if the model has none.");
  cls.def(
      "describe", [](const BoundModel& bound) { return description(bound.model); },
      "The model in words and numbers.");
  cls.def_property_readonly("name", [](const BoundModel& bound) { return name_of(bound.model); });
}

}  // namespace ropewalk::bindings
