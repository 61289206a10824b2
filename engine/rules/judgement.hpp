#pragma once

#include "core/quantity.hpp"
#include "text/sentence.hpp"

#include <string>
#include <vector>

namespace flapdoor::rules {

using text::Sentence;

/// One way in which a rule was broken.
struct Fault {
    int first = -1;             ///< entry of the log that came too late or was wrong, -1 when none or missing
    int second = -1;            ///< entry it should have stood before (or after)
    std::string missing;        ///< what was never done; empty when nothing is missing
    std::string object;         ///< id of the thing it was about; may be empty
    Time at{};                  ///< time of day
    Sentence what;
};

/// Two cards of the log of which the rule asks that the first ends before the second begins.
struct CardPair {
    int before = -1;            ///< -1: the card is missing; `missing` says which
    int after = -1;
    std::string missing;
    bool is_kept = true;
};

enum class Finding { kept, broken, not_applicable };

/// What a condition says about one thing, or about the run as a whole.
struct Judgement {
    Finding finding = Finding::not_applicable;
    std::vector<Fault> faults;
    std::vector<CardPair> pairs;

    void keep() { finding = finding == Finding::broken ? Finding::broken : Finding::kept; }
    void break_by(Fault fault)
    {
        finding = Finding::broken;
        faults.push_back(std::move(fault));
    }

    /// Takes over another thing's judgement: broken by one is broken.
    void join(Judgement other);
};

}
