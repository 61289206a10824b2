#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// What was done, by whom, with the cloth counts.
struct WriteRecord {
    static constexpr std::string_view name = "write-record";
    static constexpr std::string_view title = "Write the record";
    static constexpr Phase phase = Phase::hand_over;
    static constexpr Hands hands = Hands::certified;
    static constexpr Time takes = 15.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    bool has_cloth_counts = true;
    bool names_people = true;
    bool notes_exceptions = false;

    static void fields(auto& self, auto&& visit)
    {
        visit("has-cloth-counts", self.has_cloth_counts);
        visit("names-people", self.names_people, About{"the certificate of the certified renovator and who was trained in what"});
        visit("notes-exceptions", self.notes_exceptions, About{"emergencies: what it was and which provisions were not followed"});
    }
};

}
