// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions that a film or a camera tells: how the Session place joins their desks with what it shows.
#include "app/projector/projector_desk.h"
#include "app/session/demo_session.h"
#include "app/session/film_page.h"
#include "app/session/live_page.h"
#include "app/session/live_words.h"
#include "app/session/measuring_words.h"
#include "app/session/session_place.h"
#include "app/session/start_form.h"
#include "app/words/error_sentence.h"

namespace ferrule {

void SessionPlace::connectFilm() {
  connect(start_, &StartForm::said, this, &SessionPlace::tell);
  connect(start_, &StartForm::setUpWanted, this, [this] { emit placeWanted(QStringLiteral("setup")); });
  connect(start_, &StartForm::filmWanted, this, [this](MeasureOptions options, bool despiteCheck) {
    options.record = recordPath().toStdString();
    film_.start(options, despiteCheck);
  });
  connect(&film_, &FilmDesk::doubted, this,
          [this] { start_->setMisfit(misfitWords(*film_.check(), film_.checkNames(), numbers_)); });
  connect(start_, &StartForm::lookWanted, this, [this](SessionId session) { film_.list(recordPath(), session); });
  connect(filmPage_, &FilmPage::lookWanted, this, [this] {
    // The demo has a record of its own.
    const QString record = QString::fromStdString(film_.options().record);
    if (record != recordPath()) emit recordWanted(record);
    look(film_.options(), film_.session());
  });
  connect(filmPage_, &FilmPage::closeWanted, this, [this] {
    tell({});
    film_.close();
    start_->setFocus();
  });
  connect(&film_, &FilmDesk::changed, this, &SessionPlace::refresh);
  connect(&film_, &FilmDesk::listed, this, &SessionPlace::shotsWanted);
  connect(&film_, &FilmDesk::failed, this, [this](const Error& error) { tell(errorSentence(error)); });
  connect(&film_, &FilmDesk::refused, this, [this](const Error& error, const std::optional<FilmInRecord>& known) {
    start_->setKnownFilm(known);
    tell(known ? QString() : errorSentence(error));
  });
}

void SessionPlace::connectLive() {
  connect(start_, &StartForm::liveWanted, this,
          [this](MeasureOptions options, const std::shared_ptr<LiveSource>& source, bool keepsFilm) {
            options.record = recordPath().toStdString();
            live_.start(options, source, keepsFilm);
          });
  connect(livePage_, &LivePage::lookWanted, this, [this] { look(live_.options(), live_.session()); });
  connect(livePage_, &LivePage::closeWanted, this, [this] {
    tell({});
    live_.close();
    start_->setFocus();
  });
  const auto tellError = [this](const Error& error) { tell(errorSentence(error)); };
  connect(&live_, &LiveDesk::changed, this, &SessionPlace::refresh);
  connect(&live_, &LiveDesk::refused, this, tellError);
  connect(&live_, &LiveDesk::failed, this, tellError);
  connect(&live_, &LiveDesk::said, this, &SessionPlace::tell);
  // The session's own camera sees who leans over the table.
  connect(projector_, &ProjectorDesk::changed, this, [this] { live_.watchForPeople(!projector_->shown().isEmpty()); });
  connect(&live_, &LiveDesk::somebodyLeans, projector_, &ProjectorDesk::setSomebodyLeans);
  connect(&live_, &LiveDesk::checked, this, [this] {
    if (isMisfit(*live_.lastCheck())) tell(liveCheckWords(live_, numbers_));
  });
}

void SessionPlace::look(const MeasureOptions& options, std::optional<SessionId> session) {
  if (session) film_.list(QString::fromStdString(options.record), *session);
}

bool SessionPlace::makeRoomForFilm() {
  const bool live = live_.state() != LiveState::None && live_.state() != LiveState::Done;
  if (desk_.hand() != nullptr || film_.state() == FilmState::Measuring || live) {
    tell(tr("A session is under way: end it before another film is measured."));
    return false;
  }
  film_.close();
  live_.close();
  return true;
}

bool SessionPlace::openFilm(const QString& path) {
  if (makeRoomForFilm()) start_->setFilm(path);
  return true;
}

bool SessionPlace::measureDemo(const QString& folder) {
  if (makeRoomForFilm()) film_.start(demoOptions(folder));
  return true;
}

bool SessionPlace::actLive(ActionId action) {
  switch (action) {
    case ActionId::ShowSuggestion:
      live_.showSuggestion(!live_.suggestion().isWanted(), livePage_->level());
      return true;
    case ActionId::EndSession:
      live_.stop();
      return true;
    case ActionId::CheckAgain:
      live_.checkNow();
      return true;
    default:
      return livePage_->act(action);
  }
}

}  // namespace ferrule
