#pragma once

#include "core/fields.hpp"
#include "quiz/mark.hpp"
#include "quiz/option.hpp"
#include "quiz/response.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// What is foretold of one run or of several plans.
enum class Foretold {
    main_pathway,       ///< by which way most lead left the work area, in the first plan's runs
    more_outside,       ///< which plan lets most lead out
    more_on_floor,      ///< which plan leaves most lead on the work room's floor
    more_on_sill,       ///< which plan leaves most on the worst sill
    times_outside       ///< how many times as much gets out under the second plan as under the first
};

/// What a simulation will show is said before it is shown. The plans are carried out with several seeds; the medians decide.
struct Predict {
    static constexpr std::string_view name = "predict";
    rules::Marked scenario;
    std::vector<rules::Marked> plans;
    Foretold what = Foretold::main_pathway;
    int seeds = 5;
    Phrase told;                    ///< to whoever foretold something else
    std::vector<Option> options;    ///< worked out by carrying the plans out
    Phrase reveal;                  ///< what came out, with its figures; worked out too

    static void fields(auto& self, auto&& visit)
    {
        visit("scenario", self.scenario, required, About{"id of the scenario"});
        visit("plan", self.plans, required, About{"names of work plans in its folder"});
        visit("what", self.what, required, About{"what is foretold"});
        visit("seeds", self.seeds, Range{1, 50}, About{"runs of each plan; the medians decide"});
        visit("told", self.told, required, About{"what is said to whoever foretold something else"});
    }
};

Mark mark(const Predict& asked, const Response& response);
void check(const Predict& asked, const Place& where, Complaints& complaints);

}

namespace flapdoor::inline core {
template <> struct Words<quiz::Foretold> {
    static constexpr std::array<std::string_view, 5> words{"main-pathway", "more-outside", "more-on-floor", "more-on-sill", "times-outside"};
};
}
