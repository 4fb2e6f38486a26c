// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/start_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDate>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/session/camera_choice.h"
#include "app/session/known_rigs.h"
#include "app/session/measuring_words.h"
#include "app/session/path_field.h"
#include "app/session/rig_choice.h"
#include "app/window/card.h"
#include "app/window/ink_icon.h"
#include "app/window/inks.h"
#include "app/window/plain_parts.h"
#include "app/window/vertical_scroll.h"
#include "app/words/name_list.h"
#include "app/words/trade_words.h"
#include "core/camera/rig_file.h"

namespace ferrule {

namespace {

constexpr int kWidth_px = 560;

struct WayRow {
  const char* name;  ///< of its button
  const char* text;
  const char* icon;
  const char* title;
  const char* words;
  const char* begin;
};

/// In the order of SessionWay.
constexpr std::array kWays{
    WayRow{"wayByHand", QT_TRANSLATE_NOOP("ferrule::StartForm", "By hand"), "by-hand",
           QT_TRANSLATE_NOOP("ferrule::StartForm", "A session without a camera"),
           QT_TRANSLATE_NOOP("ferrule::StartForm",
                             "Put the balls down, say what was played and what happened; the referee keeps turn and "
                             "score."),
           QT_TRANSLATE_NOOP("ferrule::StartForm", "Begin")},
    WayRow{"wayFromFilm", QT_TRANSLATE_NOOP("ferrule::StartForm", "From a film"), "film",
           QT_TRANSLATE_NOOP("ferrule::StartForm", "A session from a film"),
           QT_TRANSLATE_NOOP("ferrule::StartForm",
                             "Every shot of the film is measured and ruled; you may stop at any time and keep what was "
                             "measured."),
           QT_TRANSLATE_NOOP("ferrule::StartForm", "Measure the film")},
    WayRow{"wayLive", QT_TRANSLATE_NOOP("ferrule::StartForm", "Live"), "camera",
           QT_TRANSLATE_NOOP("ferrule::StartForm", "A session while it is played"),
           QT_TRANSLATE_NOOP("ferrule::StartForm",
                             "A camera looks on: every shot is measured and ruled as soon as the balls rest. Ask those "
                             "who play before you film them."),
           QT_TRANSLATE_NOOP("ferrule::StartForm", "Begin")},
};

QString translated(const char* text) {
  return QCoreApplication::translate("ferrule::StartForm", text);
}

/// What was found, and beneath it the two things that can be done about it.
QWidget* noteWithChoices(QLabel* words, QPushButton* first, QPushButton* second) {
  auto* note = new QWidget;
  auto* column = new QVBoxLayout(note);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  column->addWidget(words);
  auto* choices = new QHBoxLayout;
  choices->addWidget(first);
  choices->addWidget(second);
  column->addLayout(choices);
  return note;
}

}  // namespace

StartForm::StartForm(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("startForm"));
  auto* card = new Card;
  card->setMaximumWidth(kWidth_px);
  form_ = new QFormLayout(card);
  form_->setContentsMargins(24, 24, 24, 24);
  form_->setVerticalSpacing(12);
  form_->setHorizontalSpacing(16);
  form_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  form_->addRow(makeWays());
  title_ = new QLabel;
  title_->setFont(scaled(font(), 1.3, true));
  form_->addRow(title_);
  words_ = new QuietLabel;
  words_->setWordWrap(true);
  form_->addRow(words_);
  makeSource(form_);
  makeTerms(form_);
  // A label's size is rounded down from its text's, which cuts the last letter.
  for (QWidget* field : std::initializer_list<QWidget*>{film_, rig_, camera_, name_, game_, players_, table_, kind_}) {
    QWidget* label = form_->labelForField(field);
    label->setMinimumWidth(label->sizeHint().width() + 2);
  }
  makeEnd(form_);

  auto* page = new QWidget;
  auto* column = new QVBoxLayout(page);
  column->setContentsMargins(24, 24, 24, 24);
  column->addStretch(1);
  auto* row = new QHBoxLayout;
  row->addStretch(1);
  row->addWidget(card, 4);
  row->addStretch(1);
  column->addLayout(row);
  column->addStretch(1);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(new VerticalScroll(page));
  setRecord({}, {});
  setKnownFilm({});
  setMisfit({});
  showWay();
}

QWidget* StartForm::makeWays() {
  auto* ways = new QWidget;
  auto* row = new QHBoxLayout(ways);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(4);
  ways_.setExclusive(true);
  for (std::size_t i = 0; i < kWays.size(); ++i) {
    auto* button = new QToolButton;
    button->setObjectName(QString::fromLatin1(kWays[i].name));
    button->setText(translated(kWays[i].text));
    button->setIcon(inkIcon(QString::fromLatin1(kWays[i].icon)));
    button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    button->setToolTip(translated(kWays[i].title));
    button->setCheckable(true);
    button->setFocusPolicy(Qt::StrongFocus);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    ways_.addButton(button, static_cast<int>(i));
    row->addWidget(button);
  }
  connect(&ways_, &QButtonGroup::idClicked, this, [this](int way) { setWay(static_cast<SessionWay>(way)); });
  return ways;
}

void StartForm::makeSource(QFormLayout* form) {
  film_ = new PathField("sessionFilm", tr("Choose a film"),
                        tr("Films (*.mp4 *.mkv *.mov *.avi *.webm *.m4v);;All files (*)"));
  film_->setPlaceholder(tr("Drop a film on the window, or choose one"));
  form->addRow(tr("Fil&m"), film_);
  rig_ = new RigChoice;
  form->addRow(tr("&Rig"), rig_);
  camera_ = new CameraChoice;
  form->addRow(tr("&Camera"), camera_);
  keepsFilm_ = new QCheckBox(tr("&Keep the film beside the record"));
  keepsFilm_->setObjectName(QStringLiteral("keepsFilm"));
  keepsFilm_->setToolTip(
      tr("Only of people whose consent to being filmed is noted in Players; measured is either way"));
  form->addRow(QString(), keepsFilm_);
  connect(rig_, &RigChoice::chosenChanged, this, [this] {
    if (chosenRig() != misfitRig_) setMisfit({});
    showRigSize();
  });
  connect(film_, &PathField::pathChanged, this, [this] {
    setKnownFilm({});
    setMisfit({});
    showName();
  });
  connect(film_, &PathField::entered, this, &StartForm::begin);
  connect(rig_, &RigChoice::setUpWanted, this, &StartForm::setUpWanted);
}

void StartForm::makeTerms(QFormLayout* form) {
  name_ = new QLineEdit;
  name_->setObjectName(QStringLiteral("sessionName"));
  form->addRow(tr("&Name"), name_);
  game_ = new QComboBox;
  game_->setObjectName(QStringLiteral("sessionGame"));
  for (const Game game : kGames) {
    const QString text = QString::fromUtf8(toText(game));
    game_->addItem(atStart(gameWords(text.toStdString())), text);
  }
  game_->addItem(tr("No game: practice without a referee"), QString());
  form->addRow(tr("&Game"), game_);
  players_ = new QLineEdit;
  players_->setObjectName(QStringLiteral("sessionPlayers"));
  players_->setPlaceholderText(tr("One or two names with a comma; who breaks comes first"));
  form->addRow(tr("&Players"), players_);
  table_ = new QComboBox;
  table_->setObjectName(QStringLiteral("sessionTable"));
  table_->setEditable(true);
  for (const TableSize& size : tableSizes())
    table_->addItem(QString::fromUtf8(size.name));
  table_->setToolTip(tr("A usual size, or the path of a table file"));
  form->addRow(tr("&Table"), table_);
  kind_ = new QComboBox;
  kind_->setObjectName(QStringLiteral("sessionKind"));
  kind_->addItem(tr("Practice"), static_cast<int>(SessionKind::Practice));
  kind_->addItem(tr("Match"), static_cast<int>(SessionKind::Match));
  kind_->addItem(tr("Lesson"), static_cast<int>(SessionKind::Lesson));
  form->addRow(tr("&For"), kind_);
  connect(name_, &QLineEdit::returnPressed, this, &StartForm::begin);
  connect(players_, &QLineEdit::returnPressed, this, &StartForm::begin);
}

void StartForm::makeEnd(QFormLayout* form) {
  recordWords_ = new QuietLabel;
  recordWords_->setObjectName(QStringLiteral("sessionRecord"));
  recordWords_->setWordWrap(true);
  recordWords_->setTextFormat(Qt::PlainText);
  form->addRow(recordWords_);
  begin_ = new QPushButton;
  begin_->setObjectName(QStringLiteral("beginSession"));
  begin_->setDefault(true);
  connect(begin_, &QPushButton::clicked, this, &StartForm::begin);
  form->addRow(begin_);
  setFocusProxy(begin_);

  misfitWords_ = wordsLabel("filmMisfit");
  auto* despite = new QPushButton(tr("Measure it all the &same"));
  despite->setObjectName(QStringLiteral("measureDespite"));
  auto* setUp = new QPushButton(tr("Mend &it in Set-up"));
  setUp->setObjectName(QStringLiteral("mendInSetup"));
  connect(despite, &QPushButton::clicked, this, [this] { beginFilm(false, true); });
  connect(setUp, &QPushButton::clicked, this, &StartForm::setUpWanted);
  misfitNote_ = noteWithChoices(misfitWords_, setUp, despite);
  form->addRow(misfitNote_);

  knownWords_ = wordsLabel("knownFilm");
  look_ = new QPushButton(tr("&Look at it in Review"));
  look_->setObjectName(QStringLiteral("lookAtKnown"));
  again_ = new QPushButton(tr("Measure it &again"));
  again_->setObjectName(QStringLiteral("measureAgain"));
  connect(look_, &QPushButton::clicked, this, [this] { emit lookWanted(known_->session.id); });
  connect(again_, &QPushButton::clicked, this, [this] { beginFilm(true); });
  knownNote_ = noteWithChoices(knownWords_, look_, again_);
  form->addRow(knownNote_);

  brokenWords_ = wordsLabel("brokenSession");
  resume_ = new QPushButton(tr("Go on with it"));
  resume_->setObjectName(QStringLiteral("resumeSession"));
  connect(resume_, &QPushButton::clicked, this, &StartForm::resumeWanted);
  form->addRow(brokenWords_);
  form->addRow(resume_);
}

void StartForm::setRecord(const QString& path, const QString& broken) {
  recordWords_->setText(path.isEmpty() ? QString() : tr("Kept in %1.").arg(path));
  form_->setRowVisible(recordWords_, !path.isEmpty());
  brokenWords_->setText(tr("The session \"%1\" was not ended.").arg(broken));
  form_->setRowVisible(brokenWords_, !broken.isEmpty());
  form_->setRowVisible(resume_, !broken.isEmpty());
}

void StartForm::setWay(SessionWay way) {
  way_ = way;
  showWay();
}

void StartForm::showWay() {
  const WayRow& row = kWays[static_cast<std::size_t>(way_)];
  ways_.button(static_cast<int>(way_))->setChecked(true);
  title_->setText(translated(row.title));
  words_->setText(translated(row.words));
  begin_->setText(translated(row.begin));
  const bool byHand = way_ == SessionWay::ByHand;
  form_->setRowVisible(film_, way_ == SessionWay::FromFilm);
  form_->setRowVisible(camera_, way_ == SessionWay::Live);
  form_->setRowVisible(keepsFilm_, way_ == SessionWay::Live);
  form_->setRowVisible(rig_, !byHand);
  form_->setRowVisible(table_, byHand);
  form_->setRowVisible(knownNote_, way_ == SessionWay::FromFilm && known_.has_value());
  form_->setRowVisible(misfitNote_, way_ == SessionWay::FromFilm && !misfitWords_->text().isEmpty());
  showName();
}

void StartForm::showName() {
  const QString film = QFileInfo(film_->path()).completeBaseName();
  const bool ofFilm = way_ == SessionWay::FromFilm && !film.isEmpty();
  name_->setPlaceholderText(ofFilm ? film : locale().toString(QDate::currentDate(), QLocale::LongFormat));
}

void StartForm::setFilm(const QString& path) {
  film_->setPath(path);
  setWay(SessionWay::FromFilm);
}

void StartForm::setKnownFilm(const std::optional<FilmInRecord>& known) {
  known_ = known;
  if (known) knownWords_->setText(knownFilmWords(*known));
  form_->setRowVisible(knownNote_, known.has_value());
}

QString StartForm::chosenRig() const {
  const auto rig = rig_->chosen();
  return rig ? rig->rig : QString();
}

void StartForm::setMisfit(const QString& words) {
  misfitWords_->setText(words);
  misfitRig_ = chosenRig();
  form_->setRowVisible(misfitNote_, way_ == SessionWay::FromFilm && !words.isEmpty());
}

void StartForm::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  rig_->refresh();
}

SessionKind StartForm::kind() const {
  return static_cast<SessionKind>(kind_->currentData().toInt());
}

std::vector<std::string> StartForm::players() const {
  return namesIn(players_->text());
}

void StartForm::begin() {
  emit said({});
  switch (way_) {
    case SessionWay::ByHand:
      return beginByHand();
    case SessionWay::FromFilm:
      return beginFilm(false);
    case SessionWay::Live:
      return beginLive();
  }
}

void StartForm::beginByHand() {
  HandTerms terms;
  const QString table = table_->currentText().trimmed();
  auto measured = measuredTableFrom(table.toStdString());
  if (!measured) {
    emit failed(measured.error());
    return;
  }
  terms.table = std::move(*measured);
  terms.tableName = QFileInfo(table).completeBaseName().toStdString();
  const QString name = name_->text().trimmed();
  terms.name = (name.isEmpty() ? name_->placeholderText() : name).toStdString();
  terms.game = gameFromText(game_->currentData().toString().toStdString());
  terms.players = players();
  emit beginWanted(terms, kind());
}

std::optional<MeasureOptions> StartForm::measureOptions() {
  const auto rig = rig_->chosen();
  if (!rig) {
    emit said(tr("Choose the rig of this camera first; Set-up makes one from a film or still of the table."));
    return std::nullopt;
  }
  if (rig->table.isEmpty()) {
    emit said(tr("Choose the table first: the table.json that was measured, or a usual size such as 9ft."));
    return std::nullopt;
  }
  MeasureOptions options;
  options.rig = rig->rig.toStdString();
  options.table = rig->table.toStdString();
  options.game = game_->currentData().toString().toStdString();
  const QString name = name_->text().trimmed();
  options.session = (name.isEmpty() ? name_->placeholderText() : name).toStdString();
  options.players = players();
  options.kind = kind();
  rememberRig(*rig);
  return options;
}

void StartForm::beginFilm(bool again, bool despiteCheck) {
  if (film_->path().isEmpty()) {
    emit said(tr("Choose the film first."));
    return;
  }
  auto options = measureOptions();
  if (!options) return;
  options->film = film_->path().toStdString();
  options->again = again;
  setMisfit({});
  emit filmWanted(*options, despiteCheck);
}

void StartForm::beginLive() {
  std::shared_ptr<LiveSource> source = camera_->makeSource();
  if (!source) {
    emit said(tr("Choose a camera first, or the film that stands in for one."));
    return;
  }
  if (const auto options = measureOptions()) emit liveWanted(*options, source, keepsFilm_->isChecked());
}

/// A camera's images must be of the size that the rig was made with.
void StartForm::showRigSize() {
  std::optional<ImageSize> size;
  if (const auto chosen = rig_->chosen()) {
    if (const auto rig = readRigFile(chosen->rig.toStdString())) size = rig->lens.size;
  }
  camera_->setImageSize(size);
}

void StartForm::save(QSettings& settings) const {
  settings.setValue(QStringLiteral("session/way"), static_cast<int>(way_));
  settings.setValue(QStringLiteral("session/keepsFilm"), keepsFilm_->isChecked());
}

void StartForm::restore(const QSettings& settings) {
  keepsFilm_->setChecked(settings.value(QStringLiteral("session/keepsFilm")).toBool());
  const int way = settings.value(QStringLiteral("session/way")).toInt();
  if (way >= 0 && way < static_cast<int>(kWays.size())) setWay(static_cast<SessionWay>(way));
}

}  // namespace ferrule
