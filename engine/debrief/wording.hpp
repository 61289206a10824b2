#pragma once

#include "dust/ledger.hpp"
#include "job/step_kind.hpp"
#include "rules/rule.hpp"

#include <span>
#include <string>
#include <string_view>

/// Words that every debrief uses, on the page and on the terminal.
namespace flapdoor::debrief {

/// Stands beside every loading of a single run.
inline constexpr std::string_view loading_note = "single run, no band; training model, not a clearance prediction";

/// Stands below every score.
inline constexpr std::string_view score_note =
    "A teaching score for one rule book and one scenario. It is no certification, no clearance and no legal finding.";

/// What nobody may forget who reads a debrief, shortest first things first.
std::span<const std::string_view> cautions();

/// How dust gets out by a pathway, in one sentence.
std::string_view how_it_leaves(dust::Pathway pathway);

/// Bags and sheeting: nobody has measured their share, so it is told as possible only.
bool is_barely_known(dust::Pathway pathway);

std::string_view title_of(job::Phase phase);            ///< "Setting up"
std::string_view title_of(rules::RuleClass rule_class); ///< "must"

/// An amount with two significant digits: a single run supports no more.
std::string show_roughly(Picograms amount);

/// First letter large; sentences of the marking sheet may begin with `card 5`.
std::string as_sentence(std::string text);

/// `1 card`, `3 cards`.
std::string counted(std::size_t count, std::string_view one, std::string_view many);

}
