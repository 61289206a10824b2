#pragma once

#include "job/step.hpp"

#include <string>
#include <vector>

namespace flapdoor::job {

/// One decision of the trainee: what, with its parameters, and by whom.
struct Card {
    Step step;
    std::vector<PersonId> by;
    std::string label;      ///< optional name of the card inside its plan

    // Written out, and defined in one place: otherwise every file that holds a plan is compiled for every kind of step.
    Card();
    Card(Step what, std::vector<PersonId> who, std::string name);
    Card(const Card& other);
    Card(Card&& other) noexcept;
    Card& operator=(const Card& other);
    Card& operator=(Card&& other) noexcept;
    ~Card();

    /// In a file a card is one flat table: `do` names the kind of step, whose own keys stand beside these.
    static void fields(auto& self, auto&& visit)
    {
        visit("do", self.step, required, About{"kind of step"});
        visit("by", self.by, required, About{"who does it"});
        visit("label", self.label, About{"name of this card, so that other files can speak of it"});
    }
};

/// An ordered list of step cards.
struct WorkPlan {
    static constexpr int format_version = 1;

    int format = format_version;
    std::string scenario;       ///< id of the scenario it is made for
    std::string title;
    std::vector<Card> cards;

    static void fields(auto& self, auto&& visit)
    {
        visit("format", self.format, required, Range{1, format_version});
        visit("scenario", self.scenario, required, About{"id of the scenario it is made for"});
        visit("title", self.title, required);
        visit("card", self.cards, required);
    }
};

}
