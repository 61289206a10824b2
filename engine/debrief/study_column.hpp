#pragma once

#include "rules/marking_sheet.hpp"
#include "site/site.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::debrief {

/// What a study writes down of each run. Loadings are lead, chips apart.
enum class Measured {
    work_floor, passage_floor, other_floor, sill, counter, top, wall,   ///< a surface of the place, by its number
    left_sheeting,      ///< sheeting, runners and covers still lying, all together
    place,              ///< loose lead in a place, by its number in place_lines()
    way_out,            ///< net lead by a pathway; below zero where more came back than left
    released, contained, inside, outside,
    points_wanted, points_lost, is_passed, is_verified, wet_cloths, dry_cloths, took,
    exposure,           ///< inhalable lead in the breathing zone, outside a respirator, over eight hours; by the number in the crew
    parameter           ///< as the seed drew it, by its number in `uncertainties`
};

/// A column of a study.
struct StudyColumn {
    Measured what = Measured::work_floor;
    std::size_t which = 0;      ///< 0 where there is one only
    std::string title;          ///< of the surface, place, pathway, person or parameter; empty where `what` says it all
    std::string unit;           ///< empty for numbers

    friend bool operator==(const StudyColumn&, const StudyColumn&) = default;
};

/// "sill 12: East sill [ug/ft2]": its head in a study file.
std::string head_of(const StudyColumn& column);

/// Reads a head back; nothing when it is none.
std::optional<StudyColumn> column_from(std::string_view head);

/// What is written down of every run on that place. Depends on the scenario alone, so that parts of a study fit together.
std::vector<StudyColumn> study_columns(const job::Scenario& scenario);

/// One value a column, in the column's unit and six significant digits, as a study file holds it; nothing where the run has
/// none (the object was carried out, nothing was left lying).
/// @param site  at the end of the run
std::vector<std::optional<double>> measured(const std::vector<StudyColumn>& columns, const site::Site& site, const rules::MarkingSheet& sheet);

/// Is it a loading of a surface, in ug/ft2?
constexpr bool is_loading(Measured what) { return what <= Measured::left_sheeting; }

/// From the numbers that a study holds.
constexpr dust::Concentration micrograms_per_cubic_meter(double value) { return {value * 1e-9}; }
constexpr Loading micrograms_per_square_foot(double value) { return (1.0_ugpft2) * value; }

}

namespace flapdoor::inline core {
template <> struct Words<debrief::Measured> {
    static constexpr std::array<std::string_view, 23> words{
        "work-floor", "passage-floor", "other-floor", "sill", "counter", "top", "wall", "left-sheeting", "place", "way-out", "released", "contained",
        "inside", "outside", "points-wanted", "points-lost", "passed", "verified", "wet-cloths", "dry-cloths", "took", "exposure", "parameter"};
};
}
