// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QDir>
#include <QTemporaryDir>
#include <array>
#include <optional>
#include <utility>
#include <vector>

namespace ferrule {

/// A home of its own for as long as it lives: whatever a program keeps for its user goes into a temporary folder, never
/// into that of the person who runs the tests. Before anything asks for a folder.
/// Source of the variables: freedesktop.org, XDG Base Directory Specification 0.8.
class OwnHome {
 public:
  OwnHome() {
    constexpr std::array<std::pair<const char*, const char*>, 5> kFolders{{{"HOME", ""},
                                                                           {"XDG_DATA_HOME", "/.local/share"},
                                                                           {"XDG_CONFIG_HOME", "/.config"},
                                                                           {"XDG_STATE_HOME", "/.local/state"},
                                                                           {"XDG_CACHE_HOME", "/.cache"}}};
    for (const auto& [name, below] : kFolders) {
      before_.emplace_back(name, qEnvironmentVariableIsSet(name) ? std::optional(qgetenv(name)) : std::nullopt);
      const QString path = folder_.path() + QLatin1String(below);
      QDir().mkpath(path);
      qputenv(name, path.toLocal8Bit());
    }
  }
  ~OwnHome() {
    for (const auto& [name, value] : before_) {
      if (value) {
        qputenv(name, *value);
      } else {
        qunsetenv(name);
      }
    }
  }
  OwnHome(const OwnHome&) = delete;
  OwnHome& operator=(const OwnHome&) = delete;

  [[nodiscard]] QString path() const { return folder_.path(); }
  [[nodiscard]] QString filePath(const QString& name) const { return folder_.filePath(name); }

 private:
  QTemporaryDir folder_;
  std::vector<std::pair<const char*, std::optional<QByteArray>>> before_;
};

}  // namespace ferrule
