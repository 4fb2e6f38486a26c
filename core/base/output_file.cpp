// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/output_file.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <utility>

namespace ferrule {

namespace {

namespace fs = std::filesystem;

/// Whatever was written must be on the disk before the name points at it.
int flushed(const std::string& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0) return errno;
  const int error = ::fsync(file) == 0 ? 0 : errno;
  ::close(file);
  return error;
}

}  // namespace

OutputFile::OutputFile(std::string path, std::string writtenTo)
    : path_(std::move(path)), writtenTo_(std::move(writtenTo)), file_(writtenTo_, std::ios::binary | std::ios::trunc) {}

OutputFile::OutputFile(OutputFile&& other) noexcept
    : path_(std::exchange(other.path_, {})), writtenTo_(std::move(other.writtenTo_)), file_(std::move(other.file_)) {}

OutputFile& OutputFile::operator=(OutputFile&& other) noexcept {
  if (this == &other) return *this;
  discard();
  path_ = std::exchange(other.path_, {});
  writtenTo_ = std::move(other.writtenTo_);
  file_ = std::move(other.file_);
  return *this;
}

OutputFile::~OutputFile() {
  discard();
}

void OutputFile::discard() {
  if (path_.empty()) return;
  file_.close();
  std::error_code ignored;
  if (writtenTo_ != path_) fs::remove(writtenTo_, ignored);
  path_.clear();
}

Result<OutputFile> OutputFile::make(const std::string& path) {
  std::error_code ignored;
  const fs::file_status status = fs::status(path, ignored);
  if (fs::is_directory(status)) return failure(ErrorCode::FileNotWritable, path, "a folder");
  const bool isPlain = !fs::exists(status) || fs::is_regular_file(status);
  OutputFile output(path, isPlain ? path + ".part" : path);
  if (!output.file_) {
    const std::string reason = std::strerror(errno);
    output.path_.clear();
    return failure(ErrorCode::FileNotWritable, path, reason);
  }
  return output;
}

void OutputFile::write(std::string_view content) {
  file_.write(content.data(), static_cast<std::streamsize>(content.size()));
}

Result<void> OutputFile::keep() {
  const std::string path = path_;
  errno = 0;
  file_.close();
  if (!file_) {
    const std::string reason = errno != 0 ? std::strerror(errno) : "no room left";
    discard();
    return failure(ErrorCode::FileNotWritable, path, reason);
  }
  if (writtenTo_ != path) {
    int error = flushed(writtenTo_);
    if (error == 0 && std::rename(writtenTo_.c_str(), path.c_str()) != 0) error = errno;
    if (error != 0) {
      discard();
      return failure(ErrorCode::FileNotWritable, path, std::strerror(error));
    }
  }
  path_.clear();
  return {};
}

}  // namespace ferrule
