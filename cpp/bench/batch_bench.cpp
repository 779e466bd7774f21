/// What checks and row statuses cost: a row formula in the batch against the bare loop over it.
#include <benchmark/benchmark.h>

#include <vector>

#include "ropewalk/base/batch.hpp"
#include "ropewalk/sheave/pressure.hpp"

namespace ropewalk {
namespace {

struct Rows {
  explicit Rows(std::size_t n) : force(n), rope(n, 0.035), sheave(n, 1.5), out(n), status(n) {
    for (std::size_t i = 0; i < n; ++i) force[i] = 1e5 + static_cast<double>(i % 97);
  }
  std::vector<double> force;
  std::vector<double> rope;
  std::vector<double> sheave;
  std::vector<double> out;
  std::vector<RowStatus> status;
};

void count(benchmark::State& state) {
  state.SetItemsProcessed(state.iterations() * state.range(0));
}

void bare_loop(benchmark::State& state) {
  Rows rows(static_cast<std::size_t>(state.range(0)));
  for (auto _ : state) {
    const double* f = rows.force.data();
    const double* d = rows.rope.data();
    const double* wheel = rows.sheave.data();
    double* out = rows.out.data();
    for (std::size_t i = 0; i < rows.out.size(); ++i) out[i] = 2.0 * f[i] / (d[i] * wheel[i]);
    benchmark::DoNotOptimize(out);
    benchmark::ClobberMemory();
  }
  count(state);
}

void checked_batch(benchmark::State& state) {
  Rows rows(static_cast<std::size_t>(state.range(0)));
  const std::array columns{Column{rows.force.data()}, Column{rows.rope.data()},
                           Column{rows.sheave.data()}};
  for (auto _ : state) {
    const auto report =
        batch<sheave::BearingPressure>(columns, rows.out.size(), rows.out.data(),
                                       rows.status.data(), static_cast<int>(state.range(1)));
    benchmark::DoNotOptimize(report.marked_rows);
    benchmark::ClobberMemory();
  }
  count(state);
}

BENCHMARK(bare_loop)->Arg(10'000)->Arg(10'000'000)->Unit(benchmark::kMillisecond);
BENCHMARK(checked_batch)
    ->Args({10'000, 1})
    ->Args({10'000'000, 1})
    ->Args({10'000'000, 2})
    ->UseRealTime()
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace ropewalk
