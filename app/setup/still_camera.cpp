// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/still_camera.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <opencv2/imgproc.hpp>
#include <utility>

#include "app/picture/image_of.h"
#include "app/session/camera_choice.h"
#include "app/setup/setup_words.h"
#include "app/setup/still_view.h"
#include "app/words/error_sentence.h"
#include "app/words/joining.h"

namespace ferrule {

namespace {

/// More than the view ever shows; a large camera's whole image would be scaled anew at every painting.
constexpr int kShownWidth_px = 960;

QImage smallOf(const cv::Mat& picture) {
  if (picture.cols <= kShownWidth_px) return imageOf(picture);
  cv::Mat small;
  cv::resize(picture, small, {kShownWidth_px, picture.rows * kShownWidth_px / picture.cols}, 0, 0, cv::INTER_AREA);
  return imageOf(small);
}

}  // namespace

StillCamera::StillCamera(SetupDesk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  setObjectName(QStringLiteral("stillCamera"));
  camera_ = new CameraChoice;
  start_ = new QPushButton;
  start_->setObjectName(QStringLiteral("watchBoard"));
  take_ = new QPushButton(tr("Ta&ke this still"));
  take_->setObjectName(QStringLiteral("takeStill"));
  words_ = new QLabel;
  words_->setObjectName(QStringLiteral("liveStillWords"));
  words_->setWordWrap(true);
  view_ = new StillView;
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(8);
  buttons->addWidget(start_);
  buttons->addWidget(take_);
  buttons->addStretch(1);
  auto* left = new QVBoxLayout;
  left->setSpacing(8);
  left->addWidget(camera_);
  left->addLayout(buttons);
  left->addWidget(words_);
  left->addStretch(1);
  unfold_ = new QPushButton(tr("Take stills with a ca&mera…"));
  unfold_->setObjectName(QStringLiteral("unfoldCamera"));
  panel_ = new QWidget;
  panel_->hide();
  auto* folded = new QHBoxLayout;
  folded->addWidget(unfold_);
  folded->addStretch(1);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addLayout(folded);
  column->addWidget(panel_);
  auto* row = new QHBoxLayout(panel_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(12);
  row->addLayout(left, 2);
  row->addWidget(view_, 3);
  connect(unfold_, &QPushButton::clicked, this, &StillCamera::unfold);
  connect(start_, &QPushButton::clicked, this, &StillCamera::startOrStop);
  connect(take_, &QPushButton::clicked, this, &StillCamera::take);
  connect(&watch_, &StillWatch::seen, this, &StillCamera::show);
  connect(&watch_, &StillWatch::said, &desk_, &SetupDesk::said);
  connect(&watch_, &StillWatch::runningChanged, this, &StillCamera::showRunning);
  refresh(numbers_);
}

void StillCamera::hideEvent(QHideEvent* event) {
  watch_.stop();
  QWidget::hideEvent(event);
}

void StillCamera::unfold() {
  unfold_->hide();
  panel_->show();
  camera_->setFocus();
}

void StillCamera::startOrStop() {
  if (watch_.isRunning()) return watch_.stop();
  std::shared_ptr<LiveSource> source = camera_->makeSource();
  if (!source) {
    emit desk_.said(tr("No camera is chosen; connect one, or choose a film that stands in for it."));
    return;
  }
  begin(std::move(source));
}

void StillCamera::begin(std::shared_ptr<LiveSource> source) {
  const auto board = parseBoard(desk_.state().board.toStdString());
  if (!board) return emit desk_.said(errorSentence(board.error()));
  emit desk_.said({});
  unfold();
  last_.reset();
  watched_ = desk_.state().board;
  watch_.start(*board, std::move(source));
}

QString StillCamera::faultOf(const BoardStill& still) const {
  switch (still.fate) {
    case StillFate::Blurred:
      return tr("Blurred: the board's edges are %1 px wide. Hold it still, or light it better.")
          .arg(numbers_.fixed(still.edge_px, 1));
    case StillFate::Mirrored:
      return tr("The camera's image is mirrored; switch that off in the camera's own settings.");
    case StillFate::LayoutOld:
      return tr("This print has the old layout, its first square light; print the board anew.");
    case StillFate::Used:
      break;
    default:
      return tr("The board is not seen; hold it so that most of its squares show.");
  }
  if (const BoardStill* same = sameStillAs(still, desk_.stills())) {
    return tr("The board is where %1 has it already; move or tilt it.")
        .arg(QFileInfo(QString::fromStdString(same->path)).fileName());
  }
  const auto views = usableViews(desk_.stills());
  if (!views.empty() && views.front().size != still.size) {
    return tr("The stills so far are %1 × %2 px and this image has %3 × %4 px; a lens belongs to one image size.")
        .arg(views.front().size.width)
        .arg(views.front().size.height)
        .arg(still.size.width)
        .arg(still.size.height);
  }
  return {};
}

QString StillCamera::wordsOf(const BoardStill& still) const {
  if (const QString fault = faultOf(still); !fault.isEmpty()) return fault;
  QStringList words;
  if (still.edge_px > 0.0) {
    words << tr("Sharp: the board's edges are %1 px wide.").arg(numbers_.fixed(still.edge_px, 1));
  } else {
    words << tr("The board is seen; it is too small in the picture to say how sharp it is.");
  }
  auto views = usableViews(desk_.stills());
  const double before = views.empty() ? 0.0 : coverageOf(views, still.size).share();
  views.push_back({{}, still.size, still.corners});
  const double after = coverageOf(views, still.size).share();
  words << (after > before ? tr("With it the board was in %1\u00a0% of the picture, after %2\u00a0%.")
                                 .arg(numbers_.fixed(100.0 * after, 0), numbers_.fixed(100.0 * before, 0))
                           : tr("The board was here before; the empty parts of the picture would gain more."));
  return sentencesOf(words);
}

void StillCamera::show(const std::shared_ptr<const LiveStill>& image) {
  last_ = image;
  const BoardStill& still = image->still;
  view_->setImage(smallOf(image->picture), still.size, still.corners, faultOf(still).isEmpty());
  words_->setText(wordsOf(still));
  take_->setEnabled(true);
  view_->show();
}

void StillCamera::take() {
  if (!last_) return;
  if (watched_ != desk_.state().board) {
    emit desk_.said(tr("The board was changed; start the camera anew, so that it is looked for."));
    return;
  }
  if (const QString fault = faultOf(last_->still); !fault.isEmpty()) {
    emit desk_.said(tr("Not taken. %1", "a sentence that says why").arg(fault));
    return;
  }
  desk_.takeStill(last_->picture, last_->still);
}

void StillCamera::showRunning() {
  // The desk may be gone by now: a window that closes lets go of the camera last.
  const bool runs = watch_.isRunning();
  start_->setText(runs ? tr("Stop the ca&mera") : tr("Look through the ca&mera"));
  camera_->setEnabled(!runs);
}

void StillCamera::refresh(const Numbers& numbers) {
  numbers_ = numbers;
  showRunning();
  take_->setEnabled(last_ != nullptr);
  view_->setTaken(usableViews(desk_.stills()));
  view_->setVisible(last_ != nullptr);
  if (!last_) {
    view_->clear();
    words_->setText(
        tr("Let the camera run, hold the board to it, and take a still wherever the picture is still empty."));
  } else {
    words_->setText(wordsOf(last_->still));
  }
}

}  // namespace ferrule
