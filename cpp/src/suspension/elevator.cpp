#include "ropewalk/suspension/elevator.hpp"

#include <string>

#include "ropewalk/base/names.hpp"
#include "ropewalk/base/require.hpp"
#include "ropewalk/base/table.hpp"
#include "ropewalk/suspension/rating.hpp"

namespace ropewalk::suspension {

namespace {

Provenance provenance(const Table& printed, std::size_t row) {
  return {printed.text(row, "source"), printed.text(row, "standing")};
}

/// Adds every name of a cell like "4 EU;4-1/2 IU".
void add_names(std::vector<std::string>& names, std::string_view cell) {
  for (std::size_t end = 0; end != std::string_view::npos;) {
    end = cell.find(';');
    add_name(names, cell.substr(0, end));
    if (end != std::string_view::npos) cell.remove_prefix(end + 1);
  }
}

}  // namespace

std::vector<ElevatorType> elevator_types() {
  const Table& printed = table("elevator_types");
  std::vector<ElevatorType> rows;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    rows.push_back({.kind = printed.text(row, "kind"),
                    .tubular = printed.text(row, "tubular"),
                    .holds_by = printed.text(row, "holds_by"),
                    .carries_string = printed.number(row, "carries_string") != 0.0,
                    .provenance = provenance(printed, row)});
  }
  return rows;
}

std::vector<ElevatorType> elevators_for(std::string_view tubular) {
  std::vector<ElevatorType> found;
  std::vector<std::string> tubulars;
  for (const ElevatorType& one : elevator_types()) {
    if (among_names(tubular, one.tubular)) found.push_back(one);
    add_names(tubulars, one.tubular);
  }
  if (found.empty()) {
    throw LookupError("suspension.elevators_for", "tubular",
                      "there is no elevator for '" + std::string(tubular) +
                          "'; there are those for: " + joined(tubulars));
  }
  return found;
}

std::vector<ElevatorBore> elevator_bores() {
  const Table& printed = table("elevator_bores");
  std::vector<ElevatorBore> rows;
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    rows.push_back({.drill_pipe = printed.text(row, "drill_pipe"),
                    .neck = printed.number(row, "neck_diameter [in]") * inch,
                    .bore = printed.number(row, "bore_diameter [in]") * inch,
                    .provenance = provenance(printed, row)});
  }
  return rows;
}

ElevatorBore elevator_bore(std::string_view drill_pipe) {
  std::vector<std::string> pipes;
  for (const ElevatorBore& one : elevator_bores()) {
    if (among_names(drill_pipe, one.drill_pipe)) return one;
    add_names(pipes, one.drill_pipe);
  }
  throw LookupError("suspension.elevator_bore", "drill_pipe",
                    "there is no bore for drill pipe '" + std::string(drill_pipe) +
                        "'; there are those for: " + joined(pipes));
}

std::string_view rating_class(Force load_rating) {
  constexpr std::string_view where = "suspension.rating_class";
  require(where, argument::load_rating, load_rating);
  const Table& printed = table("rating_classes");
  // A rating converted from kN may miss a round number of tons by rounding.
  const double tons = load_rating / short_ton_force * (1.0 - 1e-9);
  for (std::size_t row = 0; row < printed.rows(); ++row) {
    const bool above = row == 0 ? tons > printed.number(row, "low [short_ton_force]") * (1.0 - 2e-9)
                                : tons > printed.number(row, "low [short_ton_force]");
    if (above && tons <= printed.number(row, "high [short_ton_force]")) {
      return printed.text(row, "class");
    }
  }
  throw LookupError(where, "load_rating",
                    "load_rating = " + quantity_text(load_rating) +
                        " is in no class; they go from 25 to 1000 short tons");
}

}  // namespace ropewalk::suspension
