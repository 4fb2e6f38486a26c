// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/text_file.h"

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace ferrule {

Result<std::string> readTextFile(const std::string& path) {
  std::error_code ignored;
  if (!std::filesystem::exists(path, ignored)) return failure(ErrorCode::FileMissing, path);
  if (std::filesystem::is_directory(path, ignored)) return failure(ErrorCode::FileUnreadable, path, "a folder");
  std::ifstream file(path, std::ios::binary);
  if (!file) return failure(ErrorCode::FileUnreadable, path, std::strerror(errno));
  std::ostringstream content;
  if (file.peek() != std::ifstream::traits_type::eof()) content << file.rdbuf();
  if (file.bad() || content.fail()) return failure(ErrorCode::FileUnreadable, path, std::strerror(errno));
  if (content.view().empty()) return failure(ErrorCode::FileEmpty, path);
  return content.str();
}

Result<void> writeTextFile(const std::string& path, std::string_view content) {
  const std::string beside = path + ".part";
  {
    std::ofstream file(beside, std::ios::binary | std::ios::trunc);
    file.write(content.data(), static_cast<std::streamsize>(content.size()));
    file.flush();
    if (!file) {
      const std::string reason = std::strerror(errno);
      std::error_code ignored;
      std::filesystem::remove(beside, ignored);
      return failure(ErrorCode::FileNotWritable, path, reason);
    }
  }
  std::error_code error;
  std::filesystem::rename(beside, path, error);
  if (error) {
    std::error_code ignored;
    std::filesystem::remove(beside, ignored);
    return failure(ErrorCode::FileNotWritable, path, error.message());
  }
  return {};
}

}  // namespace ferrule
