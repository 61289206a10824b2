#pragma once

#include "job/scenario.hpp"
#include "job/step.hpp"
#include "job/work_plan.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::window {

/// What a field of a step card holds.
enum class FieldType { flag, whole, number, length, time, temperature, word, thing, things, text };

/// Which list of the scenario a thing stands in.
enum class ThingKind { none, opening, supply, object, component, person, zone, sill, counter, bag };

/// A field of a step card as a form shows it: the step's own fields(), turned into data.
struct CardField {
    std::string_view key;                       ///< as in files
    std::string_view about;                     ///< one line, English; may be empty
    FieldType type = FieldType::text;
    bool is_required = false;
    double value = 0.0;                         ///< flag (0, 1), whole, number; quantities in SI
    double least = 0.0, most = 0.0;             ///< equal: no range
    std::span<const std::string_view> words;    ///< of a word
    std::size_t word = 0;
    ThingKind thing = ThingKind::none;
    std::string id;                             ///< of a thing; of a text the text
    std::vector<std::string> ids;               ///< of things
};

std::vector<CardField> fields_of(const job::Step& step);

/// Puts one field's value into the step; the others stay. Insists that the step has it.
void set_field(job::Step& step, const CardField& field);

/// What all cards of a kind have in common.
struct StepKind {
    std::string_view name, title, needs;
    job::Phase phase = job::Phase::paper;
    job::Hands hands = job::Hands::anyone;
    job::Step blank;                            ///< with its defaults
};

/// All kinds, in the order of the variant.
const std::vector<StepKind>& step_kinds();

std::string_view title_of(const job::Step& step);

/// What a card is about, besides its kind: "Return register, Poly tape"; in the language in force, may be empty.
std::string detail_of(const job::Scenario& scenario, const job::Card& card);

}
