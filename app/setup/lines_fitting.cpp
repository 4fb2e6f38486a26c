// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/lines_fitting.h"

#include <utility>

namespace ferrule {

void LinesFitting::fit(const RigWanted& wanted, std::vector<LineTrace> lines, std::vector<MarkSighting> marks) {
  Asked asked{wanted, std::move(lines), std::move(marks)};
  forgotten_ = false;
  if (job_.isRunning()) {
    waiting_ = std::move(asked);
  } else {
    start(std::move(asked));
  }
}

void LinesFitting::forget() {
  waiting_.reset();
  forgotten_ = true;
}

void LinesFitting::start(Asked asked) {
  using Answer = Result<LinesFit>;
  job_.start<Answer>(
      [asked = std::move(asked)](const JobControl&) { return fitOfLines(asked.wanted, asked.lines, asked.marks); },
      [this](const Answer& answer) {
        if (waiting_) {
          // A newer question makes this answer worthless.
          Asked next = std::move(*waiting_);
          waiting_.reset();
          return start(std::move(next));
        }
        if (!forgotten_) emit fitted(answer);
      });
}

}  // namespace ferrule
