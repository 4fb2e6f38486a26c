// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/film_container.h"

extern "C" {
#include <libavformat/avformat.h>
#include <libavutil/display.h>
#include <libavutil/log.h>
#include <libavutil/parseutils.h>
}

#include <algorithm>
#include <array>
#include <cerrno>
#include <cmath>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <memory>
#include <string_view>

namespace ferrule {

namespace {

struct CloseInput {
  void operator()(AVFormatContext* context) const { avformat_close_input(&context); }
};
using Input = std::unique_ptr<AVFormatContext, CloseInput>;

struct FreePacket {
  void operator()(AVPacket* packet) const { av_packet_free(&packet); }
};

/// A container and its picture stream.
struct OpenFilm {
  Input input;
  AVStream* stream = nullptr;
  bool sound = false;
};

Result<void> checkFile(const std::string& path) {
  namespace fs = std::filesystem;
  std::error_code error;
  const fs::file_status status = fs::status(path, error);
  if (!fs::exists(status)) return failure(ErrorCode::FileMissing, path);
  if (fs::is_directory(status)) return failure(ErrorCode::FileUnreadable, path, "a folder");
  if (!fs::is_regular_file(status)) return failure(ErrorCode::FileUnreadable, path, "not a plain file");
  const std::ifstream file(path, std::ios::binary);
  if (!file) return failure(ErrorCode::FileUnreadable, path, std::strerror(errno));
  if (fs::file_size(path, error) == 0 && !error) return failure(ErrorCode::FileEmpty, path);
  return {};
}

/// Whether a file begins like a film whose index is written last (ISO base media) or like Matroska, AVI or MPEG-TS.
bool beginsLikeAFilm(const std::string& path) {
  std::array<char, 12> head{};
  std::ifstream(path, std::ios::binary).read(head.data(), head.size());
  const std::string_view bytes(head.data(), head.size());
  const std::string_view box = bytes.substr(4, 4);
  return box == "ftyp" || box == "moov" || box == "mdat" || bytes.starts_with("\x1a\x45\xdf\xa3") ||
         (bytes.starts_with("RIFF") && bytes.substr(8, 4) == "AVI ");
}

Result<OpenFilm> openFilm(const std::string& path) {
  if (const auto usable = checkFile(path); !usable) return tl::unexpected(usable.error());
  // The reader's own complaints would stand between our sentences on standard error.
  av_log_set_level(AV_LOG_QUIET);
  const ErrorCode unopened = beginsLikeAFilm(path) ? ErrorCode::FilmTruncated : ErrorCode::NotAFilm;
  AVFormatContext* opened = nullptr;
  // "file:" keeps a name with a colon from being taken for a network address.
  if (avformat_open_input(&opened, ("file:" + path).c_str(), nullptr, nullptr) < 0) return failure(unopened, path);
  OpenFilm film{Input(opened), nullptr, false};
  if (avformat_find_stream_info(opened, nullptr) < 0) return failure(unopened, path);
  for (unsigned i = 0; i < opened->nb_streams; ++i) {
    AVStream* stream = opened->streams[i];
    film.sound = film.sound || stream->codecpar->codec_type == AVMEDIA_TYPE_AUDIO;
    const bool coverPicture = (stream->disposition & AV_DISPOSITION_ATTACHED_PIC) != 0;
    if (film.stream == nullptr && stream->codecpar->codec_type == AVMEDIA_TYPE_VIDEO && !coverPicture) {
      film.stream = stream;
    }
  }
  if (film.stream == nullptr) return failure(film.sound ? ErrorCode::FilmWithoutPicture : unopened, path);
  // Text with a telling name is "decoded" as a terminal's screen.
  if (film.stream->codecpar->codec_id == AV_CODEC_ID_ANSI) return failure(ErrorCode::NotAFilm, path);
  return film;
}

/// Clockwise turn to the nearest quarter. Source: libavutil/display.h, av_display_rotation_get is counter-clockwise.
int uprightTurn_deg(const AVStream& stream) {
  const std::uint8_t* matrix = av_stream_get_side_data(&stream, AV_PKT_DATA_DISPLAYMATRIX, nullptr);
  if (matrix == nullptr) return 0;
  std::array<std::int32_t, 9> values{};
  std::memcpy(values.data(), matrix, sizeof values);
  const double counterClockwise_deg = av_display_rotation_get(values.data());
  if (!std::isfinite(counterClockwise_deg)) return 0;
  const int quarters = static_cast<int>(std::lround(-counterClockwise_deg / 90.0));
  return ((quarters % 4) + 4) % 4 * 90;
}

/// The images that a list at the head of the file holds and that are shown (a trimmed film lists more than it shows);
/// 0 without such a list.
long listedImages(AVStream& stream) {
  if (stream.nb_frames <= 0) return 0;
  const int entries = avformat_index_get_entries_count(&stream);
  long shown = 0;
  for (int i = 0; i < entries; ++i) {
    const AVIndexEntry* entry = avformat_index_get_entry(&stream, i);
    if (entry != nullptr && (entry->flags & AVINDEX_DISCARD_FRAME) == 0) ++shown;
  }
  return shown;
}

/// Fills in how many images there should be.
void claimImages(const OpenFilm& film, FilmContainer& container) {
  container.images = listedImages(*film.stream);
  container.imagesAreFirm = container.images > 0 || !film.sound;
  if (container.images == 0) container.images = std::lround(container.duration_s * container.rate_hz);
}

/// The camera's own date, of the film or of its pictures. A clock that was never set says 1904 or 1970: no date.
std::optional<std::int64_t> createdAt_ms(const OpenFilm& film) {
  for (const AVDictionary* notes : {film.input->metadata, film.stream->metadata}) {
    const AVDictionaryEntry* entry = av_dict_get(notes, "creation_time", nullptr, 0);
    std::int64_t time_us = 0;
    if (entry == nullptr || av_parse_time(&time_us, entry->value, 0) < 0) continue;
    constexpr std::int64_t kUnset_us = std::int64_t{86400} * 366 * 1'000'000;
    if (time_us > kUnset_us) return time_us / 1000;
  }
  return std::nullopt;
}

}  // namespace

Result<FilmContainer> readFilmContainer(const std::string& path) {
  const auto film = openFilm(path);
  if (!film) return tl::unexpected(film.error());
  FilmContainer container;
  container.width = film->stream->codecpar->width;
  container.height = film->stream->codecpar->height;
  container.turn_deg = uprightTurn_deg(*film->stream);
  const AVRational rate = av_guess_frame_rate(film->input.get(), film->stream, nullptr);
  if (rate.num > 0 && rate.den > 0) container.rate_hz = av_q2d(rate);
  if (film->input->duration > 0) container.duration_s = static_cast<double>(film->input->duration) / AV_TIME_BASE;
  claimImages(*film, container);
  container.created_ms = createdAt_ms(*film);
  return container;
}

Result<std::vector<ContainerImage>> readContainerImages(const std::string& path) {
  const auto film = openFilm(path);
  if (!film) return tl::unexpected(film.error());
  for (unsigned i = 0; i < film->input->nb_streams; ++i) {
    if (film->input->streams[i] != film->stream) film->input->streams[i]->discard = AVDISCARD_ALL;
  }
  std::vector<ContainerImage> images;
  const double unit_s = av_q2d(film->stream->time_base);
  const std::unique_ptr<AVPacket, FreePacket> packet(av_packet_alloc());
  while (av_read_frame(film->input.get(), packet.get()) >= 0) {
    const bool shown = packet->stream_index == film->stream->index && (packet->flags & AV_PKT_FLAG_DISCARD) == 0;
    const std::int64_t time = packet->pts != AV_NOPTS_VALUE ? packet->pts : packet->dts;
    if (shown && time != AV_NOPTS_VALUE) {
      images.push_back({static_cast<double>(time) * unit_s, (packet->flags & AV_PKT_FLAG_KEY) != 0});
    }
    av_packet_unref(packet.get());
  }
  std::stable_sort(images.begin(), images.end(),
                   [](const ContainerImage& a, const ContainerImage& b) { return a.time_s < b.time_s; });
  return images;
}

}  // namespace ferrule
