// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdio>
#include <memory>
#include <span>
#include <string>

#include "core/base/error.h"

namespace ferrule {

/// A temporary file without a name: whatever ends the program, nothing of it remains. Written front to back, then read
/// front to back as often as wanted.
class Spool {
 public:
  /// Made in the folder of besidePath, where the result will need room too, or else where temporary files go.
  /// Errors: FileNotWritable.
  [[nodiscard]] static Result<Spool> make(const std::string& besidePath);

  /// A failed write shows in rewind().
  void append(const void* bytes, std::size_t count);
  /// To the front, for reading. Errors: FileNotWritable when something could not be written.
  [[nodiscard]] Result<void> rewind();
  /// The next bytes, at most as many as fit; 0 at the end.
  [[nodiscard]] std::size_t read(void* bytes, std::size_t most);

 private:
  struct Close {
    void operator()(std::FILE* file) const { std::fclose(file); }
  };
  Spool(std::FILE* file, std::string besidePath) : file_(file), besidePath_(std::move(besidePath)) {}

  std::unique_ptr<std::FILE, Close> file_;
  std::string besidePath_;
};

}  // namespace ferrule
