// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/window/shot_list.h"
#include "core/record/record.h"

namespace ferrule {

/// All shots of a session in their order, to be looked at in Review. record: path. Errors: NotFound (the session);
/// those of Record.
[[nodiscard]] Result<ShotList> shotsOfSession(const QString& record, SessionId session);

}  // namespace ferrule
