#pragma once

#include "dust/ledger.hpp"
#include "job/step_kind.hpp"
#include "rules/rule.hpp"
#include "text/language.hpp"

#include <span>
#include <string>
#include <string_view>

/// Words that every debrief uses, on the page and on the terminal.
namespace flapdoor::debrief {

/// Stands beside every loading.
inline constexpr std::string_view model_note = text::to_say("training model, not a clearance prediction");

/// The same beside a loading of a single run.
inline constexpr std::string_view loading_note = text::to_say("single run, no band; training model, not a clearance prediction");

/// Stands with every exposure.
inline constexpr std::string_view exposure_note =
    text::to_say("Inhalable lead in the air that they breathe, outside any respirator, averaged over eight hours. Between jobs of one kind real exposures differ "
    "many times over: only sampling tells what somebody breathed.");

/// Stands below every score.
inline constexpr std::string_view score_note =
    text::to_say("A teaching score for one rule book and one scenario. It is no certification, no clearance and no legal finding.");

/// What nobody may forget who reads a debrief, shortest first things first.
std::span<const std::string_view> cautions();

/// How dust gets out by a pathway, in one sentence.
std::string_view how_it_leaves(dust::Pathway pathway);

/// What is known about a pathway, in half a sentence. Says the same as docs/model.md, "How sure each pathway is".
std::string_view how_well_known(dust::Pathway pathway);

/// What the model leaves out that a real room has, a sentence each.
std::span<const std::string_view> left_out();

/// Bags and sheeting: nobody has measured their share, so it is told as possible only.
bool is_barely_known(dust::Pathway pathway);

std::string_view title_of(job::Phase phase);            ///< "Setting up"
std::string_view title_of(rules::RuleClass rule_class); ///< "must"

/// An amount with two significant digits: a single run supports no more.
std::string show_roughly(Picograms amount);

/// First letter large; sentences of the marking sheet may begin with `card 5`.
std::string as_sentence(std::string text);

/// The name of a room, a surface or a person in the language spoken. What the program puts together from names ("Back
/// bedroom, floor") is looked up piece by piece.
std::string called(std::string_view name);

}
