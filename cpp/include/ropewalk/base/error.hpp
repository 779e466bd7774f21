/// Errors and row statuses: what went wrong, where, with which value, and who says so.
#pragma once

#include <cstdint>
#include <stdexcept>
#include <string>
#include <string_view>

namespace ropewalk {

/// What is known of one row of a batch. Bits, so that a row can carry more than one.
enum class RowStatus : std::uint8_t {
  ok = 0,
  inadmissible = 1,  ///< an argument no formula can take (NaN, negative diameter …); value is NaN
  outside_validity = 2,  ///< computed, but outside the range its source gives
  not_finite = 4,        ///< the formula overflowed; value is NaN
};

[[nodiscard]] constexpr RowStatus operator|(RowStatus a, RowStatus b) noexcept {
  return static_cast<RowStatus>(static_cast<std::uint8_t>(a) | static_cast<std::uint8_t>(b));
}
constexpr RowStatus& operator|=(RowStatus& a, RowStatus b) noexcept { return a = a | b; }
[[nodiscard]] constexpr bool has(RowStatus status, RowStatus bit) noexcept {
  return (static_cast<std::uint8_t>(status) & static_cast<std::uint8_t>(bit)) != 0;
}

/// What a caller wants done when a model is asked outside its published range.
enum class Policy : std::uint8_t { raise, warn, ignore };

/// Base of every error the core throws. `where` names the function, `field` the argument.
class Error : public std::runtime_error {
 public:
  Error(std::string_view where, std::string_view field, std::string_view detail)
      : std::runtime_error(std::string(where) + "(): " + std::string(detail)),
        where_(where),
        field_(field),
        detail_(detail) {}

  [[nodiscard]] const std::string& where() const noexcept { return where_; }
  [[nodiscard]] const std::string& field() const noexcept { return field_; }
  /// The message without the name of the function.
  [[nodiscard]] const std::string& detail() const noexcept { return detail_; }

 private:
  std::string where_;
  std::string field_;
  std::string detail_;
};

/// An argument that cannot be: NaN, infinite, of the wrong sign, not whole, beyond any real hoist.
class InadmissibleError : public Error {
 public:
  using Error::Error;
};

/// An admissible argument outside the range for which the model is published.
class ValidityError : public Error {
 public:
  using Error::Error;
};

/// A table has no such row; the message offers what it has.
class LookupError : public Error {
 public:
  using Error::Error;
};

}  // namespace ropewalk
