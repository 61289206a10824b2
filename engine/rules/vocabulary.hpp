#pragma once

#include "job/run_log.hpp"
#include "job/step_kind.hpp"
#include "text/units.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The words a rule may use: steps with their parameters, states, measures, things. Taken from job's own descriptions,
/// so that a new step card is known to the rule books at once.
namespace flapdoor::rules {

enum class ParameterType { flag, whole, number, quantity, word, id, id_list, text };

/// What an id in a parameter names. A rule book cannot know a scenario's ids; it speaks of `this` thing or of its kind.
enum class ThingKind { none, zone, opening, object, sill, counter, component, person, supply, bag };

struct ParameterWords {
    std::string_view name;
    ParameterType type = ParameterType::text;
    text::Kind quantity{};                          ///< of a quantity
    std::vector<std::string_view> words;            ///< of a word
    ThingKind thing = ThingKind::none;              ///< of an id
};

struct StepWords {
    std::string_view name;
    std::string_view title;
    job::Phase phase{};
    job::Hands hands{};
    std::vector<ParameterWords> parameters;

    const ParameterWords* parameter(std::string_view wanted) const;
};

/// Every kind of step card, in the order of job::Step.
const std::vector<StepWords>& step_words();
const StepWords* find_step(std::string_view name);
std::string_view title_of(std::string_view step);   ///< the name itself when it is unknown

/// A state of the run log, what it is about, and how the sheet says that it held or did not.
struct StateWords {
    std::string_view name;
    ThingKind thing = ThingKind::none;
    std::string_view held;      ///< "the signs were up"
    std::string_view failed;    ///< "the signs were not up"
    std::string_view steps;     ///< cards that change it, separated by spaces; empty when many do
};
std::span<const StateWords> state_words();
const StateWords* find_state(std::string_view name);

struct MeasureWords {
    std::string_view name;
    job::MeasureKind kind = job::MeasureKind::number;
    ThingKind thing = ThingKind::none;
    std::string_view title;     ///< "the reach of the floor sheeting"
};
std::span<const MeasureWords> measure_words();
const MeasureWords* find_measure_words(std::string_view name);

/// Words of a kind of thing in a scenario, e.g. the kinds of supply; empty when its kind has no words.
std::span<const std::string_view> kind_words(ThingKind thing);

}
