/// Memory for columns that are written whole before they are read.
#pragma once

#include <cstddef>
#include <memory>
#include <span>

namespace ropewalk {

/// Like a vector, but not filled beforehand, and what it has grown to stays for the next use.
template <class T>
class Buffer {
 public:
  /// Makes room; what was there is lost if there was not enough.
  void reset(std::size_t size) {
    if (size > capacity_) {
      memory_.reset();  // before: never twice the memory
      memory_ = std::make_unique_for_overwrite<T[]>(size);
      capacity_ = size;
    }
    size_ = size;
  }
  void shrink(std::size_t size) noexcept { size_ = size; }

  [[nodiscard]] std::size_t size() const noexcept { return size_; }
  [[nodiscard]] T* data() noexcept { return memory_.get(); }
  [[nodiscard]] const T* data() const noexcept { return memory_.get(); }
  [[nodiscard]] std::span<T> span() noexcept { return {memory_.get(), size_}; }
  [[nodiscard]] std::span<const T> span() const noexcept { return {memory_.get(), size_}; }

 private:
  std::unique_ptr<T[]> memory_;
  std::size_t size_ = 0;
  std::size_t capacity_ = 0;
};

}  // namespace ropewalk
