#pragma once

#include "quiz/figure.hpp"
#include "quiz/mark.hpp"
#include "quiz/response.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// A figure that a misconception leads to.
struct WrongFigure {
    Figure figure;
    std::string misconception;
    Phrase told;

    static void fields(auto& self, auto&& visit)
    {
        visit("figure", self.figure, required, About{"what the mistake leads to"});
        visit("misconception", self.misconception, required, About{"name of the mistake"});
        visit("told", self.told, required, About{"what is said to whoever answers so"});
    }
};

/// A number with its unit is typed; any unit of the kind will do.
struct Number {
    static constexpr std::string_view name = "number";
    Figure answer;
    Tolerance tolerance;
    std::vector<WrongFigure> wrong;

    static void fields(auto& self, auto&& visit)
    {
        visit("answer", self.answer, required, About{"the right figure; its unit is the one asked for"});
        visit("tolerance", self.tolerance, About{"how far off is still right: \"1 in\", \"5 %\"; left out: nothing"});
        visit("wrong", self.wrong, About{"figures that known mistakes lead to"});
    }
};

NumberKey key_of(const Number& asked);

/// The unit to answer in, "ft", "%"; empty for a plain number.
std::string unit_of(const Figure& figure);

Mark mark(const Number& asked, const Response& response);
void check(const Number& asked, const Place& where, Complaints& complaints);

}
