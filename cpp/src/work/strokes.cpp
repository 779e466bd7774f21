#include "ropewalk/work/strokes.hpp"

#include <algorithm>

#include "ropewalk/work/stands.hpp"

namespace ropewalk::work {

namespace {

constexpr Parameter<Length> bha_length{"bha_length", params::depth_range};
constexpr Length no_length = 0.0 * meter;
constexpr Force no_force = 0.0 * newton;

struct TripArguments {
  static constexpr std::string_view name = "work.trip_strokes";
  static constexpr std::tuple parameters{
      argument::depth_from,        argument::depth_to, params::stand_length, params::pipe_weight,
      argument::bha_excess_weight, bha_length,         params::block_weight};
};

struct CasingArguments {
  static constexpr std::string_view name = "work.casing_strokes";
  static constexpr std::tuple parameters = Casing::parameters;
};

struct KellyArguments {
  static constexpr std::string_view name = "work.kelly_strokes";
  static constexpr Parameter<Force> kelly_weight{"kelly_weight", params::force_range};
  static constexpr Parameter<Force> weight_on_bit{"weight_on_bit", params::force_range};
  static constexpr std::tuple parameters{argument::depth_from,
                                         argument::depth_to,
                                         argument::joint_length,
                                         params::pipe_weight,
                                         argument::bha_excess_weight,
                                         bha_length,
                                         params::block_weight,
                                         kelly_weight,
                                         weight_on_bit};
  static constexpr std::string_view joint_rule = argument::deeper;
  template <class... Rest>
  static constexpr bool joint(Length from, Length to, const Rest&...) noexcept {
    return to >= from;
  }
};

struct TopDriveArguments {
  static constexpr std::string_view name = "work.top_drive_strokes";
  static constexpr std::tuple parameters{
      argument::depth_from,
      argument::depth_to,
      params::stand_length,
      params::pipe_weight,
      argument::bha_excess_weight,
      bha_length,
      params::block_weight,
      KellyArguments::weight_on_bit,
      Parameter<Number>{"reams", whole_between(0, 20, params::guard)}};
  static constexpr std::string_view joint_rule = argument::deeper;
  template <class... Rest>
  static constexpr bool joint(Length from, Length to, const Rest&...) noexcept {
    return to >= from;
  }
};

/// A rope cannot be pushed.
void refuse_slack(std::string_view where, std::string_view field, Force value,
                  const std::vector<Stroke>& strokes) {
  for (const Stroke& stroke : strokes) {
    if (stroke.load_up >= no_force && stroke.load_down >= no_force) continue;
    throw InadmissibleError(where, field,
                            std::string(field) + " = " + quantity_text(value) +
                                " leaves less than nothing on the lines at a depth of " +
                                quantity_text(stroke.depth));
  }
}

std::vector<Stroke> pull_out(std::string_view where, std::string_view field, const Hung& hung,
                             Length deep, Length shallow, Length stand) {
  const Stands stands = cut_into_stands(where, field, deep - shallow, stand);
  std::vector<Stroke> strokes;
  strokes.reserve(stands.whole + 1);
  const auto pull = [&](Length bit, Length travel) {
    strokes.push_back(
        {bit, hung.string_weight(bit) + hung.block_weight, hung.block_weight, travel});
  };
  for (std::size_t k = 0; k < stands.whole; ++k) pull(deep - static_cast<double>(k) * stand, stand);
  if (stands.rest > no_length) pull(shallow + stands.rest, stands.rest);
  return strokes;
}

std::vector<Stroke> run_in(std::string_view where, std::string_view field, const Hung& hung,
                           Length shallow, Length deep, Length stand) {
  std::vector<Stroke> strokes = pull_out(where, field, hung, deep, shallow, stand);
  std::reverse(strokes.begin(), strokes.end());
  for (Stroke& stroke : strokes) std::swap(stroke.load_up, stroke.load_down);
  return strokes;
}

}  // namespace

Energy total_work(std::span<const Stroke> strokes) noexcept {
  Energy sum = 0.0 * joule;
  for (const Stroke& stroke : strokes) sum += stroke.work();
  return sum;
}

Force Hung::string_weight(Length length) const noexcept {
  const bool whole_bha = length >= bha_length;
  const Force excess = whole_bha ? bha_excess_weight : bha_excess_weight * (length / bha_length);
  return pipe_weight * length + excess;
}

std::vector<Stroke> trip_strokes(const Hung& hung, Length depth_from, Length depth_to,
                                 Length stand_length) {
  using Arguments = TripArguments;
  admit<Arguments>(Policy::raise, depth_from, depth_to, stand_length, hung.pipe_weight,
                   hung.bha_excess_weight, hung.bha_length, hung.block_weight);
  const auto run = depth_from > depth_to ? pull_out : run_in;
  auto strokes = run(Arguments::name, "stand_length", hung, depth_from, depth_to, stand_length);
  refuse_slack(Arguments::name, "bha_excess_weight", hung.bha_excess_weight, strokes);
  return strokes;
}

std::vector<Stroke> casing_strokes(Length depth, Length joint_length, ForcePerLength casing_weight,
                                   Force block_weight) {
  using Arguments = CasingArguments;
  admit<Arguments>(Policy::raise, depth, joint_length, casing_weight, block_weight);
  const Hung hung{casing_weight, no_force, no_length, block_weight};
  return run_in(Arguments::name, "joint_length", hung, no_length, depth, joint_length);
}

std::vector<Stroke> kelly_strokes(const Hung& hung, Length depth_from, Length depth_to,
                                  const KellyDrilling& drilling) {
  using Arguments = KellyArguments;
  const Length joint = drilling.joint_length;
  admit<Arguments>(Policy::raise, depth_from, depth_to, joint, hung.pipe_weight,
                   hung.bha_excess_weight, hung.bha_length, hung.block_weight,
                   drilling.kelly_weight, drilling.weight_on_bit);
  const Stands joints =
      cut_into_stands(Arguments::name, "joint_length", depth_to - depth_from, joint);
  const Force block = hung.block_weight;
  const Force block_and_kelly = block + drilling.kelly_weight;
  std::vector<Stroke> strokes;
  strokes.reserve(4 * joints.whole + 2);

  // The kelly stands in for the pipe it drills down: what hangs below it reaches to the bit before.
  const auto drill = [&](Length bit_before, Length travel) {
    const Length bit = bit_before + travel;
    const Force load = hung.string_weight(bit_before) + block_and_kelly;
    strokes.push_back({bit, load, load - drilling.weight_on_bit, travel});
    if (drilling.ream) strokes.push_back({bit, load, load, travel});
  };
  for (std::size_t k = 0; k < joints.whole; ++k) {
    const Length before = depth_from + static_cast<double>(k) * joint;
    const Length after = before + joint;
    drill(before, joint);
    strokes.push_back({before, block + hung.pipe_weight * joint, block_and_kelly, joint});
    strokes.push_back({after, block_and_kelly, hung.string_weight(after) + block, joint});
  }
  if (joints.rest > no_length) drill(depth_to - joints.rest, joints.rest);

  refuse_slack(Arguments::name, "weight_on_bit", drilling.weight_on_bit, strokes);
  return strokes;
}

std::vector<Stroke> top_drive_strokes(const Hung& hung, Length depth_from, Length depth_to,
                                      const TopDriveDrilling& drilling) {
  using Arguments = TopDriveArguments;
  const Length stand = drilling.stand_length;
  admit<Arguments>(Policy::raise, depth_from, depth_to, stand, hung.pipe_weight,
                   hung.bha_excess_weight, hung.bha_length, hung.block_weight,
                   drilling.weight_on_bit, from_si<Number>(drilling.reams));
  const Stands stands =
      cut_into_stands(Arguments::name, "stand_length", depth_to - depth_from, stand);
  std::vector<Stroke> strokes;
  const auto drill = [&](Length bit, Length travel) {
    const Force load = hung.string_weight(bit) + hung.block_weight;
    strokes.push_back({bit, hung.block_weight, load - drilling.weight_on_bit, travel});
    strokes.insert(strokes.end(), static_cast<std::size_t>(drilling.reams),
                   Stroke{bit, load, load, travel});
  };
  for (std::size_t k = 0; k < stands.whole; ++k) {
    drill(depth_from + static_cast<double>(k + 1) * stand, stand);
  }
  if (stands.rest > no_length) drill(depth_to, stands.rest);

  refuse_slack(Arguments::name, "weight_on_bit", drilling.weight_on_bit, strokes);
  return strokes;
}

}  // namespace ropewalk::work
