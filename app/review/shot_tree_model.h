// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractItemModel>
#include <optional>
#include <vector>

#include "app/review/review_source.h"
#include "app/words/numbers.h"

namespace ferrule {

/// Sessions, their frames, their shots. A session's content is asked for when it is first needed.
class ShotTreeModel : public QAbstractItemModel {
  Q_OBJECT
 public:
  enum Column { What, Result, Speed, ColumnCount };
  enum Role {
    ShotIdRole = Qt::UserRole,  ///< qint64, for shots
    OutcomeRole,                ///< int of Outcome, for shots
    VerdictRole,                ///< int of Verdict, for shots
    NumberRole,                 ///< int, for shots
    SessionIdRole,              ///< qint64, for every row
  };

  explicit ShotTreeModel(QObject* parent = nullptr);

  void setSessions(std::vector<SessionSummary> sessions);
  /// Fills one session; ignored for a session that is not listed.
  void setContent(const SessionContent& content);
  void setNumbers(const Numbers& numbers);

  [[nodiscard]] QModelIndex indexOf(SessionId session) const;
  /// Invalid while the shot's session has not been filled.
  [[nodiscard]] QModelIndex indexOf(ShotId shot) const;
  [[nodiscard]] std::optional<SessionSummary> sessionAt(const QModelIndex& index) const;
  [[nodiscard]] std::optional<ShotSummary> shotAt(const QModelIndex& index) const;
  /// The first shot at or below an index, if its session has been filled.
  [[nodiscard]] std::optional<ShotSummary> firstShotUnder(const QModelIndex& index) const;

  QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
  QModelIndex parent(const QModelIndex& child) const override;
  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  bool hasChildren(const QModelIndex& parent = {}) const override;
  bool canFetchMore(const QModelIndex& parent) const override;
  void fetchMore(const QModelIndex& parent) override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 signals:
  void contentWanted(ferrule::SessionId session);

 private:
  struct Node {
    SessionSummary session;
    std::vector<FrameContent> frames;
    bool asked = false;
  };

  enum class Level { Root, Session, Frame, Shot };
  [[nodiscard]] static Level levelOf(const QModelIndex& index);
  [[nodiscard]] const Node& nodeOf(const QModelIndex& index) const;
  [[nodiscard]] const FrameContent& frameOf(const QModelIndex& index) const;
  [[nodiscard]] QVariant sessionData(const Node& node, int column, int role) const;
  [[nodiscard]] QVariant frameData(const FrameContent& frame, int column, int role) const;
  [[nodiscard]] QVariant shotData(const ShotSummary& shot, int column, int role) const;

  std::vector<Node> nodes_;
  Numbers numbers_;
};

}  // namespace ferrule
