// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/review_place.h"

#include <QDateTime>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>
#include <QSettings>
#include <QSignalBlocker>
#include <QSplitter>
#include <QStackedWidget>
#include <QTreeView>

#include "app/picture/film_view.h"
#include "app/picture/plan_view.h"
#include "app/progress/progress_service.h"
#include "app/review/compare_view.h"
#include "app/review/remarks_section.h"
#include "app/review/review_words.h"
#include "app/review/shot_filter.h"
#include "app/review/shot_panel.h"
#include "app/review/shot_tree_model.h"
#include "app/review/time_line.h"
#include "app/session/table_editor.h"
#include "app/window/message_bar.h"
#include "app/words/error_sentence.h"

namespace ferrule {

bool ReviewPlace::act(ActionId action) {
  Playhead& playhead = desk_.playhead();
  PictureView& plan = moving_ ? static_cast<PictureView&>(*editor_) : *plan_;
  PictureView& picture = mode_ == PictureMode::Film ? static_cast<PictureView&>(*film_) : plan;
  switch (action) {
    case ActionId::ShowPlan:
      setMode(PictureMode::Plan);
      return true;
    case ActionId::ShowFilm:
      setMode(PictureMode::Film);
      return true;
    case ActionId::ShowBoth:
      setMode(PictureMode::Both);
      return true;
    case ActionId::ZoomIn:
      picture.zoomIn();
      return true;
    case ActionId::ZoomOut:
      picture.zoomOut();
      return true;
    case ActionId::ZoomFit:
      plan_->fit();
      editor_->fit();
      film_->fit();
      return true;
    case ActionId::Play:
      playsList_ = false;
      playhead.toggle();
      return true;
    case ActionId::ImageBack:
      playhead.step(-1);
      return true;
    case ActionId::ImageOn:
      playhead.step(1);
      return true;
    case ActionId::EventBack:
      desk_.stepEvents(-1);
      return true;
    case ActionId::EventOn:
      desk_.stepEvents(1);
      return true;
    case ActionId::ShowSuggestion:
      showsSuggested_ = !showsSuggested_;
      showSuggested();
      return true;
    case ActionId::ShotBack:
    case ActionId::ShotOn: {
      const int step = action == ActionId::ShotOn ? 1 : -1;
      if (lists_->currentWidget() == filter_) {
        filter_->step(step);
      } else {
        desk_.stepShots(step);
      }
      return true;
    }
    case ActionId::FilterShots:
      if (desk_.sessions().empty()) return true;
      if (lists_->currentWidget() == filter_) {
        lists_->setCurrentWidget(tree_);
        tree_->setFocus();
      } else {
        lists_->setCurrentWidget(filter_);
        filter_->focusConditions();
        askForList();
      }
      return true;
    case ActionId::PlayList:
      playList();
      return true;
    default:
      return correct(action);
  }
}

void ReviewPlace::openRecord(const QString& path) {
  desk_.openRecord(path);
}

void ReviewPlace::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  model_->setNumbers(numbers);
  timeLine_->setNumbers(numbers);
  panel_->setNumbers(numbers);
  remarks_->setNumbers(numbers);
  compare_->setNumbers(numbers);
  showContent();
  showMoment();
}

void ReviewPlace::setMode(PictureMode mode) {
  if (compare_->held()) compareShots();  // ends it
  mode_ = mode;
  planStack_->setVisible(mode != PictureMode::Film);
  filmStack_->setVisible(mode != PictureMode::Plan);
  emit actionsChanged();
  askForPicture();
}

void ReviewPlace::connectDesk() {
  connect(&desk_, &ReviewDesk::recordOpened, this, [this] {
    tell({});
    model_->setSessions(desk_.sessions());
    filter_->setSessions(desk_.sessions());
    stack_->setCurrentIndex(desk_.sessions().empty() ? 0 : 1);
    takesFocus_ = true;
    if (desk_.sessions().empty()) tell(tr("%1 holds no session yet.").arg(desk_.recordPath()));
    playsList_ = false;
    lists_->setCurrentWidget(tree_);
    query_->open(desk_.recordPath());
    if (wantedList_ && wantedList_->record == desk_.recordPath()) showShots(*std::exchange(wantedList_, {}));
  });
  connect(&desk_, &ReviewDesk::sessionRead, this, [this](const SessionContent& content) {
    // Rows that come and go move the tree's own choice; what is shown stays.
    followsTree_ = false;
    model_->setContent(content);
    followsTree_ = true;
    const QModelIndex session = model_->indexOf(content.session.id);
    for (int frame = 0; frame < model_->rowCount(session); ++frame) {
      tree_->expand(model_->index(frame, 0, session));
    }
    if (desk_.content() && desk_.content()->session.id == content.session.id) showShot();
  });
  connect(&desk_, &ReviewDesk::contentChanged, this, &ReviewPlace::showContent);
  connect(&desk_, &ReviewDesk::shotChanged, this, &ReviewPlace::showShot);
  connect(&desk_, &ReviewDesk::moved, this, &ReviewPlace::showMoment);
  connect(&desk_, &ReviewDesk::failed, this, [this](const Error& error, bool) { tell(errorSentence(error)); });
  connect(&desk_.film(), &FilmService::pictureRead, this, [this](const FilmPicture& picture) {
    film_->setPicture(picture);
    showFilmState();
  });
  connect(&desk_.film(), &FilmService::timesChanged, this, [this] {
    if (desk_.film().times().empty()) film_->clearPicture();
    showFilmState();
    askForPicture();
  });
  connect(&desk_.film(), &FilmService::errorChanged, this, &ReviewPlace::showFilmState);
}

void ReviewPlace::connectViews() {
  connect(model_, &ShotTreeModel::contentWanted, &desk_, &ReviewDesk::readSession);
  connect(tree_->selectionModel(), &QItemSelectionModel::currentChanged, this, &ReviewPlace::takeChosen);
  connect(timeLine_, &TimeLine::seekWanted, &desk_, &ReviewDesk::seekSession);
  connect(panel_, &ShotPanel::timeChosen, this, [this](double time_s) {
    desk_.playhead().pause();
    desk_.playhead().seek(time_s);
  });
  const auto light = [this](std::optional<BallName> ball) {
    plan_->setLit(ball);
    film_->setLit(ball);
  };
  connect(plan_, &PictureView::pointed, this, light);
  connect(film_, &PictureView::pointed, this, light);
  connect(filmButton_, &QPushButton::clicked, this, &ReviewPlace::findFilm);
}

void ReviewPlace::takeChosen() {
  if (!followsTree_) return;
  const QModelIndex chosen = tree_->currentIndex();
  const auto session = model_->sessionAt(chosen);
  if (!session) return;
  if (const auto shot = model_->firstShotUnder(chosen)) {
    desk_.showShot(session->id, shot->id);
  } else {
    desk_.showSession(session->id);
  }
}

void ReviewPlace::showContent() {
  const auto content = desk_.content();
  timeLine_->setContent(content, desk_.axis());
  title_->setText(content ? QString::fromStdString(content->session.name) : QString());
  subtitle_->setText(content ? sessionWords(content->session, numbers_) : QString());
  if (content) {
    filter_->setTags(content->tags);
    plan_->setTable(content->table);
    editor_->setTable(content->table);
    film_->setBallSet(content->table.balls);
  }
}

void ReviewPlace::showShot() {
  const auto shot = desk_.shot();
  const FrameContent* frame = desk_.frame();
  plan_->setShot(shot);
  film_->setShot(shot);
  // What is drawn over the film follows the camera.
  const bool filmed = frame != nullptr && frame->rig.has_value();
  film_->setRig(filmed ? std::optional(rigAt(*frame->rig, frame->moves, shot ? shot->reading.strike_s : 0.0))
                       : std::nullopt);
  std::optional<double> moved_m;
  if (filmed && shot) {
    for (const CameraMove& move : frame->moves) {
      if (isDuring(move, shot->reading.strike_s, shot->reading.rest_s)) moved_m = move.moved_m;
    }
  }
  panel_->setCameraMoved(moved_m);
  suggested_.reset();
  if (const auto content = desk_.content()) {
    if (shot) suggested_ = suggestedShot(*shot, content->table);
    panel_->setShot(shot, content->table, content->session.players,
                    suggested_ ? std::optional(suggested_->kept) : std::nullopt);
  } else {
    panel_->setShot(shot, MeasuredTable{});
  }
  remarks_->setShot(shot, desk_.content() ? desk_.content()->tags : std::vector<std::string>());
  if (nudgeIsSaid_) nudged_.reset();
  showMoving();
  showSuggested();
  showCompared();
  if (shot) {
    const QModelIndex index = model_->indexOf(shot->id);
    if (index.isValid() && model_->firstShotUnder(tree_->currentIndex()).value_or(ShotSummary{}).id != shot->id) {
      followsTree_ = false;
      tree_->setCurrentIndex(index);
      tree_->scrollTo(index);
      followsTree_ = true;
    }
    // Not before a row is current: a list that gets the focus without one chooses its first.
    if (takesFocus_ && index.isValid()) {
      takesFocus_ = false;
      tree_->setFocus();
    }
  }
  showFilmState();
  showMoment();
}

void ReviewPlace::showSuggested() {
  if (!suggested_ || !showsSuggested_) {
    plan_->setSuggested({}, {}, {});
    return;
  }
  const KeptSuggestion& kept = suggested_->kept;
  plan_->setSuggested(suggested_->ways, kept.suggestion.plans.front().chances.leave,
                      kept.review ? std::optional(kept.review->taken.chances.leave) : std::nullopt);
}

void ReviewPlace::showMoment() {
  const auto shot = desk_.shot();
  const double time_s = desk_.playhead().time_s();
  plan_->setTime(time_s);
  panel_->setTime(time_s, desk_.playhead().spacing_s());
  timeLine_->setNow(shot ? shot->id : ShotId{}, desk_.sessionTime_s());
  moment_->setText(shot ? momentWords(*shot, desk_.playhead(), desk_.countsFilmImages(), numbers_) : QString());
  askForPicture();
}

void ReviewPlace::askForPicture() {
  if (mode_ == PictureMode::Plan || desk_.film().times().empty()) return;
  if (film_->hasPicture() && film_->picture().time_s == desk_.playhead().time_s()) return;
  desk_.film().request(desk_.playhead().time_s());
}

void ReviewPlace::showFilmState() {
  const bool canShow = film_->hasPicture() && !desk_.film().path().isEmpty() && !desk_.film().error();
  filmStack_->setCurrentIndex(canShow ? 0 : 1);
  if (canShow) return;
  filmButton_->hide();
  if (!desk_.shot()) {
    filmWords_->setText(tr("Choose a shot to see its film."));
  } else if (desk_.recordedFilm().isEmpty() && desk_.shot()->film) {
    filmWords_->setText(tr("This frame was measured live: nobody kept its film. The plan shows it."));
  } else if (desk_.recordedFilm().isEmpty()) {
    filmWords_->setText(tr("This frame was put in by hand: it has no film. The plan shows it."));
  } else if (desk_.film().error()) {
    filmWords_->setText(tr("%1 The plan still shows what was measured.").arg(errorSentence(*desk_.film().error())));
    filmButton_->show();
  } else {
    filmWords_->setText(tr("Reading the film…"));
  }
}

void ReviewPlace::findFilm() {
  const QString recorded = desk_.recordedFilm();
  const QString name = QFileInfo(recorded).fileName();
  const QString path = QFileDialog::getOpenFileName(this, tr("Where is %1?").arg(name), QString(),
                                                    tr("Films (%1);;All files (*)").arg(name));
  if (path.isEmpty()) return;
  QSettings settings;
  QVariantMap places = settings.value(QStringLiteral("review/filmPlaces")).toMap();
  places.insert(recorded, path);
  settings.setValue(QStringLiteral("review/filmPlaces"), places);
  desk_.setFilmPlace(recorded, path);
}

void ReviewPlace::tell(const QString& sentence) {
  message_->tell(sentence);
}

void ReviewPlace::save(QSettings& settings) const {
  const auto put = [&settings](const char* key, const QVariant& value) {
    settings.setValue(QStringLiteral("review/") + QLatin1String(key), value);
  };
  put("record", desk_.recordPath());
  put("session", desk_.content() ? QVariant::fromValue<qint64>(desk_.content()->session.id.value) : QVariant());
  put("shot", desk_.shot() ? QVariant::fromValue<qint64>(desk_.shot()->id.value) : QVariant());
  put("mode", static_cast<int>(mode_));
  put("suggested", showsSuggested_);
  put("who", corrections_.who());
  put("muted", sound_.isMuted());
  put("columns", columns_->saveState());
  put("pictures", pictures_->saveState());
  put("planZoom", plan_->zoom());
  put("planCentre", plan_->centre());
  put("filmZoom", film_->zoom());
  put("filmCentre", film_->centre());
}

void ReviewPlace::restore(const QSettings& settings) {
  const auto get = [&settings](const char* key) {
    return settings.value(QStringLiteral("review/") + QLatin1String(key));
  };
  columns_->restoreState(get("columns").toByteArray());
  pictures_->restoreState(get("pictures").toByteArray());
  setMode(static_cast<PictureMode>(std::clamp(get("mode").toInt(), 0, 2)));
  if (get("suggested").isValid()) showsSuggested_ = get("suggested").toBool();
  sound_.setMuted(get("muted").toBool());
  const auto zoom = [&](PictureView& view, const char* zoomKey, const char* centreKey) {
    if (get(zoomKey).isValid()) view.setZoom(get(zoomKey).toDouble(), get(centreKey).toPointF());
  };
  zoom(*plan_, "planZoom", "planCentre");
  zoom(*film_, "filmZoom", "filmCentre");
  corrections_.setWho(get("who").isValid() ? get("who").toString() : tr("Coach"));
  remarks_->setWho(corrections_.who());
  const QVariantMap places = get("filmPlaces").toMap();
  for (auto place = places.begin(); place != places.end(); ++place) {
    desk_.setFilmPlace(place.key(), place.value().toString());
  }
  const QString record = get("record").toString();
  if (!record.isEmpty()) {
    desk_.openRecord(record, {SessionId{get("session").toLongLong()}, ShotId{get("shot").toLongLong()}});
  }
}

}  // namespace ferrule
