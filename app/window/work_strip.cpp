// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/work_strip.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QTimer>
#include <QToolButton>
#include <cmath>

#include "app/window/background_job.h"
#include "app/window/tool_button.h"

namespace ferrule {

namespace {

constexpr int kBar_px = 160;
constexpr int kParts = 1000;
constexpr int kPatience_ms = 250;

}  // namespace

WorkStrip::WorkStrip(const ActionSet& actions, QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("workStrip"));
  progress_ = new QProgressBar;
  progress_->setObjectName(QStringLiteral("workProgress"));
  progress_->setAccessibleName(tr("Progress"));
  progress_->setTextVisible(false);
  progress_->setFixedWidth(kBar_px);
  words_ = new QLabel;
  words_->setObjectName(QStringLiteral("workWords"));
  words_->setTextFormat(Qt::PlainText);
  words_->setWordWrap(true);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(12, 4, 12, 4);
  row->setSpacing(8);
  row->addWidget(progress_);
  row->addWidget(raisedButton(actions.at(ActionId::StopWork)));
  row->addWidget(words_, 1);
  hide();
}

void WorkStrip::watch(BackgroundJob& job, const QString& words) {
  connect(&job, &BackgroundJob::runningChanged, this, [this, &job, words] {
    if (!job.isRunning()) return hide();
    // Work that is done at once would only make the place jump.
    QTimer::singleShot(kPatience_ms, this, [this, &job, words] {
      if (!job.isRunning()) return;
      words_->setText(words);
      progress_->setRange(0, 0);
      show();
    });
  });
  connect(&job, &BackgroundJob::progressed, this, [this, words](double share, const QString&) {
    words_->setText(words);
    progress_->setRange(0, share < 0.0 ? 0 : kParts);
    progress_->setValue(static_cast<int>(std::lround(share * kParts)));
  });
}

}  // namespace ferrule
