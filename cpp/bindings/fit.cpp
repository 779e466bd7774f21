#include "common.hpp"

#include <algorithm>

#include "ropewalk/fit/bootstrap.hpp"
#include "ropewalk/fit/regression.hpp"

namespace ropewalk::bindings {

namespace {

using FitArray = py::array_t<double, py::array::c_style | py::array::forcecast>;

/// An array of plain numbers; a unit would be dropped by the cast.
FitArray plain(const py::object& value, const char* field) {
  if (py::hasattr(value, "units") || py::hasattr(value, "unit")) {
    throw BorderError("fit.Table", field,
                      std::string(field) + " must be plain numbers, got an object with a unit");
  }
  return value.cast<FitArray>();
}

std::vector<double> fit_values(const FitArray& numbers) {
  return {numbers.data(), numbers.data() + numbers.size()};
}

std::size_t fit_columns(const FitArray& matrix, const char* field) {
  if (matrix.ndim() != 2) {
    throw InadmissibleError("fit.fit_life", field,
                            std::string(field) + " must be an array of rows and columns");
  }
  return static_cast<std::size_t>(matrix.shape(1));
}

fit::Table make_fit_table(const std::string& distribution, const SiArgument& log_life,
                          const SiArgument& log_life_to, const std::vector<int>& known,
                          const SiArgument& location_columns, const SiArgument& scale_columns) {
  const FitArray location = plain(location_columns.value, "location");
  const FitArray scale = plain(scale_columns.value, "scale");
  fit::Table table{.distribution = fit::distribution_named(distribution),
                   .y = fit_values(plain(log_life.value, "log_life")),
                   .y_to = fit_values(plain(log_life_to.value, "log_life_to")),
                   .known = {},
                   .location = fit_values(location),
                   .location_columns = fit_columns(location, "location"),
                   .scale = fit_values(scale),
                   .scale_columns = fit_columns(scale, "scale")};
  for (const int one : known) {
    if (one < 0 || one > 3) {
      throw InadmissibleError(
          "fit.fit_life", "known",
          "known must be 0 exactly, 1 above, 2 below or 3 between, got " + std::to_string(one));
    }
    table.known.push_back(static_cast<fit::Known>(one));
  }
  fit::check(table);
  return table;
}

py::array_t<double> fit_array(const std::vector<double>& values,
                              const std::vector<std::size_t>& shape) {
  py::array_t<double> array(shape);
  std::copy(values.begin(), values.end(), array.mutable_data());
  return array;
}

py::tuple fit_refits(const fit::Table& table, fit::Refits refits) {
  if (refits.stopped) throw py::error_already_set();
  py::array_t<std::uint8_t> end(static_cast<py::ssize_t>(refits.end.size()));
  std::transform(refits.end.begin(), refits.end.end(), end.mutable_data(),
                 [](fit::End one) { return static_cast<std::uint8_t>(one); });
  return py::make_tuple(fit_array(refits.parameters, {refits.end.size(), table.parameters()}),
                        std::move(end));
}

/// Everything a table holds, to travel to another process.
using FitTableNumbers =
    std::tuple<int, std::vector<double>, std::vector<double>, std::vector<int>, std::vector<double>,
               std::size_t, std::vector<double>, std::size_t>;

FitTableNumbers fit_table_numbers(const fit::Table& table) {
  std::vector<int> known;
  for (const fit::Known one : table.known) known.push_back(static_cast<int>(one));
  return {static_cast<int>(table.distribution),
          table.y,
          table.y_to,
          known,
          table.location,
          table.location_columns,
          table.scale,
          table.scale_columns};
}

fit::Table fit_table_from(const FitTableNumbers& numbers) {
  fit::Table table{.distribution = static_cast<fit::Distribution>(std::get<0>(numbers)),
                   .y = std::get<1>(numbers),
                   .y_to = std::get<2>(numbers),
                   .known = {},
                   .location = std::get<4>(numbers),
                   .location_columns = std::get<5>(numbers),
                   .scale = std::get<6>(numbers),
                   .scale_columns = std::get<7>(numbers)};
  for (const int one : std::get<3>(numbers)) table.known.push_back(static_cast<fit::Known>(one));
  fit::check(table);
  return table;
}

/// Parameters, covariance, log-likelihood, end, iterations.
using FitMaximumNumbers = std::tuple<std::vector<double>, std::vector<double>, double, int, int>;

}  // namespace

void bind_fit(py::module_& core) {
  py::module_ m = submodule(core, "fit", "Regression of log life with censored rows; no units.");
  py::class_<fit::Maximum>(m, "Maximum", "Where the likelihood is largest.")
      .def_property_readonly(
          "parameters",
          [](const fit::Maximum& one) {
            return fit_array(one.parameters, {one.parameters.size()});
          },
          "Those of the location, then those of ln σ.")
      .def_property_readonly(
          "covariance",
          [](const fit::Maximum& one) -> py::object {
            if (one.covariance.empty()) return py::none();
            return fit_array(one.covariance, {one.parameters.size(), one.parameters.size()});
          },
          "Inverse of the observed information; None unless converged.")
      .def_readonly("log_likelihood", &fit::Maximum::log_likelihood, "On the scale of log life.")
      .def_property_readonly(
          "end", [](const fit::Maximum& one) { return static_cast<int>(one.end); },
          "0 converged, 1 most iterations, 2 flat, 3 scale at its bound.")
      .def_readonly("iterations", &fit::Maximum::iterations, "Steps of Newton's method.")
      .def(py::pickle(
          [](const fit::Maximum& one) {
            return FitMaximumNumbers{one.parameters, one.covariance, one.log_likelihood,
                                     static_cast<int>(one.end), one.iterations};
          },
          [](const FitMaximumNumbers& numbers) {
            return fit::Maximum{.parameters = std::get<0>(numbers),
                                .covariance = std::get<1>(numbers),
                                .log_likelihood = std::get<2>(numbers),
                                .end = static_cast<fit::End>(std::get<3>(numbers)),
                                .iterations = std::get<4>(numbers)};
          }));
  py::class_<fit::Table>(m, "Table", "Lives and covariates, all numbers without unit.")
      .def(py::init(&make_fit_table), py::arg("distribution"), py::arg("log_life"),
           py::arg("log_life_to"), py::arg("known"), py::arg("location"), py::arg("scale"))
      .def("maximize", &fit::maximize, py::call_guard<py::gil_scoped_release>(),
           "Maximum likelihood.")
      .def(
          "log_likelihood",
          [](const fit::Table& table, const std::vector<double>& parameters) {
            const fit::Likelihood sum = fit::log_likelihood(table, parameters);
            const std::size_t all = parameters.size();
            return py::make_tuple(sum.value, fit_array(sum.gradient, {all}),
                                  fit_array(sum.hessian, {all, all}));
          },
          py::arg("parameters"), "Log-likelihood, gradient and Hessian.")
      .def(
          "profile_interval",
          [](const fit::Table& table, const fit::Maximum& maximum, std::size_t parameter,
             double confidence) {
            const py::gil_scoped_release unlocked;
            const auto interval = fit::profile_interval(table, maximum, parameter, confidence);
            return std::pair(interval.low, interval.high);
          },
          py::arg("maximum"), py::arg("parameter"), py::arg("confidence"),
          "Likelihood-ratio interval of one parameter.")
      .def(
          "refit_resampled",
          [](const fit::Table& table, const fit::Maximum& maximum, std::size_t refits,
             std::uint64_t seed, int threads) {
            check_threads("fit.bootstrap", threads);
            fit::Refits result;
            {
              const py::gil_scoped_release unlocked;
              result = fit::refit_resampled(table, maximum, refits, seed, threads, interrupt_asked);
            }
            return fit_refits(table, std::move(result));
          },
          py::arg("maximum"), py::arg("refits"), py::arg("seed"), py::arg("threads") = 1,
          "Parameters of refits on rows drawn with return, and how each ended.")
      .def(
          "refit_parametric",
          [](const fit::Table& table, const fit::Maximum& maximum,
             const std::vector<double>& limits, std::size_t refits, std::uint64_t seed,
             int threads) {
            check_threads("fit.bootstrap", threads);
            fit::Refits result;
            {
              const py::gil_scoped_release unlocked;
              result = fit::refit_parametric(table, maximum, limits, refits, seed, threads,
                                             interrupt_asked);
            }
            return fit_refits(table, std::move(result));
          },
          py::arg("maximum"), py::arg("limits"), py::arg("refits"), py::arg("seed"),
          py::arg("threads") = 1,
          "Parameters of refits on lives drawn from the fitted model, and how each ended.")
      .def(py::pickle(&fit_table_numbers, &fit_table_from));
  m.def(
      "log_survival",
      [](const std::string& distribution, double log_life, double mu, double s) {
        return fit::log_survival(fit::distribution_named(distribution), log_life, mu, s);
      },
      py::arg("distribution"), py::arg("log_life"), py::arg("mu"), py::arg("s"),
      "ln of the probability to live longer.");
  m.def(
      "log_quantile",
      [](const std::string& distribution, double probability, double mu, double s) {
        const auto quantile =
            fit::log_quantile(fit::distribution_named(distribution), probability, mu, s);
        return std::pair(quantile.y, quantile.by_s);
      },
      py::arg("distribution"), py::arg("probability"), py::arg("mu"), py::arg("s"),
      "ln of the life by which a share has failed, and its derivative by s.");
}

}  // namespace ropewalk::bindings
