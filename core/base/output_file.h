// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <fstream>
#include <string>
#include <string_view>

#include "core/base/error.h"

namespace ferrule {

/// A file that is written piece by piece and appears under its name only when it is whole: until keep() it is called
/// NAME.part, and it vanishes when it is not kept. An older file of that name stays until then. What is no plain file
/// (a pipe, /dev/stdout) is written straight to.
class OutputFile {
 public:
  /// Errors: FileNotWritable.
  [[nodiscard]] static Result<OutputFile> make(const std::string& path);
  ~OutputFile();
  OutputFile(OutputFile&& other) noexcept;
  OutputFile& operator=(OutputFile&& other) noexcept;

  /// A failed write shows in keep().
  void write(std::string_view content);
  /// Flushes to the disk and gives the name. Errors: FileNotWritable.
  [[nodiscard]] Result<void> keep();

  [[nodiscard]] const std::string& path() const { return path_; }

 private:
  OutputFile(std::string path, std::string writtenTo);
  void discard();

  std::string path_;       ///< empty when there is nothing left to discard
  std::string writtenTo_;  ///< path_ itself when it is no plain file
  std::ofstream file_;
};

}  // namespace ferrule
