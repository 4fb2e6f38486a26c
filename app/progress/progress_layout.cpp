// SPDX-License-Identifier: GPL-3.0-or-later
// How the Progress place is put together; what it does is in progress_place.cpp.
#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/progress/chart_view.h"
#include "app/progress/filter_bar.h"
#include "app/progress/progress_place.h"
#include "app/window/card.h"
#include "app/window/empty_place.h"
#include "app/window/inks.h"
#include "app/window/message_bar.h"
#include "app/window/tool_button.h"
#include "app/window/wrapping_row.h"
#include "app/words/error_sentence.h"

namespace ferrule {

namespace {

constexpr int kPanelWidth_px = 320;
constexpr int kInColumn = 2;

QLabel* heading(const QString& words, const QFont& font) {
  auto* label = new QLabel(words);
  label->setFont(scaled(font, 1.1, true));
  return label;
}

QLabel* textLabel(const char* name, const QString& accessible) {
  auto* label = new QLabel;
  label->setObjectName(QString::fromLatin1(name));
  label->setAccessibleName(accessible);
  label->setWordWrap(true);
  label->setTextFormat(Qt::RichText);
  label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

}  // namespace

ProgressPlace::ProgressPlace(const ActionSet& actions, ProgressService::Clock now, QWidget* parent)
    : Place(parent), service_(now), now_(now) {
  setObjectName(QStringLiteral("progressPlace"));
  setAccessibleName(tr("Progress"));
  message_ = new MessageBar;
  message_->setObjectName(QStringLiteral("progressMessage"));
  scroll_ = new QScrollArea;
  scroll_->setObjectName(QStringLiteral("figures"));
  scroll_->setAccessibleName(tr("Figures"));
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);

  auto* middle = new QWidget;
  auto* column = new QVBoxLayout(middle);
  column->setContentsMargins(12, 8, 12, 12);
  column->setSpacing(8);
  column->addWidget(makeHeader());
  column->addWidget(scroll_, 1);
  columns_ = new QSplitter;
  columns_->setObjectName(QStringLiteral("progressColumns"));
  columns_->setHandleWidth(1);
  columns_->addWidget(middle);
  columns_->addWidget(makePanel(actions));
  columns_->setStretchFactor(0, 1);
  columns_->setStretchFactor(1, 0);
  columns_->setCollapsible(0, false);
  columns_->setSizes({900, kPanelWidth_px});

  stack_ = new QStackedWidget;
  stack_->addWidget(makeEmpty(actions));
  stack_->addWidget(columns_);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->setSpacing(0);
  whole->addWidget(message_);
  whole->addWidget(stack_, 1);

  connect(first_, &FilterBar::changed, this, &ProgressPlace::ask);
  connect(second_, &FilterBar::changed, this, &ProgressPlace::ask);
  connect(compare_, &QCheckBox::toggled, this, [this](bool both) {
    second_->setVisible(both);
    ask();
  });
  connect(&service_, &ProgressService::opened, this, [this](const QString& path, const std::vector<Player>& players) {
    record_ = path;
    message_->tell({});
    stack_->setCurrentIndex(players.empty() ? 0 : 1);
    emptyWords_->setText(
        tr("Nobody has played in %1 yet. Play a session with names, or open another record.").arg(path));
    const QString before = first_->player().isEmpty() ? wantedPlayer_ : first_->player();
    first_->setPlayers(players);
    second_->setPlayers(players);
    {
      const QSignalBlocker quiet(first_);
      first_->setPlayer(before);
    }
    ask();
  });
  connect(&service_, &ProgressService::answered, this, &ProgressPlace::take);
  connect(&service_, &ProgressService::failed, this, [this](const Error& error) {
    busy_->clear();
    message_->tell(errorSentence(error));
  });
}

QWidget* ProgressPlace::makeHeader() {
  auto* header = new QWidget;
  auto* column = new QVBoxLayout(header);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  auto* row = new QHBoxLayout;
  row->setSpacing(8);
  first_ = new FilterBar(QStringLiteral("first"));
  second_ = new FilterBar(QStringLiteral("second"));
  second_->hide();
  compare_ = new QCheckBox(tr("Co&mpare with"));
  compare_->setObjectName(QStringLiteral("compare"));
  compare_->setToolTip(tr("Show two players or two periods side by side"));
  busy_ = new QuietLabel;
  busy_->setObjectName(QStringLiteral("busy"));
  busy_->setMinimumWidth(40);
  row->addWidget(first_);
  row->addWidget(compare_);
  row->addWidget(busy_, 1);
  column->addLayout(row);
  column->addWidget(second_);
  return header;
}

QWidget* ProgressPlace::makePanel(const ActionSet& actions) {
  auto* inside = new QWidget;
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(16, 12, 16, 12);
  column->setSpacing(8);
  column->addWidget(heading(tr("What to work on"), font()));
  work_ = textLabel("work", tr("What to work on"));
  column->addWidget(work_);
  column->addWidget(heading(tr("What the figures rest on"), font()));
  basis_ = textLabel("basis", tr("What the figures rest on"));
  column->addWidget(basis_);
  column->addStretch(1);
  auto* scroll = new QScrollArea;
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setAccessibleName(tr("What to work on and what the figures rest on"));
  scroll->setWidget(inside);

  auto* panel = new QWidget;
  panel->setMinimumWidth(240);
  auto* whole = new QVBoxLayout(panel);
  whole->setContentsMargins(0, 0, 0, 12);
  whole->setSpacing(8);
  whole->addWidget(scroll, 1);
  auto* below = new QVBoxLayout;
  below->setContentsMargins(16, 0, 16, 0);
  below->setSpacing(8);
  pointed_ = textLabel("pointed", tr("What is pointed at"));
  pointed_->setTextFormat(Qt::PlainText);
  pointed_->setMinimumHeight(3 * fontMetrics().lineSpacing());
  below->addWidget(pointed_);
  auto* row = new WrappingRow;
  row->setSpacing(8);
  for (const ActionId id : {ActionId::ShotsBehind, ActionId::ExportChart}) {
    QToolButton* button = raisedButton(actions.at(id));
    row->addWidget(button);
  }
  below->addLayout(row);
  whole->addLayout(below);
  return panel;
}

QWidget* ProgressPlace::makeEmpty(const ActionSet& actions) {
  emptyWords_ = new QLabel(tr("Progress needs shots: play a session, or open a record."));
  emptyWords_->setObjectName(QStringLiteral("emptyProgressWords"));
  emptyWords_->setFont(scaled(font(), 1.2));
  auto* open = new QPushButton(tr("Open a record…"));
  open->setObjectName(QStringLiteral("openRecordFromProgress"));
  QWidget* empty = emptyPlace(emptyWords_, open, actions.at(ActionId::OpenRecord));
  empty->setObjectName(QStringLiteral("emptyProgress"));
  return empty;
}

void ProgressPlace::layOut() {
  const bool both = answer_->columns.size() > 1;
  // The same charts stay where they are, so that nothing jumps when numbers change.
  const auto fits = [&] {
    std::size_t count = 0;
    for (const ProgressColumn& column : answer_->columns)
      count += column.figures.size();
    if (count == 0 || shown_.size() != count) return false;
    return shown_.back().column == answer_->columns.size() - 1 && !answer_->columns.back().figures.empty();
  };
  if (!fits()) {
    shown_.clear();
    current_.reset();
    auto* inside = new QWidget;
    auto* grid = new QGridLayout(inside);
    grid->setContentsMargins(0, 0, 8, 0);
    grid->setSpacing(12);
    for (int c = 0; c < kInColumn; ++c)
      grid->setColumnStretch(c, 1);
    for (std::size_t c = 0; c < answer_->columns.size(); ++c) {
      const int at = static_cast<int>(c);
      const auto& mine = answer_->columns[c].figures;
      if (both) {
        auto* title = heading({}, font());
        title->setObjectName(QStringLiteral("columnTitle%1").arg(c));
        title->setTextFormat(Qt::PlainText);
        title->setWordWrap(true);
        grid->addWidget(title, 0, at);
      }
      if (mine.empty()) {
        auto* nothing = new QLabel(tr("There is no shot of this player in this selection. Choose a longer period."));
        nothing->setObjectName(QStringLiteral("nothing%1").arg(c));
        nothing->setWordWrap(true);
        nothing->setAlignment(Qt::AlignLeft | Qt::AlignTop);
        grid->addWidget(nothing, 1, at);
      }
      for (std::size_t f = 0; f < mine.size(); ++f) {
        auto* card = new Card;
        auto* inCard = new QVBoxLayout(card);
        inCard->setContentsMargins(1, 1, 1, 1);
        auto* view = new ChartView;
        view->setObjectName(QStringLiteral("figure%1-%2").arg(c).arg(f));
        inCard->addWidget(view);
        inCard->addStretch(1);
        const int place = static_cast<int>(f);
        grid->addWidget(card, 1 + (both ? place : place / kInColumn), both ? at : place % kInColumn);
        const std::size_t number = shown_.size();
        shown_.push_back({view, c, f});
        connect(view, &ChartView::focused, this, [this, number] { current_ = number; });
        connect(view, &ChartView::pointedAt, this, [this, number](const QString& words) {
          if (words.isEmpty()) return;
          current_ = number;
          pointed_->setText(words);
        });
        connect(view, &ChartView::opened, this, [this, number] {
          current_ = number;
          showShotsBehind();
        });
      }
    }
    grid->setRowStretch(grid->rowCount(), 1);
    scroll_->setWidget(inside);
  }
  for (const Shown& shown : shown_) {
    const Figure& figure = answer_->columns[shown.column].figures[shown.figure];
    shown.view->setChart(figure.title, figure.chart, figure.otherwise);
  }
  for (std::size_t c = 0; both && c < answer_->columns.size(); ++c) {
    if (auto* title = scroll_->findChild<QLabel*>(QStringLiteral("columnTitle%1").arg(c)))
      title->setText(columnWords(c));
  }
}

}  // namespace ferrule
