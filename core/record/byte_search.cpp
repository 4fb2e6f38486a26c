// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/record/byte_search.h"

#include <QByteArrayMatcher>
#include <QFile>

namespace ferrule {

namespace {

constexpr qint64 kBlock_bytes = 1 << 20;

}  // namespace

std::optional<long> timesInFile(const std::string& path, const std::string& bytes) {
  if (bytes.empty()) return 0;
  QFile file(QString::fromStdString(path));
  if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
  const QByteArrayMatcher matcher(QByteArray::fromStdString(bytes));
  const auto overlap = static_cast<qsizetype>(bytes.size()) - 1;
  long times = 0;
  QByteArray block;
  for (;;) {
    const QByteArray more = file.read(kBlock_bytes);
    if (file.error() != QFileDevice::NoError) return std::nullopt;
    if (more.isEmpty()) return times;
    // What the last block ended with may begin a match that this one ends.
    block = block.right(overlap) + more;
    for (qsizetype at = matcher.indexIn(block); at >= 0; at = matcher.indexIn(block, at + 1))
      ++times;
  }
}

}  // namespace ferrule
