#pragma once

#include <string>

namespace flapdoor::records {

/// The time by this computer's clock, such as `2026-11-29T10:00:00Z` (ISO 8601, whole seconds). What is kept is dated with it; no
/// result depends on it.
std::string now_utc();

/// The date by this computer's clock where the person is, such as `2026-11-29`.
std::string today_here();

}
