// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCryptographicHash>
#include <QFile>

#include "core/record/record.h"

namespace ferrule {

Result<std::string> fileSha256(const std::string& path) {
  QFile file(QString::fromStdString(path));
  if (!file.exists()) return failure(ErrorCode::FileMissing, path);
  if (!file.open(QIODevice::ReadOnly)) {
    return failure(ErrorCode::FileUnreadable, path, file.errorString().toStdString());
  }
  // addData reads in small pieces, so a film of many gigabytes needs no memory.
  QCryptographicHash hash(QCryptographicHash::Sha256);
  if (!hash.addData(&file) || file.error() != QFileDevice::NoError) {
    return failure(ErrorCode::FileUnreadable, path, file.errorString().toStdString());
  }
  return hash.result().toHex().toStdString();
}

}  // namespace ferrule
