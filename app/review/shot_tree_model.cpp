// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/shot_tree_model.h"

#include <QDateTime>
#include <algorithm>

#include "app/words/joining.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

// An index's internal id says where its parents are: 0 for a session, session + 1 for a frame, and for a shot the frame
// + 1 in the upper half as well.
constexpr int kFrameShift = 32;

quintptr frameLevelId(int session) {
  return static_cast<quintptr>(session) + 1;
}

quintptr shotLevelId(int session, int frame) {
  return frameLevelId(session) | (static_cast<quintptr>(frame) + 1) << kFrameShift;
}

int sessionRow(const QModelIndex& index) {
  return static_cast<int>((index.internalId() & 0xFFFFFFFFu) - 1);
}

int frameRow(const QModelIndex& index) {
  return static_cast<int>((index.internalId() >> kFrameShift) - 1);
}

QDateTime startOf(const SessionSummary& session) {
  return QDateTime::fromMSecsSinceEpoch(session.started).toLocalTime();
}

/// Whether two contents of a session have the same rows.
bool holdsSameShots(const std::vector<FrameContent>& a, const std::vector<FrameContent>& b) {
  return !a.empty() && std::ranges::equal(a, b, [](const FrameContent& one, const FrameContent& other) {
    return one.frame.id == other.frame.id &&
           std::ranges::equal(one.shots, other.shots, {}, &ShotSummary::id, &ShotSummary::id);
  });
}

}  // namespace

ShotTreeModel::ShotTreeModel(QObject* parent) : QAbstractItemModel(parent) {}

void ShotTreeModel::setSessions(std::vector<SessionSummary> sessions) {
  beginResetModel();
  nodes_.clear();
  for (SessionSummary& session : sessions)
    nodes_.push_back({std::move(session), {}, false});
  endResetModel();
}

void ShotTreeModel::setContent(const SessionContent& content) {
  const QModelIndex parent = indexOf(content.session.id);
  if (!parent.isValid()) return;
  Node& node = nodes_[static_cast<std::size_t>(parent.row())];
  if (holdsSameShots(node.frames, content.frames)) {
    node.frames = content.frames;
    for (int row = 0; row < rowCount(parent); ++row) {
      const QModelIndex frame = index(row, 0, parent);
      if (const int shots = rowCount(frame); shots > 0)
        emit dataChanged(index(0, 0, frame), index(shots - 1, ColumnCount - 1, frame));
    }
    return;
  }
  if (!node.frames.empty()) {
    beginRemoveRows(parent, 0, static_cast<int>(node.frames.size()) - 1);
    node.frames.clear();
    endRemoveRows();
  }
  node.asked = true;
  if (content.frames.empty()) return;
  beginInsertRows(parent, 0, static_cast<int>(content.frames.size()) - 1);
  node.frames = content.frames;
  endInsertRows();
}

void ShotTreeModel::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  for (int session = 0; session < rowCount(); ++session) {
    const QModelIndex sessionIndex = index(session, 0);
    for (int frame = 0; frame < rowCount(sessionIndex); ++frame) {
      const QModelIndex frameIndex = index(frame, 0, sessionIndex);
      const int shots = rowCount(frameIndex);
      if (shots > 0) emit dataChanged(index(0, Speed, frameIndex), index(shots - 1, Speed, frameIndex));
    }
  }
}

QModelIndex ShotTreeModel::indexOf(SessionId session) const {
  const auto found = std::ranges::find(nodes_, session, [](const Node& node) { return node.session.id; });
  return found == nodes_.end() ? QModelIndex() : index(static_cast<int>(found - nodes_.begin()), 0);
}

QModelIndex ShotTreeModel::indexOf(ShotId shot) const {
  for (std::size_t s = 0; s < nodes_.size(); ++s) {
    for (std::size_t f = 0; f < nodes_[s].frames.size(); ++f) {
      const auto& shots = nodes_[s].frames[f].shots;
      const auto found = std::ranges::find(shots, shot, &ShotSummary::id);
      if (found == shots.end()) continue;
      return createIndex(static_cast<int>(found - shots.begin()), 0,
                         shotLevelId(static_cast<int>(s), static_cast<int>(f)));
    }
  }
  return {};
}

std::optional<SessionSummary> ShotTreeModel::sessionAt(const QModelIndex& index) const {
  if (!index.isValid()) return std::nullopt;
  return nodeOf(index).session;
}

std::optional<ShotSummary> ShotTreeModel::shotAt(const QModelIndex& index) const {
  if (levelOf(index) != Level::Shot) return std::nullopt;
  return frameOf(index).shots[static_cast<std::size_t>(index.row())];
}

std::optional<ShotSummary> ShotTreeModel::firstShotUnder(const QModelIndex& index) const {
  switch (levelOf(index)) {
    case Level::Shot:
      return shotAt(index);
    case Level::Frame:
      if (frameOf(index).shots.empty()) return std::nullopt;
      return frameOf(index).shots.front();
    case Level::Session:
      for (const FrameContent& frame : nodeOf(index).frames) {
        if (!frame.shots.empty()) return frame.shots.front();
      }
      return std::nullopt;
    case Level::Root:
      break;
  }
  return std::nullopt;
}

ShotTreeModel::Level ShotTreeModel::levelOf(const QModelIndex& index) {
  if (!index.isValid()) return Level::Root;
  if (index.internalId() == 0) return Level::Session;
  return index.internalId() >> kFrameShift == 0 ? Level::Frame : Level::Shot;
}

const ShotTreeModel::Node& ShotTreeModel::nodeOf(const QModelIndex& index) const {
  const int row = levelOf(index) == Level::Session ? index.row() : sessionRow(index);
  return nodes_[static_cast<std::size_t>(row)];
}

const FrameContent& ShotTreeModel::frameOf(const QModelIndex& index) const {
  const int row = levelOf(index) == Level::Frame ? index.row() : frameRow(index);
  return nodeOf(index).frames[static_cast<std::size_t>(row)];
}

QModelIndex ShotTreeModel::index(int row, int column, const QModelIndex& parent) const {
  if (row < 0 || column < 0 || column >= ColumnCount || row >= rowCount(parent)) return {};
  switch (levelOf(parent)) {
    case Level::Root:
      return createIndex(row, column, quintptr{0});
    case Level::Session:
      return createIndex(row, column, frameLevelId(parent.row()));
    case Level::Frame:
      return createIndex(row, column, shotLevelId(sessionRow(parent), parent.row()));
    case Level::Shot:
      break;
  }
  return {};
}

QModelIndex ShotTreeModel::parent(const QModelIndex& child) const {
  switch (levelOf(child)) {
    case Level::Frame:
      return createIndex(sessionRow(child), 0, quintptr{0});
    case Level::Shot:
      return createIndex(frameRow(child), 0, frameLevelId(sessionRow(child)));
    case Level::Root:
    case Level::Session:
      break;
  }
  return {};
}

int ShotTreeModel::rowCount(const QModelIndex& parent) const {
  if (parent.column() > 0) return 0;
  switch (levelOf(parent)) {
    case Level::Root:
      return static_cast<int>(nodes_.size());
    case Level::Session:
      return static_cast<int>(nodeOf(parent).frames.size());
    case Level::Frame:
      return static_cast<int>(frameOf(parent).shots.size());
    case Level::Shot:
      break;
  }
  return 0;
}

int ShotTreeModel::columnCount(const QModelIndex&) const {
  return ColumnCount;
}

bool ShotTreeModel::hasChildren(const QModelIndex& parent) const {
  if (parent.column() > 0) return false;
  if (levelOf(parent) == Level::Session && !nodeOf(parent).asked) return nodeOf(parent).session.frames > 0;
  return rowCount(parent) > 0;
}

bool ShotTreeModel::canFetchMore(const QModelIndex& parent) const {
  return parent.column() <= 0 && levelOf(parent) == Level::Session && !nodeOf(parent).asked;
}

void ShotTreeModel::fetchMore(const QModelIndex& parent) {
  if (!canFetchMore(parent)) return;
  Node& node = nodes_[static_cast<std::size_t>(parent.row())];
  node.asked = true;
  emit contentWanted(node.session.id);
}

QVariant ShotTreeModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  if (role == SessionIdRole) return QVariant::fromValue<qint64>(nodeOf(index).session.id.value);
  if (role == Qt::TextAlignmentRole && index.column() == Speed) return int{Qt::AlignRight | Qt::AlignVCenter};
  switch (levelOf(index)) {
    case Level::Session:
      return sessionData(nodeOf(index), index.column(), role);
    case Level::Frame:
      return frameData(frameOf(index), index.column(), role);
    case Level::Shot:
      return shotData(frameOf(index).shots[static_cast<std::size_t>(index.row())], index.column(), role);
    case Level::Root:
      break;
  }
  return {};
}

QVariant ShotTreeModel::sessionData(const Node& node, int column, int role) const {
  const SessionSummary& session = node.session;
  const QString name = QString::fromStdString(session.name);
  const QString date = numbers_.locale().toString(startOf(session).date(), QLocale::ShortFormat);
  if (role == Qt::DisplayRole) {
    if (column == What) return name;
    if (column == Speed) return date;
  }
  if (role == Qt::ToolTipRole || role == Qt::AccessibleDescriptionRole) {
    const QString shots = tr("%n shot(s)", nullptr, session.shots);
    const QString start = numbers_.locale().toString(startOf(session), QLocale::LongFormat);
    return QStringLiteral("%1\n%2\n%3").arg(name, start, shots);
  }
  return {};
}

QVariant ShotTreeModel::frameData(const FrameContent& frame, int column, int role) const {
  if (role == Qt::DisplayRole) {
    if (column == What) {
      const QString number = tr("Frame %1").arg(frame.frame.number);
      return frame.frame.game.empty() ? number : QStringLiteral("%1 · %2").arg(number, gameWords(frame.frame.game));
    }
    if (column == Speed) return tr("%n shot(s)", nullptr, static_cast<int>(frame.shots.size()));
  }
  if (role == Qt::ToolTipRole && !frame.frame.complete)
    return tr("Still running, or its film was not read to the end.");
  return {};
}

QVariant ShotTreeModel::shotData(const ShotSummary& shot, int column, int role) const {
  switch (role) {
    case Qt::DisplayRole:
      if (column == What) return shotWords(shot);
      // The mark of a value that a person had a hand in.
      if (column == Result)
        return outcomeWords(shot.outcome) + (shot.corrected ? QStringLiteral("\u2009*") : QString());
      return shot.delivery.speed_mps ? numbers_.speed(shot.delivery.speed_mps->value) : tr("–", "speed not observable");
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole: {
      QStringList text{tr("Shot %1, %2, %3").arg(shot.number).arg(shotWords(shot), outcomeWords(shot.outcome))};
      if (shot.delivery.speed_mps) text << numbers_.speed(shot.delivery.speed_mps->value);
      if (!shot.playerName.empty()) text << QString::fromStdString(shot.playerName);
      if (shot.verdict == Verdict::Ask) text << verdictWords(shot.verdict);
      if (shot.corrected) text << tr("corrected by a person");
      return listOf(text);
    }
    case ShotIdRole:
      return QVariant::fromValue<qint64>(shot.id.value);
    case OutcomeRole:
      return static_cast<int>(shot.outcome);
    case VerdictRole:
      return static_cast<int>(shot.verdict);
    case NumberRole:
      return shot.number;
    default:
      return {};
  }
}

QVariant ShotTreeModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  switch (section) {
    case What:
      return tr("Shot");
    case Result:
      return tr("Result");
    case Speed:
      return tr("Speed");
    default:
      return {};
  }
}

}  // namespace ferrule
