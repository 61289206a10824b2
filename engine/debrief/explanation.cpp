#include "debrief/explanation.hpp"

#include "debrief/harm.hpp"
#include "text/language.hpp"

#include <algorithm>
#include <array>
#include <vector>

namespace flapdoor::debrief {

namespace {

using text::say;
using text::say_with;

constexpr Time least_cleaned_again = 1.0_min;

/// Does it go one way in some light runs and the other way in others?
bool goes_either_way(const WhatIf& what_if, Compared what)
{
    const std::optional<Band> band = harm_band(what_if, what);
    return band && band->low < 0.0 && band->high > 0.0;
}

}

std::string why_better_with_it(const WhatIf& what_if)
{
    std::vector<Compared> better;
    for (const Compared what : {Compared::outside, Compared::floor, Compared::sill})
        if (did_good(what_if, what)) better.push_back(what);
    if (better.empty()) return {};
    if (std::all_of(better.begin(), better.end(), [&](Compared what) { return goes_either_way(what_if, what); }))
        return std::string(say("What looks better with the mistake here is luck: over the light runs it goes either way."));

    std::vector<std::string> reasons;
    const bool is_out = better.front() == Compared::outside;
    const bool is_room = better.back() != Compared::outside;
    if (is_room && did_harm(what_if, Compared::outside)) reasons.emplace_back(say("Less lies in the room because more of it got out."));
    if (what_if.cleans_itself) reasons.emplace_back(say("The card that should not be there takes dust and chips up too; without it they lie there for the next one."));
    if (is_room && what_if.cleaned_again > least_cleaned_again) reasons.emplace_back(say("With the mistake more failed a check and was cleaned again."));
    if (is_out && what_if.other_way) reasons.push_back(say_with("Without the mistake more got out another way: {}.", say(word_of(*what_if.other_way))));
    if (reasons.empty() && what_if.paired_before.empty()) reasons.emplace_back(say("What looks better with the mistake may be luck; light runs would tell."));
    if (reasons.empty()) reasons.emplace_back(say("With other cards or times all that follows meets other air and other feet; no single cause stands out."));
    std::string all;
    for (const std::string& reason : reasons) all += (all.empty() ? "" : " ") + reason;
    return all;
}

}
