// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/lines_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/setup/lines_list.h"
#include "app/setup/lines_view.h"
#include "app/setup/mark_words.h"
#include "app/setup/picture_guess.h"
#include "app/window/card.h"
#include "app/words/error_sentence.h"
#include "app/words/joining.h"
#include "app/words/trade_words.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

/// What lines that were found in a picture belong to.
QString linesKey(const SetupState& state) {
  return QStringLiteral("%1\n%2\n%3\n%4")
      .arg(state.film)
      .arg(static_cast<int>(state.head))
      .arg(state.measured.table.length_m)
      .arg(state.measured.table.width_m);
}

QLabel* wrapped(const char* name) {
  auto* label = new QLabel;
  label->setObjectName(QLatin1String(name));
  label->setWordWrap(true);
  return label;
}

}  // namespace

LinesPanel::LinesPanel(SetupDesk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(12);
  makeButtons();
  words_ = new QuietLabel({});
  words_->setObjectName(QStringLiteral("linesWords"));
  words_->setWordWrap(true);
  column->addWidget(words_);
  view_ = new LinesView;
  list_ = new LinesList;
  // The picture keeps its proportions; what it leaves free beside it is the list's.
  auto* pictures = new QHBoxLayout;
  pictures->setSpacing(12);
  pictures->addWidget(view_, 2);
  pictures->addWidget(list_, 1);
  column->addLayout(pictures, 1);
  handle_ = wrapped("linesHandle");
  column->addWidget(handle_);
  auto* row = new QHBoxLayout;
  row->setSpacing(8);
  row->addWidget(putHere_);
  row->addWidget(notThere_);
  row->addStretch(1);
  column->addLayout(row);
  agree_ = wrapped("linesAgree");
  column->addWidget(agree_);
  connect(&desk_, &SetupDesk::linesFound, this, &LinesPanel::take);
  connect(view_, &LinesView::placed, this, &LinesPanel::place);
  connect(view_, &LinesView::marked, this, &LinesPanel::mark);
  connect(view_, &LinesView::handleChosen, this, &LinesPanel::showHandle);
  connect(list_, &LinesList::thingChosen, view_, &LinesView::chooseThing);
  connect(&fitting_, &LinesFitting::fitted, this, [this](const Result<LinesFit>& fit) {
    fit_ = fit ? std::optional(*fit) : std::nullopt;
    fault_ = fit ? QString() : errorSentence(fit.error());
    asked_ = false;
    view_->setMarks(shownMarks());
    showFit();
  });
}

void LinesPanel::makeButtons() {
  const auto button = [](const char* name, const QString& words) {
    auto* made = new QPushButton(words);
    made->setObjectName(QLatin1String(name));
    return made;
  };
  adjust_ = button("adjustLines", tr("Look at the &lines, adjust them by hand…"));
  asFound_ = button("linesAsFound", tr("&As they were found"));
  putHere_ = button("putMarkHere", tr("&Count it here"));
  putHere_->setToolTip(tr("The sight or pocket counts where it shows (insert)"));
  notThere_ = button("markNotThere", tr("It is &not there"));
  notThere_->setToolTip(tr("The sight or pocket no longer counts (delete)"));
  auto* row = new QHBoxLayout;
  row->setSpacing(8);
  row->addWidget(adjust_);
  row->addWidget(asFound_);
  row->addStretch(1);
  static_cast<QVBoxLayout*>(layout())->addLayout(row);
  connect(adjust_, &QPushButton::clicked, &desk_, &SetupDesk::findLines);
  connect(asFound_, &QPushButton::clicked, this, [this] {
    desk_.change(tr("the lines as found"), [](SetupState& state) {
      state.handLines.clear();
      state.handMarks.clear();
    });
  });
  connect(putHere_, &QPushButton::clicked, this, [this] { view_->putHere(); });
  connect(notThere_, &QPushButton::clicked, this, [this] { view_->sayNotThere(); });
}

void LinesPanel::take(const QImage& picture, const std::vector<LineTrace>& lines,
                      const std::vector<MarkSighting>& marks) {
  picture_ = picture;
  found_ = lines;
  foundMarks_ = marks;
  foundIn_ = linesKey(desk_.state());
  fit_.reset();
  fittedLines_.clear();
  fittedMarks_.clear();
  refresh(numbers_);
  view_->setFocus();
}

void LinesPanel::place(const LineTrace& nose) {
  desk_.change(tr("%1 placed by hand", "a cushion").arg(cushionWords(nose.cushion)), [&](SetupState& state) {
    std::erase_if(state.handLines, [&](const LineTrace& line) { return line.cushion == nose.cushion; });
    state.handLines.push_back(nose);
  });
}

void LinesPanel::mark(const HandMark& said) {
  const QString name = markWords(said.mark);
  desk_.change(said.isThere ? tr("%1 placed by hand", "a sight or pocket").arg(name)
                            : tr("%1 is not there", "a sight or pocket").arg(name),
               [&](SetupState& state) {
                 std::erase_if(state.handMarks, [&](const HandMark& other) { return other.mark == said.mark; });
                 state.handMarks.push_back(said);
               });
}

std::vector<LineTrace> LinesPanel::lines() const {
  return withHandLines(found_, desk_.state().handLines);
}

std::vector<MarkSighting> LinesPanel::marks() const {
  return withHandMarks(foundMarks_, desk_.state().handMarks);
}

std::vector<ShownMark> LinesPanel::shownMarks() const {
  const SetupState& state = desk_.state();
  const Table& table = state.measured.table;
  std::vector<ShownMark> shown;
  for (const TableMark& mark : tableMarks()) {
    const TablePoint really = markPlace(table, mark).place;
    const auto expected = fit_ ? imageFromTable(fit_->rig, {really.x, really.y, table.noseHeight_m}) : std::nullopt;
    ShownMark each{mark, expected.value_or(guessInPicture(really, table, state.head, picture_.size())),
                   MarkState::Missing};
    // Within the picture, so that it can be dragged.
    each.place = {std::clamp(each.place.x, 0.0, picture_.width() - 1.0),
                  std::clamp(each.place.y, 0.0, picture_.height() - 1.0)};
    const auto found = std::ranges::find(foundMarks_, mark, &MarkSighting::mark);
    const auto said = std::ranges::find(state.handMarks, mark, &HandMark::mark);
    if (said != state.handMarks.end()) {
      each.state = said->isThere ? MarkState::ByHand : MarkState::NotThere;
      each.place = said->place;
    } else if (found != foundMarks_.end()) {
      each.state = MarkState::Found;
      each.place = found->place;
    }
    shown.push_back(each);
  }
  return shown;
}

void LinesPanel::refresh(const Numbers& numbers) {
  numbers_ = numbers;
  const SetupState& state = desk_.state();
  const bool wanted = state.withoutTags;
  const bool shown = wanted && !picture_.isNull() && foundIn_ == linesKey(state);
  const auto byHand = static_cast<int>(state.handLines.size() + state.handMarks.size());
  setVisible(wanted);
  // A nose that was placed may let sights be found that were not.
  adjust_->setText(shown ? tr("&Look for them again") : tr("Look at the &lines, adjust them by hand…"));
  asFound_->setVisible(byHand > 0);
  for (QWidget* each : std::initializer_list<QWidget*>{view_, handle_, putHere_, notThere_, agree_, list_})
    each->setVisible(shown);
  // Without the picture it takes no more room than its words.
  setSizePolicy(QSizePolicy::Preferred, shown ? QSizePolicy::Expanding : QSizePolicy::Maximum);
  if (!shown) {
    view_->clear();
    fitting_.forget();
    asked_ = false;
    words_->setText(byHand == 0
                        ? tr("The rig is made from the noses of the cushions, the sights and the pockets, as the "
                             "picture shows them; where one is missed or mistaken, place it by hand.")
                        : tr("%n place(s) are set by hand.", nullptr, byHand));
    return;
  }
  view_->setLines(picture_, lines(), state.measured.table, state.head);
  fitAnew();
  view_->setMarks(shownMarks());
  QString words = tr(
      "Drag a nose's handles to where its cloth ends above the bed, spread from end to end and a hand's breadth from "
      "the pockets; drag a sight's diamond onto its middle, a pocket's ring onto the middle of its opening. Arrow "
      "keys move what is chosen, page up and page down go from one to the next.");
  if (view_->guesses() > 0) {
    words = sentencesOf({words, tr("%n cushion(s) were not found (dashed): place them.", nullptr, view_->guesses())});
  }
  words_->setText(words);
  showFit();
  showHandle();
}

void LinesPanel::fitAnew() {
  const auto now = lines();
  const auto marksNow = marks();
  if (now == fittedLines_ && marksNow == fittedMarks_) return;
  fittedLines_ = now;
  fittedMarks_ = marksNow;
  const auto wanted = desk_.rigWanted();
  if (!wanted) {
    fit_.reset();
    fault_ = errorSentence(wanted.error());
    return;
  }
  asked_ = true;
  fitting_.fit(*wanted, now, marksNow);
}

void LinesPanel::showFit() {
  list_->show(*view_, fittedLines_, fittedMarks_, asked_ || !fit_ ? nullptr : &*fit_, desk_.state().handLines,
              numbers_);
  if (asked_) return agree_->setText(tr("Working out how well they agree…"));
  if (!fit_) return agree_->setText(fault_);
  const auto mm = [&](double length_m) { return tr("%1 mm").arg(numbers_.fixed(millimetresFromMetres(length_m), 1)); };
  double sum = 0.0;
  int count = 0;
  double worst_m = 0.0;
  QString worst;
  for (std::size_t i = 0; i < fittedMarks_.size(); ++i) {
    if (fittedMarks_[i].mark.kind != MarkKind::Sight || !fit_->markOff_m[i]) continue;
    const double off_m = std::abs(*fit_->markOff_m[i]);
    sum += off_m * off_m;
    ++count;
    if (off_m <= worst_m) continue;
    worst_m = off_m;
    worst = markWords(fittedMarks_[i].mark);
  }
  double noses = 0.0;
  int noseCount = 0;
  for (std::size_t i = 0; i < fittedLines_.size(); ++i) {
    if (fittedLines_[i].kind != LineTrace::Kind::Nose) continue;
    noses += std::pow(fit_->lineOff_m[i], 2);
    ++noseCount;
  }
  QStringList words{tr("The noses agree to %1 (rms).").arg(mm(std::sqrt(noses / std::max(noseCount, 1))))};
  if (count > 0) {
    words << tr("%n sight(s) agree to %1 (rms) along their rails; furthest off, by %2, lies %3.", nullptr, count)
                 .arg(mm(std::sqrt(sum / count)), mm(worst_m), worst);
  } else {
    words << tr("No sight was found; with them, places would be surer.");
  }
  agree_->setText(sentencesOf(words));
}

void LinesPanel::showHandle() {
  handle_->setText(view_->handleWords());
  list_->choose(view_->chosenThing());
  const ShownMark* mark = view_->chosenMark();
  const bool counts = mark != nullptr && (mark->state == MarkState::Found || mark->state == MarkState::ByHand);
  putHere_->setEnabled(mark != nullptr && !counts);
  notThere_->setEnabled(mark != nullptr && mark->state != MarkState::NotThere);
}

}  // namespace ferrule
