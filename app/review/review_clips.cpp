// SPDX-License-Identifier: GPL-3.0-or-later
// Short films of single shots, saved from Review.
#include <QDateTime>
#include <QFileDialog>
#include <QStringList>
#include <algorithm>
#include <array>

#include "app/review/review_place.h"
#include "app/words/error_sentence.h"

namespace ferrule {

namespace {

/// One sentence for everybody whose word is missing.
QString obstacleSentence(const std::vector<ClipObstacle>& obstacles) {
  QStringList grown;
  QStringList minors;
  for (const ClipObstacle& obstacle : obstacles)
    (obstacle.minor ? minors : grown) << QString::fromStdString(obstacle.name);
  QStringList sentences;
  if (!minors.isEmpty()) {
    sentences << ReviewPlace::tr("No guardian's consent to films that are handed on is noted for: %1.")
                     .arg(minors.join(QStringLiteral(", ")));
  }
  if (!grown.isEmpty()) {
    sentences << ReviewPlace::tr("No consent to films that are handed on is noted for: %1.")
                     .arg(grown.join(QStringLiteral(", ")));
  }
  sentences << ReviewPlace::tr("Note it in Players, or save the plan as a clip: it shows nobody.");
  return sentences.join(QLatin1Char(' '));
}

}  // namespace

void ReviewPlace::connectClips() {
  connect(&clips_, &ClipDesk::written, this, [this](const QString& path, qint64 images) {
    tell(tr("The clip is in %1 (%n image(s)).", nullptr, static_cast<int>(images)).arg(path));
  });
  connect(&clips_, &ClipDesk::refused, this,
          [this](const std::vector<ClipObstacle>& obstacles) { tell(obstacleSentence(obstacles)); });
  connect(&clips_, &ClipDesk::failed, this, [this](const Error& error) { tell(errorSentence(error)); });
}

void ReviewPlace::chooseClipFile() {
  const auto shot = desk_.shot();
  if (!shot) return;
  const std::array kinds{std::pair{ClipKind::FilmWithWays, tr("Film with the ways drawn over it (*.mp4 *.avi)")},
                         std::pair{ClipKind::Film, tr("Film alone (*.mp4 *.avi)")},
                         std::pair{ClipKind::Plan, tr("Plan of the table (*.mp4 *.avi)")}};
  QStringList filters;
  for (const auto& [kind, words] : kinds) {
    if (kind == ClipKind::Plan || !desk_.recordedFilm().isEmpty()) filters << words;
  }
  QString chosen;
  const QString path =
      QFileDialog::getSaveFileName(this, tr("Save a clip"), tr("shot-%1.mp4").arg(shot->reading.number),
                                   filters.join(QStringLiteral(";;")), &chosen);
  if (path.isEmpty()) return;
  ClipKind wanted = desk_.recordedFilm().isEmpty() ? ClipKind::Plan : ClipKind::FilmWithWays;
  for (const auto& [kind, words] : kinds) {
    if (words == chosen) wanted = kind;
  }
  saveClip(wanted, path);
}

std::vector<std::string> ReviewPlace::peopleOnFilm() {
  const auto content = desk_.content();
  if (!content || !desk_.shot()) return {};
  std::vector<std::string> people = content->session.players;
  const std::string& player = desk_.shot()->playerName;
  if (!player.empty() && std::ranges::find(people, player) == people.end()) people.push_back(player);
  return people;
}

void ReviewPlace::saveClip(ClipKind kind, const QString& path) {
  const auto shot = desk_.shot();
  const auto content = desk_.content();
  if (!shot || !content) return;
  ClipWish wish;
  wish.kind = kind;
  // A file without an ending would have no container.
  wish.path = (QFileInfo(path).suffix().isEmpty() ? path + QStringLiteral(".mp4") : path).toStdString();
  wish.record = desk_.recordPath().toStdString();
  wish.players = peopleOnFilm();
  wish.film = desk_.film().path().toStdString();
  if (desk_.frame() != nullptr) wish.rig = desk_.frame()->rig;
  wish.shot = shot;
  wish.table = content->table;
  wish.inks = inksFor(palette());
  wish.now = QDateTime::currentMSecsSinceEpoch();
  tell({});
  clips_.write(wish);
}

}  // namespace ferrule
