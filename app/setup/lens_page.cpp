// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/lens_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QDoubleSpinBox>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/setup/coverage_view.h"
#include "app/setup/figure_table.h"
#include "app/setup/print_sheets.h"
#include "app/setup/setup_words.h"
#include "app/setup/still_camera.h"
#include "app/words/error_sentence.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr std::array kDictionaries{"DICT_5X5_100", "DICT_4X4_50", "DICT_4X4_100",
                                   "DICT_5X5_50",  "DICT_6X6_50", "DICT_6X6_100"};

QSpinBox* countBox(const char* name, const QString& accessible) {
  auto* box = new QSpinBox;
  box->setObjectName(QLatin1String(name));
  box->setAccessibleName(accessible);
  box->setRange(3, 40);
  box->setKeyboardTracking(false);
  return box;
}

QTableWidget* listOf(const char* name, const QStringList& heads) {
  QTableWidget* table = figureTable(name, heads);
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  return table;
}

}  // namespace

LensPage::LensPage(SetupDesk& desk, QWidget* parent) : SetupPage(desk, SetupStep::Lens, parent) {
  setObjectName(QStringLiteral("lensPage"));
  setAcceptDrops(true);
  makeBoardForm();
  makeStills();
  camera_ = new StillCamera(desk);
  column()->addWidget(camera_);
  withoutBoard_ = new QCheckBox(tr("&No board: take the lens from the straightness of the cushions"));
  withoutBoard_->setObjectName(QStringLiteral("withoutBoard"));
  column()->addWidget(withoutBoard_);
  result_ = new QLabel;
  result_->setObjectName(QStringLiteral("lensResult"));
  result_->setWordWrap(true);
  column()->addWidget(result_);
  parameters_ = listOf("lensParameters", {tr("Parameter"), tr("Value"), tr("Uncertainty")});
  parameters_->setAccessibleName(tr("The lens's parameters"));
  parameters_->setMinimumHeight(6 * kFigureRow_px);
  column()->addWidget(parameters_);
  connect(withoutBoard_, &QCheckBox::clicked, this, [this](bool checked) {
    this->desk().change(tr("without a board"), [&](SetupState& state) {
      state.withoutBoard = checked;
      // Tags are used with a lens alone.
      if (checked) state.withoutTags = true;
    });
  });
  LensPage::refresh();
}

void LensPage::makeBoardForm() {
  QFormLayout* form = addForm();
  kind_ = new QComboBox;
  kind_->setObjectName(QStringLiteral("boardKind"));
  kind_->addItem(tr("ChArUco: squares with markers"), QStringLiteral("charuco"));
  kind_->addItem(tr("Plain chessboard"), QStringLiteral("chessboard"));
  form->addRow(tr("&Board"), kind_);
  auto* counts = new QHBoxLayout;
  counts->setSpacing(8);
  columns_ = countBox("boardColumns", tr("Columns of the board"));
  rows_ = countBox("boardRows", tr("Rows of the board"));
  square_ = millimetres("boardSquare", tr("Side of a square"), 1.0, 1000.0);
  marker_ = millimetres("boardMarker", tr("Side of a marker"), 1.0, 1000.0);
  dictionary_ = new QComboBox;
  dictionary_->setObjectName(QStringLiteral("boardDictionary"));
  dictionary_->setAccessibleName(tr("Set of markers"));
  for (const char* name : kDictionaries)
    dictionary_->addItem(QLatin1String(name));
  counts->addWidget(columns_);
  counts->addWidget(new QLabel(QStringLiteral("×")));
  counts->addWidget(rows_);
  counted_ = new QLabel;
  counts->addWidget(counted_);
  counts->addWidget(square_);
  counts->addStretch(1);
  form->addRow(tr("Counts"), counts);
  // In a row of their own: in some languages all of it is wider than the window.
  auto* markers = new QHBoxLayout;
  markers->setSpacing(8);
  markers->addWidget(marker_);
  markers->addWidget(dictionary_);
  markers->addStretch(1);
  form->addRow(tr("Markers"), markers);
  auto* print = new QHBoxLayout;
  print->setSpacing(8);
  paper_ = new QComboBox;
  paper_->setObjectName(QStringLiteral("boardPaper"));
  paper_->setAccessibleName(tr("Paper"));
  for (const auto& [words, paper] :
       {std::pair{QStringLiteral("A4"), QPageSize::A4}, std::pair{QStringLiteral("A3"), QPageSize::A3},
        std::pair{QStringLiteral("A2"), QPageSize::A2}, std::pair{tr("Letter"), QPageSize::Letter},
        std::pair{tr("Tabloid"), QPageSize::Tabloid}}) {
    paper_->addItem(words, static_cast<int>(paper));
  }
  QPushButton* sheet = button("printBoard", tr("Make the &sheet (PDF)…"));
  print->addWidget(paper_);
  print->addWidget(sheet);
  print->addStretch(1);
  form->addRow(tr("Print"), print);
  auto* ruler = new QHBoxLayout;
  ruler->setSpacing(8);
  rulerAcross_ = millimetres("rulerAcross", tr("The line across, as it measures on the paper"), 10.0, 300.0);
  rulerDown_ = millimetres("rulerDown", tr("The line down, as it measures on the paper"), 10.0, 300.0);
  ruler->addWidget(rulerAcross_);
  ruler->addWidget(new QLabel(tr("across,")));
  ruler->addWidget(rulerDown_);
  ruler->addWidget(new QLabel(tr("down; 100 mm when the printer is true")));
  ruler->addStretch(1);
  form->addRow(tr("Lines on it"), ruler);

  for (QSpinBox* box : {columns_, rows_})
    connect(box, &QSpinBox::valueChanged, this, &LensPage::boardChanged);
  for (QDoubleSpinBox* box : {square_, marker_})
    connect(box, &QDoubleSpinBox::valueChanged, this, &LensPage::boardChanged);
  for (QComboBox* box : {kind_, dictionary_})
    connect(box, &QComboBox::activated, this, &LensPage::boardChanged);
  connect(sheet, &QPushButton::clicked, this, &LensPage::printBoard);
  const auto rulerChanged = [this] {
    desk().change(tr("the lines on the print"), [&](SetupState& state) {
      state.rulerAcross_mm = rulerAcross_->value();
      state.rulerDown_mm = rulerDown_->value();
    });
  };
  connect(rulerAcross_, &QDoubleSpinBox::valueChanged, this, rulerChanged);
  connect(rulerDown_, &QDoubleSpinBox::valueChanged, this, rulerChanged);
}

void LensPage::makeStills() {
  addQuiet(
      tr("Glue the print to something flat. Take 15 to 30 sharp stills that together fill the picture to its corners, "
         "the board tilted in many of them. Drop files or a folder here."));
  QPushButton* add = button("addStills", tr("&Add stills…"));
  QPushButton* folder = button("addStillFolder", tr("Add a fol&der…"));
  QPushButton* remove = button("removeStills", tr("&Remove"));
  QPushButton* calibrate = button("calibrateLens", tr("&Calibrate"));
  QPushButton* file = button("useLensFile", tr("&Use a lens file…"));
  addButtons({add, folder, remove, calibrate, file});
  auto* row = new QHBoxLayout;
  row->setSpacing(12);
  stills_ = listOf("stills", {tr("Still"), tr("Board"), tr("Edges"), tr("rms")});
  stills_->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
  stills_->setAccessibleName(tr("Stills of the board"));
  stills_->setMinimumHeight(8 * kFigureRow_px);
  row->addWidget(stills_, 3);
  auto* seen = new QVBoxLayout;
  coverage_ = new CoverageView;
  covered_ = new QLabel;
  covered_->setObjectName(QStringLiteral("coveredWords"));
  covered_->setWordWrap(true);
  seen->addWidget(covered_);
  seen->addWidget(coverage_, 1);
  row->addLayout(seen, 2);
  column()->addLayout(row);
  const QString pictures = tr("Pictures (*.png *.jpg *.jpeg *.tif *.tiff *.bmp);;All files (*)");
  connect(add, &QPushButton::clicked, this, [this, pictures] {
    desk().addStills(QFileDialog::getOpenFileNames(this, tr("Stills of the board"), {}, pictures));
  });
  connect(folder, &QPushButton::clicked, this, [this] {
    const QString path = QFileDialog::getExistingDirectory(this, tr("A folder of stills"));
    if (!path.isEmpty()) desk().addStills(picturesIn({path}));
  });
  connect(remove, &QPushButton::clicked, this, [this] {
    std::vector<int> rows;
    for (const QModelIndex& index : stills_->selectionModel()->selectedRows())
      rows.push_back(index.row());
    if (!rows.empty()) desk().removeStills(rows);
  });
  connect(calibrate, &QPushButton::clicked, &desk(), &SetupDesk::calibrateLens);
  connect(file, &QPushButton::clicked, this, [this] {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Use a lens file"), {}, tr("Lens files (*.json);;All files (*)"));
    if (!path.isEmpty()) desk().useLensFile(path);
  });
  connect(stills_, &QTableWidget::itemSelectionChanged, this, &LensPage::light);
}

QStringList LensPage::picturesIn(const QStringList& paths) {
  static const QStringList kEndings{"*.png", "*.jpg", "*.jpeg", "*.tif", "*.tiff", "*.bmp"};
  QStringList pictures;
  for (const QString& path : paths) {
    if (!QFileInfo(path).isDir()) {
      pictures << path;
      continue;
    }
    const QDir folder(path);
    for (const QString& name : folder.entryList(kEndings, QDir::Files, QDir::Name))
      pictures << folder.filePath(name);
  }
  return pictures;
}

void LensPage::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void LensPage::dropEvent(QDropEvent* event) {
  QStringList paths;
  for (const QUrl& url : event->mimeData()->urls()) {
    if (url.isLocalFile()) paths << url.toLocalFile();
  }
  desk().addStills(picturesIn(paths));
}

void LensPage::boardChanged() {
  const bool charuco = kind_->currentData().toString() == QLatin1String("charuco");
  Board board;
  board.kind = charuco ? Board::Kind::Charuco : Board::Kind::Chessboard;
  board.columns = columns_->value() - (charuco ? 1 : 0);
  board.rows = rows_->value() - (charuco ? 1 : 0);
  board.square_m = metresFromMillimetres(square_->value());
  board.marker_m = metresFromMillimetres(marker_->value());
  board.dictionary = dictionary_->currentText().toStdString();
  marker_->setEnabled(charuco);
  dictionary_->setEnabled(charuco);
  desk().change(tr("the board"), [&](SetupState& state) { state.board = QString::fromStdString(boardText(board)); });
}

void LensPage::printBoard() {
  const auto board = parseBoard(desk().state().board.toStdString());
  if (!board) return emit desk().said(errorSentence(board.error()));
  const QString path = QFileDialog::getSaveFileName(this, tr("Make the sheet"), tr("board.pdf"), tr("PDF (*.pdf)"));
  if (path.isEmpty()) return;
  const auto paper = static_cast<QPageSize::PageSizeId>(paper_->currentData().toInt());
  const auto written = writeBoardSheet(*board, paper, path.toStdString());
  emit desk().said(written ? tr("The board is in %1; print it at 100\u00a0% and measure its lines.").arg(path)
                           : errorSentence(written.error()));
}

void LensPage::refresh() {
  const SetupState& state = desk().state();
  if (const auto board = parseBoard(state.board.toStdString())) {
    const bool charuco = board->kind == Board::Kind::Charuco;
    const QSignalBlocker quiet[]{QSignalBlocker(kind_),   QSignalBlocker(columns_), QSignalBlocker(rows_),
                                 QSignalBlocker(square_), QSignalBlocker(marker_),  QSignalBlocker(dictionary_)};
    kind_->setCurrentIndex(charuco ? 0 : 1);
    counted_->setText(charuco ? tr("squares of") : tr("inner corners, squares of"));
    columns_->setValue(board->columns + (charuco ? 1 : 0));
    rows_->setValue(board->rows + (charuco ? 1 : 0));
    square_->setValue(millimetresFromMetres(board->square_m));
    if (charuco) {
      marker_->setValue(millimetresFromMetres(board->marker_m));
      dictionary_->setCurrentText(QString::fromStdString(board->dictionary));
    }
    marker_->setEnabled(charuco);
    dictionary_->setEnabled(charuco);
  }
  const QSignalBlocker quiet[]{QSignalBlocker(rulerAcross_), QSignalBlocker(rulerDown_)};
  rulerAcross_->setValue(state.rulerAcross_mm);
  rulerDown_->setValue(state.rulerDown_mm);
  withoutBoard_->setChecked(state.withoutBoard);
  camera_->refresh(numbers());
  showStills();
  showResult();
}

void LensPage::showStills() {
  const auto& all = desk().stills();
  const auto& made = desk().calibration();
  const QSignalBlocker quiet(stills_);
  stills_->setRowCount(static_cast<int>(all.size()));
  for (int row = 0; row < static_cast<int>(all.size()); ++row) {
    const BoardStill& still = all[static_cast<std::size_t>(row)];
    const QString path = QString::fromStdString(still.path);
    setFigure(stills_, row, 0, QFileInfo(path).fileName());
    stills_->item(row, 0)->setToolTip(path);
    QString fate = fateWords(still);
    QString rms;
    if (made) {
      const auto view = std::ranges::find(made->views, still.path, &ViewReport::still);
      if (view != made->views.end()) {
        rms = tr("%1 px").arg(numbers().fixed(view->rms_px, 2));
        if (!view->used) fate = tr("found, but does not fit the others");
      }
    }
    setFigure(stills_, row, 1, fate);
    setFigure(stills_, row, 2, still.edge_px > 0.0 ? tr("%1 px").arg(numbers().fixed(still.edge_px, 1)) : QString(),
              true);
    stills_->item(row, 2)->setToolTip(tr("How wide the squares' edges are; less than 1 px is sharp"));
    setFigure(stills_, row, 3, rms, true);
  }
  light();
}

void LensPage::light() {
  std::vector<BoardView> views = usableViews(desk().stills());
  int lit = -1;
  const int row = stills_->selectionModel()->hasSelection() ? stills_->currentRow() : -1;
  if (row >= 0 && row < static_cast<int>(desk().stills().size())) {
    const std::string& path = desk().stills()[static_cast<std::size_t>(row)].path;
    const auto at = std::ranges::find(views, path, &BoardView::still);
    if (at != views.end()) lit = static_cast<int>(at - views.begin());
  }
  const ImageSize size = views.empty() ? ImageSize{} : views.front().size;
  if (views.empty()) {
    covered_->setText(tr("Where the board was in the picture; hatched: nowhere yet."));
  } else {
    const Coverage coverage = coverageOf(views, size);
    covered_->setText(
        tr("%n still(s) used; the board was in %1\u00a0% of the picture, out to %2\u00a0% of the way to its corners.",
           nullptr, static_cast<int>(views.size()))
            .arg(numbers().fixed(100.0 * coverage.share(), 0), numbers().fixed(100.0 * coverage.reach, 0)));
  }
  coverage_->setViews(std::move(views), size, lit);
}

void LensPage::showResult() {
  const auto& made = desk().calibration();
  parameters_->setVisible(made.has_value());
  if (!made) {
    const auto& lens = desk().lens();
    if (desk().state().withoutBoard) {
      result_->setText(
          tr("The lens will come from the cushions with the rig; a board would make places several "
             "millimetres better."));
    } else if (lens) {
      result_->setText(tr("Lens of %1 at %2 × %3 px, %4, rms %5 px.")
                           .arg(QString::fromStdString(lens->camera))
                           .arg(lens->size.width)
                           .arg(lens->size.height)
                           .arg(QString::fromStdString(lens->date), numbers().fixed(lens->rms_px, 2)));
    } else {
      result_->setText(tr("No lens yet."));
    }
    return;
  }
  result_->setText(lensWords(*made, numbers()));
  parameters_->setRowCount(static_cast<int>(made->parameters.size()));
  for (int row = 0; row < parameters_->rowCount(); ++row) {
    const LensParameter& each = made->parameters[static_cast<std::size_t>(row)];
    const int decimals = decimalsFor(each.u, 6);
    setFigure(parameters_, row, 0, QString::fromStdString(each.name));
    setFigure(parameters_, row, 1, numbers().fixed(each.value, decimals), true);
    setFigure(parameters_, row, 2, QStringLiteral("± ") + numbers().fixed(each.u, decimals), true);
  }
}

}  // namespace ferrule
