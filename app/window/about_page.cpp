// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/about_page.h"

#include <QCoreApplication>
#include <QDialogButtonBox>
#include <QTextBrowser>
#include <QVBoxLayout>
#include <array>

namespace ferrule {

namespace {

constexpr QSize kPageSize{640, 560};

/// Names and licences are not translated. Source: the copyright files of the Debian 12 packages.
struct Library {
  const char* name;
  const char* licence;
};
constexpr std::array kLibraries{
    Library{"Qt 6 (Widgets, Multimedia, Svg, Sql)", "LGPL-3.0 / GPL-3.0"},
    Library{"Qt Charts", "GPL-3.0"},
    Library{"OpenCV", "Apache-2.0"},
    Library{"FFmpeg", "LGPL-2.1-or-later / GPL-2.0-or-later"},
    Library{"Eigen", "MPL-2.0"},
    Library{"Ceres Solver", "BSD-3-Clause"},
    Library{"oneTBB", "Apache-2.0"},
    Library{"Boost", "BSL-1.0"},
    Library{"SQLite", "public domain"},
    Library{"JSON for Modern C++", "MIT"},
    Library{"CLI11", "BSD-3-Clause"},
    Library{"expected", "CC0-1.0"},
    Library{"qpdf", "Apache-2.0"},
};

QString paragraph(const QString& words) {
  return QStringLiteral("<p>%1</p>").arg(words.toHtmlEscaped());
}

QString heading(const QString& words) {
  return QStringLiteral("<h3>%1</h3>").arg(words.toHtmlEscaped());
}

QString listed(const QStringList& lines) {
  QString list;
  for (const QString& line : lines)
    list += QStringLiteral("<li>%1</li>").arg(line.toHtmlEscaped());
  return QStringLiteral("<ul>%1</ul>").arg(list);
}

}  // namespace

AboutPage::AboutPage(QWidget* parent) : QDialog(parent) {
  setObjectName(QStringLiteral("aboutPage"));
  setWindowTitle(tr("About Ferrule"));
  resize(kPageSize);
  QStringList libraries;
  for (const Library& library : kLibraries)
    libraries << QStringLiteral("%1: %2").arg(QString::fromLatin1(library.name), QString::fromLatin1(library.licence));

  auto* text = new QTextBrowser;
  text->setObjectName(QStringLiteral("aboutText"));
  text->setAccessibleName(tr("About Ferrule"));
  text->setHtml(
      paragraph(tr("Ferrule %1 turns film of a cue-sports table into measured shots.")
                    .arg(QCoreApplication::applicationVersion())) +
      heading(tr("Take care")) +
      listed(
          {tr("Hang a camera or a projector over people only from fixings rated for the load, with a safety tether."),
           tr("Leave mains work to a licensed electrician; local codes come first."),
           tr("Never look into the projector's beam, and never let a person lean into it."),
           tr("Jump shots: protect the eyes and keep the space around the table clear."),
           tr("Film people, minors above all, only with consent, and as local law allows."),
           tr("The numbers carry their uncertainty: believe no millimetre that the error map does not give.")}) +
      heading(tr("Your data")) +
      paragraph(tr("Everything stays on this computer, in files that only you can read; nothing is sent anywhere.")) +
      heading(tr("Licence")) +
      paragraph(tr("Free software under the GNU General Public License, version 3 or later. It comes without any "
                   "warranty.")) +
      heading(tr("Made with")) + listed(libraries));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(16, 16, 16, 16);
  column->setSpacing(8);
  column->addWidget(text, 1);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  column->addWidget(buttons);
}

}  // namespace ferrule
