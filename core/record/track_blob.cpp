// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/track_blob.h"

#include <cmath>
#include <cstdint>
#include <vector>

#include "core/base/contract.h"

namespace ferrule {

namespace {

constexpr char kVersion = 1;
constexpr double kUnitsPerSecond = 1e6;
constexpr double kUnitsPerMetre = 1e5;
/// A day of one ball at 100 images a second; more is no track of ours.
constexpr std::uint64_t kMostSamples = 8'640'000;
/// Four varints of at most ten bytes and one bit a sample.
constexpr std::uint32_t kMostBody = 10 + 41 * kMostSamples;

std::int64_t quantised(double value, double unitsPerOne) {
  FERRULE_REQUIRE(std::isfinite(value) && std::abs(value) < 1e9);
  return std::llround(value * unitsPerOne);
}

std::uint64_t zigZag(std::int64_t value) {
  return (static_cast<std::uint64_t>(value) << 1) ^ static_cast<std::uint64_t>(value >> 63);
}
std::int64_t fromZigZag(std::uint64_t value) {
  return static_cast<std::int64_t>(value >> 1) ^ -static_cast<std::int64_t>(value & 1);
}

void putVarint(QByteArray& out, std::uint64_t value) {
  while (value >= 0x80) {
    out.append(static_cast<char>(value | 0x80));
    value >>= 7;
  }
  out.append(static_cast<char>(value));
}

/// Wrapping arithmetic: damaged bytes must give wrong numbers at worst, never undefined behaviour.
std::int64_t sum(std::int64_t a, std::int64_t b) {
  return static_cast<std::int64_t>(static_cast<std::uint64_t>(a) + static_cast<std::uint64_t>(b));
}

class Reader {
 public:
  explicit Reader(const QByteArray& bytes) : bytes_(bytes) {}

  std::uint64_t varint() {
    std::uint64_t value = 0;
    for (unsigned shift = 0; shift < 64; shift += 7) {
      if (next_ >= bytes_.size()) break;
      const auto byte = static_cast<unsigned char>(bytes_.at(next_++));
      value |= static_cast<std::uint64_t>(byte & 0x7f) << shift;
      if ((byte & 0x80) == 0) return value;
    }
    whole_ = false;
    return 0;
  }
  std::int64_t difference() { return fromZigZag(varint()); }
  unsigned char byte() {
    if (next_ < bytes_.size()) return static_cast<unsigned char>(bytes_.at(next_++));
    whole_ = false;
    return 0;
  }
  [[nodiscard]] bool whole() const { return whole_; }
  [[nodiscard]] bool atEnd() const { return next_ == bytes_.size(); }

 private:
  const QByteArray& bytes_;
  qsizetype next_ = 0;
  bool whole_ = true;
};

template <class Value>
void putDifferences(QByteArray& out, const Track& track, Value&& value) {
  std::int64_t before = 0;
  for (const TrackSample& sample : track.samples) {
    const std::int64_t now = quantised(value(sample), kUnitsPerMetre);
    putVarint(out, zigZag(now - before));
    before = now;
  }
}

template <class Assign>
void readDifferences(Reader& reader, Track& track, Assign&& assign) {
  std::int64_t value = 0;
  for (TrackSample& sample : track.samples) {
    value = sum(value, reader.difference());
    assign(sample, static_cast<double>(value) / kUnitsPerMetre);
  }
}

}  // namespace

QByteArray packTrack(const Track& track) {
  FERRULE_REQUIRE(track.samples.size() <= kMostSamples);
  QByteArray body;
  putVarint(body, track.samples.size());
  std::int64_t time = 0;
  std::int64_t step = 0;
  for (const TrackSample& sample : track.samples) {
    const std::int64_t now = quantised(sample.time_s, kUnitsPerSecond);
    putVarint(body, zigZag(now - time - step));
    step = now - time;
    time = now;
  }
  putDifferences(body, track, [](const TrackSample& sample) { return sample.position.x; });
  putDifferences(body, track, [](const TrackSample& sample) { return sample.position.y; });
  putDifferences(body, track, [](const TrackSample& sample) { return sample.standardUncertainty_m; });
  for (std::size_t first = 0; first < track.samples.size(); first += 8) {
    unsigned bits = 0;
    for (std::size_t i = first; i < track.samples.size() && i < first + 8; ++i) {
      if (track.samples[i].seen) bits |= 1u << (i - first);
    }
    body.append(static_cast<char>(bits));
  }
  // qCompress writes exactly the length and the zlib stream of the format above.
  return QByteArray(1, kVersion) + qCompress(body);
}

std::optional<Track> unpackTrack(BallName ball, const QByteArray& bytes) {
  if (bytes.size() < 5 || bytes.at(0) != kVersion) return std::nullopt;
  std::uint32_t claimed = 0;
  for (int i = 1; i <= 4; ++i)
    claimed = (claimed << 8) | static_cast<unsigned char>(bytes.at(i));
  if (claimed > kMostBody) return std::nullopt;
  const QByteArray body = qUncompress(bytes.mid(1));
  Reader reader(body);
  const std::uint64_t count = reader.varint();
  // Every sample takes at least four bytes and a bit, so a damaged count cannot ask for more memory than the body has.
  if (!reader.whole() || count > static_cast<std::uint64_t>(body.size()) / 4) return std::nullopt;
  Track track{ball, std::vector<TrackSample>(count)};
  std::int64_t time = 0;
  std::int64_t step = 0;
  for (TrackSample& sample : track.samples) {
    step = sum(step, reader.difference());
    time = sum(time, step);
    sample.time_s = static_cast<double>(time) / kUnitsPerSecond;
  }
  readDifferences(reader, track, [](TrackSample& sample, double value) { sample.position.x = value; });
  readDifferences(reader, track, [](TrackSample& sample, double value) { sample.position.y = value; });
  readDifferences(reader, track, [](TrackSample& sample, double value) { sample.standardUncertainty_m = value; });
  for (std::size_t first = 0; first < track.samples.size(); first += 8) {
    const unsigned bits = reader.byte();
    for (std::size_t i = first; i < track.samples.size() && i < first + 8; ++i) {
      track.samples[i].seen = ((bits >> (i - first)) & 1u) != 0;
    }
  }
  if (!reader.whole() || !reader.atEnd()) return std::nullopt;
  return track;
}

}  // namespace ferrule
