#include "ropewalk/line/dense_profile.hpp"

#include <array>
#include <bit>

namespace ropewalk::line {

namespace {

/// A few ends in a bucket, and edges that still fit in the cache.
constexpr std::size_t most_buckets = std::size_t{1} << 14U;
constexpr std::size_t ends_per_bucket = 4;

/// Adds `step` to a sum kept in two numbers; what the larger loses the smaller takes up.
void add(double& sum, double& rest, double step) noexcept {
  const double total = sum + step;
  const double taken = total - sum;
  rest += (sum - (total - taken)) + (step - taken);
  sum = total;
}

/// Calls act(height, severity, starts, up) for both ends of every stroke.
template <class Act>
void each_end(const StrokeColumns& strokes, std::span<const RowRange> ranges, const Act& act) {
  for (const RowRange& range : ranges) {
    for (std::size_t row = range.first; row < range.last; ++row) {
      const double a = strokes.height_from[row];
      const double b = strokes.height_to[row];
      act(std::min(a, b), row, range.times, a < b);
      act(std::max(a, b), row, -range.times, a < b);
    }
  }
}

}  // namespace

void DenseProfile::build(const StrokeColumns& strokes, std::span<const RowRange> ranges,
                         double lowest, double highest) {
  std::size_t rows = 0;
  for (const RowRange& range : ranges) rows += range.last - range.first;
  const std::size_t buckets = std::min(std::bit_ceil(2 * rows / ends_per_bucket + 1), most_buckets);
  lowest_ = lowest;
  bucket_height_ = (highest - lowest) / static_cast<double>(buckets);
  buckets_per_height_ = static_cast<double>(buckets) / (highest - lowest);
  last_bucket_ = static_cast<double>(buckets - 1);

  first_.assign(buckets + 1, 0);
  std::uint32_t* count = first_.data() + 1;
  each_end(strokes, ranges,
           [&](double height, std::size_t, double, bool) { ++count[bucket_of(height)]; });
  for (std::size_t b = 0; b < buckets; ++b) count[b] += first_[b];
  ends_.resize(strokes.severities.size());
  edges_.resize(strokes.severities.size());
  for (std::size_t g = 0; g < ends_.size(); ++g) {
    ends_[g].resize(2 * rows);
    next_.assign(first_.begin(), first_.end() - 1);
    const std::span<const double> severity = strokes.severities[g];
    End* ends = ends_[g].data();
    each_end(strokes, ranges, [&](double height, std::size_t row, double sign, bool up) {
      const double one = severity[row] * sign;
      ends[next_[bucket_of(height)]++] = {height, up ? one : 0.0, up ? 0.0 : one};
    });
    sum(g, scale_for(severity, ranges));
  }
}

void DenseProfile::sum(std::size_t group, const ExactScale& scale) {
  const std::size_t buckets = first_.size() - 1;
  std::vector<Edge>& edges = edges_[group];
  edges.resize(buckets + 1);
  const End* ends = ends_[group].data();
  ExactSum up;
  ExactSum down;
  Edge edge;
  for (std::size_t b = 0; b < buckets; ++b) {
    edges[b] = edge;
    const double top = edge_of(b + 1);
    double up_area = edge.up * bucket_height_;
    double down_area = edge.down * bucket_height_;
    for (std::size_t e = first_[b]; e < first_[b + 1]; ++e) {
      const End& one = ends[e];
      up.add(scale.of(std::abs(one.up)), one.up < 0.0 ? -1 : 1);
      down.add(scale.of(std::abs(one.down)), one.down < 0.0 ? -1 : 1);
      up_area += one.up * (top - one.height);
      down_area += one.down * (top - one.height);
    }
    add(edge.up_integral, edge.up_rest, up_area);
    add(edge.down_integral, edge.down_rest, down_area);
    edge.up = scale.value(up);
    edge.down = scale.value(down);
  }
  edges[buckets] = edge;
}

DenseProfile::Walk::Walk(const DenseProfile& profile, std::size_t group, double up, double down,
                         double height)
    : profile_(profile),
      ends_(profile.ends_[group].data()),
      edges_(profile.edges_[group].data()),
      up_(up),
      down_(down),
      height_(height),
      bucket_(profile.bucket_of(height)),
      above_(sides(bucket_, height).above) {}

double DenseProfile::Walk::level(std::size_t bucket) const noexcept {
  const Edge& edge = edges_[bucket];
  return up_ * edge.up + down_ * edge.down;
}

DenseProfile::Walk::Sides DenseProfile::Walk::sides(std::size_t bucket,
                                                    double height) const noexcept {
  Sides sides{.below = level(bucket) * (height - profile_.edge_of(bucket)),
              .above = level(bucket + 1) * (profile_.edge_of(bucket + 1) - height)};
  for (std::size_t e = profile_.first_[bucket]; e < profile_.first_[bucket + 1]; ++e) {
    const double severity = up_ * ends_[e].up + down_ * ends_[e].down;
    const double past = height - ends_[e].height;
    sides.below += severity * std::max(past, 0.0);
    sides.above -= severity * std::max(-past, 0.0);
  }
  return sides;
}

double DenseProfile::Walk::to(double height) noexcept {
  const std::size_t bucket = profile_.bucket_of(height);
  double area = 0.0;
  const Sides there = sides(bucket, height);
  if (bucket == bucket_) {
    // Both in one bucket: from below the one less from below the other.
    area = there.below - sides(bucket, height_).below;
  } else {
    const Edge& a = edges_[bucket_ + 1];
    const Edge& b = edges_[bucket];
    area = above_ + there.below +
           up_ * ((b.up_integral - a.up_integral) + (b.up_rest - a.up_rest)) +
           down_ * ((b.down_integral - a.down_integral) + (b.down_rest - a.down_rest));
  }
  height_ = height;
  bucket_ = bucket;
  above_ = there.above;
  // Never less than nothing: the last digit of a stretch that is hardly touched.
  return std::max(area, 0.0);
}

}  // namespace ropewalk::line
