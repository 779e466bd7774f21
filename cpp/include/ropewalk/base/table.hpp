/// The tables of cpp/data: published values, each with its unit and its source.
///
/// A table is a plain text file of comma-separated values, embedded in the library at build:
///
///     # Lines that start with a number sign are comments.
///     construction,diameter [in],mass per length [lb/ft],source,standing
///     6x19 IWRC,1.375,3.50,rp9a-2004,published
///
/// No quotes: a cell holds neither a comma nor a line break. Spaces around a cell do not count.
/// Every row has as many cells as the header. The unit stands in brackets in the column name.
#pragma once

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "ropewalk/base/error.hpp"
#include "ropewalk/base/interpolation.hpp"

namespace ropewalk {

/// One file of cpp/data as it was at build: name without ".csv", and text.
struct EmbeddedFile {
  std::string_view name;
  std::string_view text;
};

/// All embedded files, in order of name.
[[nodiscard]] std::span<const EmbeddedFile> embedded_files() noexcept;

/// Text of one embedded file, by its name without ".csv". Throws LookupError if there is none.
[[nodiscard]] std::string_view embedded_file(std::string_view name);

/// A table of text cells, immutable once read.
class Table {
 public:
  /// Reads `text`. Throws LookupError naming file and line for a row that is too short or too
  /// long, a column named twice or not at all, or a text without a header.
  Table(std::string name, std::string_view text);

  [[nodiscard]] const std::string& name() const noexcept { return name_; }
  [[nodiscard]] const std::vector<std::string>& columns() const noexcept { return columns_; }
  [[nodiscard]] std::size_t rows() const noexcept { return lines_.size(); }

  /// One cell. Throws LookupError if the table has no such column or row.
  [[nodiscard]] std::string_view text(std::size_t row, std::string_view column) const;

  /// One cell as a number; NaN if the cell is empty. Throws LookupError naming file, line and
  /// column if the cell holds anything but a finite number.
  [[nodiscard]] double number(std::size_t row, std::string_view column) const;

  /// One whole column as numbers.
  [[nodiscard]] std::vector<double> numbers(std::string_view column) const;

  /// Line of the file on which a row stands, for messages.
  [[nodiscard]] std::size_t line(std::size_t row) const { return lines_.at(row); }

 private:
  [[nodiscard]] std::size_t column_index(std::string_view column) const;
  void read_header(const std::vector<std::string_view>& cells, std::size_t line);
  void read_row(const std::vector<std::string_view>& cells, std::size_t line);
  [[noreturn]] void refuse(std::size_t line, std::string_view what) const;

  std::string name_;
  std::vector<std::string> columns_;
  std::map<std::string, std::size_t, std::less<>> index_;
  std::vector<std::string> cells_;
  std::vector<std::size_t> lines_;
};

/// The embedded table of that name, e.g. "ropes". Read at its first use, by whichever thread comes
/// first, and kept; the reference stays good. Throws LookupError if there is none.
[[nodiscard]] const Table& table(std::string_view name);

}  // namespace ropewalk
