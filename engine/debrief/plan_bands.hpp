#pragma once

#include "debrief/band.hpp"
#include "debrief/study.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace flapdoor::debrief {

/// A way out over the runs of a study.
struct PathwayBand {
    dust::Pathway pathway = dust::Pathway::none;
    Band share;     ///< of all that got out in a run, 0 to 1
    Band lead;      ///< ug, net
    int rank = 0;   ///< from 1, by the median share; 0 for what is barely known and for what never carried anything
};

/// How a parameter that a seed draws moves a result: their rank correlation over the runs.
struct Influence {
    std::size_t parameter = 0;      ///< in `uncertainties`
    double correlation = 0.0;
};

/// What a study says about one of its plans.
struct PlanBands {
    std::string name, title;        ///< of the plan
    std::size_t runs = 0;
    double detail = 1.0;
    std::vector<std::pair<StudyColumn, Band>> columns;  ///< in the study's order; without what no run has
    std::vector<PathwayBand> pathways;                  ///< by rank, then what is barely known, then what carried nothing
    std::optional<Band> worst_sill;                     ///< ug/ft2
    std::size_t passed = 0, verified = 0;               ///< runs
    std::vector<Influence> on_floor, on_outside;        ///< on the lead on the work room's floor and on all that got out; strongest first

    /// The band of the column of that kind and number; null when there is none.
    const Band* find(Measured what, std::size_t which = 0) const;

    /// The band of a surface of the place, by its number in the site.
    const Band* of_surface(std::size_t surface) const;
};

/// @param plan  in the study's basis. Insists on it.
PlanBands bands_of(const Study& study, std::size_t plan);

/// The parameters that stand out from chance, strongest first, at most `most`.
std::vector<Influence> beyond_chance(const std::vector<Influence>& all, std::size_t runs, std::size_t most = 3);

}
