// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/spool.h"

#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <filesystem>

namespace ferrule {

Result<Spool> Spool::make(const std::string& besidePath) {
  std::string name = besidePath + ".XXXXXX";
  int descriptor = ::mkstemp(name.data());
  if (descriptor < 0) {
    std::error_code ignored;
    name = (std::filesystem::temp_directory_path(ignored) / "ferrule.XXXXXX").string();
    descriptor = ::mkstemp(name.data());
  }
  if (descriptor < 0) return failure(ErrorCode::FileNotWritable, besidePath, std::strerror(errno));
  ::unlink(name.c_str());
  std::FILE* file = ::fdopen(descriptor, "w+b");
  if (file == nullptr) {
    ::close(descriptor);
    return failure(ErrorCode::FileNotWritable, besidePath, std::strerror(errno));
  }
  return Spool(file, besidePath);
}

void Spool::append(const void* bytes, std::size_t count) {
  std::fwrite(bytes, 1, count, file_.get());
}

Result<void> Spool::rewind() {
  errno = 0;
  const bool whole = std::fflush(file_.get()) == 0 && std::ferror(file_.get()) == 0;
  if (!whole) {
    return failure(ErrorCode::FileNotWritable, besidePath_, errno != 0 ? std::strerror(errno) : "no room left");
  }
  std::rewind(file_.get());
  return {};
}

std::size_t Spool::read(void* bytes, std::size_t most) {
  return std::fread(bytes, 1, most, file_.get());
}

}  // namespace ferrule
