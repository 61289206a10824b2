#pragma once

#include <chrono>
#include <optional>

/// Dates that the rule counts. Calendar days; no time of day.
namespace flapdoor::rules {

using Date = std::chrono::year_month_day;

enum class PamphletProof { signed_for, mailed, refusal_noted, none };

/// Not earlier than 60 days before the start, not after it; mailed at least 7 days before; a refusal or an occupant who
/// cannot be reached is written down. Source: 40 CFR 745.84(a).
bool is_pamphlet_in_time(PamphletProof proof, int days_before_start);

/// The report is due with the final invoice or 30 days after completion, whichever is first. Source: 40 CFR 745.86(c)(1).
Date report_due(Date completed, std::optional<Date> final_invoice);

/// Records are kept three years after completion; what was completed on 29 February until 28 February at least.
/// Source: 40 CFR 745.86(a).
Date records_kept_until(Date completed);

}
