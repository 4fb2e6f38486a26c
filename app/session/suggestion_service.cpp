// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/suggestion_service.h"

#include <utility>

#include "app/session/suggestion_searcher.h"

namespace ferrule {

SuggestionService::SuggestionService(QObject* parent) : QObject(parent), searcher_(new SuggestionSearcher) {
  thread_.setObjectName(QStringLiteral("suggestion"));
  searcher_->moveToThread(&thread_);
  connect(&thread_, &QThread::finished, searcher_, &QObject::deleteLater);
  // What was under way when another question came is not told.
  connect(
      searcher_, &SuggestionSearcher::answered, this,
      [this](const std::shared_ptr<const SuggestionAnswer>& answer, int number) {
        if (number == question_) emit answered(answer);
      },
      Qt::QueuedConnection);
  connect(
      searcher_, &SuggestionSearcher::played, this,
      [this](const std::shared_ptr<const PlayedPlan>& plan, int number) {
        if (number == question_) emit played(plan);
      },
      Qt::QueuedConnection);
  connect(
      searcher_, &SuggestionSearcher::failed, this,
      [this](const Error& error, int number) {
        if (number == question_) emit failed(error);
      },
      Qt::QueuedConnection);
  thread_.start();
}

SuggestionService::~SuggestionService() {
  stop();
  thread_.quit();
  thread_.wait();
}

template <class Work>
void SuggestionService::onThread(Work work) {
  QMetaObject::invokeMethod(
      searcher_, [searcher = searcher_, number = question_, work = std::move(work)] { work(*searcher, number); },
      Qt::QueuedConnection);
}

void SuggestionService::ask(const SuggestionQuestion& question) {
  stop();
  stop_ = std::stop_source();
  onThread([question, token = stop_.get_token()](SuggestionSearcher& searcher, int number) {
    searcher.search(question, number, token);
  });
}

void SuggestionService::show(const RankedPlan& plan) {
  onThread([plan](SuggestionSearcher& searcher, int number) { searcher.show(plan, number); });
}

void SuggestionService::tryOut(const Plan& plan, const StrikeWish& wish) {
  onThread([plan, wish](SuggestionSearcher& searcher, int number) { searcher.tryOut(plan, wish, number); });
}

void SuggestionService::stop() {
  stop_.request_stop();
  ++question_;
}

}  // namespace ferrule
