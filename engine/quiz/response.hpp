#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace flapdoor::quiz {

/// No answer was given.
struct LeftOut {
    static constexpr std::string_view name = "left-out";
    static void fields(auto&, auto&&) {}
    friend bool operator==(const LeftOut&, const LeftOut&) = default;
};

/// One option or several, by their ids, in any order: choices, faults that were spotted, predictions.
struct Chosen {
    static constexpr std::string_view name = "chosen";
    std::vector<std::string> options;

    static void fields(auto& self, auto&& visit) { visit("options", self.options, About{"ids of the options"}); }
    friend bool operator==(const Chosen&, const Chosen&) = default;
};

/// Cards by their ids, first to last.
struct Laid {
    static constexpr std::string_view name = "laid";
    std::vector<std::string> cards;

    static void fields(auto& self, auto&& visit) { visit("cards", self.cards, About{"ids of the cards, first to last"}); }
    friend bool operator==(const Laid&, const Laid&) = default;
};

/// A number with its unit as it was typed.
struct Typed {
    static constexpr std::string_view name = "typed";
    std::string text;

    static void fields(auto& self, auto&& visit) { visit("text", self.text, About{"as it was typed"}); }
    friend bool operator==(const Typed&, const Typed&) = default;
};

/// A place on the plan: a region by its id, where regions are lettered; else the point itself.
struct Pointed {
    static constexpr std::string_view name = "pointed";
    std::string region;         ///< empty: see x, y
    Length x{}, y{};            ///< coordinates of the scenario

    static void fields(auto& self, auto&& visit)
    {
        visit("region", self.region, About{"id of the region, where regions are lettered"});
        visit("x", self.x, About{"to the east"});
        visit("y", self.y, About{"to the north"});
    }
    friend bool operator==(const Pointed&, const Pointed&) = default;
};

/// What a person answered.
using Response = std::variant<LeftOut, Chosen, Laid, Typed, Pointed>;

}
