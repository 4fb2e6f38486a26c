// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/tags_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/setup/measure_picture.h"
#include "app/setup/print_sheets.h"
#include "app/words/error_sentence.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr int kTableRow_px = 28;
constexpr int kFirstCorner = 2;  ///< column: after id and height

}  // namespace

TagsPage::TagsPage(SetupDesk& desk, QWidget* parent) : SetupPage(desk, SetupStep::Tags, parent) {
  setObjectName(QStringLiteral("tagsPage"));
  withoutTags_ = new QCheckBox(tr("&No tags: take the camera's place from the cushions"));
  withoutTags_->setObjectName(QStringLiteral("withoutTags"));
  column()->addWidget(withoutTags_);
  QFormLayout* form = addForm();
  head_ = new QComboBox;
  head_->setObjectName(QStringLiteral("headSide"));
  for (const auto& [words, side] : {std::pair{tr("left", "side of the picture"), PictureSide::Left},
                                    std::pair{tr("right", "side of the picture"), PictureSide::Right},
                                    std::pair{tr("top", "side of the picture"), PictureSide::Top},
                                    std::pair{tr("bottom", "side of the picture"), PictureSide::Bottom}}) {
    head_->addItem(words, static_cast<int>(side));
  }
  form->addRow(tr("The picture has the table's &head at its"), head_);
  headWords_ = addQuiet(
      tr("From its lines alone a table cannot be told from the same one turned end for end, seen in a mirror, or a "
         "twentieth larger or smaller: the head's side here, a picture that is not mirrored and the size in the step "
         "Table are taken on your word."));
  headWords_->setObjectName(QStringLiteral("headWords"));
  side_ = millimetres("tagSide", tr("Side of the tags' black square"), 10.0, 400.0);
  form->addRow(tr("&Black side"), side_);
  height_ = millimetres("tagHeight", tr("Height of the tags above the cloth"), -50.0, 300.0);
  form->addRow(tr("H&eight above the cloth"), height_);
  auto* print = new QHBoxLayout;
  paper_ = new QComboBox;
  paper_->setObjectName(QStringLiteral("tagPaper"));
  paper_->setAccessibleName(tr("Paper"));
  paper_->addItem(QStringLiteral("A4"), static_cast<int>(QPageSize::A4));
  paper_->addItem(tr("Letter"), static_cast<int>(QPageSize::Letter));
  QPushButton* sheet = button("printTags", tr("Make the &sheet (PDF)…"));
  print->addWidget(paper_);
  print->addWidget(sheet);
  print->addStretch(1);
  form->addRow(tr("Print"), print);
  addQuiet(
      tr("Lay one tag flat near each corner of the rails, face up, where no ball or hand covers them all. Measure the "
         "black square's corners 1 to 4 (top left, top right, bottom right, bottom left of the print) from the "
         "table's middle, x toward the foot, y to the left as seen from the head, to half a millimetre. Corners 3 and "
         "4 may be left empty."));
  tags_ = new QTableWidget(0, kFirstCorner + 8);
  tags_->setObjectName(QStringLiteral("tagList"));
  tags_->setAccessibleName(tr("The tags' corners in millimetres from the table's middle"));
  tags_->setHorizontalHeaderLabels({tr("Tag"), tr("Height"), tr("x 1"), tr("y 1"), tr("x 2"), tr("y 2"), tr("x 3"),
                                    tr("y 3"), tr("x 4"), tr("y 4")});
  tags_->verticalHeader()->hide();
  tags_->verticalHeader()->setDefaultSectionSize(kTableRow_px);
  tags_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  tags_->horizontalHeader()->setMinimumSectionSize(48);
  tags_->setMinimumHeight(5 * kTableRow_px + 8);
  tags_->setTabKeyNavigation(false);
  tags_->setEditTriggers(QAbstractItemView::AllEditTriggers);
  column()->addWidget(tags_);
  QPushButton* more = button("addTag", tr("&Another tag"));
  QPushButton* fewer = button("removeTag", tr("&Remove"));
  addButtons({more, fewer});
  state_ = new QLabel;
  state_->setObjectName(QStringLiteral("tagWords"));
  state_->setWordWrap(true);
  column()->addWidget(state_);
  picture_ = new MeasurePicture(MeasurePicture::Shows::Tags);
  column()->addWidget(picture_, 1);

  connect(withoutTags_, &QCheckBox::clicked, this, [this](bool checked) {
    this->desk().change(tr("without tags"), [&](SetupState& state) { state.withoutTags = checked; });
  });
  connect(head_, &QComboBox::activated, this, [this] {
    this->desk().change(tr("the head's side"), [&](SetupState& state) {
      state.head = static_cast<PictureSide>(head_->currentData().toInt());
      // Their cushions have other names now.
      state.handLines.clear();
      state.handMarks.clear();
    });
  });
  connect(side_, &QDoubleSpinBox::valueChanged, this, [this](double value) {
    this->desk().change(tr("the tags' side"), [&](SetupState& state) { state.tagSide_mm = value; });
  });
  connect(height_, &QDoubleSpinBox::valueChanged, this, [this](double value) {
    this->desk().change(tr("the tags' height"), [&](SetupState& state) { state.tagHeight_mm = value; });
  });
  connect(sheet, &QPushButton::clicked, this, &TagsPage::printTags);
  connect(tags_, &QTableWidget::cellChanged, this, &TagsPage::cellChanged);
  connect(more, &QPushButton::clicked, this, [this] {
    this->desk().change(tr("a tag added"), [](SetupState& state) {
      int next = 0;
      for (const TagEntry& tag : state.tags)
        next = std::max(next, tag.id + 1);
      state.tags.push_back({next, {}, {}});
    });
  });
  connect(fewer, &QPushButton::clicked, this, [this] {
    const int row = tags_->currentRow();
    this->desk().change(tr("a tag removed"), [row](SetupState& state) {
      if (row >= 0 && row < static_cast<int>(state.tags.size())) state.tags.erase(state.tags.begin() + row);
    });
  });
  TagsPage::refresh();
}

void TagsPage::printTags() {
  const SetupState& state = desk().state();
  const QString path = QFileDialog::getSaveFileName(this, tr("Make the sheet"), tr("tags.pdf"), tr("PDF (*.pdf)"));
  if (path.isEmpty()) return;
  std::vector<int> ids;
  for (const TagEntry& tag : state.tags)
    ids.push_back(tag.id);
  const auto paper = static_cast<QPageSize::PageSizeId>(paper_->currentData().toInt());
  const auto written = writeTagSheets(state.measured.tagDictionary, ids, metresFromMillimetres(state.tagSide_mm), paper,
                                      path.toStdString());
  emit desk().said(written ? tr("The tags are in %1; print it at 100\u00a0% and measure its lines.").arg(path)
                           : errorSentence(written.error()));
}

void TagsPage::cellChanged(int row, int column) {
  if (row < 0 || row >= static_cast<int>(desk().state().tags.size())) return;
  const QString text = tags_->item(row, column)->text().trimmed();
  bool isNumber = false;
  // The point is understood whatever the language's own sign is.
  double value = locale().toDouble(text, &isNumber);
  if (!isNumber) value = text.toDouble(&isNumber);
  if (!isNumber && !text.isEmpty()) {
    emit desk().said(tr("\"%1\" is no length in millimetres; type a number such as -1117.5.").arg(text));
    refresh();
    return;
  }
  emit desk().said({});
  const std::optional<double> entered = isNumber ? std::optional(value) : std::nullopt;
  const int id = desk().state().tags[static_cast<std::size_t>(row)].id;
  desk().change(tr("tag %1, as measured").arg(id), [&](SetupState& state) {
    TagEntry& tag = state.tags[static_cast<std::size_t>(row)];
    if (column == 0) {
      if (entered) tag.id = static_cast<int>(*entered);
    } else if (column == 1) {
      tag.height_mm = entered;
    } else {
      tag.corners_mm[static_cast<std::size_t>(column - kFirstCorner)] = entered;
    }
  });
  refresh();
}

void TagsPage::refresh() {
  const SetupState& state = desk().state();
  withoutTags_->setChecked(state.withoutTags);
  for (QWidget* each : std::initializer_list<QWidget*>{side_, height_, tags_})
    each->setEnabled(!state.withoutTags);
  head_->setEnabled(state.withoutTags);
  headWords_->setVisible(state.withoutTags);
  head_->setCurrentIndex(std::max(0, head_->findData(static_cast<int>(state.head))));
  {
    const QSignalBlocker quiet[]{QSignalBlocker(side_), QSignalBlocker(height_), QSignalBlocker(tags_)};
    side_->setValue(state.tagSide_mm);
    height_->setValue(state.tagHeight_mm);
    tags_->setRowCount(static_cast<int>(state.tags.size()));
    const auto put = [&](int row, int column, const QString& words) {
      auto* item = tags_->item(row, column);
      if (item == nullptr) {
        item = new QTableWidgetItem;
        item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        tags_->setItem(row, column, item);
      }
      item->setText(words);
    };
    QLocale plain = locale();
    plain.setNumberOptions(QLocale::OmitGroupSeparator);
    const auto number = [&](const std::optional<double>& value) {
      return value ? plain.toString(*value, 'g', 7) : QString();
    };
    for (int row = 0; row < tags_->rowCount(); ++row) {
      const TagEntry& tag = state.tags[static_cast<std::size_t>(row)];
      put(row, 0, QString::number(tag.id));
      put(row, 1, number(tag.height_mm));
      for (int i = 0; i < 8; ++i)
        put(row, kFirstCorner + i, number(tag.corners_mm[static_cast<std::size_t>(i)]));
    }
  }
  picture_->setTable(state.measured);
  const auto measured = tableOf(state);
  if (state.withoutTags) {
    state_->setText(
        tr("The cushions alone leave a ball's place open by several millimetres; four tags bring about one. The "
           "step Trust shows it."));
  } else if (!measured) {
    state_->setText(errorSentence(measured.error()));
  } else {
    picture_->setTags(measured->tags);
    state_->setText(tr("%n tag(s) measured; at least three are needed, four check each other.", nullptr,
                       static_cast<int>(measured->tags.size())));
  }
}

}  // namespace ferrule
