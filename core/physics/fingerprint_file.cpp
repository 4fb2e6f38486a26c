// SPDX-License-Identifier: GPL-3.0-or-later
#include <nlohmann/json.hpp>

#include "core/physics/fingerprint.h"

namespace ferrule {

std::string fingerprintText(const Fingerprint& f) {
  using ordered = nlohmann::ordered_json;
  ordered coefficients = ordered::array();
  for (const FittedCoefficient& c : f.coefficients) {
    coefficients.push_back({{"name", c.name},
                            {"value", c.value},
                            {"u", c.standardUncertainty},
                            {"literature", c.literature},
                            {"literature_u", c.literatureUncertainty},
                            {"determined", c.determined}});
  }
  const ordered all{{"format", "ferrule-fingerprint/1"},
                    {"table", f.table},
                    {"date", f.date},
                    {"shots", f.shots},
                    {"samples", f.samples},
                    {"rms_mm", 1000.0 * f.rms_m},
                    {"converged", f.converged},
                    {"coefficients", coefficients}};
  return all.dump(1) + "\n";
}

Result<Fingerprint> parseFingerprint(const std::string& text, const std::string& name) {
  try {
    const auto all = nlohmann::json::parse(text);
    if (all.at("format") != "ferrule-fingerprint/1") return failure(ErrorCode::FileMalformed, name, "format");
    Fingerprint f;
    f.table = all.at("table").get<std::string>();
    f.date = all.at("date").get<std::string>();
    f.shots = all.at("shots").get<int>();
    f.samples = all.at("samples").get<long>();
    f.rms_m = all.at("rms_mm").get<double>() / 1000.0;
    f.converged = all.at("converged").get<bool>();
    for (const auto& c : all.at("coefficients")) {
      f.coefficients.push_back({c.at("name").get<std::string>(), c.at("value").get<double>(), c.at("u").get<double>(),
                                c.at("literature").get<double>(), c.at("literature_u").get<double>(),
                                c.at("determined").get<bool>()});
    }
    return f;
  } catch (const nlohmann::json::exception& error) {
    return failure(ErrorCode::FileMalformed, name, error.what());
  }
}

}  // namespace ferrule
