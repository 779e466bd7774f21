#include "common.hpp"

namespace ropewalk::bindings {

namespace {

/// Written while the module is set up, read-only afterwards; holds no Python objects.
std::vector<const RowFunction*>& recorded() {
  static std::vector<const RowFunction*> functions;
  return functions;
}

py::tuple dimensions_tuple(const Dimensions& d) {
  return py::make_tuple(d[0], d[1], d[2], d[3], d[4]);
}

constexpr RowStatus no_value = RowStatus::inadmissible | RowStatus::not_finite;

std::size_t first_with(const std::uint8_t* status, std::size_t rows, RowStatus bits) {
  std::size_t i = 0;
  while (i < rows && !has(static_cast<RowStatus>(status[i]), bits)) ++i;
  return i;
}

/// Evaluates the row again and passes its message on, with the number of the row before it.
[[noreturn]] void rethrow_row(std::string_view where, std::size_t row, std::size_t rows,
                              Policy policy,
                              const std::function<void(std::size_t, Policy)>& explain) {
  const std::string prefix = "row " + std::to_string(row) + " of " + std::to_string(rows) + ": ";
  try {
    explain(row, policy);
  } catch (const ValidityError& error) {
    throw ValidityError(where, error.field(), prefix + error.detail());
  } catch (const Error& error) {
    throw InadmissibleError(where, error.field(), prefix + error.detail());
  }
  throw InadmissibleError(where, "", prefix + "has no value");
}

}  // namespace

Policy parse_policy(std::string_view where, std::string_view text) {
  if (text == "raise") return Policy::raise;
  if (text == "warn") return Policy::warn;
  if (text == "ignore") return Policy::ignore;
  throw InadmissibleError(
      where, "outside_validity",
      "outside_validity must be 'raise', 'warn' or 'ignore', got '" + std::string(text) + "'");
}

void check_threads(std::string_view where, int threads) {
  if (threads < 1 || threads > 1024) {
    throw InadmissibleError(where, "threads",
                            "threads must be from 1 to 1024, got " + std::to_string(threads));
  }
}

bool interrupt_asked() {
  const py::gil_scoped_acquire lock;
  return PyErr_CheckSignals() != 0;
}

SiResult finish_batch(std::string_view where, const BatchReport& report, py::array_t<double> values,
                      py::array_t<std::uint8_t> status, Policy policy, bool return_status,
                      const std::function<void(std::size_t, Policy)>& explain) {
  if (report.stopped) throw py::error_already_set();
  const auto rows = static_cast<std::size_t>(status.size());
  if (report.marked_rows != 0) {
    const bool missing = has(report.all, no_value);
    if (missing && (policy == Policy::raise || !return_status)) {
      rethrow_row(where, first_with(status.data(), rows, no_value), rows, Policy::ignore, explain);
    }
    if (has(report.all, RowStatus::outside_validity) && policy != Policy::ignore) {
      const std::size_t row = first_with(status.data(), rows, RowStatus::outside_validity);
      if (policy == Policy::raise) rethrow_row(where, row, rows, Policy::raise, explain);
      try {
        explain(row, Policy::raise);
      } catch (const Error& error) {
        warn_outside_validity(std::string(where) + "(): " + std::to_string(report.marked_rows) +
                              " of " + std::to_string(rows) + " rows marked, the first is row " +
                              std::to_string(row) + ": " + error.detail());
      }
    }
  }
  if (return_status) return {py::make_tuple(std::move(values), std::move(status))};
  return {std::move(values)};
}

SiResult call_row(const RowFunction& function, const std::vector<py::handle>& values,
                  std::string_view outside_validity, bool return_status, int threads) {
  const Policy policy = parse_policy(function.name, outside_validity);
  check_threads(function.name, threads);
  std::vector<Columns::Named> named;
  named.reserve(values.size());
  for (std::size_t a = 0; a < values.size(); ++a) {
    named.push_back({function.arguments[a].name, function.arguments[a].unit, values[a]});
  }
  const Columns columns(function.name, named);

  const auto one = [&](std::size_t row, Policy row_policy, RowStatus& status) {
    return function.scalar(columns.row(row).data(), row_policy, status);
  };

  if (columns.scalar()) {
    RowStatus status = RowStatus::ok;
    const double value = one(0, policy == Policy::raise ? Policy::raise : Policy::ignore, status);
    if (status != RowStatus::ok && policy == Policy::warn) {
      try {
        RowStatus ignored = RowStatus::ok;
        (void)one(0, Policy::raise, ignored);
      } catch (const Error& error) {
        warn_outside_validity(error.what());
      }
    }
    if (return_status) return {py::make_tuple(value, static_cast<int>(status))};
    return {py::float_(value)};
  }

  py::array_t<double> out = columns.make_values();
  py::array_t<std::uint8_t> status = columns.make_status();
  double* out_data = out.mutable_data();
  auto* status_data = reinterpret_cast<RowStatus*>(status.mutable_data());
  BatchReport report;
  {
    // Every argument has been checked and is held by `columns`; the loop touches raw memory only.
    const py::gil_scoped_release unlocked;
    report = function.batch(columns.columns().data(), columns.rows(), out_data, status_data,
                            threads, interrupt_asked);
  }
  return finish_batch(function.name, report, std::move(out), std::move(status), policy,
                      return_status, [&](std::size_t row, Policy row_policy) {
                        RowStatus ignored = RowStatus::ok;
                        (void)one(row, row_policy, ignored);
                      });
}

void record_signature(const RowFunction& function) { recorded().push_back(&function); }

py::dict signatures() {
  py::dict all;
  for (const RowFunction* function : recorded()) {
    py::list parameters;
    for (const auto& argument : function->arguments) {
      parameters.append(
          py::make_tuple(std::string(argument.name), dimensions_tuple(argument.dimensions)));
    }
    py::dict entry;
    entry["parameters"] = parameters;
    entry["result"] = dimensions_tuple(function->result_dimensions);
    all[py::str(std::string(function->name))] = entry;
  }
  return all;
}

py::module_ submodule(py::module_& parent, const char* name, const char* doc) {
  py::module_ m = parent.def_submodule(name, doc);
  py::module_::import("sys").attr("modules")[m.attr("__name__")] = m;
  return m;
}

std::string row_doc(const RowFunction& function, std::string_view doc) {
  std::string text(doc);
  text += "\n\nIn SI: ";
  const auto unit = [](std::string_view symbol) {
    return symbol.empty() ? std::string("1") : std::string(symbol);
  };
  for (std::size_t a = 0; a < function.arguments.size(); ++a) {
    text += (a == 0 ? "" : ", ") + std::string(function.arguments[a].name) + " [" +
            unit(function.arguments[a].unit) + "]";
  }
  return text + "; gives [" + unit(function.result_unit) + "].";
}

}  // namespace ropewalk::bindings
