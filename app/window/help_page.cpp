// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/help_page.h"

#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QLabel>
#include <QVBoxLayout>
#include <array>
#include <cstring>

#include "app/window/inks.h"
#include "app/window/places.h"
#include "app/window/vertical_scroll.h"
#include "app/words/joining.h"

namespace ferrule {

namespace {

constexpr QSize kPageSize{560, 480};

constexpr std::array kSetup{
    QT_TRANSLATE_NOOP("PlaceHelp", "Go through the steps from the first; you can leave and come back at any time."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Measure the table with a steel rule, nose to nose; equal diagonals mean that it is square."),
    QT_TRANSLATE_NOOP(
        "PlaceHelp",
        "Print the board at its true size, check its ruler, and take at least ten sharp stills that reach "
        "every corner of the image."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Measure where the tags lie and how high they stand: one centimetre of height is worth "
                      "millimetres at the balls."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Ask the self-check whether lens and rig fit the film, and the error map how far a ball "
                      "may be off."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Without tags and board the cushions serve; the error map then says what they cost. A cushion "
                      "that was missed or mistaken is placed by hand under a loupe, in the step Rig."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Every edit can be undone, and brings back what it had made void, the rig included."),
};
constexpr std::array kSession{
    QT_TRANSLATE_NOOP("PlaceHelp", "Begin with the game and who plays, or with practice alone."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Drag the balls to where they lie; they are drawn to spots, cushions and other balls."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Click the ball and the pocket that are played for, then press the key of what happened."),
    QT_TRANSLATE_NOOP("PlaceHelp", "The referee keeps turn and score; undo takes back any step."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "From a film or live, what the referee cannot see is asked on the right: press the number of the "
                      "answer."),
    QT_TRANSLATE_NOOP(
        "PlaceHelp",
        "A live session can keep its film beside the record, of people whose consent is noted in Players."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Ask for a suggestion only when you want one: that it was shown is kept with the shot."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "The rig is checked against the film before it is measured, and every five minutes of live play; "
                      "check the rig again at any moment by its key."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "With a projector the suggestion, or where balls must be put back, lies on the cloth. A live "
                      "session makes it black while somebody leans over the table."),
};
constexpr std::array kReview{
    QT_TRANSLATE_NOOP("PlaceHelp", "Choose a shot on the left, or scrub along the time line."),
    QT_TRANSLATE_NOOP("PlaceHelp", "Step by image, by event or by shot; film and plan always show the same moment."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Suggested is dashed, taken is solid; the panel on the right sets both side by side."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Each number stands with its standard uncertainty; what the film cannot show is called "
                      "not observable."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Put right what was read wrongly with one key, or from the right button's menu; what follows is "
                      "read and ruled again."),
    QT_TRANSLATE_NOOP("PlaceHelp", "Filter the shots to play, say, all thick misses one after another."),
    QT_TRANSLATE_NOOP("PlaceHelp", "Hold a shot to set another one beside it, with what differs below."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Save what you see as a picture, or the shot as a short film; a film of people is written only "
                      "with their consent, the plan always."),
};
constexpr std::array kDrills{
    QT_TRANSLATE_NOOP("PlaceHelp", "Choose a drill on the left; point at a ball to see how its place is measured."),
    QT_TRANSLATE_NOOP("PlaceHelp", "Every drill has mirror images: what is easy to one side may be hard to the other."),
    QT_TRANSLATE_NOOP("PlaceHelp", "With a projector the set-up can lie on the cloth; never look into the beam."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Begin a run, click where the cue ball came to rest, and press the key of what happened."),
    QT_TRANSLATE_NOOP("PlaceHelp", "Once Set-up has made a rig, the camera says how far each ball is from its place."),
    QT_TRANSLATE_NOOP("PlaceHelp", "Or let the tries be counted from a session that was recorded."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "The history says whether the last run differs from those before by more than chance."),
};
constexpr std::array kProgress{
    QT_TRANSLATE_NOOP("PlaceHelp", "Choose a player and a period; a second column compares another period or player."),
    QT_TRANSLATE_NOOP("PlaceHelp", "Bands and whiskers are 95\u00a0% intervals; a change within them may be chance."),
    QT_TRANSLATE_NOOP("PlaceHelp", "Click a point or a cell to look at the shots behind it."),
    QT_TRANSLATE_NOOP("PlaceHelp", "What to work on names three things at most, with what each is worth in frames."),
};
constexpr std::array kReports{
    QT_TRANSLATE_NOOP("PlaceHelp", "Choose the student, the period and the student's own language."),
    QT_TRANSLATE_NOOP("PlaceHelp", "Write a note of your own: it stands on the first page."),
    QT_TRANSLATE_NOOP("PlaceHelp", "The sheets on the screen are the ones that print; export them as PDF or HTML."),
};
constexpr std::array kPlayers{
    QT_TRANSLATE_NOOP("PlaceHelp", "Add the players first: name, playing hand, groups such as juniors or Tuesday."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Note who consented to what, when and until when; for a minor a parent or guardian does."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "What is missing or has expired is said in words, with what follows: without consent no film is "
                      "kept."),
    QT_TRANSLATE_NOOP("PlaceHelp",
                      "Nothing leaves the list of consents: withdrawal, renewal and mistakes are lines of their own."),
    QT_TRANSLATE_NOOP("PlaceHelp", "A guest's shots can be given to a player once it is known who it was."),
};

}  // namespace

std::span<const char* const> helpSteps(const char* place) {
  const auto is = [place](const char* name) { return std::strcmp(place, name) == 0; };
  if (is("setup")) return kSetup;
  if (is("session")) return kSession;
  if (is("review")) return kReview;
  if (is("drills")) return kDrills;
  if (is("progress")) return kProgress;
  if (is("reports")) return kReports;
  if (is("players")) return kPlayers;
  return {};
}

HelpPage::HelpPage(const PlaceRow& place, QWidget* parent) : QDialog(parent) {
  setObjectName(QStringLiteral("helpPage"));
  const QString name = QCoreApplication::translate("Places", place.text);
  setWindowTitle(name);
  resize(kPageSize);
  auto* steps = new QWidget;
  auto* lines = new QVBoxLayout(steps);
  lines->setContentsMargins(0, 0, 8, 0);
  lines->setSpacing(12);
  const auto add = [&](const QString& words) {
    auto* label = new QLabel(words);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    lines->addWidget(label);
    return label;
  };
  add(name)->setFont(scaled(font(), 1.4, true));
  add(stopped(QCoreApplication::translate("Places", place.help)));
  int number = 0;
  for (const char* step : helpSteps(place.name))
    add(QStringLiteral("%1. %2").arg(++number).arg(QCoreApplication::translate("PlaceHelp", step)));
  lines->addStretch(1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 16, 16, 16);
  column->addWidget(new VerticalScroll(steps), 1);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  column->addWidget(buttons);
}

}  // namespace ferrule
