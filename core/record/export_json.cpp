// SPDX-License-Identifier: GPL-3.0-or-later
#include <nlohmann/json.hpp>

#include "core/geometry/units.h"
#include "core/record/export_writers.h"
#include "core/table/shot_text.h"

namespace ferrule {

namespace {

using nlohmann::ordered_json;

std::string dumped(const ordered_json& object) {
  return object.dump(-1, ' ', false, ordered_json::error_handler_t::replace);
}

ordered_json utcOrNull(const std::optional<UtcMilliseconds>& time) {
  return time ? ordered_json(utcText(*time)) : ordered_json(nullptr);
}

ordered_json textOrNull(const std::optional<std::string>& text) {
  return text ? ordered_json(*text) : ordered_json(nullptr);
}

/// Rounded like the numbers of shotText, and a number again.
ordered_json number(double value, double step) {
  return ordered_json::parse(numberText(value, step));
}

ordered_json trackJson(const Track& track) {
  ordered_json times = ordered_json::array();
  ordered_json xs = ordered_json::array();
  ordered_json ys = ordered_json::array();
  ordered_json uncertainties = ordered_json::array();
  ordered_json seen = ordered_json::array();
  for (const TrackSample& sample : track.samples) {
    times.push_back(number(sample.time_s, 1e-6));
    xs.push_back(number(millimetresFromMetres(sample.position.x), 1e-2));
    ys.push_back(number(millimetresFromMetres(sample.position.y), 1e-2));
    uncertainties.push_back(number(millimetresFromMetres(sample.standardUncertainty_m), 1e-2));
    seen.push_back(sample.seen);
  }
  return {{"ball", toText(track.ball)}, {"t_s", std::move(times)},          {"x_mm", std::move(xs)},
          {"y_mm", std::move(ys)},      {"u_mm", std::move(uncertainties)}, {"seen", std::move(seen)}};
}

/// The JSON that another part wrote; null where it is none.
ordered_json keptJson(const std::string& content) {
  auto kept = ordered_json::parse(content, nullptr, false);
  return kept.is_discarded() ? ordered_json(nullptr) : kept;
}

ordered_json notesJson(const std::vector<Note>& notes) {
  ordered_json all = ordered_json::array();
  for (const Note& note : notes) {
    all.push_back({{"text", note.text}, {"who", note.who}, {"when", utcText(note.when)}});
  }
  return all;
}

ordered_json suggestionJson(const SuggestionEntry& suggestion) {
  const auto loss = [](const std::optional<double>& value) {
    return value ? number(*value, 1e-6) : ordered_json(nullptr);
  };
  return {{"planner", suggestion.planner},
          {"shown", suggestion.shown},
          {"choice_loss", loss(suggestion.choiceLoss)},
          {"delivery_loss", loss(suggestion.deliveryLoss)},
          {"plans", keptJson(suggestion.content)}};
}

}  // namespace

std::string quotedJson(const std::string& text) {
  return dumped(ordered_json(text));
}

std::string keptText(const std::string& content) {
  return dumped(keptJson(content));
}

std::string playerJson(const Person& person) {
  const Player& player = person.details.player;
  ordered_json consents = ordered_json::array();
  for (const ConsentEntry& entry : person.consents) {
    ordered_json line{{"uid", entry.uid},
                      {"event", toText(entry.event)},
                      {"scope", toText(entry.scope)},
                      {"from", utcText(entry.from)},
                      {"until", utcOrNull(entry.until)},
                      {"by", entry.by},
                      {"guardian", entry.byGuardian},
                      {"noted_by", entry.notedBy},
                      {"noted", utcText(entry.noted)}};
    if (entry.event == ConsentEvent::Struck) line["strikes"] = entry.struckUid;
    consents.push_back(std::move(line));
  }
  return dumped({{"uid", person.uid},
                 {"name", player.name},
                 {"handedness", toText(player.handedness)},
                 {"minor", player.minor},
                 {"guest", player.guest},
                 {"groups", person.details.groups},
                 {"consents", std::move(consents)},
                 {"notes", notesJson(person.notes)},
                 {"tags", person.tags}});
}

std::string tableJson(const std::string& name, const MeasuredTable& table) {
  return dumped({{"name", name}, {"measured", ordered_json::parse(measuredTableText(table))}});
}

std::string filmJson(const FilmEntry& film) {
  return dumped({{"path", film.path},
                 {"sha256", film.sha256},
                 {"width", film.size.width},
                 {"height", film.size.height},
                 {"images", film.images},
                 {"duration_s", number(film.duration_s, 1e-6)},
                 {"first_image", utcOrNull(film.firstImage)}});
}

std::string shotJson(const StoredShot& shot, const std::optional<std::string>& onlyPlayer) {
  ordered_json object = ordered_json::parse(shotText(shot.reading));
  object["verdict"] = toText(shot.reading.outcomeVerdict);
  object["player"] = shot.playerName.empty() ? ordered_json(nullptr) : ordered_json(shot.playerName);
  ordered_json tracks = ordered_json::array();
  for (const Track& track : shot.tracks)
    tracks.push_back(trackJson(track));
  object["tracks"] = std::move(tracks);
  ordered_json corrections = ordered_json::array();
  for (const ValueCorrection& correction : shot.corrections) {
    const auto shown = [&](const std::optional<std::string>& value) {
      const bool anothersName = onlyPlayer && correction.field == toText(ShotField::Player) && value != onlyPlayer;
      return anothersName ? ordered_json(nullptr) : textOrNull(value);
    };
    corrections.push_back({{"field", correction.field},
                           {"measured", shown(correction.measured)},
                           {"corrected", shown(correction.corrected)},
                           {"who", correction.who},
                           {"when", utcText(correction.when)}});
  }
  object["corrections"] = std::move(corrections);
  object["notes"] = notesJson(shot.notes);
  object["tags"] = shot.tags;
  object["ruling"] = shot.ruling ? keptJson(shot.ruling->content) : ordered_json(nullptr);
  object["suggestion"] = shot.suggestion ? suggestionJson(*shot.suggestion) : ordered_json(nullptr);
  object["explanation"] = shot.explanation ? keptJson(*shot.explanation) : ordered_json(nullptr);
  return dumped(object);
}

}  // namespace ferrule
