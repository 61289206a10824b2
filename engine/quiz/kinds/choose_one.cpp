#include "quiz/kinds/choose_one.hpp"

#include "quiz/complaints.hpp"

#include <algorithm>

namespace flapdoor::quiz {

Mark mark(const ChooseOne& asked, const Response& response)
{
    Mark mark;
    const auto* chosen = std::get_if<Chosen>(&response);
    if (chosen == nullptr || chosen->options.size() != 1) return mark;
    const Option* option = find_option(asked.options, chosen->options.front());
    if (option == nullptr) return mark;
    mark.is_right = option->is_right;
    if (option->is_right) mark.share = {1, 1};
    else {
        mark.misconceptions.push_back(option->misconception);
        mark.told.push_back(option->told);
    }
    return mark;
}

void check(const ChooseOne& asked, const Place& where, Complaints& complaints)
{
    check_options(asked.options, where, complaints);
    const auto right = std::count_if(asked.options.begin(), asked.options.end(), [](const Option& option) { return option.is_right; });
    if (right != 1) complaints.add(where, "exactly one right option", std::to_string(right));
}

}
