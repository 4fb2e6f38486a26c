// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/question_panel.h"

#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "app/window/inks.h"
#include "app/window/plain_parts.h"
#include "app/window/tool_button.h"
#include "app/words/answer_words.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

constexpr std::array kAnswers{ActionId::Answer1, ActionId::Answer2, ActionId::Answer3, ActionId::Answer4,
                              ActionId::Answer5, ActionId::Answer6, ActionId::Answer7, ActionId::Answer8};
constexpr int kRow_px = 32;

}  // namespace

QuestionPanel::QuestionPanel(const ActionSet& actions, bool putsOff, QWidget* parent)
    : QWidget(parent), putsOff_(putsOff) {
  setObjectName(QStringLiteral("refereeQuestion"));
  words_ = wordsLabel("questionWords");
  words_->setFont(scaled(font(), 1.0, true));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(words_);
  for (std::size_t i = 0; i < kAnswers.size(); ++i) {
    auto* button = new QToolButton;
    button->setObjectName(QStringLiteral("answer%1").arg(i + 1));
    button->setAccessibleName(actions.at(kAnswers[i])->text().remove(QLatin1Char('&')));
    button->setToolTip(actions.at(kAnswers[i])->toolTip());
    button->setFocusPolicy(Qt::TabFocus);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    button->setMinimumHeight(kRow_px);
    connect(button, &QToolButton::clicked, this, [this, i] { emit answered(i); });
    column->addWidget(button);
    answers_.push_back(button);
  }
  later_ = toolButton(actions.at(ActionId::AnswerLater));
  later_->setToolButtonStyle(Qt::ToolButtonTextOnly);
  later_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  column->addWidget(later_);
  more_ = wordsLabel("moreQuestions");
  column->addWidget(more_);
  setQuestion(std::nullopt, {});
}

bool QuestionPanel::act(ActionId action) {
  if (choices_ == 0) return false;
  if (action == ActionId::AnswerLater && putsOff_) {
    emit putOff();
    return true;
  }
  const auto key = std::ranges::find(kAnswers, action);
  const auto place = static_cast<std::size_t>(key - kAnswers.begin());
  if (key == kAnswers.end() || place >= choices_) return false;
  emit answered(place);
  return true;
}

void QuestionPanel::setQuestion(const std::optional<RefereeQuestion>& asked, const SeatNames& names) {
  setVisible(asked.has_value());
  choices_ = asked ? asked->choices() : 0;
  if (!asked) return;
  const Ruling& ruling = asked->shot->ruling->ruled.ruling;
  const QString what = asked->doubt ? questionWords(*asked->doubt)
                                    : tr("What does %1 choose?", "a player").arg(names.of(ruling.chooser));
  words_->setText(tr("Shot %1: %2", "number, a question").arg(asked->shot->reading.number).arg(what));
  for (std::size_t i = 0; i < answers_.size(); ++i) {
    answers_[i]->setVisible(i < choices_);
    if (i >= choices_) continue;
    const QString words = asked->doubt ? answerWords(asked->answers[i], ruling.shooter, names)
                                       : atStart(optionWords(asked->options[i], ruling, names));
    answers_[i]->setText(QStringLiteral("%1   %2").arg(i + 1).arg(words));
    answers_[i]->setAccessibleName(words);
  }
  later_->setVisible(putsOff_);
  more_->setText(tr("%n more shot(s) wait for an answer.", nullptr, asked->waiting));
  more_->setVisible(asked->waiting > 0);
}

void connectQuestions(QuestionPanel& panel, MeasuredShots& shots) {
  QObject::connect(&panel, &QuestionPanel::answered, &shots, &MeasuredShots::answer);
  QObject::connect(&panel, &QuestionPanel::putOff, &shots, &MeasuredShots::putOff);
}

}  // namespace ferrule
