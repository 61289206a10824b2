#pragma once

#include "core/fields.hpp"
#include "job/step_kind.hpp"
#include "text/document.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::rules {

/// Moments of a run that rules speak of.
enum class Moment {
    start,          ///< of the first card
    first_dust,     ///< start of the first work on paint: the renovation begins
    last_dust,      ///< end of the last work on paint
    passed,         ///< the verification is passed
    end             ///< of the last card
};

enum class Which { each, first, last };

/// One word or several, any of which will do: `"vacuum-walls"` or `["vacuum-walls", "wipe-walls"]`.
struct AnyOf {
    std::vector<std::string> words;
    Place where;

    static void from_node(const text::Node& node, AnyOf& into, Problems& problems);
    static text::Node to_node(const AnyOf& any);
};

/// What a card's parameter must be for the card to count: `technique = "saw"`, `heat = ">= 1100 F"`, `opening = "this"`,
/// `vacuum = "shop-vacuum"` (the kind of supply), `cloth = "none"` (left out) or `"some"` (not left out).
struct Match {
    std::string parameter;
    AnyOf any_of;
    Place where;        ///< of the parameter's name
};

struct Matches {
    std::vector<Match> all;

    static void from_node(const text::Node& node, Matches& into, Problems& problems);
    static text::Node to_node(const Matches& matches);
};

/// A place in a run: cards of some kind, a state that begins to hold, or a moment. In files a moment or a single step
/// is a word, `"first-dust"`, `"cover-register"`; everything else is a table.
struct Spot {
    AnyOf step;                         ///< cards of these kinds; with none named, of any kind
    std::optional<job::Phase> phase;    ///< cards of that phase
    std::optional<job::Hands> hands;    ///< cards that need such hands
    AnyOf by;                           ///< cards in which `this` person or somebody of such a role takes part
    Matches with;
    std::string measured;               ///< cards at which this was measured
    std::string state;                  ///< instead of cards: this state beginning to hold (or to fail)
    std::string of;                     ///< object of the measure or state; `this`; empty: any
    AnyOf is;                           ///< value of the measure; "true" or "false" of the state
    Which which = Which::each;
    std::optional<Moment> moment;
    Place where;

    static void fields(auto& self, auto&& visit)
    {
        visit("step", self.step, About{"kind of card, or a list of kinds"});
        visit("phase", self.phase, About{"cards of this phase"});
        visit("hands", self.hands, About{"cards that need such hands"});
        visit("by", self.by, About{"cards in which `this` person or somebody of such a role takes part"});
        visit("with", self.with, About{"what the card's parameters must be"});
        visit("measured", self.measured, About{"cards at which this was measured"});
        visit("state", self.state, About{"this state beginning to hold"});
        visit("of", self.of, About{"object of the measure or state"});
        visit("is", self.is, About{"value of the measure, or whether the state begins to hold or to fail"});
        visit("which", self.which, About{"each, the first or the last of them"});
    }

    bool is_cards() const { return !moment && state.empty(); }

    static void from_node(const text::Node& node, Spot& into, Problems& problems);
    static text::Node to_node(const Spot& spot);
};

/// The spot in a few words, the same for equal spots: "cover-register opening=this".
std::string spot_text(const Spot& spot);

}

namespace flapdoor::inline core {
template <> struct Words<rules::Moment> { static constexpr std::array<std::string_view, 5> words{"start", "first-dust", "last-dust", "passed", "end"}; };
template <> struct Words<rules::Which> { static constexpr std::array<std::string_view, 3> words{"each", "first", "last"}; };
}
