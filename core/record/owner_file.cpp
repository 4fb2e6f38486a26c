// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/owner_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <filesystem>

namespace ferrule {

Result<void> makeOwnerFile(const std::string& path) {
  // O_EXCL: the permissions hold from the first instant, and a file that is there keeps its own.
  const int file = ::open(path.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
  if (file < 0) {
    if (errno == EEXIST) return {};
    return failure(ErrorCode::FileNotWritable, path, std::strerror(errno));
  }
  ::close(file);
  return {};
}

bool mayWrite(const std::string& path) {
  return ::faccessat(AT_FDCWD, path.c_str(), W_OK, AT_EACCESS) == 0;
}

bool lastsUnchanged(const std::string& path) {
  std::error_code ignored;
  const auto folder = std::filesystem::absolute(path, ignored).parent_path();
  return !mayWrite(folder.string()) && !std::filesystem::exists(path + "-wal", ignored);
}

}  // namespace ferrule
