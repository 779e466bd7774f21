/// A campaign run on one line: strokes, slips and cuts in their order.
#pragma once

#include <optional>
#include <vector>

#include "ropewalk/line/line_map.hpp"

namespace ropewalk::line {

/// When the line is slipped and cut. A slip is made at the first row that allows a stop once the
/// interval since the last slip is full; every so many slips are followed by a cut.
struct Program {
  enum class Trigger : std::uint8_t {
    none,    ///< only what the campaign itself plans
    clock,   ///< the clock of the campaign: work, trips or time
    damage,  ///< what the worst place has suffered since the last slip
  };
  Trigger trigger = Trigger::none;
  std::span<const double> clock{};  ///< what every row of the campaign adds to it
  double interval = 0.0;            ///< in units of the clock, or damage
  Length slip = 0.0 * meter;
  int slips_per_cut = 1;
  Length cut = 0.0 * meter;
};

/// Rows that belong together, one after the other, gone through several times.
struct Block {
  std::size_t first = 0;
  std::size_t last = 0;
  std::size_t times = 1;
};

/// A slip or cut that the campaign itself has, after a block.
struct PlannedEvent {
  std::size_t after_block = 0;
  bool cut = false;
  Length length = 0.0 * meter;
};

/// A campaign in columns, one entry a row; the columns live elsewhere.
struct CampaignColumns {
  LoadColumns loads;
  std::span<const double> height_from;
  std::span<const double> height_to;
  std::span<const std::uint8_t> pick_up;
  std::span<const std::uint8_t> may_stop;
  std::vector<Block> blocks;
  std::vector<PlannedEvent> events;  ///< in the order of their blocks
};

/// Throws InadmissibleError naming the row: no rows, columns of unlike length, a height outside the
/// travel of the block, a load or a count that cannot be, a fast line above `breaking_force`; or a
/// block, slip or cut that cannot be.
void check(const CampaignColumns& campaign, const Tackle& tackle, Force breaking_force);

struct LineEvent {
  bool cut = false;
  std::size_t block = 0;
  std::size_t row = 0;  ///< the last one before it
  double work = 0.0;    ///< done until then, J
  double length = 0.0;
  RopePosition after;
  double worst_before = 0.0;   ///< largest damage on the line
  double section_worst = 0.0;  ///< largest and mean damage of the rope cut off
  double section_mean = 0.0;
};

/// The state of the line after a block.
struct LineStep {
  std::size_t block = 0;
  double work = 0.0;
  RopePosition position;
  double worst = 0.0;     ///< largest damage on the line
  double worst_at = 0.0;  ///< its place on the rope, middle of the bin
};

/// Strokes between two moves of the line.
struct Epoch {
  RopePosition position;
  std::vector<RowRange> ranges;
  std::vector<std::size_t> blocks;  ///< the block of every range
};

enum class RunEnd : std::uint8_t {
  campaign_done,
  reel_used_up,   ///< a slip was due and the reel had no more line
  limit_reached,  ///< the worst place reached the damage asked for
};

struct LineHistory {
  std::vector<Epoch> epochs;
  std::vector<LineEvent> events;
  std::vector<LineStep> steps;
  RunEnd end = RunEnd::campaign_done;
  double work = 0.0;  ///< done until the end, J
  RopePosition position;
  double least_wraps_rope = 0.0;  ///< least rope on the drum with the block at its lowest, m
  double worst = 0.0;             ///< largest damage of any place, cut off or not
};

/// A line ready to run: string-up, severities of every row, and where the rope lies when new.
class Line {
 public:
  /// Damage by `model`. Throws as Tackle, Severity and check do.
  Line(Tackle tackle, const fatigue::LifeModel& model, const RopeProperties& rope,
       CampaignColumns campaign);

  // Its strokes refer to its severities.
  Line(const Line&) = delete;
  Line& operator=(const Line&) = delete;
  Line(Line&&) noexcept = default;
  Line& operator=(Line&&) noexcept = default;
  ~Line() = default;

  [[nodiscard]] const Tackle& tackle() const noexcept { return tackle_; }
  [[nodiscard]] const CampaignColumns& campaign() const noexcept { return campaign_; }
  [[nodiscard]] const Severity& damage() const noexcept { return damage_; }
  [[nodiscard]] const CampaignStrokes& strokes() const noexcept { return strokes_; }

  struct Options {
    bool steps = false;                    ///< record the state after every block
    std::size_t repeats = 1;               ///< how often the campaign is run, one after the other
    std::optional<double> damage_limit{};  ///< ends the run
  };
  /// Runs the campaign under a program into `map`: damage, one row, empty at the start.
  /// Throws InadmissibleError if the drum runs out of room or of rope.
  [[nodiscard]] LineHistory run(const Program& program, const Options& options, LineMap& map) const;

 private:
  Tackle tackle_;
  CampaignColumns campaign_;
  Severity damage_;
  std::vector<std::vector<double>> severities_;
  CampaignStrokes strokes_;
};

/// Adds the epochs of a run to another map of the same tackle: by cause, of bending cycles, or with
/// a `mask` only those blocks that it marks. The strokes carry the severities for that map.
void replay(const LineHistory& history, const CampaignStrokes& strokes, LineMap& map,
            std::span<const std::uint8_t> mask = {});

/// Severities of every row of a campaign, one column per group.
[[nodiscard]] std::vector<std::vector<double>> severities_of(const Severity& severity,
                                                             const LoadColumns& loads);

/// The strokes of a campaign with the severities of one rule; refers to both.
[[nodiscard]] CampaignStrokes strokes_of(const CampaignColumns& campaign,
                                         const std::vector<std::vector<double>>& severities);

}  // namespace ropewalk::line
