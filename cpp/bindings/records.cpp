#include "records.hpp"

#include <charconv>

#include "ropewalk/base/source.hpp"
#include "ropewalk/base/table.hpp"

namespace ropewalk::bindings {

namespace {

bool is_number(std::string_view cell) {
  double value = 0.0;
  const auto end = std::from_chars(cell.data(), cell.data() + cell.size(), value);
  return end.ec == std::errc{} && end.ptr == cell.data() + cell.size();
}

bool holds_numbers(const Table& printed, std::string_view column) {
  bool any = false;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    const std::string_view cell = printed.text(row, column);
    if (cell.empty()) continue;
    if (!is_number(cell)) return false;
    any = true;
  }
  return any;
}

py::object cell_object(const Table& printed, std::size_t row, std::string_view column,
                       bool numbers) {
  const std::string_view cell = printed.text(row, column);
  if (cell.empty()) return py::none();
  if (numbers) return py::float_(printed.number(row, column));
  if (column == "source" || column.ends_with("_source")) return py::str(citation(cell));
  return py::str(std::string(cell));
}

}  // namespace

std::vector<py::dict> table_records(std::string_view name) {
  const Table& printed = table(name);
  std::vector<bool> numbers;
  for (const auto& column : printed.columns()) numbers.push_back(holds_numbers(printed, column));
  std::vector<py::dict> records;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    py::dict record;
    for (std::size_t c = 0; c < printed.columns().size(); ++c) {
      const std::string& column = printed.columns()[c];
      record[py::str(column)] = cell_object(printed, row, column, numbers[c]);
    }
    records.push_back(std::move(record));
  }
  return records;
}

}  // namespace ropewalk::bindings
