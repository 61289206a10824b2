#pragma once

#include "quiz/mark.hpp"
#include "quiz/option.hpp"
#include "quiz/response.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// Cards of a played run are shown; the one with which a rule is first broken is to be found. Which it is, the marking of the
/// run says, never the file.
struct SpotFault {
    static constexpr std::string_view name = "spot-the-fault";
    rules::Marked scenario;
    rules::Marked plan;
    std::optional<rules::Marked> rule;  ///< nothing: the first fault of all
    std::uint64_t seed = 1;
    int shows = 6;                  ///< cards
    Phrase told;                    ///< to whoever chose another card
    std::vector<Option> moments;    ///< cards in the order of the run; worked out by playing it

    static void fields(auto& self, auto&& visit)
    {
        visit("scenario", self.scenario, required, About{"id of the scenario"});
        visit("plan", self.plan, required, About{"name of the work plan in its folder"});
        visit("rule", self.rule, About{"id of the rule that is broken; left out: the first fault of the run"});
        visit("seed", self.seed, About{"luck of the run"});
        visit("shows", self.shows, Range{3, 12}, About{"how many cards are shown"});
        visit("told", self.told, required, About{"what is said to whoever chose another card"});
    }
};

Mark mark(const SpotFault& asked, const Response& response);
void check(const SpotFault& asked, const Place& where, Complaints& complaints);

}
