// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/mark_words.h"

#include <QCoreApplication>
#include <cmath>

#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct MarkWords {
  Q_DECLARE_TR_FUNCTIONS(MarkWords)
};

}  // namespace

QString markWords(TableMark mark) {
  if (mark.kind == MarkKind::Pocket) {
    return MarkWords::tr("the %1 pocket", "a pocket's place")
        .arg(pocketWords(kPocketNames.at(static_cast<std::size_t>(mark.number))));
  }
  const Table table;
  const MarkPlace own = markPlace(table, mark);
  const bool alongRail = own.sure.x != 0.0;
  // How many sights of its rail come before it, from the head or from the left.
  int before = 0;
  int all = 0;
  for (const TableMark& other : tableMarks()) {
    if (other.kind != MarkKind::Sight) continue;
    const MarkPlace at = markPlace(table, other);
    if (at.sure != own.sure) continue;
    const bool sameRail =
        alongRail ? (at.place.y > 0.0) == (own.place.y > 0.0) : (at.place.x > 0.0) == (own.place.x > 0.0);
    if (!sameRail) continue;
    ++all;
    before += (alongRail ? at.place.x < own.place.x : at.place.y > own.place.y) ? 1 : 0;
  }
  QString words;
  if (alongRail) {
    words = own.place.y > 0.0 ? MarkWords::tr("sight %1 of %2 on the left rail, from the head")
                              : MarkWords::tr("sight %1 of %2 on the right rail, from the head");
  } else {
    words = own.place.x > 0.0 ? MarkWords::tr("sight %1 of %2 on the foot rail, from the left")
                              : MarkWords::tr("sight %1 of %2 on the head rail, from the left");
  }
  return words.arg(before + 1).arg(all);
}

}  // namespace ferrule
