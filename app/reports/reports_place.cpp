// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/reports/reports_place.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateTime>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSettings>
#include <QSignalBlocker>
#include <QSplitter>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/progress/filter_bar.h"
#include "app/report/report_builder.h"
#include "app/report/report_csv.h"
#include "app/report/report_html.h"
#include "app/report/report_pdf.h"
#include "app/reports/sheets_view.h"
#include "app/window/card.h"
#include "app/window/empty_place.h"
#include "app/window/inks.h"
#include "app/window/languages.h"
#include "app/window/message_bar.h"
#include "app/window/own_record.h"
#include "app/window/tool_button.h"
#include "app/words/error_sentence.h"
#include "core/base/text_file.h"

namespace ferrule {

namespace {

constexpr int kPanelWidth_px = 320;
constexpr int kAfterLastKey_ms = 400;

bool endsIn(const QString& path, const char* ending) {
  return path.endsWith(QLatin1String(ending), Qt::CaseInsensitive);
}

}  // namespace

ReportsPlace::ReportsPlace(const ActionSet& actions, ProgressService::Clock now, QWidget* parent)
    : Place(parent), service_(now), now_(now) {
  setObjectName(QStringLiteral("reportsPlace"));
  setAccessibleName(tr("Reports"));
  message_ = new MessageBar;
  message_->setObjectName(QStringLiteral("reportsMessage"));
  columns_ = new QSplitter;
  columns_->setObjectName(QStringLiteral("reportColumns"));
  columns_->setHandleWidth(1);
  columns_->addWidget(makeMiddle(actions));
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

  soon_.setSingleShot(true);
  soon_.setInterval(kAfterLastKey_ms);
  connect(&soon_, &QTimer::timeout, this, &ReportsPlace::rebuild);
  connect(note_, &QPlainTextEdit::textChanged, &soon_, qOverload<>(&QTimer::start));
  connect(filter_, &FilterBar::changed, this, &ReportsPlace::ask);
  connect(language_, &QComboBox::currentIndexChanged, this, &ReportsPlace::rebuild);
  connect(paper_, &QComboBox::currentIndexChanged, this, &ReportsPlace::rebuild);
  connect(&service_, &ProgressService::opened, this, [this](const QString& path, const std::vector<Player>& players) {
    record_ = path;
    message_->tell({});
    stack_->setCurrentIndex(players.empty() ? 0 : 1);
    emptyWords_->setText(
        tr("Nobody has played in %1 yet. Play a session with names, or open another record.").arg(path));
    const QSignalBlocker quiet(filter_);
    const QString before = filter_->player().isEmpty() ? wantedPlayer_ : filter_->player();
    filter_->setPlayers(players);
    filter_->setPlayer(before);
    ask();
  });
  connect(&service_, &ProgressService::answered, this, [this](std::shared_ptr<const ProgressAnswer> answer) {
    answer_ = std::move(answer);
    rebuild();
  });
  connect(&service_, &ProgressService::failed, this,
          [this](const Error& error) { message_->tell(errorSentence(error)); });
}

QWidget* ReportsPlace::makeMiddle(const ActionSet&) {
  auto* middle = new QWidget;
  auto* column = new QVBoxLayout(middle);
  column->setContentsMargins(12, 8, 0, 0);
  column->setSpacing(8);
  filter_ = new FilterBar(QStringLiteral("report"));
  filter_->showPeriodOnly();
  column->addWidget(filter_);
  sheets_ = new SheetsView;
  column->addWidget(sheets_, 1);
  return middle;
}

QWidget* ReportsPlace::makePanel(const ActionSet& actions) {
  auto* panel = new QWidget;
  panel->setMinimumWidth(240);
  auto* column = new QVBoxLayout(panel);
  column->setContentsMargins(16, 12, 16, 12);
  column->setSpacing(8);
  const auto labelled = [&](const QString& words, QWidget* field) {
    auto* label = new QLabel(words);
    label->setBuddy(field);
    column->addWidget(label);
    column->addWidget(field);
  };
  language_ = new QComboBox;
  language_->setObjectName(QStringLiteral("reportLanguage"));
  language_->setAccessibleName(tr("The student's language"));
  for (const Language& language : languages())
    language_->addItem(QString::fromUtf8(language.ownName), QString::fromLatin1(language.code));
  language_->setCurrentIndex(language_->findData(languageFor(QLocale())));
  labelled(tr("The student's &language"), language_);
  paper_ = new QComboBox;
  paper_->setObjectName(QStringLiteral("reportPaper"));
  paper_->setAccessibleName(tr("Paper"));
  paper_->addItem(tr("A4"), static_cast<int>(QPageSize::A4));
  paper_->addItem(tr("Letter"), static_cast<int>(QPageSize::Letter));
  labelled(tr("Pa&per"), paper_);
  note_ = new QPlainTextEdit;
  note_->setObjectName(QStringLiteral("coachNote"));
  note_->setAccessibleName(tr("Coach's note"));
  note_->setPlaceholderText(tr("Empty: lines to write on"));
  note_->setTabChangesFocus(true);
  labelled(tr("Coach's &note"), note_);
  QToolButton* button = raisedButton(actions.at(ActionId::ExportReport));
  column->addWidget(button, 0, Qt::AlignLeft);
  auto* words = new QuietLabel(tr("As PDF or HTML to hand out, or its numbers as CSV."));
  words->setWordWrap(true);
  column->addWidget(words);
  return panel;
}

QWidget* ReportsPlace::makeEmpty(const ActionSet& actions) {
  emptyWords_ = new QLabel(tr("A report needs shots: play a session, or open a record."));
  emptyWords_->setObjectName(QStringLiteral("emptyReportsWords"));
  emptyWords_->setFont(scaled(font(), 1.2));
  auto* open = new QPushButton(tr("Open a record…"));
  open->setObjectName(QStringLiteral("openRecordFromReports"));
  QWidget* empty = emptyPlace(emptyWords_, open, actions.at(ActionId::OpenRecord));
  empty->setObjectName(QStringLiteral("emptyReports"));
  return empty;
}

bool ReportsPlace::act(ActionId action) {
  if (action != ActionId::ExportReport) return false;
  if (!report_) {
    message_->tell(tr("There is no report yet."));
    return true;
  }
  const QString name = tr("report-%1.pdf").arg(filter_->player());
  const QString path = QFileDialog::getSaveFileName(this, tr("Export the report"), name,
                                                    tr("PDF (*.pdf);;HTML (*.html);;Numbers (*.csv)"));
  if (!path.isEmpty()) exportReport(path);
  return true;
}

void ReportsPlace::exportReport(const QString& path) {
  if (!report_) return;
  Result<void> written;
  if (endsIn(path, ".csv")) {
    written = writeTextFile(path.toStdString(), reportCsv(answer_->columns.front().progress));
  } else if (endsIn(path, ".html") || endsIn(path, ".htm")) {
    written = writeReportHtml(*report_, path.toStdString());
  } else if (endsIn(path, ".pdf")) {
    written =
        writeReportPdf(*report_, static_cast<QPageSize::PageSizeId>(paper_->currentData().toInt()), path.toStdString());
  } else {
    message_->tell(tr("%1 ends in none of .pdf, .html and .csv; name the file so that it does.").arg(path));
    return;
  }
  message_->tell(written ? tr("The report is in %1.").arg(path) : errorSentence(written.error()));
}

void ReportsPlace::openRecord(const QString& path) {
  wantedRecord_ = path;
  if (isVisible()) read(path);
}

void ReportsPlace::forgetPlayer(const QString& name) {
  if (wantedPlayer_ == name) wantedPlayer_.clear();
  filter_->forgetPlayer(name);
}

void ReportsPlace::showEvent(QShowEvent* event) {
  Place::showEvent(event);
  const QString wanted = wantedRecord_.isEmpty() ? ownRecord() : wantedRecord_;
  if (stampOf(wanted) != stamp_) read(wanted);
}

void ReportsPlace::read(const QString& path) {
  if (wantedRecord_.isEmpty() && !QFileInfo::exists(path)) {
    stack_->setCurrentIndex(0);
    return;
  }
  stamp_ = stampOf(path);
  service_.open(path);
}

void ReportsPlace::setNumbers(const Numbers& numbers) {
  const bool same = numbers_.speedUnit() == numbers.speedUnit();
  numbers_ = numbers;
  if (!same) rebuild();
}

void ReportsPlace::ask() {
  if (record_.isEmpty() || filter_->player().isEmpty()) return;
  service_.ask({{filter_->wanted()}, numbers_, true});
}

void ReportsPlace::rebuild() {
  if (!answer_) return;
  const ProgressColumn& column = answer_->columns.front();
  const QString language = language_->currentData().toString();
  ReportSettings settings;
  // The user's own form of the language where it is the same one.
  settings.locale = languageFor(QLocale()) == language ? QLocale() : QLocale(language);
  settings.speedUnit = numbers_.speedUnit();
  settings.from_ms = column.wanted.filter.from_ms;
  settings.until_ms = column.wanted.filter.until_ms;
  settings.coachNote = note_->toPlainText();
  settings.now_ms = now_();
  settings.consent = column.consent;
  {
    const SpokenLanguage spoken(language);
    report_ = buildReport(column.progress, settings);
  }
  sheets_->setReport(*report_, static_cast<QPageSize::PageSizeId>(paper_->currentData().toInt()));
  const QString missing = lettersWithoutFont(report_->title + settings.coachNote);
  message_->tell(missing.isEmpty()
                     ? QString()
                     : tr("No installed font has these letters, so they print as boxes: %1.").arg(missing));
  emit shown();
}

void ReportsPlace::save(QSettings& settings) const {
  settings.setValue(QStringLiteral("reports/record"), wantedRecord_);
  settings.setValue(QStringLiteral("reports/player"), filter_->player().isEmpty() ? wantedPlayer_ : filter_->player());
  settings.setValue(QStringLiteral("reports/paper"), paper_->currentIndex());
  settings.setValue(QStringLiteral("reports/language"), language_->currentIndex());
  settings.setValue(QStringLiteral("reports/columns"), columns_->saveState());
}

void ReportsPlace::restore(const QSettings& settings) {
  wantedRecord_ = settings.value(QStringLiteral("reports/record")).toString();
  wantedPlayer_ = settings.value(QStringLiteral("reports/player")).toString();
  const auto choose = [&](QComboBox* combo, const char* key) {
    const QVariant index = settings.value(QLatin1String(key));
    if (index.isValid()) combo->setCurrentIndex(std::clamp(index.toInt(), 0, combo->count() - 1));
  };
  choose(paper_, "reports/paper");
  choose(language_, "reports/language");
  columns_->restoreState(settings.value(QStringLiteral("reports/columns")).toByteArray());
}

}  // namespace ferrule
