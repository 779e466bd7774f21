#include "ropewalk/base/batch.hpp"

namespace ropewalk::detail {

BatchReport run_pieces(std::size_t rows, int threads, const StopAsked& stop,
                       const std::function<BatchReport(std::size_t, std::size_t)>& piece,
                       std::size_t rows_per_piece) {
  const std::size_t pieces = (rows + rows_per_piece - 1) / rows_per_piece;
  const auto workers =
      std::min<std::size_t>(pieces, static_cast<std::size_t>(std::max(threads, 1)));
  std::atomic<std::size_t> next{0};
  std::atomic<bool> stopped{false};

  const auto work = [&](bool may_ask, BatchReport& report) {
    for (;;) {
      if (stopped.load(std::memory_order_relaxed)) return;
      if (may_ask && stop && stop()) {
        stopped.store(true, std::memory_order_relaxed);
        return;
      }
      const std::size_t k = next.fetch_add(1, std::memory_order_relaxed);
      if (k >= pieces) return;
      report.merge(piece(k * rows_per_piece, std::min(rows, (k + 1) * rows_per_piece)));
    }
  };

  std::vector<BatchReport> reports(std::max<std::size_t>(workers, 1));
  {
    std::vector<std::jthread> helpers;
    for (std::size_t w = 1; w < workers; ++w) {
      helpers.emplace_back([&, w] { work(false, reports[w]); });
    }
    work(true, reports[0]);
  }
  BatchReport total;
  for (const auto& report : reports) total.merge(report);
  total.stopped = stopped.load();
  return total;
}

}  // namespace ropewalk::detail
