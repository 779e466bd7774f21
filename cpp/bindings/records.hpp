/// Tables of cpp/data as plain Python records.
#pragma once

#include "common.hpp"

namespace ropewalk::bindings {

/// Rows of an embedded table as dicts by column name: numbers where the whole column holds numbers,
/// else text; None for an empty cell; a source as its citation in place of its key.
[[nodiscard]] std::vector<py::dict> table_records(std::string_view name);

}  // namespace ropewalk::bindings
