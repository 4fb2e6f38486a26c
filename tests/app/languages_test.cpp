// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/languages.h"

#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <QtTest>
#include <map>
#include <tuple>

#include "app/film/film_file.h"
#include "app/review/record_source.h"
#include "app/session/session_place.h"
#include "app/window/main_window.h"
#include "app/window/window_host.h"
#include "core/record/record.h"
#include "tests/app/fresh_settings.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

/// A text of the program as its translators see it.
struct Message {
  QString context;
  QString source;
  QString comment;

  bool operator<(const Message& other) const {
    return std::tie(context, source, comment) < std::tie(other.context, other.source, other.comment);
  }
};

struct Words {
  bool plural = false;
  bool finished = true;
  QStringList forms;
};

std::map<Message, Words> readWords(const QString& path) {
  std::map<Message, Words> words;
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return words;
  QXmlStreamReader xml(&file);
  Message message;
  Words found;
  QString context;
  while (!xml.atEnd()) {
    const auto token = xml.readNext();
    if (token == QXmlStreamReader::EndElement && xml.name() == QLatin1String("message")) {
      message.context = context;
      words[message] = found;
    }
    if (token != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QLatin1String("message")) {
      message = {};
      found = {};
      found.plural = xml.attributes().value(QLatin1String("numerus")) == QLatin1String("yes");
    } else if (xml.name() == QLatin1String("name")) {
      context = xml.readElementText();
    } else if (xml.name() == QLatin1String("source")) {
      message.source = xml.readElementText();
    } else if (xml.name() == QLatin1String("comment")) {
      message.comment = xml.readElementText();
    } else if (xml.name() == QLatin1String("translation")) {
      found.finished = xml.attributes().value(QLatin1String("type")).isEmpty();
      if (!found.plural) found.forms << xml.readElementText();
    } else if (xml.name() == QLatin1String("numerusform")) {
      found.forms << xml.readElementText();
    }
  }
  return words;
}

/// Every text of the program, as the toolkit's own reader of sources finds them.
const std::map<Message, Words>& programWords() {
  static const std::map<Message, Words> words = [] {
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("all.ts"));
    QProcess reader;
    reader.start(QStringLiteral(FERRULE_LUPDATE),
                 {QStringLiteral("-silent"), QStringLiteral(FERRULE_SOURCE_DIR "/app"), QStringLiteral("-I"),
                  QStringLiteral(FERRULE_SOURCE_DIR), QStringLiteral("-ts"), file});
    reader.waitForFinished(120'000);
    return readWords(file);
  }();
  return words;
}

/// The places of a text that numbers and names are put into, in order of the alphabet.
QStringList marks(const QString& text) {
  static const QRegularExpression mark(QStringLiteral("%L?n|%L?[0-9]+"));
  QStringList found;
  for (auto match = mark.globalMatch(text); match.hasNext();)
    found << match.next().captured();
  found.sort();
  return found;
}

/// How many plural forms a language has. Source: Unicode CLDR 42, plural rules, as far as the toolkit keeps them apart.
int pluralForms(const QString& language) {
  return language == QLatin1String("zh_CN") ? 1 : 2;
}

}  // namespace

class LanguagesTest : public QObject {
  Q_OBJECT
 private slots:
  void everyTextStandsInEveryLanguage_data();
  void everyTextStandsInEveryLanguage();
  void oneThingHasOneName_data();
  void oneThingHasOneName();
  void aLocaleIsServedInItsLanguage_data();
  void aLocaleIsServedInItsLanguage();
  void pluralsAreFormedInEveryLanguage();
  void anotherLanguageIsSpokenWithoutARestart();
  void aSessionByHandGoesOnInTheOtherLanguage();
};

void LanguagesTest::everyTextStandsInEveryLanguage_data() {
  QTest::addColumn<QString>("language");
  for (const Language& language : languages().subspan(1))
    QTest::newRow(language.code) << QString::fromLatin1(language.code);
}

void LanguagesTest::everyTextStandsInEveryLanguage() {
  QFETCH(const QString, language);
  QVERIFY(programWords().size() > 1000);
  const auto words = readWords(QStringLiteral(FERRULE_SOURCE_DIR "/translations/ferrule_%1.ts").arg(language));
  QStringList faults;
  for (const auto& [message, program] : programWords()) {
    const QString text = message.context + QStringLiteral(": ") + message.source;
    const auto at = words.find(message);
    if (at == words.end() || !at->second.finished || at->second.forms.isEmpty()) {
      faults << QStringLiteral("not translated: ") + text;
      continue;
    }
    if (at->second.plural != program.plural ||
        at->second.forms.size() != (program.plural ? pluralForms(language) : 1)) {
      faults << QStringLiteral("wrong number of plural forms: ") + text;
    }
    for (const QString& form : at->second.forms) {
      if (form.isEmpty()) faults << QStringLiteral("empty: ") + text;
      // A form for one thing may say "one" in a word.
      if (!program.plural && marks(form) != marks(message.source)) faults << QStringLiteral("other places: ") + text;
    }
  }
  for (const QString& fault : faults)
    qWarning("%s", qPrintable(fault));
  QCOMPARE(faults.size(), 0);
}

/// Of two words that the trade uses for one thing, one is chosen and the other must not occur. Which words mean the
/// same: common practice, no source.
void LanguagesTest::oneThingHasOneName_data() {
  QTest::addColumn<QString>("language");
  QTest::addColumn<QString>("word");
  const auto row = [](const char* name, const char* language, const QString& word) {
    QTest::newRow(name) << QString::fromLatin1(language) << word;
  };
  // "8-Ball" is the game's name, a "Stoppball" a stroke's.
  row("de: Kugel, not Ball", "de",
      QStringLiteral("(?<![0-9]-)(?<!Stopp)\\b(Objekt|Ziel|Spiel)?(ball|balls|bälle|bällen)\\b"));
  row("de: gelocht, not versenkt", "de", QStringLiteral("versenk"));
  row("de: Bandennase, not Bandenkante", "de", QStringLiteral("bandenkante|bandenspitze"));
  row("de: Stoß, not Schuss", "de", QStringLiteral("\\bschuss|\\bschüsse"));
  row("fr: bille, not boule", "fr", QStringLiteral("\\b(boule|balle)s?\\b"));
  row("fr: poche, not blouse", "fr", QStringLiteral("\\bblouses?\\b"));
  row("fr: procédé, not bout de queue", "fr", QStringLiteral("bout de (la )?queue"));
  row("es: tronera, not buchaca", "es", QStringLiteral("\\bbuchacas?\\b|\\bhoyos?\\b"));
  row("es: embocar, not entronerar or meter", "es", QStringLiteral("entroner|\\bmetidas?\\b(?! en una banda)"));
  row("es: golpe, not tacada", "es", QStringLiteral("\\btacadas?\\b"));
  row("es: video, not película", "es", QStringLiteral("películas?\\b"));
  row("zh_CN: 母球, not 白球 or 主球", "zh_CN", QStringLiteral("主球|白球"));
  row("zh_CN: 落袋, not 入袋", "zh_CN", QStringLiteral("入袋"));
  row("zh_CN: 袋口, not 球袋", "zh_CN", QStringLiteral("球袋"));
}

void LanguagesTest::oneThingHasOneName() {
  QFETCH(const QString, language);
  QFETCH(const QString, word);
  const QRegularExpression unwanted(
      word, QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption);
  QVERIFY(unwanted.isValid());
  const auto words = readWords(QStringLiteral(FERRULE_SOURCE_DIR "/translations/ferrule_%1.ts").arg(language));
  QVERIFY(words.size() > 1000);
  QStringList found;
  for (const auto& [message, texts] : words) {
    for (const QString& text : texts.forms) {
      if (unwanted.match(text).hasMatch()) found << message.context + QStringLiteral(": ") + text;
    }
  }
  QVERIFY2(found.isEmpty(), qPrintable(found.join(QLatin1Char('\n'))));
}

void LanguagesTest::aLocaleIsServedInItsLanguage_data() {
  QTest::addColumn<QString>("locale");
  QTest::addColumn<QString>("language");
  QTest::newRow("Austria") << "de_AT"
                           << "de";
  QTest::newRow("Mexico") << "es_MX"
                          << "es";
  QTest::newRow("Quebec") << "fr_CA"
                          << "fr";
  QTest::newRow("mainland China") << "zh_CN"
                                  << "zh_CN";
  QTest::newRow("Singapore") << "zh_SG"
                             << "zh_CN";
  QTest::newRow("Taiwan writes the other script") << "zh_TW"
                                                  << "en";
  QTest::newRow("no words for it") << "fi_FI"
                                   << "en";
}

void LanguagesTest::aLocaleIsServedInItsLanguage() {
  QFETCH(const QString, locale);
  QTEST(languageFor(QLocale(locale)), "language");
}

void LanguagesTest::pluralsAreFormedInEveryLanguage() {
  const auto shots = [](const char* language, int count) {
    const SpokenLanguage spoken(QString::fromLatin1(language));
    return QCoreApplication::translate("ReportWords", "%Ln shot(s)", nullptr, count);
  };
  QCOMPARE(shots("en", 1), QStringLiteral("1 shot"));
  QCOMPARE(shots("en", 2), QStringLiteral("2 shots"));
  for (const Language& language : languages()) {
    QVERIFY2(!shots(language.code, 2).contains(QLatin1String("(s)")), language.code);
    QVERIFY2(shots(language.code, 5).contains(QLatin1Char('5')), language.code);
  }
  // French counts nought with one.
  QCOMPARE(shots("fr", 0).mid(1), shots("fr", 1).mid(1));
}

void LanguagesTest::anotherLanguageIsSpokenWithoutARestart() {
  const FreshSettings settings;
  QSettings().setValue(kLanguageSetting, QStringLiteral("en"));
  WindowHost host({openRecordSource, openFilmFile, {}});
  host.open({});
  host.window().showPlace(QStringLiteral("progress"));
  QCOMPARE(host.window().actions().at(ActionId::Quit)->text(), QStringLiteral("&Quit"));
  host.window().actions().at(ActionId::LanguageGerman)->trigger();
  QTRY_COMPARE(host.window().actions().at(ActionId::Quit)->text(), QStringLiteral("&Beenden"));
  QVERIFY(host.window().isVisible());
  QVERIFY(host.window().actions().at(ActionId::LanguageGerman)->isChecked());
  QCOMPARE(QLocale().decimalPoint(), QStringLiteral(","));
  QCOMPARE(QSettings().value("window/place").toString(), QStringLiteral("progress"));
  host.window().actions().at(ActionId::LanguageEnglish)->trigger();
  QTRY_COMPARE(host.window().actions().at(ActionId::Quit)->text(), QStringLiteral("&Quit"));
}

void LanguagesTest::aSessionByHandGoesOnInTheOtherLanguage() {
  const FreshSettings settings;
  QStandardPaths::setTestModeEnabled(true);
  QSettings().setValue(kLanguageSetting, QStringLiteral("en"));
  {
    auto record = Record::open(settings.filePath(QStringLiteral("club.sqlite")).toStdString());
    QVERIFY(record.has_value());
  }
  WindowHost host({openRecordSource, openFilmFile, {}});
  host.open(settings.filePath(QStringLiteral("club.sqlite")));
  const auto hand = [&host] { return host.window().findChild<SessionPlace*>()->desk().hand(); };
  host.window().showPlace(QStringLiteral("session"));
  auto& desk = host.window().findChild<SessionPlace*>()->desk();
  QTRY_VERIFY(!desk.recordPath().isEmpty());
  host.window().findChild<QLineEdit*>(QStringLiteral("sessionName"))->setText(QStringLiteral("Evening"));
  host.window().findChild<QPushButton*>(QStringLiteral("beginSession"))->click();
  QTRY_VERIFY(hand() != nullptr);
  desk.put(BallName(3), {0.2, 0.1}, 0.0);
  const Position balls = hand()->session.state().balls;
  host.window().actions().at(ActionId::LanguageGerman)->trigger();
  QTRY_COMPARE(host.window().actions().at(ActionId::Quit)->text(), QStringLiteral("&Beenden"));
  QTRY_VERIFY(hand() != nullptr);
  QCOMPARE(hand()->session.terms().name, std::string("Evening"));
  QCOMPARE(hand()->session.state().balls, balls);
}

FERRULE_TEST(LanguagesTest)
#include "languages_test.moc"
