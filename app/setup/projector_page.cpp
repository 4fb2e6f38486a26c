// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/projector_page.h"

#include <QComboBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QGuiApplication>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>

#include "app/picture/image_of.h"
#include "app/projector/projector_desk.h"
#include "core/geometry/units.h"
#include "core/vision/projection_picture.h"

namespace ferrule {

namespace {

LightLine between(TablePoint from, TablePoint to) {
  LightLine line;
  constexpr int kSteps = 40;  // so that it is bent as the projector's lens needs it
  for (int i = 0; i <= kSteps; ++i)
    line.places.push_back(from + (static_cast<double>(i) / kSteps) * (to - from));
  return line;
}

/// What lies on every table: the head and foot strings and rings at the spots, with the cloth's edge just inside the
/// noses.
LightDrawing checkDrawing(const MeasuredTable& measured) {
  const Table& table = measured.table;
  const double radius_m = measured.balls.radius_m();
  const double x_m = 0.5 * table.length_m - radius_m;
  const double y_m = 0.5 * table.width_m - radius_m;
  LightDrawing drawing;
  for (const double x : {headString_m(table), footString_m(table), -x_m, x_m})
    drawing.lines.push_back(between({x, -y_m}, {x, y_m}));
  for (const double y : {-y_m, y_m})
    drawing.lines.push_back(between({-x_m, y}, {x_m, y}));
  for (const TablePoint spot : {headSpot(table), centreSpot(table), footSpot(table)})
    drawing.lines.push_back(ringAround(spot, radius_m));
  return drawing;
}

}  // namespace

ProjectorPage::ProjectorPage(SetupDesk& desk, ProjectorDesk& projector, QWidget* parent)
    : SetupPage(desk, SetupStep::Projector, parent), projector_(projector) {
  setObjectName(QStringLiteral("projectorPage"));
  addCaution(
      tr("Never look into the beam, and let nobody bend into it: black is one key away (B). The pictures change in "
         "slow fades and nothing blinks; if light that moves troubles somebody, leave it black. A projector over a "
         "table needs fixings rated for its weight, a steel tether to a second point, and mains work by a licensed "
         "electrician; local codes come first."));
  QFormLayout* form = addForm();
  screens_ = new QComboBox;
  screens_->setObjectName(QStringLiteral("projectorScreens"));
  form->addRow(tr("&Screen of the projector"), screens_);
  QPushButton* black = button("projectBlack", tr("&Black"));
  QPushButton* grid = button("projectGrid", tr("&Grid of tags"));
  QPushButton* lines = button("projectLines", tr("&Lines and spots of the table"));
  QPushButton* position = button("projectPosition", tr("A &position file…"));
  QPushButton* off = button("projectorOff", tr("&Close its screen"));
  addButtons({black, grid, lines, position, off});
  addQuiet(tr(
      "Clear the table, darken the room, show the grid and take a still of it with the camera of this rig, in its own "
      "picture size."));
  QPushButton* find = button("findProjector", tr("&Find the projector in a still…"));
  addButtons({find});
  result_ = new QLabel;
  result_->setObjectName(QStringLiteral("projectorResult"));
  result_->setWordWrap(true);
  column()->addWidget(result_);
  column()->addStretch(1);
  listScreens();
  connect(qGuiApp, &QGuiApplication::screenAdded, this, &ProjectorPage::listScreens);
  connect(qGuiApp, &QGuiApplication::screenRemoved, this, &ProjectorPage::listScreens);
  connect(screens_, &QComboBox::activated, this, [this] { projector_.chooseScreen(screen()); });
  connect(black, &QPushButton::clicked, this, [this] {
    projector_.chooseScreen(screen());
    projector_.showPicture({}, {});
  });
  connect(grid, &QPushButton::clicked, this, &ProjectorPage::showGrid);
  connect(lines, &QPushButton::clicked, this, &ProjectorPage::showLines);
  connect(position, &QPushButton::clicked, this, [this] {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("A position file"), {}, tr("Positions (*.json);;All files (*)"));
    if (!path.isEmpty()) showPosition(path);
  });
  connect(off, &QPushButton::clicked, &projector_, &ProjectorDesk::close);
  connect(&projector_, &ProjectorDesk::said, &this->desk(), &SetupDesk::said);
  connect(find, &QPushButton::clicked, this, [this] {
    const QString path = QFileDialog::getOpenFileName(this, tr("A still of the grid on the cloth"), {},
                                                      tr("Pictures (*.png *.jpg *.jpeg);;All files (*)"));
    if (!path.isEmpty()) this->desk().findProjector(path);
  });
  ProjectorPage::refresh();
}

void ProjectorPage::listScreens() {
  screens_->clear();
  const auto all = QGuiApplication::screens();
  for (const QScreen* screen : all) {
    const QSize size = ProjectorScreen::pixelsOf(screen);
    screens_->addItem(tr("%1: %2 × %3 px", "a screen").arg(screen->name()).arg(size.width()).arg(size.height()));
  }
  // The first one has the window.
  const auto chosen = all.indexOf(ProjectorDesk::chosenScreen());
  screens_->setCurrentIndex(chosen >= 0 ? static_cast<int>(chosen) : std::max(0, static_cast<int>(all.size()) - 1));
}

QScreen* ProjectorPage::screen() const {
  return QGuiApplication::screens().value(screens_->currentIndex(), QGuiApplication::primaryScreen());
}

void ProjectorPage::showGrid() {
  const QSize size = ProjectorScreen::pixelsOf(screen());
  const ProjectorGrid grid = projectorGridFor({size.width(), size.height()});
  if (!desk().keepGrid(grid)) return;
  projector_.chooseScreen(screen());
  projector_.showPicture(tr("grid of tags"), imageOf(gridPicture(grid)));
}

bool ProjectorPage::lacksProjector() {
  const auto& projector = desk().projector();
  if (!projector) {
    emit desk().said(
        tr("It is not known yet where the projector's light falls; show the grid and find it in a still."));
    return true;
  }
  const QSize size = ProjectorScreen::pixelsOf(screen());
  if (size == QSize(projector->size.width, projector->size.height)) return false;
  emit desk().said(tr("The projector was found with a picture of %1 × %2 px and this screen has %3 × %4 px; choose its "
                      "screen, or show the grid again and find it anew.")
                       .arg(projector->size.width)
                       .arg(projector->size.height)
                       .arg(size.width())
                       .arg(size.height()));
  return true;
}

void ProjectorPage::showLines() {
  if (lacksProjector()) return;
  const MeasuredTable& measured = desk().rig() ? desk().rigTable() : desk().state().measured;
  projector_.chooseScreen(screen());
  projector_.show(tr("lines and spots"), checkDrawing(measured), *desk().projector());
}

void ProjectorPage::showPosition(const QString& path) {
  if (lacksProjector()) return;
  projector_.chooseScreen(screen());
  projector_.showPosition(path, *desk().projector());
}

void ProjectorPage::refresh() {
  const auto& projector = desk().projector();
  if (!projector) {
    result_->setText(tr("No projector yet; without one this step is not needed."));
    return;
  }
  const auto mm = [&](double length_m) { return tr("%1 mm").arg(numbers().fixed(millimetresFromMetres(length_m), 1)); };
  result_->setText(
      tr("Light lies true to %1 (rms) on the cloth, by tags that had no part in it (%2 tags, %3 × %4 px, %5).")
          .arg(mm(projector->heldOutRms_m))
          .arg(projector->tags)
          .arg(projector->size.width)
          .arg(projector->size.height)
          .arg(QString::fromStdString(projector->date)));
}

}  // namespace ferrule
