// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/error_sentence.h"

#include <QCoreApplication>

namespace ferrule {

namespace {

QString say(const char* text) {
  return QCoreApplication::translate("ErrorSentence", text);
}

QString number(const Error& error, std::size_t index) {
  return index < error.numbers.size() ? QString::number(error.numbers[index], 'g', 6) : QStringLiteral("?");
}

}  // namespace

QString errorSentence(const Error& error) {
  const QString subject = QString::fromStdString(error.subject);
  const QString detail = QString::fromStdString(error.detail);
  switch (error.code) {
    case ErrorCode::FileMissing:
      return say("There is no file %1; check the path.").arg(subject);
    case ErrorCode::FileEmpty:
      return say("%1 is empty; copy or export it again.").arg(subject);
    case ErrorCode::FileUnreadable:
      return say("%1 cannot be read (%2); check its permissions.").arg(subject, detail);
    case ErrorCode::FileNotWritable:
      return say("%1 cannot be written (%2); choose another folder.").arg(subject, detail);
    case ErrorCode::FileMalformed:
      return say("%1 is not in the expected form (%2); make it again or correct it.").arg(subject, detail);
    case ErrorCode::FieldMissing:
      return say("%1 has no value for \"%2\"; add it.").arg(subject, detail);
    case ErrorCode::FieldInvalid:
      if (error.numbers.size() < 3) return say("%1 has an unusable value for \"%2\"; correct it.").arg(subject, detail);
      return say("%1 gives %3 for \"%2\", outside %4 to %5; measure it again.")
          .arg(subject, detail, number(error, 0), number(error, 1), number(error, 2));
    case ErrorCode::StrikePastMiscue:
      return say("%1 strikes the ball %2 radii from its centre, past the miscue limit of %3; move the tip point inward.")
          .arg(subject, number(error, 0), number(error, 1));
    case ErrorCode::BallsOverlap:
      return say("%1 has the balls %2 overlapping by %3 mm, more than %4; correct their places.")
          .arg(subject, detail, number(error, 0), number(error, 1));
    case ErrorCode::BallOutsideTable:
      return say("%1 has the ball %2 outside the table; correct its place.").arg(subject, detail);
    default:
      return say("%1 could not be used (%2).").arg(subject, detail);
  }
}

}  // namespace ferrule
