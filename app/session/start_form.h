// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QButtonGroup>
#include <QWidget>
#include <memory>

#include "app/live/live_source.h"
#include "core/measure/film_in_record.h"
#include "core/measure/hand_session.h"
#include "core/measure/measure.h"

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QSettings;

namespace ferrule {

class CameraChoice;
class PathField;
class RigChoice;

/// How a session comes into the record.
enum class SessionWay { ByHand, FromFilm, Live };

/// What a session needs before its first shot: game, players, what it is for, and where it comes from. Shown while no
/// session runs.
class StartForm : public QWidget {
  Q_OBJECT
 public:
  explicit StartForm(QWidget* parent = nullptr);

  /// path: where the session will be kept. broken: the name of a session that was broken off; empty for none.
  void setRecord(const QString& path, const QString& broken);
  void setWay(SessionWay way);
  [[nodiscard]] SessionWay way() const { return way_; }
  /// To measure this film.
  void setFilm(const QString& path);
  /// The film that was wanted is in the record already; what may be done about it is offered until another is chosen.
  void setKnownFilm(const std::optional<FilmInRecord>& known);
  /// What does not belong together of the chosen film and rig; empty: nothing is known to be wrong.
  void setMisfit(const QString& words);

  void save(QSettings& settings) const;
  void restore(const QSettings& settings);

 signals:
  void beginWanted(const ferrule::HandTerms& terms, ferrule::SessionKind kind);
  void resumeWanted();
  /// options: without its record.
  /// despiteCheck: although film and rig do not belong together.
  void filmWanted(const ferrule::MeasureOptions& options, bool despiteCheck);
  /// The same with a camera; source is not started yet.
  /// keepsFilm: beside the record.
  void liveWanted(const ferrule::MeasureOptions& options, std::shared_ptr<ferrule::LiveSource> source, bool keepsFilm);
  /// The shots of the session that holds the film already.
  void lookWanted(ferrule::SessionId session);
  void setUpWanted();
  /// A table that cannot be read.
  void failed(const ferrule::Error& error);
  /// Something is missing.
  void said(const QString& sentence);

 protected:
  /// Looks again which rigs there are.
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* makeWays();
  void makeSource(QFormLayout* form);
  void makeTerms(QFormLayout* form);
  void makeEnd(QFormLayout* form);
  void begin();
  void beginByHand();
  [[nodiscard]] QString chosenRig() const;
  void beginFilm(bool again, bool despiteCheck = false);
  void beginLive();
  /// What is measured with and for whom; nothing, and said so, where the rig or its table is missing.
  [[nodiscard]] std::optional<MeasureOptions> measureOptions();
  [[nodiscard]] SessionKind kind() const;
  [[nodiscard]] std::vector<std::string> players() const;
  void showWay();
  void showName();
  void showRigSize();

  SessionWay way_ = SessionWay::ByHand;
  QButtonGroup ways_;
  QFormLayout* form_;
  QLabel* title_;
  QLabel* words_;
  PathField* film_;
  RigChoice* rig_;
  CameraChoice* camera_;
  QCheckBox* keepsFilm_;
  QLineEdit* name_;
  QComboBox* game_;
  QLineEdit* players_;
  QComboBox* table_;
  QComboBox* kind_;
  QLabel* recordWords_;
  QPushButton* begin_;
  QLabel* brokenWords_;
  QPushButton* resume_;
  QWidget* misfitNote_;
  QLabel* misfitWords_;
  QString misfitRig_;  ///< that the words speak of
  QWidget* knownNote_;
  QLabel* knownWords_;
  QPushButton* look_;
  QPushButton* again_;
  std::optional<FilmInRecord> known_;
};

}  // namespace ferrule
