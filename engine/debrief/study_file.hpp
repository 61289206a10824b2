#pragma once

#include "core/result.hpp"
#include "debrief/study.hpp"

#include <string>
#include <string_view>

namespace flapdoor::debrief {

inline constexpr int study_format = 1;

/// Runs that one study file may hold: what is written can always be read again, whose files are held to 8 MiB.
inline constexpr std::size_t most_study_runs = 5000;

/// A study as comma-separated text: lines that begin with `#` tell the basis, then the heads of the columns, then one line a
/// run. The same study gives the same bytes.
std::string study_text(const Study& study);

/// Reads it back; whatever does not fit is told with its line and column, up to twenty problems.
Result<Study> parse_study(std::string_view text, const std::string& file);
Result<Study> load_study(const std::string& path);

/// Writes it whole or not at all.
Result<void> save_study(const Study& study, const std::string& path);

}
