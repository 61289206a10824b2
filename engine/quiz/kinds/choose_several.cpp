#include "quiz/kinds/choose_several.hpp"

#include "quiz/complaints.hpp"

#include <algorithm>
#include <set>

namespace flapdoor::quiz {

Mark mark(const ChooseSeveral& asked, const Response& response)
{
    Mark mark;
    const auto* chosen = std::get_if<Chosen>(&response);
    if (chosen == nullptr) return mark;
    const std::set<std::string> ids(chosen->options.begin(), chosen->options.end());
    int keys = 0, hits = 0, false_alarms = 0;
    for (const Option& option : asked.options) {
        const bool is_chosen = ids.contains(option.id.text);
        keys += option.is_right;
        hits += option.is_right && is_chosen;
        false_alarms += !option.is_right && is_chosen;
        if (!option.is_right && is_chosen) mark.misconceptions.push_back(option.misconception);
        if (option.is_right != is_chosen && !option.told.is_empty()) mark.told.push_back(option.told);
    }
    if (keys > 0) mark.share = rules::reduced(std::max(0, hits - false_alarms), keys);
    mark.is_right = keys > 0 && hits == keys && false_alarms == 0;
    return mark;
}

void check(const ChooseSeveral& asked, const Place& where, Complaints& complaints)
{
    check_options(asked.options, where, complaints);
    const auto right = std::count_if(asked.options.begin(), asked.options.end(), [](const Option& option) { return option.is_right; });
    if (right == 0) complaints.add(where, "at least one right option", "none");
}

}
