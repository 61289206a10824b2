#include "rules/deadlines.hpp"

#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::rules {

bool is_pamphlet_in_time(PamphletProof proof, int days_before_start)
{
    if (proof == PamphletProof::none || days_before_start < 0 || days_before_start > 60) return false;
    return proof != PamphletProof::mailed || days_before_start >= 7;
}

Date report_due(Date completed, std::optional<Date> final_invoice)
{
    insist(completed.ok() && (!final_invoice || final_invoice->ok()), "dates stand in the calendar");
    const Date last = std::chrono::sys_days(completed) + std::chrono::days(30);
    return final_invoice ? std::min(last, *final_invoice) : last;
}

Date records_kept_until(Date completed)
{
    insist(completed.ok(), "dates stand in the calendar");
    const Date until = completed + std::chrono::years(3);
    return until.ok() ? until : Date{until.year() / until.month() / std::chrono::last};
}

}
