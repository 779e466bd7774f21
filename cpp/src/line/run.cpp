#include "ropewalk/line/run.hpp"

#include <algorithm>
#include <cmath>
#include <sstream>
#include <string>

namespace ropewalk::line {

namespace {

constexpr std::string_view where = "line.Program";
std::string number_text(double value) {
  std::ostringstream text;
  text << value;
  return text.str();
}

double meters(Position position) { return static_cast<double>(position); }

/// An interval is full although the clock, a sum, falls short of it by rounding.
constexpr double almost = 1.0 - 1e-12;

void check(const Program& program, std::size_t rows) {
  if (program.trigger == Program::Trigger::none) return;
  const auto positive = [](std::string_view field, double value, std::string_view unit) {
    const Interval range{.low = 0.0, .low_open = true, .source = params::guard};
    if (!range.contains(value)) {
      ropewalk::detail::throw_inadmissible(where, field, value, unit, range);
    }
  };
  positive("interval", program.interval, "");
  positive("slip", to_si(program.slip), "m");
  positive("cut", to_si(program.cut), "m");
  positive("slips_per_cut", program.slips_per_cut, "");
  if (program.trigger != Program::Trigger::clock) return;
  if (program.clock.size() != rows) {
    throw InadmissibleError(where, "clock",
                            "clock has " + std::to_string(program.clock.size()) +
                                " rows and the campaign " + std::to_string(rows));
  }
  for (std::size_t row = 0; row < rows; ++row) {
    if (program.clock[row] >= 0.0) continue;
    throw InadmissibleError(where, "clock",
                            "row " + std::to_string(row) +
                                ": the clock goes back or stands on "
                                "no number; a program by date needs the dates of the campaign");
  }
}

/// Goes through one campaign once, or several times.
class Runner {
 public:
  Runner(const Line& line, const Program& program, const Line::Options& options, LineMap& map)
      : line_(line), c_(line.campaign()), program_(program), options_(options), map_(map) {
    check(program, c_.loads.hook_load.size());
    position_ = {line.tackle().first_anchor(), 0.0};
    history_.least_wraps_rope = meters(position_.anchor - line.tackle().reach());
    for (const Block& block : c_.blocks) block_clock_.push_back(clock_of(block.first, block.last));
  }

  LineHistory run() {
    for (std::size_t k = 0; k < options_.repeats && !ended_; ++k) {
      std::size_t planned = 0;
      for (std::size_t b = 0; b < c_.blocks.size() && !ended_; ++b) {
        block_ = b;
        for (std::size_t t = 0; t < c_.blocks[b].times && !ended_; ++t) run_block();
        for (; planned < c_.events.size() && c_.events[planned].after_block == b; ++planned) {
          if (!ended_) planned_event(c_.events[planned]);
        }
        if (!ended_ && (options_.steps || options_.damage_limit)) {
          flush();
          if (options_.steps) record_step();
        }
      }
    }
    flush();
    history_.work = work_;
    history_.position = position_;
    history_.worst = std::max(history_.worst, worst_on_line().value);
    return std::move(history_);
  }

 private:
  [[nodiscard]] double clock_of(std::size_t first, std::size_t last) const {
    double sum = 0.0;
    if (!program_.clock.empty()) {
      for (std::size_t row = first; row < last; ++row) sum += program_.clock[row];
    }
    return sum;
  }
  [[nodiscard]] bool may_stop(std::size_t row) const {
    return !c_.may_stop.empty() && c_.may_stop[row] != 0;
  }

  void run_block() {
    const Block& block = c_.blocks[block_];
    switch (program_.trigger) {
      case Program::Trigger::none:
        take(block.first, block.last);
        break;
      case Program::Trigger::clock:
        by_clock(block);
        break;
      case Program::Trigger::damage:
        by_damage(block);
        break;
    }
  }

  /// Rows that have happened since the last flush.
  void take(std::size_t first, std::size_t last) {
    if (first == last) return;
    if (!pending_.empty() && pending_blocks_.back() == block_ && pending_.back().first == first &&
        pending_.back().last == last) {
      pending_.back().times += 1.0;
      return;
    }
    pending_.push_back({first, last, 1.0});
    pending_blocks_.push_back(block_);
  }

  void by_clock(const Block& block) {
    const double full = program_.interval * almost;
    if (clock_ + block_clock_[block_] < full) {
      clock_ += block_clock_[block_];
      take(block.first, block.last);
      return;
    }
    std::size_t start = block.first;
    for (std::size_t row = block.first; row < block.last; ++row) {
      clock_ += program_.clock[row];
      if (clock_ < full || !may_stop(row)) continue;
      take(start, row + 1);
      start = row + 1;
      slip_and_cut();
      if (ended_) return;
    }
    take(start, block.last);
  }

  /// A place cannot get better, so the first stop at which the interval is full is found by
  /// halving.
  void by_damage(const Block& block) {
    std::size_t start = block.first;
    while (start < block.last) {
      if (!full_after(start, block.last)) break;
      std::vector<std::size_t> stops;
      for (std::size_t row = start; row < block.last; ++row) {
        if (may_stop(row)) stops.push_back(row + 1);
      }
      const auto found = std::partition_point(
          stops.begin(), stops.end(), [&](std::size_t end) { return !full_after(start, end); });
      if (found == stops.end()) break;
      take(start, *found);
      start = *found;
      slip_and_cut();
      if (ended_) return;
    }
    take(start, block.last);
  }

  /// Whether the damage since the last slip would be full with rows up to `last`.
  bool full_after(std::size_t first, std::size_t last) {
    if (!scratch_) {
      scratch_.emplace(line_.tackle(), line_.damage(), map_.bin_length() * meter, MapRows::total);
    }
    scratch_->clear();
    std::vector<RowRange> ranges = since_slip_;
    ranges.insert(ranges.end(), pending_.begin(), pending_.end());
    ranges.push_back({first, last, 1.0});
    scratch_->add(line_.strokes(), ranges, position_);
    return scratch_->worst(position_.drum_end, position_.anchor).value >=
           program_.interval * almost;
  }

  /// Puts what is pending on the rope.
  void flush() {
    if (pending_.empty()) return;
    double work = 0.0;
    for (const RowRange& range : pending_) {
      double once = 0.0;
      for (std::size_t row = range.first; row < range.last; ++row) {
        once += c_.loads.count[row] * c_.loads.hook_load[row] *
                std::abs(c_.height_to[row] - c_.height_from[row]);
      }
      work += once * range.times;
    }
    if (options_.damage_limit) {
      const std::span<const double> raw = map_.raw(0);
      before_.assign(raw.begin(), raw.end());
    }
    map_.add(line_.strokes(), pending_, position_);
    history_.epochs.push_back({position_, pending_, pending_blocks_});
    if (program_.trigger == Program::Trigger::damage) {
      since_slip_.insert(since_slip_.end(), pending_.begin(), pending_.end());
    }
    last_row_ = pending_.back().last - 1;
    pending_.clear();
    pending_blocks_.clear();
    const double limit_share = options_.damage_limit ? share_until_limit() : 1.0;
    work_ += work * limit_share;
  }

  /// Share of the work just done at which the first place reached the limit; 1 if none has.
  double share_until_limit() {
    const double limit = *options_.damage_limit;
    double share = 2.0;
    const std::span<const double> after = map_.raw(0);
    for (std::size_t b = 0; b < after.size(); ++b) {
      if (after[b] < limit || before_[b] >= limit) continue;
      share = std::min(share, (limit - before_[b]) / (after[b] - before_[b]));
    }
    if (share > 1.0) return 1.0;
    ended_ = true;
    history_.end = RunEnd::limit_reached;
    return share;
  }

  void slip_and_cut() {
    flush();
    if (ended_) return;
    const bool cut_due = slips_ + 1 >= program_.slips_per_cut;
    slip(to_si(program_.slip));
    if (ended_) return;
    clock_ = 0.0;
    since_slip_.clear();
    ++slips_;
    if (cut_due) {
      cut(to_si(program_.cut));
      slips_ = 0;
    }
  }

  void planned_event(const PlannedEvent& event) {
    flush();
    if (ended_) return;
    event.cut ? cut(to_si(event.length)) : slip(to_si(event.length));
    clock_ = 0.0;
    since_slip_.clear();
  }

  void slip(double length) {
    const double supply = to_si(line_.tackle().string_up().supply);
    const double reel = meters(supply - position_.anchor);
    // A slip that takes the last of the reel is one, although lengths have been rounded.
    if (length > reel + 1e-12 * supply) {
      if (history_.events.empty()) {
        throw InadmissibleError(where, "slip",
                                "slip = " + number_text(length) +
                                    " m is longer than all the line on the reel, " +
                                    number_text(reel) + " m");
      }
      ended_ = true;
      history_.end = RunEnd::reel_used_up;
      return;
    }
    LineEvent event = event_now(false, length);
    position_.anchor += length;
    event.after = position_;
    history_.events.push_back(event);
  }

  void cut(double length) {
    LineEvent event = event_now(true, length);
    const Position end = position_.drum_end + length;
    event.section_worst = map_.worst(position_.drum_end, end).value;
    event.section_mean = mean(position_.drum_end, end);
    history_.worst = std::max(history_.worst, event.section_worst);
    position_.drum_end = end;
    event.after = position_;
    history_.events.push_back(event);
    const double at_lowest = meters(position_.anchor - line_.tackle().reach() - end);
    history_.least_wraps_rope = std::min(history_.least_wraps_rope, at_lowest);
    if (at_lowest < 0.0) {
      throw InadmissibleError(where, "cut",
                              "cutting " + number_text(length) +
                                  " m takes more rope than the slips have brought onto the drum: "
                                  "with the block at its lowest " +
                                  number_text(-at_lowest) + " m would be missing");
    }
  }

  [[nodiscard]] double mean(Position start, Position stop) const {
    const double from = meters(start);
    const double to = meters(stop);
    const double bin = map_.bin_length();
    const std::span<const double> values = map_.raw(0);
    double sum = 0.0;
    for (auto b = static_cast<std::size_t>(from / bin); b < map_.bins(); ++b) {
      const double low = std::max(from, static_cast<double>(b) * bin);
      const double high = std::min(to, static_cast<double>(b + 1) * bin);
      if (low >= to) break;
      // The first bin may end just where the stretch begins.
      if (high <= low) continue;
      sum += values[b] * (high - low);
    }
    return sum / (to - from);
  }

  [[nodiscard]] LineMap::Worst worst_on_line() const {
    return map_.worst(position_.drum_end, position_.anchor);
  }
  [[nodiscard]] LineEvent event_now(bool is_cut, double length) const {
    LineEvent event;
    event.cut = is_cut;
    event.block = block_;
    event.row = last_row_;
    event.work = work_;
    event.length = length;
    event.worst_before = worst_on_line().value;
    return event;
  }
  void record_step() {
    const LineMap::Worst worst = worst_on_line();
    history_.steps.push_back(
        {.block = block_,
         .work = work_,
         .position = position_,
         .worst = worst.value,
         .worst_at = (static_cast<double>(worst.bin) + 0.5) * map_.bin_length()});
  }

  const Line& line_;
  const CampaignColumns& c_;
  const Program& program_;
  const Line::Options& options_;
  LineMap& map_;
  std::optional<LineMap> scratch_;
  std::vector<double> block_clock_;
  RopePosition position_;
  std::size_t block_ = 0;
  std::size_t last_row_ = 0;
  double clock_ = 0.0;  ///< since the last slip
  double work_ = 0.0;
  int slips_ = 0;  ///< since the last cut
  bool ended_ = false;
  std::vector<RowRange> pending_;
  std::vector<std::size_t> pending_blocks_;
  std::vector<RowRange> since_slip_;
  std::vector<double> before_;
  LineHistory history_;
};

}  // namespace

std::vector<std::vector<double>> severities_of(const Severity& severity, const LoadColumns& loads) {
  std::vector<std::vector<double>> columns;
  for (std::size_t g = 0; g < severity.groups(); ++g) columns.push_back(severity.of(g, loads));
  return columns;
}

CampaignStrokes strokes_of(const CampaignColumns& campaign,
                           const std::vector<std::vector<double>>& severities) {
  CampaignStrokes strokes{.columns = {.height_from = campaign.height_from,
                                      .height_to = campaign.height_to,
                                      .severities = {severities.begin(), severities.end()}},
                          .pick_up = campaign.pick_up};
  return strokes;
}

Line::Line(Tackle tackle, const fatigue::LifeModel& model, const RopeProperties& rope,
           CampaignColumns campaign)
    : tackle_(std::move(tackle)), campaign_(std::move(campaign)), damage_(model, rope, tackle_) {
  check(campaign_, tackle_, rope.breaking_force);
  severities_ = severities_of(damage_, campaign_.loads);
  strokes_ = strokes_of(campaign_, severities_);
}

LineHistory Line::run(const Program& program, const Options& options, LineMap& map) const {
  return Runner(*this, program, options, map).run();
}

void replay(const LineHistory& history, const CampaignStrokes& strokes, LineMap& map,
            std::span<const std::uint8_t> mask) {
  for (const Epoch& epoch : history.epochs) {
    std::vector<RowRange> ranges;
    for (std::size_t i = 0; i < epoch.ranges.size(); ++i) {
      if (mask.empty() || mask[epoch.blocks[i]] != 0) ranges.push_back(epoch.ranges[i]);
    }
    map.add(strokes, ranges, epoch.position);
  }
}

}  // namespace ropewalk::line
