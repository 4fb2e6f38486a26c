// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/error.h"

#include <utility>

namespace ferrule {

tl::unexpected<Error> failure(ErrorCode code, std::string subject, std::string detail, std::vector<double> numbers) {
  return tl::make_unexpected(Error{code, std::move(subject), std::move(detail), std::move(numbers)});
}

}  // namespace ferrule
