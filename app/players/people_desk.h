// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <vector>

#include "app/players/people_service.h"
#include "core/record/consent.h"
#include "core/record/erase_player.h"

namespace ferrule {

/// A change of people that can be undone. redo runs first too.
struct PeopleStep {
  QString name;  ///< what it did: "rename Ada"
  PeopleService::Edit redo;
  PeopleService::Edit undo;
  std::function<PlayerId()> shown;  ///< who is chosen once it was done or undone; may be empty
};

/// What the Players place works on: the people of a record, the one that is chosen, and the steps that can be undone.
/// Knows no widgets.
class PeopleDesk : public QObject {
  Q_OBJECT
 public:
  using Clock = std::function<UtcMilliseconds()>;

  explicit PeopleDesk(Clock clock, QObject* parent = nullptr);

  /// Steps of another record, or of this one before, cannot be undone any more.
  void openRecord(const QString& path);
  void choose(PlayerId player);

  // Edits; each is one step. The ones about a person mean the chosen one; nothing happens when none is.
  /// Chosen once it is there.
  void add(const PersonDetails& details);
  /// A guest with the next free name. word: "Guest" in the user's language.
  void addGuest(const QString& word);
  void update(const PersonDetails& details);
  /// entry's person and date of noting are the desk's.
  void noteConsent(ConsentEntry entry);
  void addNote(const QString& text);
  void removeNote(NoteId note);
  /// Gives all of the chosen person to another, who is chosen then.
  void joinTo(PlayerId player);
  void undo();
  void redo();

  // For good: no steps, and the steps before cannot be undone any more.
  /// previewed follows.
  void askWhatErasingMeans();
  /// Writes all of the chosen person into a folder, as `ferrule export --player` does; exported follows.
  void exportTo(const QString& folder);
  /// erased follows. Refused while the chosen person plays in a session that is not ended.
  void erase(const EraseOptions& options);

  /// Who writes: stands beside notes and consents.
  void setAuthor(const QString& author) { author_ = author; }
  [[nodiscard]] const QString& author() const { return author_; }

  [[nodiscard]] const QString& recordPath() const { return path_; }
  [[nodiscard]] bool wasRead() const { return people_ != nullptr; }
  [[nodiscard]] const std::vector<PersonRow>& people() const;
  [[nodiscard]] PlayerId chosen() const { return chosen_; }
  /// Null until it was read, and when nobody is chosen.
  [[nodiscard]] const Person* person() const { return person_.get(); }
  /// The name of the step that undo would take back; empty when there is none.
  [[nodiscard]] QString undoName() const { return done_.empty() ? QString() : done_.back().name; }
  [[nodiscard]] QString redoName() const { return undone_.empty() ? QString() : undone_.back().name; }
  [[nodiscard]] UtcMilliseconds now() const { return clock_(); }

 signals:
  void changed();
  /// An edit was carried out; for whoever shows the same record.
  void kept();
  void previewed(const ferrule::ErasePreview& preview);
  void erased(const ferrule::EraseReport& report);
  void exported(const QStringList& files);
  /// A sentence for the person at the window.
  void told(const QString& sentence);

 private:
  enum class Way { New, Undo, Redo, Once };
  void take(PeopleStep step, Way way);
  /// Carries out what is no step; done runs here when it was not refused.
  void takeOnce(PeopleService::Edit edit, std::function<void()> done);
  void ended(int number, const QString& refusal);

  struct Pending {
    int number = 0;
    Way way = Way::New;
    PeopleStep step;
    std::function<void()> done;  ///< Once
  };

  Clock clock_;
  PeopleService service_;
  QString path_;
  QString author_;
  std::shared_ptr<const std::vector<PersonRow>> people_;
  std::shared_ptr<const Person> person_;
  PlayerId chosen_;
  std::vector<PeopleStep> done_;
  std::vector<PeopleStep> undone_;
  std::vector<Pending> pending_;
  int number_ = 0;
};

}  // namespace ferrule
