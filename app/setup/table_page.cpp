// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/table_page.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <cmath>

#include "app/setup/measure_picture.h"
#include "core/geometry/units.h"
#include "core/table/squareness.h"
#include "core/table/table_size.h"

namespace ferrule {

namespace {

/// A tape is read to a millimetre or two; what is less than this is nothing that can be told. Common practice, no
/// source.
constexpr double kReadable_m = 0.003;
constexpr double kSmallest_mm = 500.0;
constexpr double kLargest_mm = 5000.0;

void setQuietly(QDoubleSpinBox* box, double value) {
  const QSignalBlocker quiet(box);
  box->setValue(value);
}

}  // namespace

TablePage::TablePage(SetupDesk& desk, QWidget* parent) : SetupPage(desk, SetupStep::Table, parent) {
  setObjectName(QStringLiteral("tablePage"));
  QFormLayout* form = addForm();
  name_ = new QLineEdit;
  name_->setObjectName(QStringLiteral("tableName"));
  name_->setPlaceholderText(tr("Such as: Hall, table 2"));
  form->addRow(tr("&Name"), name_);
  size_ = new QComboBox;
  size_->setObjectName(QStringLiteral("tableSize"));
  for (const TableSize& size : tableSizes()) {
    const QString name = QString::fromUtf8(size.name.data(), static_cast<qsizetype>(size.name.size()));
    size_->addItem(tr("%1: %2 × %3 mm")
                       .arg(name)
                       .arg(millimetresFromMetres(size.length_m), 0, 'f', 0)
                       .arg(millimetresFromMetres(size.width_m), 0, 'f', 0),
                   name);
  }
  size_->addItem(tr("Measured"), QString());
  form->addRow(tr("&Size"), size_);
  length_ = millimetres("tableLength", tr("Length from nose to nose"), kSmallest_mm, kLargest_mm);
  form->addRow(tr("&Length"), length_);
  width_ = millimetres("tableWidth", tr("Width from nose to nose"), kSmallest_mm, kLargest_mm);
  form->addRow(tr("&Width"), width_);
  diagonalA_ = millimetres("diagonalA", tr("Diagonal A: head right to foot left"), 0.0, kLargest_mm);
  diagonalA_->setSpecialValueText(tr("not measured"));
  form->addRow(tr("Diagonal &A"), diagonalA_);
  diagonalB_ = millimetres("diagonalB", tr("Diagonal B: head left to foot right"), 0.0, kLargest_mm);
  diagonalB_->setSpecialValueText(tr("not measured"));
  form->addRow(tr("Diagonal &B"), diagonalB_);
  square_ = new QLabel;
  square_->setObjectName(QStringLiteral("squareWords"));
  square_->setWordWrap(true);
  form->addRow(square_);
  QPushButton* open = button("openTable", tr("&Open a table file…"));
  addButtons({open});
  picture_ = new MeasurePicture(MeasurePicture::Shows::Sides);
  column()->addWidget(picture_, 1);

  connect(name_, &QLineEdit::editingFinished, this, [this] {
    name_->setModified(false);
    this->desk().change(tr("the table's name"), [&](SetupState& state) { state.name = name_->text().trimmed(); });
  });
  connect(size_, &QComboBox::activated, this, [this] {
    const QString preset = size_->currentData().toString();
    this->desk().change(tr("the table's size"), [&](SetupState& state) {
      state.preset = preset;
      if (const auto size = tableSizeNamed(preset.toStdString())) {
        state.measured.table.length_m = size->length_m;
        state.measured.table.width_m = size->width_m;
      }
    });
    refresh();
  });
  const auto lengthChanged = [this] {
    this->desk().change(tr("the table's size"), [&](SetupState& state) {
      state.preset.clear();
      state.measured.table.length_m = metresFromMillimetres(length_->value());
      state.measured.table.width_m = metresFromMillimetres(width_->value());
    });
  };
  connect(length_, &QDoubleSpinBox::valueChanged, this, lengthChanged);
  connect(width_, &QDoubleSpinBox::valueChanged, this, lengthChanged);
  const auto diagonalChanged = [this] {
    this->desk().change(tr("the diagonals"), [&](SetupState& state) {
      state.diagonalA_mm = diagonalA_->value();
      state.diagonalB_mm = diagonalB_->value();
    });
  };
  connect(diagonalA_, &QDoubleSpinBox::valueChanged, this, diagonalChanged);
  connect(diagonalB_, &QDoubleSpinBox::valueChanged, this, diagonalChanged);
  connect(open, &QPushButton::clicked, this, [this] {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Open a table file"), {}, tr("Table files (*.json);;All files (*)"));
    if (!path.isEmpty()) this->desk().openTable(path);
  });
  TablePage::refresh();
}

void TablePage::refresh() {
  const SetupState& state = desk().state();
  if (!name_->isModified()) name_->setText(state.name);
  const QSignalBlocker quiet(size_);
  size_->setCurrentIndex(std::max(0, size_->findData(state.preset)));
  const Table& table = state.measured.table;
  setQuietly(length_, millimetresFromMetres(table.length_m));
  setQuietly(width_, millimetresFromMetres(table.width_m));
  setQuietly(diagonalA_, state.diagonalA_mm);
  setQuietly(diagonalB_, state.diagonalB_mm);
  picture_->setTable(state.measured);
  if (state.diagonalA_mm <= 0.0 || state.diagonalB_mm <= 0.0) {
    square_->setText(tr("Both diagonals, from nose corner to nose corner, tell whether the table is square."));
    return;
  }
  const auto square = squarenessOf({table.length_m, table.width_m, metresFromMillimetres(state.diagonalA_mm),
                                    metresFromMillimetres(state.diagonalB_mm)});
  if (!square || std::abs(square->misread_m) > 3.0 * kReadable_m) {
    square_->setText(
        tr("No table has these lengths and diagonals (%1 mm apart); measure again, every time from nose to "
           "nose.")
            .arg(square ? numbers().fixed(millimetresFromMetres(std::abs(square->misread_m)), 0)
                        : QStringLiteral("?")));
  } else if (std::abs(square->skew_m) <= kReadable_m) {
    square_->setText(tr("Square, as well as a tape can tell (%1 mm).")
                         .arg(numbers().fixed(millimetresFromMetres(std::abs(square->skew_m)), 1)));
  } else {
    const QString way = square->skew_m > 0.0 ? tr("left", "of the table") : tr("right", "of the table");
    square_->setText(
        tr("Out of square: the foot is pushed %1 mm to the %2 against the head. A ball's place is off by up "
           "to half of that; have the rails set, or measure from noses that are straight.")
            .arg(numbers().fixed(millimetresFromMetres(std::abs(square->skew_m)), 1), way));
  }
}

BallsPage::BallsPage(SetupDesk& desk, QWidget* parent) : SetupPage(desk, SetupStep::Balls, parent) {
  setObjectName(QStringLiteral("ballsPage"));
  QFormLayout* form = addForm();
  diameter_ = millimetres("ballDiameter", tr("A ball's diameter"), 30.0, 80.0, 2);
  form->addRow(tr("&Diameter"), diameter_);
  mass_ = new QDoubleSpinBox;
  mass_->setObjectName(QStringLiteral("ballMass"));
  mass_->setAccessibleName(tr("A ball's weight"));
  mass_->setRange(50.0, 400.0);
  mass_->setDecimals(1);
  mass_->setSuffix(tr(" g"));
  mass_->setKeyboardTracking(false);
  form->addRow(tr("&Weight"), mass_);
  addQuiet(
      tr("Lay five balls in a row against a straight edge and measure from end to end: a fifth of it is the "
         "diameter, five times as exact. Balls of the world specification have 57.15 mm and 156 to 170 g."));
  column()->addStretch(1);
  connect(diameter_, &QDoubleSpinBox::valueChanged, this, [this](double value) {
    this->desk().change(tr("the balls' diameter"), [&](SetupState& state) {
      // The nose goes with the ball unless it was measured: 63.5 % of its diameter.
      BallSet& balls = state.measured.balls;
      const double share = state.measured.table.noseHeight_m / balls.diameter_m;
      balls.diameter_m = metresFromMillimetres(value);
      if (std::abs(share - 0.635) < 1e-3) state.measured.table.noseHeight_m = share * balls.diameter_m;
    });
  });
  connect(mass_, &QDoubleSpinBox::valueChanged, this, [this](double value) {
    this->desk().change(tr("the balls' weight"),
                        [&](SetupState& state) { state.measured.balls.mass_kg = value / 1000.0; });
  });
  BallsPage::refresh();
}

void BallsPage::refresh() {
  const BallSet& balls = desk().state().measured.balls;
  setQuietly(diameter_, millimetresFromMetres(balls.diameter_m));
  setQuietly(mass_, 1000.0 * balls.mass_kg);
}

}  // namespace ferrule
