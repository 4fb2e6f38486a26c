// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/error_sentence.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace ferrule {

namespace {

/// Carries the translation context; lupdate finds the sentences by tr().
struct ErrorSentence {
  Q_DECLARE_TR_FUNCTIONS(ErrorSentence)

 public:
  explicit ErrorSentence(const Error& error)
      : error_(error), subject_(QString::fromStdString(error.subject)), detail_(QString::fromStdString(error.detail)) {}

  [[nodiscard]] QString sentence() const;

 private:
  [[nodiscard]] QString number(std::size_t index) const {
    if (index >= error_.numbers.size()) return QStringLiteral("?");
    return QLocale().toString(error_.numbers[index], 'g', 6);
  }
  /// "1280x720": a size in pixels is written without separators, as cameras write it.
  [[nodiscard]] QString size(std::size_t index) const {
    if (index + 1 >= error_.numbers.size()) return QStringLiteral("?");
    return QStringLiteral("%1x%2").arg(error_.numbers[index], 0, 'f', 0).arg(error_.numbers[index + 1], 0, 'f', 0);
  }
  [[nodiscard]] QString percent(std::size_t index) const {
    if (index >= error_.numbers.size()) return QStringLiteral("?");
    return QLocale().toString(100.0 * error_.numbers[index], 'f', 0);
  }

  [[nodiscard]] QString fileUnreadable() const;
  [[nodiscard]] QString fieldInvalid() const;
  [[nodiscard]] QString imageSizeMismatch() const;
  [[nodiscard]] QString boardMalformed() const;
  [[nodiscard]] QString coverageOneSided() const;
  [[nodiscard]] QString lensNotUsable() const;
  [[nodiscard]] QString tagsTooFew() const;
  [[nodiscard]] QString tagsInconsistent() const;
  [[nodiscard]] QString correctionName() const;

  const Error& error_;
  QString subject_;
  QString detail_;
};

QString ErrorSentence::fileUnreadable() const {
  if (detail_ == QLatin1String("a folder")) return tr("%1 is a folder; choose a file in it.").arg(subject_);
  return tr("%1 cannot be read (%2); check its permissions.").arg(subject_, detail_);
}

QString ErrorSentence::fieldInvalid() const {
  if (error_.numbers.size() < 3) {
    return tr("%1 has an unusable value for \"%2\"; correct it.").arg(subject_, detail_);
  }
  return tr("%1 gives %3 for \"%2\", outside %4 to %5; measure it again.")
      .arg(subject_, detail_, number(0), number(1), number(2));
}

QString ErrorSentence::imageSizeMismatch() const {
  // Of one shape when width and height stand in the same proportion, to a rounding of one pixel.
  const auto& n = error_.numbers;
  if (n.size() == 4 && n[3] > 0.0 && std::abs(n[0] - n[1] * n[2] / n[3]) <= 1.0) {
    return tr("%1 is %2 but %3 was made at %4; calibrate the rig on a film of this size.")
        .arg(subject_, size(0), detail_, size(2));
  }
  return tr("%1 is %2 but the lens %3 was made at %4, another shape of picture; calibrate the lens in the film's mode.")
      .arg(subject_, size(0), detail_, size(2));
}

QString ErrorSentence::boardMalformed() const {
  if (detail_ == QLatin1String("count")) {
    return tr("The board \"%1\" needs 3 to 100 columns and rows, such as 9x6; count them on the print.").arg(subject_);
  }
  if (detail_ == QLatin1String("square")) {
    return tr("The board \"%1\" needs its square's side in millimetres, 1 to 1000; measure it on the print.")
        .arg(subject_);
  }
  if (detail_ == QLatin1String("marker")) {
    return tr("The board \"%1\" needs its marker's side in millimetres, smaller than the square; measure it on the "
              "print.")
        .arg(subject_);
  }
  if (detail_ == QLatin1String("dictionary")) {
    return tr("The board \"%1\" names an unknown set of markers; use the name it was printed with, such as "
              "DICT_5X5_100.")
        .arg(subject_);
  }
  if (detail_ == QLatin1String("markers")) {
    return tr("The board \"%1\" has more squares than its set of markers can fill; check the counts or name a larger "
              "set.")
        .arg(subject_);
  }
  if (detail_ == QLatin1String("paper")) {
    return tr("\"%1\" does not fit on this paper with its margins; choose larger paper or smaller squares.")
        .arg(subject_);
  }
  if (detail_ == QLatin1String("stretched")) {
    return tr("The printer drew the board \"%1\" %2 mm across and %3 mm down where both should be equal; print it "
              "again "
              "without fitting it to the page.")
        .arg(subject_, number(0), number(1));
  }
  return tr("The board \"%1\" is not in the form chessboard:9x6:25 or charuco:8x6:40:30:DICT_5X5_100; write it so.")
      .arg(subject_);
}

QString ErrorSentence::coverageOneSided() const {
  const QString rest = tr("(%1\u00a0% of the cells there, %2\u00a0% are needed); add stills with the board there.");
  const QString share = rest.arg(percent(0), percent(1));
  if (detail_ == QLatin1String("left")) {
    return tr("The stills of %1 hardly show the board on the left of the picture %2").arg(subject_, share);
  }
  if (detail_ == QLatin1String("right")) {
    return tr("The stills of %1 hardly show the board on the right of the picture %2").arg(subject_, share);
  }
  if (detail_ == QLatin1String("top")) {
    return tr("The stills of %1 hardly show the board at the top of the picture %2").arg(subject_, share);
  }
  if (detail_ == QLatin1String("bottom")) {
    return tr("The stills of %1 hardly show the board at the bottom of the picture %2").arg(subject_, share);
  }
  return tr("The stills of %1 show the board in too little of the picture (%2\u00a0%, %3\u00a0% are needed); add "
            "stills with the "
            "board in the empty parts.")
      .arg(subject_, percent(0), percent(1));
}

QString ErrorSentence::lensNotUsable() const {
  if (detail_ == QLatin1String("cushions")) {
    return tr("The cushions in %1 fit no camera over this table; check the table's size in the table file.")
        .arg(subject_);
  }
  if (detail_ == QLatin1String("no-fit")) {
    return tr("No lens explains the stills of %1; check the board's counts and take stills with the board tilted.")
        .arg(subject_);
  }
  if (detail_ == QLatin1String("folds")) {
    return tr("The stills of %1 do not fix the lens out to the corners of the picture; add stills with the board in "
              "the "
              "corners.")
        .arg(subject_);
  }
  return tr("%1 holds a lens that cannot be used (%2); calibrate it again.").arg(subject_, detail_);
}

QString ErrorSentence::tagsTooFew() const {
  if (detail_ == QLatin1String("table")) {
    return tr("%1 lists %2 tags and %3 are needed; measure the tags into a table file, or set up from the table "
              "itself.")
        .arg(subject_, number(0), number(1));
  }
  if (detail_ == QLatin1String("cushions")) {
    return tr("%1 shows the noses of %2 cushions, and every side of the table is needed; film the whole table from "
              "above, in even light, without people before it.")
        .arg(subject_, number(0));
  }
  if (detail_ == QLatin1String("projected")) {
    return tr("%1 shows %2 of the projected tags on the cloth and %3 are needed; darken the room, clear the table, and "
              "let the projector's picture cover most of it.")
        .arg(subject_, number(0), number(1));
  }
  return tr("%1 shows %2 of the table's tags and %3 are needed; uncover or light them, and check the set of markers in "
            "the table file.")
      .arg(subject_, number(0), number(1));
}

QString ErrorSentence::tagsInconsistent() const {
  if (detail_ == QLatin1String("twice")) {
    return tr("%1 shows tag %2 twice; cover or remove one of them.").arg(subject_, number(0));
  }
  if (detail_ == QLatin1String("projected-twice")) {
    return tr("%1 shows the projected tag %2 twice; switch off the second projector or the other grid.")
        .arg(subject_, number(0));
  }
  if (detail_ == QLatin1String("projected")) {
    return tr("The projected tags in %1 do not lie as one picture on a flat cloth (%2 mm off); check that the grid "
              "file "
              "belongs to the picture that was sent, and that camera and projector stood still.")
        .arg(subject_, QLocale().toString(error_.numbers.empty() ? 0.0 : error_.numbers[0], 'f', 0));
  }
  if (detail_ == QLatin1String("swapped")) {
    return tr("%1 shows tags %2 and %3 in each other's place; swap them, or correct the table file.")
        .arg(subject_, number(0), number(1));
  }
  if (detail_ == QLatin1String("turned")) {
    return tr("%1 shows tag %2 turned by %3 degrees from what the table file says; turn it, or correct the file.")
        .arg(subject_, number(0), number(1));
  }
  if (detail_ == QLatin1String("misplaced")) {
    const QString millimetres =
        error_.numbers.size() > 1 ? QLocale().toString(error_.numbers[1], 'f', 0) : QStringLiteral("?");
    return tr("%1 shows tag %2 about %3 mm from where the table file says; measure it again, and check that the lens "
              "belongs to this camera.")
        .arg(subject_, number(0), millimetres);
  }
  return tr("%1 shows tags that fit no camera position; check the table file and the lens.").arg(subject_);
}

QString ErrorSentence::correctionName() const {
  if (detail_ == QLatin1String("rotation")) return tr("the turn of the picture");
  if (detail_ == QLatin1String("image-scale")) return tr("the image size");
  if (detail_ == QLatin1String("lens")) return tr("the lens");
  if (detail_ == QLatin1String("pose")) return tr("the camera's place");
  return detail_;
}

QString ErrorSentence::sentence() const {
  switch (error_.code) {
    case ErrorCode::FileMissing:
      return tr("There is no file %1; check the path.").arg(subject_);
    case ErrorCode::FileEmpty:
      return tr("%1 is empty; copy or export it again.").arg(subject_);
    case ErrorCode::FileUnreadable:
      return fileUnreadable();
    case ErrorCode::FileNotWritable:
      return tr("%1 cannot be written (%2); choose another folder.").arg(subject_, detail_);
    case ErrorCode::FileMalformed:
      return tr("%1 is not in the expected form (%2); make it again or correct it.").arg(subject_, detail_);
    case ErrorCode::FieldMissing:
      return tr("%1 has no value for \"%2\"; add it.").arg(subject_, detail_);
    case ErrorCode::FieldInvalid:
      return fieldInvalid();
    case ErrorCode::NotAFilm:
      return tr("%1 is not a film that can be read; export it again as MP4 or MKV.").arg(subject_);
    case ErrorCode::FilmWithoutPicture:
      return tr("%1 holds sound but no picture; choose the film itself.").arg(subject_);
    case ErrorCode::FilmTruncated:
      return tr("%1 breaks off before its first whole image; copy it from the camera again.").arg(subject_);
    case ErrorCode::ImageSizeMismatch:
      return imageSizeMismatch();
    case ErrorCode::NotAnImage:
      return tr("%1 is not a picture that can be read; leave it out or export it again as JPEG or PNG.").arg(subject_);
    case ErrorCode::ImageSizesMixed:
      return tr("%1 is %2 while the stills before it are %3; use stills of one camera at one size.")
          .arg(subject_, size(0), size(2));
    case ErrorCode::BoardMalformed:
      return boardMalformed();
    case ErrorCode::BoardNotFound:
      if (detail_ == QLatin1String("blurred")) {
        return tr("Every still that shows the board \"%1\" is blurred; focus, expose shorter or put the board down, "
                  "and "
                  "take them again.")
            .arg(subject_);
      }
      return tr("None of %2 stills shows the whole board \"%1\"; check its counts and keep it flat, sharp and in the "
                "picture.")
          .arg(subject_, number(0));
    case ErrorCode::BoardLayoutOld:
      return tr("The stills show the board \"%1\" in the old layout, with the markers on the other squares; print it "
                "again, or use one with an odd number of rows.")
          .arg(subject_);
    case ErrorCode::ImageMirrored:
      if (detail_ == QLatin1String("projected"))
        return tr("The grid in %1 is mirrored; switch off the projector's mirror or rear setting.").arg(subject_);
      return tr("%1 is mirrored; switch off the mirror setting of the camera and film again.").arg(subject_);
    case ErrorCode::ViewsTooFew:
      return tr("Only %2 stills show the board %1 well enough and %3 are needed; take more.")
          .arg(subject_, number(0), number(1));
    case ErrorCode::CoverageOneSided:
      return coverageOneSided();
    case ErrorCode::LensNotUsable:
      return lensNotUsable();
    case ErrorCode::TagsTooFew:
      return tagsTooFew();
    case ErrorCode::TagsInconsistent:
      return tagsInconsistent();
    case ErrorCode::CorrectionTwice:
      return tr("%1 corrects %2 twice; make the rig again from the film and the lens as they came.")
          .arg(subject_, correctionName());
    case ErrorCode::BallsNotFound:
      return tr("No balls were found in %1; check that the rig and the table file belong to this film.").arg(subject_);
    case ErrorCode::RecordLocked:
      return tr("%1 is in use by another program; close it there and try again.").arg(subject_);
    case ErrorCode::RecordReadOnly:
      if (detail_.isEmpty()) return tr("%1 may only be read; copy it to a folder of your own.").arg(subject_);
      return tr("%1 may only be read (%2); copy it to a folder of your own.").arg(subject_, detail_);
    case ErrorCode::RecordTooNew:
      return tr("%1 was written by a later version (form %2, this one knows %3); update this program.")
          .arg(subject_, number(0), number(1));
    case ErrorCode::RecordNotADatabase:
      if (detail_.isEmpty()) return tr("%1 is not a record; choose another file.").arg(subject_);
      return tr("%1 is not a record (%2); choose another file.").arg(subject_, detail_);
    case ErrorCode::RecordFull:
      return tr("There is no room left to write %1; free some disk space. Nothing that was saved is lost.")
          .arg(subject_);
    case ErrorCode::RecordBroken:
      return tr("%1 is damaged (%2); open the newest backup beside it.").arg(subject_, detail_);
    case ErrorCode::AlreadyRecorded:
      if (detail_.isEmpty()) return tr("%1 is already in the record; choose another name.").arg(subject_);
      return tr("%1 is already in the record as session \"%2\"; add --again to measure it once more beside it.")
          .arg(subject_, detail_);
    case ErrorCode::NotFound:
      if (subject_ == QLatin1String("legal shot")) {
        return tr("%1 leaves no legal shot: no ball that may be played is on the table or can be reached; check the "
                  "balls, the game and the group.")
            .arg(detail_);
      }
      return tr("There is no %1 in %2; check the spelling.").arg(subject_, detail_);
    case ErrorCode::StrikePastMiscue:
      return tr("%1 strikes the ball %2 radii from its centre, past the miscue limit of %3; move the tip point inward.")
          .arg(subject_, number(0), number(1));
    case ErrorCode::BallsOverlap:
      return tr("%1 has the balls %2 overlapping by %3 mm, more than %4; correct their places.")
          .arg(subject_, detail_, number(0), number(1));
    case ErrorCode::BallOutsideTable:
      return tr("%1 has the ball %2 outside the table; correct its place.").arg(subject_, detail_);
    case ErrorCode::Cancelled:
      return tr("Stopped before the end; what was recorded until then is kept.");
  }
  return subject_;
}

}  // namespace

QString errorSentence(const Error& error) {
  return ErrorSentence(error).sentence();
}

}  // namespace ferrule
