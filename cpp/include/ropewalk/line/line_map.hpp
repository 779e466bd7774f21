/// The damage map: what every place of the rope has suffered.
///
/// The map belongs to the rope, not to the rig: strokes are added for the position the rope has in
/// the hoist at that time, and slipping or cutting moves only that position.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "ropewalk/line/rope_map.hpp"
#include "ropewalk/line/severity.hpp"

namespace ropewalk::line {

/// Where the rope lies in the hoist: rope positions in m. Every slip and cut adds to them.
struct RopePosition {
  Position anchor = 0.0;    ///< g_a, held by the dead-line anchor
  Position drum_end = 0.0;  ///< g_d, held by the drum
};

/// A campaign with its severities, as a map takes it.
struct CampaignStrokes {
  StrokeColumns columns;
  std::span<const std::uint8_t> pick_up;  ///< rows that take up a load from rest; or none
};

/// What the rows of a map stand for.
enum class MapRows : std::uint8_t {
  total,  ///< one row
  cause,  ///< the contacts, then crossovers, pick-ups, dead-line sheave, anchor
};

class LineMap {
 public:
  /// `bin` is cut to the end of the supply in the last bin, which so stands for less rope.
  LineMap(const Tackle& tackle, const Severity& severity, Length bin, MapRows rows);

  /// Adds the strokes of the ranges, the rope lying at `position`.
  /// Throws InadmissibleError if there is no rope: drum or reel would run out.
  void add(const CampaignStrokes& strokes, std::span<const RowRange> ranges,
           const RopePosition& position);

  [[nodiscard]] std::size_t bins() const noexcept { return bins_; }
  [[nodiscard]] std::size_t rows() const noexcept { return values_.size(); }
  [[nodiscard]] double bin_length() const noexcept { return ruler_.length(); }
  /// Mean over each bin; the last one over what it has of rope.
  [[nodiscard]] std::vector<double> means(std::size_t row) const;
  /// Largest value between two positions in a map of one row, and its bin.
  struct Worst {
    double value = 0.0;
    std::size_t bin = 0;
  };
  [[nodiscard]] Worst worst(Position start, Position stop) const;
  void clear();
  /// Sums over each bin length, one more than there are bins: for what is faster without means.
  [[nodiscard]] std::span<const double> raw(std::size_t row) const { return values_[row]; }

 private:
  void add_contacts(const RopePosition& position);
  void add_crossovers(const RopePosition& position);
  void add_pick_ups(const CampaignStrokes& strokes, std::span<const RowRange> ranges,
                    const RopePosition& position);
  void add_pick_up(double height, std::span<const double> severities, const RopePosition& position);
  void add_fixed(std::span<const double> severities, const RopePosition& position);
  [[nodiscard]] Sweep sweep_of(const Contact& contact, const Severity::Share& share,
                               Position offset, const RopePosition& position) const;
  [[nodiscard]] std::vector<double>& row_of(std::size_t cause);
  void check(const RopePosition& position) const;

  const Tackle& tackle_;
  const Severity& severity_;
  RopeBins ruler_;
  double supply_;
  std::size_t bins_;
  double last_bin_share_;
  MapRows kind_;
  std::vector<std::vector<double>> values_;
  TravelProfile profile_;
};

/// The names of the rows of a map by cause.
[[nodiscard]] std::vector<std::string> cause_names(const Tackle& tackle);

}  // namespace ropewalk::line
