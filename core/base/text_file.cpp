// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/text_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <filesystem>
#include <system_error>

namespace ferrule {

namespace {

namespace fs = std::filesystem;

std::string reasonOf(int systemError) {
  return std::generic_category().message(systemError);
}

/// An open file of the system, closed at the end of its scope.
class OpenFile {
 public:
  explicit OpenFile(int descriptor) : descriptor_(descriptor) {}
  ~OpenFile() {
    if (descriptor_ >= 0) ::close(descriptor_);
  }
  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;

  [[nodiscard]] int descriptor() const { return descriptor_; }
  explicit operator bool() const { return descriptor_ >= 0; }

 private:
  int descriptor_ = -1;
};

/// 0, or the system's error.
int writeAll(int descriptor, std::string_view content) {
  while (!content.empty()) {
    const ssize_t written = ::write(descriptor, content.data(), content.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return errno;
    content.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

int writeStraight(const std::string& path, std::string_view content) {
  const OpenFile file(::open(path.c_str(), O_WRONLY | O_CLOEXEC));
  if (!file) return errno;
  return writeAll(file.descriptor(), content);
}

/// A rename is on the disk only when its folder is.
void flushFolderOf(const fs::path& path) {
  const fs::path folder = path.has_parent_path() ? path.parent_path() : fs::path(".");
  const OpenFile file(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (file) ::fsync(file.descriptor());
}

/// A name beside the target that no other writer of this machine uses now.
std::string nameBeside(const fs::path& target) {
  static std::atomic<unsigned> count{0};
  return target.string() + "." + std::to_string(::getpid()) + "-" + std::to_string(++count) + ".part";
}

int replaceWhole(const fs::path& target, std::string_view content) {
  const std::string beside = nameBeside(target);
  int error = 0;
  {
    const OpenFile file(::open(beside.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0666));
    if (!file) return errno;
    struct stat old {};
    if (::stat(target.c_str(), &old) == 0 && ::fchmod(file.descriptor(), old.st_mode & 07777) != 0) error = errno;
    if (error == 0) error = writeAll(file.descriptor(), content);
    if (error == 0 && ::fsync(file.descriptor()) != 0) error = errno;
  }
  if (error == 0 && ::rename(beside.c_str(), target.c_str()) != 0) error = errno;
  if (error != 0) {
    ::unlink(beside.c_str());
  } else {
    flushFolderOf(target);
  }
  return error;
}

}  // namespace

Result<std::string> readTextFile(const std::string& path, std::size_t most_bytes) {
  const OpenFile file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (!file) {
    if (errno == ENOENT || errno == ENOTDIR) return failure(ErrorCode::FileMissing, path);
    return failure(ErrorCode::FileUnreadable, path, reasonOf(errno));
  }
  std::string content;
  constexpr std::size_t kPiece_bytes = std::size_t{1} << 16;
  for (;;) {
    const std::size_t before = content.size();
    if (before > most_bytes) {
      return failure(ErrorCode::FileUnreadable, path, "larger than " + std::to_string(most_bytes) + " bytes");
    }
    content.resize(before + kPiece_bytes);
    const ssize_t got = ::read(file.descriptor(), content.data() + before, kPiece_bytes);
    const int error = errno;
    content.resize(before + static_cast<std::size_t>(std::max<ssize_t>(got, 0)));
    if (got < 0 && error == EINTR) continue;
    if (got < 0) return failure(ErrorCode::FileUnreadable, path, reasonOf(error));
    if (got == 0) break;
  }
  if (content.empty()) return failure(ErrorCode::FileEmpty, path);
  return content;
}

Result<void> writeTextFile(const std::string& path, std::string_view content) {
  std::error_code ignored;
  const fs::file_status status = fs::status(path, ignored);
  const bool isPlain = !fs::exists(status) || fs::is_regular_file(status);
  int error = 0;
  if (isPlain) {
    const fs::path target =
        fs::is_symlink(fs::symlink_status(path, ignored)) ? fs::weakly_canonical(path, ignored) : fs::path(path);
    error = replaceWhole(target, content);
  } else {
    error = writeStraight(path, content);
  }
  if (error != 0) return failure(ErrorCode::FileNotWritable, path, reasonOf(error));
  return {};
}

}  // namespace ferrule
