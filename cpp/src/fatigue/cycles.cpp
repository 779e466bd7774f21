/// The call of a life model: for one point and for many.
#include "ropewalk/fatigue/model.hpp"

#include <memory>

#include "block.hpp"

namespace ropewalk::fatigue {

namespace {

using detail::Block;

[[noreturn]] void throw_not_given(std::string_view model, BendArgument argument) {
  const std::string_view name = info(argument).name;
  throw InadmissibleError(model, name,
                          std::string(name) + " is not given, and this model needs it");
}

/// The least that the vector instructions of every machine take.
constexpr int shortest_block = 2;
constexpr int long_block = static_cast<int>(ropewalk::detail::block_rows);

template <class M>
BatchReport run_model(const M& model, const BendColumns& columns, std::size_t rows, double* out,
                      RowStatus* status, int threads, const StopAsked& stop) {
  for (std::size_t a = 0; a < bend_arguments; ++a) {
    const auto argument = static_cast<BendArgument>(a);
    if (a != detail::factor_place && detail::uses<M>(argument) && columns[a].data == nullptr) {
      throw_not_given(M::name, argument);
    }
  }
  if (rows == 1) return Block<M, shortest_block>(model, columns).run(0, 1, out, status);
  return ropewalk::detail::run_pieces(rows, threads, stop, [&](std::size_t begin, std::size_t end) {
    const auto block = std::make_unique<Block<M, long_block>>(model, columns);
    return block->run(begin, end, out, status);
  });
}

/// Throws with the whole story if the row of one point is marked.
template <class M>
void explain(const M& model, const BendPoint& point, const std::array<double, bend_arguments>& x,
             RowStatus status, Policy policy) {
  if (has(status, RowStatus::inadmissible)) {
    for (std::size_t a = 0; a < bend_arguments; ++a) {
      const auto argument = static_cast<BendArgument>(a);
      const BendArgumentInfo& about = info(argument);
      if (!detail::uses<M>(argument) || about.admissible.contains(x[a])) continue;
      if (x[a] != x[a]) throw_not_given(M::name, argument);
      ropewalk::detail::throw_inadmissible(M::name, about.name, x[a], about.unit, about.admissible);
    }
  }
  if (has(status, RowStatus::not_finite)) ropewalk::detail::throw_not_finite(M::name);
  if (has(status, RowStatus::outside_validity) && policy == Policy::raise) {
    for (const ValidityRange& range : model.validity) {
      const double value = value_of(range.group, point);
      if (range.checked().contains(value)) continue;
      ropewalk::detail::throw_outside_validity(M::name, name_of(range.group), value,
                                               unit_of(range.group), range.printed());
    }
  }
}

}  // namespace

BatchReport cycles(const LifeModel& model, const BendColumns& columns, std::size_t rows,
                   double* out, RowStatus* status, int threads, const StopAsked& stop) {
  return std::visit(
      [&](const auto& m) { return run_model(m, columns, rows, out, status, threads, stop); },
      model);
}

LifeValue cycles(const LifeModel& model, const BendPoint& point, Policy policy) {
  const std::array<double, bend_arguments> x{
      to_si(point.rope_tension),  to_si(point.rope_diameter),  to_si(point.sheave_diameter),
      to_si(point.wire_strength), to_si(point.breaking_force), to_si(point.bend_length),
      to_si(point.life_factor)};
  BendColumns columns;
  for (std::size_t a = 0; a < bend_arguments; ++a) columns[a] = {&x[a], true};
  LifeValue value{};
  (void)cycles(model, columns, 1, &value.cycles, &value.status);
  if (value.status != RowStatus::ok) {
    std::visit([&](const auto& m) { explain(m, point, x, value.status, policy); }, model);
  }
  return value;
}

}  // namespace ropewalk::fatigue
