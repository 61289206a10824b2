#pragma once

#include "core/fields.hpp"

#include <array>
#include <string_view>

namespace flapdoor::quiz {

/// What a question is about.
enum class Topic {
    scope,              ///< does the rule apply at all
    people,             ///< who may do what
    containment,        ///< signs, sheeting, objects
    openings,           ///< air handling, registers, windows, doors
    flap_door,
    tack_pad,           ///< and leaving the work area
    prohibited,         ///< practices that are barred or restricted
    gear,               ///< protective gear and breathing
    dust,               ///< how dust moves, settles, comes off
    bagging,
    cleaning,           ///< its order and ways
    inspection,
    verification,       ///< cloths, sections, waiting, clearance
    records,            ///< pamphlet, records, report
    other               ///< of questions from elsewhere
};

/// What answering asks of a person.
enum class Level {
    know,       ///< a fact of the rule or the trade
    apply,      ///< the fact put to use on a job: figures, orders, places
    judge       ///< weighing several facts, telling what goes wrong and why
};

std::string_view title_of(Topic topic);     ///< in English; a catalog holds it
std::string_view title_of(Level level);

}

namespace flapdoor::inline core {
template <> struct Words<quiz::Topic> {
    static constexpr std::array<std::string_view, 15> words{"scope", "people", "containment", "openings", "flap-door", "tack-pad", "prohibited", "gear",
                                                            "dust", "bagging", "cleaning", "inspection", "verification", "records", "other"};
};
template <> struct Words<quiz::Level> { static constexpr std::array<std::string_view, 3> words{"know", "apply", "judge"}; };
}
