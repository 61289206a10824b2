#pragma once

#include "debrief/harm.hpp"
#include "debrief/report.hpp"

#include <string>
#include <vector>

namespace flapdoor::debrief {

/// A what-if as page and terminal tell it, in the language spoken. A change is told as what the mistake adds: "+1.2 mg" for a repaired
/// one means that much less would have got out.
struct WhatIfLine {
    struct Cell {
        std::string own;        ///< of this run
        std::string range;      ///< over the light runs; empty without them
    };

    std::string name;           ///< "Faults 1 and 7"
    std::vector<int> faults;    ///< their numbers
    std::vector<std::string> told;
    Cell outside, floor, sill, breathed, took;
    std::string how_often;      ///< "harm in 12 of 50 runs", empty without light runs
    std::string doubt;          ///< why it does not show what it should; empty when it does
    std::string why;            ///< why something looks better with the mistake; empty when nothing does
};

WhatIfLine what_if_line(const Report& report, const WhatIf& what_if);

/// Repaired ones in the order of the lead that they kept inside in this run, most first.
std::vector<const WhatIf*> costliest(const WhatIfs& what_ifs);

/// Mistakes that did no harm in this run and would have in others, those with the most such runs first.
std::vector<const WhatIf*> near_misses(const WhatIfs& what_ifs);

/// "+1.2 mg", "-40 ug", "no change": signed, rounded as every amount of a single run.
std::string change_text(double value, Compared what);

/// "As it was carried out: 57 mg of lead got out ...", and the careful plan with the same luck beside it.
std::string as_it_was(const WhatIfs& what_ifs);

/// "no change to +1.2 mg": both ends so.
std::string change_range(const Band& band, Compared what);

/// "Faults 1, 7 and 11".
std::string named_faults(const std::vector<int>& numbers);

/// "12 light runs with other seeds; each range is their lowest to highest tenth".
std::string what_if_source(const WhatIfs& what_ifs);

/// What to practise next: first what let a tenth and more of the lead out, most first; then critical rules; then by lead and points. What each
/// rule asks, in a few words, and the cards it takes.
struct Practice {
    std::string rule;           ///< in a few words
    std::vector<std::string> cards;
    int fault = 0;              ///< its number
};
std::vector<Practice> practise_next(const Report& report, std::size_t most);

}
