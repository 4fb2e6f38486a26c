// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/players/people_service.h"

#include <QFileInfo>
#include <utility>

#include "app/words/error_sentence.h"

namespace ferrule {

PeopleService::PeopleService(QObject* parent) : QObject(parent), keeper_(QStringLiteral("people keeper")) {}

Record* PeopleService::recordOf(KeptRecord& kept) {
  // A record that may only be read is shown all the same.
  const auto record = QFileInfo::exists(kept.path()) ? kept.toRead(WhenMissing::Refuse) : Result<Record*>(nullptr);
  if (record) return *record;
  emit failed(record.error());
  return nullptr;
}

void PeopleService::tell(KeptRecord& kept) {
  auto all = std::make_shared<std::vector<PersonRow>>();
  Record* record = nullptr;
  if (QFileInfo::exists(kept.path())) {
    record = recordOf(kept);
    if (record == nullptr) return;
    auto found = people(*record);
    if (!found) {
      emit failed(found.error());
      return;
    }
    *all = std::move(*found);
  }
  emit read(kept.path(), all);
  tellPerson(record);
}

void PeopleService::tellPerson(Record* record) {
  if (record == nullptr || !looked_) {
    emit looked(nullptr);
    return;
  }
  auto found = person(*record, looked_);
  if (!found && found.error().code != ErrorCode::NotFound) emit failed(found.error());
  emit looked(found ? std::make_shared<const Person>(std::move(*found)) : nullptr);
}

void PeopleService::open(const QString& record) {
  keeper_.ask([this, record](KeptRecord& kept) {
    kept.setPath(record);
    looked_ = {};
    tell(kept);
  });
}

void PeopleService::look(PlayerId player) {
  keeper_.ask([this, player](KeptRecord& kept) {
    looked_ = player;
    tellPerson(recordOf(kept));
  });
}

void PeopleService::edit(Edit edit, int number) {
  keeper_.ask([this, edit = std::move(edit), number](KeptRecord& kept) {
    const auto record = kept.toRead(WhenMissing::Make);
    if (!record) {
      emit failed(record.error());
      emit edited(number, errorSentence(record.error()));
      return;
    }
    const auto done = edit(**record);
    const QString refusal = done ? *done : errorSentence(done.error());
    tell(kept);
    emit edited(number, refusal);
  });
}

}  // namespace ferrule
