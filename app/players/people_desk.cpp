// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/players/people_desk.h"

#include <algorithm>
#include <utility>

#include "app/words/error_sentence.h"
#include "core/record/export_record.h"

namespace ferrule {

namespace {

/// What the two ways of a step tell each other; touched on the service's thread, read on the window's when it is told.
template <class T>
std::shared_ptr<T> shared(T value = {}) {
  return std::make_shared<T>(std::move(value));
}

Result<QString> endOf(const Result<void>& done) {
  if (!done) return tl::make_unexpected(done.error());
  return QString();
}

QString named(const std::string& name) {
  return QString::fromStdString(name);
}

}  // namespace

PeopleDesk::PeopleDesk(Clock clock, QObject* parent) : QObject(parent), clock_(std::move(clock)) {
  connect(&service_, &PeopleService::read, this,
          [this](const QString& record, std::shared_ptr<const std::vector<PersonRow>> people) {
            if (record != path_) return;
            people_ = std::move(people);
            emit changed();
          });
  connect(&service_, &PeopleService::looked, this, [this](std::shared_ptr<const Person> person) {
    if (person && person->details.player.id != chosen_) return;
    person_ = std::move(person);
    emit changed();
  });
  connect(&service_, &PeopleService::edited, this, &PeopleDesk::ended);
  connect(&service_, &PeopleService::failed, this, [this](const Error& error) { emit told(errorSentence(error)); });
}

const std::vector<PersonRow>& PeopleDesk::people() const {
  static const std::vector<PersonRow> kNobody;
  return people_ ? *people_ : kNobody;
}

void PeopleDesk::openRecord(const QString& path) {
  if (path != path_) {
    person_ = nullptr;
    people_ = nullptr;
  }
  path_ = path;
  done_.clear();
  undone_.clear();
  pending_.clear();
  service_.open(path);
  service_.look(chosen_);
}

void PeopleDesk::choose(PlayerId player) {
  if (player == chosen_ && (person_ || !player)) return;
  chosen_ = player;
  person_ = nullptr;
  service_.look(player);
  emit changed();
}

void PeopleDesk::add(const PersonDetails& details) {
  const auto id = shared<PlayerId>();
  const auto removed = shared<std::optional<Person>>();
  PeopleStep step;
  step.name = tr("add %1").arg(named(details.player.name));
  step.redo = [details, id, removed](Record& record) -> Result<QString> {
    if (*removed) return endOf(restorePerson(record, **removed));
    const auto added = addPerson(record, details);
    if (!added) return tl::make_unexpected(added.error());
    *id = *added;
    return QString();
  };
  step.undo = [name = named(details.player.name), id, removed](Record& record) -> Result<QString> {
    auto taken = removeUnplayed(record, *id);
    if (!taken) return tl::make_unexpected(taken.error());
    if (!*taken) return tr("%1 has played meanwhile and stays.").arg(name);
    *removed = std::move(*taken);
    return QString();
  };
  step.shown = [id] { return *id; };
  take(std::move(step), Way::New);
}

void PeopleDesk::addGuest(const QString& word) {
  PersonDetails details;
  const std::string start = word.toStdString();
  for (int number = 1;; ++number) {
    details.player.name = start + ' ' + std::to_string(number);
    const auto isTaken = [&](const PersonRow& row) { return row.details.player.name == details.player.name; };
    if (std::ranges::none_of(people(), isTaken)) break;
  }
  details.player.guest = true;
  add(details);
}

void PeopleDesk::update(const PersonDetails& details) {
  if (!person_ || details == person_->details) return;
  const PersonDetails before = person_->details;
  PeopleStep step;
  step.name = before.player.name == details.player.name
                  ? tr("change %1").arg(named(before.player.name))
                  : tr("rename %1 to %2").arg(named(before.player.name), named(details.player.name));
  step.redo = [details](Record& record) { return endOf(updatePerson(record, details)); };
  step.undo = [before](Record& record) { return endOf(updatePerson(record, before)); };
  step.shown = [id = before.player.id] { return id; };
  take(std::move(step), Way::New);
}

void PeopleDesk::noteConsent(ConsentEntry entry) {
  if (!person_) return;
  entry.player = chosen_;
  entry.notedBy = author_.toStdString();
  entry.noted = clock_();
  const auto line = shared<std::string>();    // of the entry
  const auto strike = shared<std::string>();  // of the last line that struck it out
  PeopleStep step;
  step.name = (entry.event == ConsentEvent::Given ? tr("note consent of %1") : tr("withdraw consent of %1"))
                  .arg(named(person_->details.player.name));
  // Nothing leaves the ledger: undo strikes the line out, redo strikes out the strike.
  const auto strikeOut = [clock = clock_, who = entry.notedBy](Record& record, const std::string& uid,
                                                               std::string& kept) -> Result<QString> {
    auto struck = strikeConsent(record, uid, who, clock());
    if (!struck) return tl::make_unexpected(struck.error());
    kept = std::move(*struck);
    return QString();
  };
  step.redo = [=](Record& record) -> Result<QString> {
    if (!line->empty()) {
      std::string ignored;
      return strikeOut(record, *strike, ignored);
    }
    auto added = addConsent(record, entry);
    if (!added) return tl::make_unexpected(added.error());
    *line = std::move(*added);
    return QString();
  };
  step.undo = [=](Record& record) { return strikeOut(record, *line, *strike); };
  step.shown = [id = chosen_] { return id; };
  take(std::move(step), Way::New);
}

void PeopleDesk::addNote(const QString& text) {
  if (!person_ || text.trimmed().isEmpty()) return;
  const auto note = shared<NoteId>();
  PeopleStep step;
  step.name = tr("note about %1").arg(named(person_->details.player.name));
  step.redo = [=, player = chosen_, words = text.trimmed().toStdString(), who = author_.toStdString(),
               when = clock_()](Record& record) -> Result<QString> {
    const auto added = addPlayerNote(record, player, words, who, when);
    if (!added) return tl::make_unexpected(added.error());
    *note = *added;
    return QString();
  };
  step.undo = [=, player = chosen_](Record& record) -> Result<QString> {
    const auto removed = removePlayerNote(record, player, *note);
    if (!removed) return tl::make_unexpected(removed.error());
    return QString();
  };
  step.shown = [id = chosen_] { return id; };
  take(std::move(step), Way::New);
}

void PeopleDesk::removeNote(NoteId id) {
  if (!person_) return;
  const auto note = shared<Note>(Note{id, {}, {}, 0});
  PeopleStep step;
  step.name = tr("remove a note about %1").arg(named(person_->details.player.name));
  step.redo = [=, player = chosen_](Record& record) -> Result<QString> {
    auto removed = removePlayerNote(record, player, note->id);
    if (!removed) return tl::make_unexpected(removed.error());
    *note = std::move(*removed);
    return QString();
  };
  // With its author and date.
  step.undo = [=, player = chosen_](Record& record) -> Result<QString> {
    const auto added = addPlayerNote(record, player, note->text, note->who, note->when);
    if (!added) return tl::make_unexpected(added.error());
    note->id = *added;
    return QString();
  };
  step.shown = [id = chosen_] { return id; };
  take(std::move(step), Way::New);
}

void PeopleDesk::joinTo(PlayerId player) {
  if (!person_ || player == chosen_) return;
  const PlayerId from = chosen_;
  const auto joined = shared<JoinedPeople>();
  const auto apart = shared<bool>(true);
  const auto to = std::ranges::find(people(), player, [](const PersonRow& row) { return row.details.player.id; });
  if (to == people().end()) return;
  const QString first = named(person_->details.player.name);
  const QString second = named(to->details.player.name);
  PeopleStep step;
  step.name = tr("make %1 and %2 one").arg(first, second);
  step.redo = [=](Record& record) -> Result<QString> {
    auto report = joinPeople(record, from, player);
    if (!report) return tl::make_unexpected(report.error());
    switch (report->ending) {
      case JoinReport::Ending::PlayedTogether:
        return tr("%1 and %2 played in one session, \"%3\", so they are two people.")
            .arg(first, second, named(report->session));
      case JoinReport::Ending::UnderWay:
        return tr("%1 plays in the session that is under way; end it first.").arg(first);
      case JoinReport::Ending::Joined:
        break;
    }
    *joined = std::move(report->joined);
    *apart = false;
    return QString();
  };
  step.undo = [=, who = author_.toStdString(), clock = clock_](Record& record) -> Result<QString> {
    const auto done = partPeople(record, *joined, who, clock());
    if (done) *apart = true;
    return endOf(done);
  };
  step.shown = [=] { return *apart ? from : player; };
  take(std::move(step), Way::New);
}

void PeopleDesk::undo() {
  if (done_.empty()) return;
  PeopleStep step = std::move(done_.back());
  done_.pop_back();
  take(std::move(step), Way::Undo);
}

void PeopleDesk::redo() {
  if (undone_.empty()) return;
  PeopleStep step = std::move(undone_.back());
  undone_.pop_back();
  take(std::move(step), Way::Redo);
}

void PeopleDesk::askWhatErasingMeans() {
  if (!person_) return;
  const auto preview = shared<ErasePreview>();
  takeOnce(
      [preview, player = chosen_](Record& record) -> Result<QString> {
        auto found = previewErase(record, player);
        if (!found) return tl::make_unexpected(found.error());
        *preview = std::move(*found);
        return QString();
      },
      [this, preview] { emit previewed(*preview); });
}

void PeopleDesk::exportTo(const QString& folder) {
  if (!person_) return;
  const auto files = shared<QStringList>();
  takeOnce(
      [files,
       options = ExportOptions{folder.toStdString(), person_->details.player.name}](Record& record) -> Result<QString> {
        const auto report = exportRecord(record, options);
        if (!report) return tl::make_unexpected(report.error());
        for (const std::string& file : report->files)
          *files << named(file);
        return QString();
      },
      [this, files] { emit exported(*files); });
}

void PeopleDesk::erase(const EraseOptions& options) {
  if (!person_) return;
  const auto report = shared<EraseReport>();
  takeOnce(
      [report, options, player = chosen_, clock = clock_](Record& record) -> Result<QString> {
        // The session's own place holds it in memory and would write the name again.
        const auto preview = previewErase(record, player);
        if (!preview) return tl::make_unexpected(preview.error());
        if (preview->rowsOf(ErasedKind::Drafts) > 0) {
          return tr("%1 plays in a session that is under way; go on with it in Session and end it first.")
              .arg(named(preview->player.name));
        }
        auto done = erasePlayer(record, player, options, clock());
        if (!done) return tl::make_unexpected(done.error());
        *report = std::move(*done);
        return QString();
      },
      [this, report] {
        done_.clear();
        undone_.clear();
        choose({});
        emit kept();
        emit erased(*report);
      });
}

void PeopleDesk::take(PeopleStep step, Way way) {
  const int number = ++number_;
  const PeopleService::Edit edit = way == Way::Undo ? step.undo : step.redo;
  pending_.push_back({number, way, std::move(step), {}});
  service_.edit(edit, number);
}

void PeopleDesk::takeOnce(PeopleService::Edit edit, std::function<void()> done) {
  const int number = ++number_;
  pending_.push_back({number, Way::Once, {}, std::move(done)});
  service_.edit(std::move(edit), number);
}

void PeopleDesk::ended(int number, const QString& refusal) {
  const auto found = std::ranges::find(pending_, number, &Pending::number);
  if (found == pending_.end()) return;  // of a record that is not open any more
  Pending pending = std::move(*found);
  pending_.erase(found);
  const bool was = refusal.isEmpty();
  if (pending.way == Way::Once) {
    emit told(refusal);
    if (was) pending.done();
    emit changed();
    return;
  }
  // What failed stays where it was: an undone step on its pile, a new one nowhere.
  if (was && pending.way == Way::New) undone_.clear();
  if (was && pending.step.shown) choose(pending.step.shown());
  const bool isDone = was ? pending.way != Way::Undo : pending.way == Way::Undo;
  if (was || pending.way != Way::New) (isDone ? done_ : undone_).push_back(std::move(pending.step));
  if (was) emit kept();
  emit told(refusal);
  emit changed();
}

}  // namespace ferrule
