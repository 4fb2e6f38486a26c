// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace ferrule {

/// What went wrong in the world outside (files, films, records). The app turns a code into a sentence.
enum class ErrorCode {
  // files
  FileMissing,      ///< subject: the file
  FileEmpty,        ///< subject: the file
  FileUnreadable,   ///< subject: the file; detail: the system's reason
  FileNotWritable,  ///< subject: the file; detail: the system's reason
  FileMalformed,    ///< subject: the file; detail: where the format breaks
  FieldMissing,     ///< subject: the file; detail: the field
  FieldInvalid,     ///< subject: the file; detail: the field; numbers: value, least, most
  // films and stills
  NotAFilm,            ///< subject: the file
  FilmWithoutPicture,  ///< subject: the file (sound only)
  FilmTruncated,       ///< subject: the file
  ImageSizeMismatch,   ///< subject: the film; detail: the lens; numbers: film w, h, lens w, h
  NotAnImage,          ///< subject: the file
  ImageSizesMixed,     ///< subject: the first odd file; numbers: w, h, expected w, h
  // lens and rig
  BoardMalformed,    ///< subject: the board's text; detail: "form", "count", "square", "marker", "dictionary" or
                     ///< "markers"
  BoardNotFound,     ///< subject: the board's text; numbers: stills looked at
  BoardLayoutOld,    ///< subject: the board's text (even number of rows printed before OpenCV 4.6)
  ImageMirrored,     ///< subject: the file; detail: "projected" when it shows a projector's grid, else empty
  ViewsTooFew,       ///< subject: the board's text; numbers: usable views, views needed
  CoverageOneSided,  ///< subject: the board's text; detail: the side or "whole"; numbers: covered share, share needed
  LensNotUsable,     ///< subject: the lens file or the board's text; detail: why ("no-fit", "folds")
  TagsTooFew,        ///< subject: the film, or the table with detail "table", or the picture with detail "projected"
                     ///< (a projector's grid); numbers: tags, tags needed
  TagsInconsistent,  ///< subject: the film; detail: "twice", "swapped", "turned", "misplaced", "no-pose" or
                     ///< "projected-twice" (two projectors' grids); numbers: ids first
  CorrectionTwice,   ///< subject: the file; detail: the kind of correction
  BallsNotFound,     ///< subject: the film
  // simulation
  StrikePastMiscue,  ///< subject: the file or "strike"; numbers: offset in ball radii, limit
  BallsOverlap,      ///< subject: the file or "position"; detail: the two balls; numbers: overlap mm, most allowed
  BallOutsideTable,  ///< subject: the file or "position"; detail: the ball
  // record
  RecordLocked,        ///< subject: the record
  RecordReadOnly,      ///< subject: the record
  RecordTooNew,        ///< subject: the record; numbers: its version, ours
  RecordNotADatabase,  ///< subject: the record
  RecordFull,          ///< subject: the record
  RecordBroken,        ///< subject: the record; detail: the engine's words
  AlreadyRecorded,     ///< subject: the film; detail: the session that holds it
  NotFound,            ///< subject: what was asked for; detail: where
  // general
  Cancelled,
};

/// A failure of the world. Holds what the sentence needs, never the sentence.
struct Error {
  ErrorCode code = ErrorCode::Cancelled;
  std::string subject;          ///< the file, field or thing it is about
  std::string detail;           ///< see ErrorCode
  std::vector<double> numbers;  ///< see ErrorCode

  bool operator==(const Error&) const = default;
};

template <class T>
using Result = tl::expected<T, Error>;

/// Shorthand for returning an Error from a function that returns a Result.
[[nodiscard]] tl::unexpected<Error> failure(ErrorCode code, std::string subject = {}, std::string detail = {},
                                            std::vector<double> numbers = {});

}  // namespace ferrule
