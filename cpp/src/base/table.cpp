#include "ropewalk/base/table.hpp"

#include <charconv>
#include <cmath>
#include <limits>
#include <mutex>
#include <utility>

namespace ropewalk {

namespace {

std::string_view trimmed(std::string_view text) noexcept {
  constexpr std::string_view space = " \t\r";
  const auto first = text.find_first_not_of(space);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(space) - first + 1);
}

std::vector<std::string_view> split(std::string_view line) {
  std::vector<std::string_view> cells;
  for (;;) {
    const auto comma = line.find(',');
    cells.push_back(trimmed(line.substr(0, comma)));
    if (comma == std::string_view::npos) return cells;
    line.remove_prefix(comma + 1);
  }
}

}  // namespace

std::string_view embedded_file(std::string_view name) {
  std::string known;
  for (const auto& file : embedded_files()) {
    if (file.name == name) return file.text;
    known.append(known.empty() ? "" : ", ").append(file.name);
  }
  std::string message = "there is no table ";
  message.append(name).append("; there are: ").append(known);
  throw LookupError("base.table", "name", message);
}

Table::Table(std::string name, std::string_view text) : name_(std::move(name)) {
  std::size_t line = 0;
  while (!text.empty()) {
    ++line;
    const auto end = text.find('\n');
    const auto content = trimmed(text.substr(0, end));
    text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    if (content.empty() || content.front() == '#') continue;
    if (columns_.empty()) {
      read_header(split(content), line);
    } else {
      read_row(split(content), line);
    }
  }
  if (columns_.empty()) refuse(line, "the table has no header row");
}

void Table::read_header(const std::vector<std::string_view>& cells, std::size_t line) {
  for (const auto cell : cells) {
    if (cell.empty()) refuse(line, "a column has no name");
    if (!index_.emplace(cell, columns_.size()).second) {
      refuse(line, std::string("there are two columns ").append(cell));
    }
    columns_.emplace_back(cell);
  }
}

void Table::read_row(const std::vector<std::string_view>& cells, std::size_t line) {
  if (cells.size() != columns_.size()) {
    std::string message = "the row has ";
    message.append(std::to_string(cells.size())).append(" cells, the header has ");
    refuse(line, message.append(std::to_string(columns_.size())));
  }
  cells_.insert(cells_.end(), cells.begin(), cells.end());
  lines_.push_back(line);
}

std::size_t Table::column_index(std::string_view column) const {
  const auto found = index_.find(column);
  if (found != index_.end()) return found->second;
  std::string message = "there is no column ";
  message.append(column).append("; there are:");
  for (const auto& known : columns_) message.append(" '").append(known).append("'");
  refuse(1, message);
}

std::string_view Table::text(std::size_t row, std::string_view column) const {
  const std::size_t index = column_index(column);
  if (row >= rows()) {
    std::string message = "there is no row ";
    message.append(std::to_string(row)).append("; rows: ").append(std::to_string(rows()));
    refuse(1, message);
  }
  return cells_[row * columns_.size() + index];
}

double Table::number(std::size_t row, std::string_view column) const {
  const std::string_view cell = text(row, column);
  if (cell.empty()) return std::numeric_limits<double>::quiet_NaN();
  double value = 0.0;
  const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
  if (error != std::errc{} || end != cell.data() + cell.size() || !std::isfinite(value)) {
    std::string message = "column ";
    message.append(column).append(": '").append(cell).append("' is not a finite number");
    refuse(lines_[row], message);
  }
  return value;
}

std::vector<double> Table::numbers(std::string_view column) const {
  std::vector<double> values;
  values.reserve(rows());
  for (std::size_t row = 0; row < rows(); ++row) values.push_back(number(row, column));
  return values;
}

void Table::refuse(std::size_t line, std::string_view what) const {
  std::string message = name_;
  message.append(".csv:").append(std::to_string(line)).append(": ").append(what);
  throw LookupError("base.table", "name", message);
}

const Table& table(std::string_view name) {
  // Map nodes stay where they are, so a reference outlives later insertions.
  static std::mutex mutex;
  static std::map<std::string, Table, std::less<>> tables;
  const std::scoped_lock lock(mutex);
  const auto known = tables.find(name);
  if (known != tables.end()) return known->second;
  std::string key(name);
  Table read(key, embedded_file(name));
  return tables.emplace(std::move(key), std::move(read)).first->second;
}

}  // namespace ropewalk
