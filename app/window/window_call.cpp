// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/window_call.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <filesystem>
#include <string_view>
#include <vector>

namespace ferrule {

namespace {

/// The toolkit's options that take a value. Source: Qt 6 documentation, QGuiApplication and QApplication.
constexpr std::array<std::string_view, 8> kToolkitOptions{"-platform", "-platformpluginpath", "-platformtheme",
                                                          "-plugin",   "-qwindowgeometry",    "-qwindowtitle",
                                                          "-style",    "-stylesheet"};

bool isSet(const char* name) {
  const char* value = std::getenv(name);
  return value != nullptr && value[0] != '\0';
}

}  // namespace

std::optional<WindowCall> windowCallFrom(int argc, const char* const* argv) {
  std::vector<std::string_view> own;
  for (int i = 1; i < argc; ++i) {
    if (std::ranges::find(kToolkitOptions, std::string_view(argv[i])) != kToolkitOptions.end()) {
      ++i;
    } else {
      own.emplace_back(argv[i]);
    }
  }
  if (own.empty()) return WindowCall{};
  if (own.size() == 2 && own[0] == "--record") return WindowCall{std::string(own[1])};
  constexpr std::string_view kInOne = "--record=";
  if (own.size() == 1 && own[0].starts_with(kInOne)) return WindowCall{std::string(own[0].substr(kInOne.size()))};
  if (own.size() != 1 || own[0].starts_with('-')) return std::nullopt;
  std::error_code ignored;
  if (own[0].ends_with(".sqlite") || std::filesystem::is_regular_file(own[0], ignored)) {
    return WindowCall{std::string(own[0])};
  }
  return std::nullopt;
}

bool hasDisplay() {
  // An explicit platform such as offscreen needs no display.
  return isSet("DISPLAY") || isSet("WAYLAND_DISPLAY") || isSet("QT_QPA_PLATFORM");
}

}  // namespace ferrule
