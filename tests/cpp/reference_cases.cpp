#include "reference_cases.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <filesystem>
#include <stdexcept>
#include <utility>

#include <toml++/toml.h>

#include "ropewalk/units/customary.hpp"
#include "ropewalk/units/text.hpp"

namespace ropewalk::test {

namespace {

const std::map<std::string_view, double>& unit_table() {
  static const std::map<std::string_view, double> table{
      {"", 1.0},
      {"in", to_si(inch)},
      {"ft", to_si(foot)},
      {"mm", to_si(millimeter)},
      {"m", 1.0},
      {"in^2", to_si(square_inch)},
      {"mm^2", to_si(square_millimeter)},
      {"m^2", 1.0},
      {"m^3", 1.0},
      {"s", 1.0},
      {"kg", 1.0},
      {"N/m", 1.0},
      {"rad/s", 1.0},
      {"m^2*s/rad", 1.0},
      {"lbf", to_si(pound_force)},
      {"lbf/in", to_si(pound_force / inch)},
      {"kN/m", 1000.0},
      {"tonne_force", to_si(tonne_force)},
      {"short_ton_force", to_si(short_ton_force)},
      {"N", 1.0},
      {"kN", to_si(kilonewton)},
      {"psi", to_si(psi)},
      {"ksi", to_si(ksi)},
      {"MPa", to_si(megapascal)},
      {"lb/ft", to_si(pound_per_foot)},
      {"lbf/ft", to_si(pound_force_per_foot)},
      {"N/m", 1.0},
      {"kN/m", 1000.0},
      {"N*s/m", 1.0},
      {"lbf*s/ft", to_si(pound_force_per_foot)},
      {"s", 1.0},
      {"m/s", 1.0},
      {"lb", to_si(pound)},
      {"lb/gal", to_si(pound_per_gallon)},
      {"lb/ft^3", to_si(pound) / to_si(foot * foot * foot)},
      {"ton_mile", to_si(ton_mile)},
      {"kg/m", 1.0},
      {"kg/m^3", 1.0},
      {"kg/(100 m)", 0.01},
      {"ft/s", to_si(foot / second)},
      {"ft/min", to_si(foot_per_minute)},
      {"ft/s^2", to_si(foot / (second * second))},
      {"m/s", 1.0},
      {"m/s^2", 1.0},
      {"s", 1.0},
      {"Hz", 1.0},
      {"degree", to_si(degree)},
      {"ft*lbf", to_si(foot_pound_force)},
      {"lbf*in", to_si(foot_pound_torque) / 12.0},
      {"kN*m", 1e3},
      {"mile/hour", to_si(mile) / to_si(hour)},
      {"m/s**2", 1.0},
      {"tonne", to_si(tonne)},
      {"MJ", to_si(megajoule)},
      {"MW", 1e6},
      {"MN/m", 1e6},
      {"lbf/in", to_si(pound_force) / to_si(inch)},
      {"K", 1.0},
      {"delta_degF", 5.0 / 9.0},
      {"liter/s", 1e-3},
      {"kg/m**3", 1.0},
      {"W/m**2", 1.0},
      {"MW/m**2", 1e6},
      {"W/m/K", 1.0},
      {"J/kg/K", 1.0},
      {"ft*lbf/lb/delta_degF", to_si(foot_pound_force) / to_si(pound) / (5.0 / 9.0)},
      {"m/s", 1.0},
      {"m/min", 1.0 / 60.0},
      {"m/s^2", 1.0},
      {"s", 1.0},
      {"hp", to_si(horsepower)},
      {"kW", to_si(kilowatt)},
      {"rpm", to_si(rpm)},
      {"kg", 1.0},
      {"kg*m^2", 1.0},
      {"N*m", 1.0},
  };
  return table;
}

[[noreturn]] void refuse(std::string_view where, std::string_view what) {
  throw std::runtime_error(std::string(where) + ": " + std::string(what));
}

Input read_input(const toml::node& node) {
  if (const auto number = node.value_exact<double>()) return {number_text(*number), *number};
  if (const auto whole = node.value_exact<std::int64_t>()) {
    return {std::to_string(*whole), static_cast<double>(*whole)};
  }
  if (const auto flag = node.value_exact<bool>()) return {*flag ? "true" : "false"};
  if (!node.is_string()) return {.text = "", .number = {}, .composite = true};
  const std::string text = node.value<std::string>().value();
  const auto printed = parse_printed(text);
  if (!printed || printed->unit.empty()) return {text};
  const auto unit = unit_in_si(printed->unit);
  return {text, unit ? std::optional(printed->value * *unit) : std::nullopt};
}

Inputs read_inputs(const toml::table* table) {
  Inputs inputs;
  if (table != nullptr) {
    for (const auto& [key, node] : *table) inputs.emplace(key.str(), read_input(node));
  }
  return inputs;
}

Expected read_expected(std::string_view where, std::string attribute, const toml::node& node,
                       const std::optional<std::string>& tolerance) {
  const auto printed = parse_printed(node.value<std::string>().value_or(""));
  if (!printed) refuse(where, "expected values are texts that begin with a number");
  if (!unit_in_si(printed->unit)) refuse(where, "no such unit: " + printed->unit);
  return {std::move(attribute), *printed, tolerance_of(*printed, tolerance)};
}

/// One case per row of a table.
void read_rows(const toml::table& table, const ReferenceCase& common,
               const std::optional<std::string>& tolerance, std::vector<ReferenceCase>& cases) {
  const toml::array& given = *table["given"].as_array();
  const toml::array& printed = *table["printed"].as_array();
  for (const toml::node& node : *table["rows"].as_array()) {
    const toml::array& row = *node.as_array();
    if (row.size() != given.size() + printed.size())
      refuse(common.id, "a row is too short or long");
    ReferenceCase one = common;
    std::string label;
    for (std::size_t i = 0; i < given.size(); ++i) {
      const Input input = read_input(row[i]);
      label += (label.empty() ? "" : ", ") + input.text;
      const auto name = given[i].value<std::string>().value();
      if (!name.starts_with('$')) one.inputs[name] = input;
    }
    one.id += "[" + label + "]";
    for (std::size_t i = 0; i < printed.size(); ++i) {
      one.expected.push_back(read_expected(one.id, printed[i].value<std::string>().value(),
                                           row[given.size() + i], tolerance));
    }
    cases.push_back(std::move(one));
  }
}

void read_case(const toml::table& entry, const std::string& file, const std::string& source,
               std::vector<ReferenceCase>& cases) {
  ReferenceCase one;
  one.id = file + "/" + entry["id"].value<std::string>().value();
  one.source = entry["source"].value<std::string>().value_or(source);
  one.function = entry["function"].value<std::string>().value();
  one.construct = read_inputs(entry["construct"].as_table());
  one.inputs = read_inputs(entry["inputs"].as_table());
  one.multiply_by = entry["multiply_by"].value<double>().value_or(1.0);
  const auto tolerance = entry["tolerance"].value<std::string>();
  if (const toml::table* table = entry["table"].as_table()) {
    read_rows(*table, one, tolerance, cases);
    return;
  }
  for (const auto& [key, node] : *entry["expected"].as_table()) {
    one.expected.push_back(read_expected(one.id, std::string(key.str()), node, tolerance));
  }
  cases.push_back(std::move(one));
}

/// Length of the digits at the head of a text.
std::size_t count_digits(std::string_view text) {
  return std::min(text.find_first_not_of("0123456789"), text.size());
}

}  // namespace

std::optional<PrintedNumber> parse_printed(std::string_view text) {
  const std::string_view number = text.substr(0, text.find(' '));
  std::string_view rest = number;
  if (!rest.empty() && (rest.front() == '+' || rest.front() == '-')) rest.remove_prefix(1);
  const std::size_t whole = count_digits(rest);
  if (whole == 0) return std::nullopt;
  rest.remove_prefix(whole);
  int last_digit = 0;
  if (rest.starts_with('.')) {
    rest.remove_prefix(1);
    const std::size_t decimals = count_digits(rest);
    last_digit = -static_cast<int>(decimals);
    rest.remove_prefix(decimals);
  }
  if (!rest.empty()) {
    if (rest.front() != 'e' && rest.front() != 'E') return std::nullopt;
    rest.remove_prefix(rest.starts_with("e+") || rest.starts_with("E+") ? 2 : 1);
    int exponent = 0;
    const auto [end, error] = std::from_chars(rest.data(), rest.data() + rest.size(), exponent);
    if (error != std::errc{} || end != rest.data() + rest.size()) return std::nullopt;
    last_digit += exponent;
  }
  std::string unit(text.substr(number.size()));
  unit.erase(0, std::min(unit.find_first_not_of(' '), unit.size()));
  return PrintedNumber{std::stod(std::string(number)), 0.5 * std::pow(10.0, last_digit), unit};
}

std::optional<double> unit_in_si(std::string_view unit) {
  const auto found = unit_table().find(unit);
  return found == unit_table().end() ? std::nullopt : std::optional(found->second);
}

double tolerance_of(const PrintedNumber& printed, const std::optional<std::string>& stated) {
  if (!stated) return printed.half_unit;
  const double number = std::stod(*stated);
  return stated->ends_with('%') ? std::abs(printed.value) * number / 100.0 : number;
}

bool Expected::agrees_with_si(double value) const {
  // The limit is widened by the rounding of a binary fraction.
  const double slack = 1e-12 * std::abs(printed.value);
  return std::abs(value / unit_in_si(printed.unit).value() - printed.value) <= tolerance + slack;
}

std::vector<ReferenceCase> read_reference_cases(std::string_view subject) {
  namespace fs = std::filesystem;
  std::vector<fs::path> files;
  for (const auto& entry : fs::directory_iterator(fs::path(ROPEWALK_REFERENCE_CASES) / subject)) {
    if (entry.path().extension() == ".toml") files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  std::vector<ReferenceCase> cases;
  for (const fs::path& path : files) {
    const toml::table document = toml::parse_file(path.string());
    const std::string file = std::string(subject) + "/" + path.stem().string();
    const std::string source = document["source"].value<std::string>().value();
    for (const toml::node& node : *document["case"].as_array()) {
      read_case(*node.as_table(), file, source, cases);
    }
  }
  return cases;
}

}  // namespace ropewalk::test
