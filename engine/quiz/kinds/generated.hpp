#pragma once

#include "core/fields.hpp"
#include "quiz/mark.hpp"
#include "quiz/response.hpp"
#include "rules/rule.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// What is told to whoever falls for a misconception of a generator.
struct Misled {
    rules::Marked misconception;
    Phrase told;                    ///< may use the generator's blanks

    static void fields(auto& self, auto&& visit)
    {
        visit("misconception", self.misconception, required, About{"name of a mistake that the generator knows"});
        visit("told", self.told, required, About{"what is said to whoever makes it; may use the generator's blanks"});
    }
};

/// In what form a generated figure is asked for.
enum class AskAs { choose_one, number };

/// A template: the generator of that name fills the blanks of the texts and works the answer out from a scenario, a rule book
/// and a seed. It becomes a question of another kind before it is asked.
struct Generated {
    static constexpr std::string_view name = "generated";
    rules::Marked by;
    AskAs as = AskAs::choose_one;
    std::vector<Misled> wrong;

    static void fields(auto& self, auto&& visit)
    {
        visit("by", self.by, required, About{"name of the generator"});
        visit("as", self.as, About{"form of a generated figure"});
        visit("wrong", self.wrong, About{"what to say about each mistake that the generator knows"});
    }
};

/// A template cannot be answered: insists.
Mark mark(const Generated& asked, const Response& response);
void check(const Generated& asked, const Place& where, Complaints& complaints);

}

namespace flapdoor::inline core {
template <> struct Words<quiz::AskAs> { static constexpr std::array<std::string_view, 2> words{"choose-one", "number"}; };
}
