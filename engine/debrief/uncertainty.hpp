#pragma once

#include "dust/run_parameters.hpp"

#include <array>
#include <string_view>

namespace flapdoor::debrief {

/// An uncertain parameter of the model in words.
struct Uncertainty {
    std::string_view title;
    double dust::RunParameters::*member;
};

/// All of them, in the order in which a seed draws them.
inline constexpr std::array<Uncertainty, 17> uncertainties{{
    {"dust that the work makes", &dust::RunParameters::yield},
    {"size of the dust clouds", &dust::RunParameters::cloud_median},
    {"lead in the dust", &dust::RunParameters::lead_share},
    {"share of the dust that hangs in the air", &dust::RunParameters::airborne},
    {"stirring of the room's air", &dust::RunParameters::eddy},
    {"air swapped at each passage", &dust::RunParameters::passage},
    {"size of slits and seams", &dust::RunParameters::leak},
    {"flow into an open return", &dust::RunParameters::return_flow},
    {"dust raised by steps", &dust::RunParameters::raised},
    {"what soles pick up", &dust::RunParameters::sole_uptake},
    {"what a tack pad takes", &dust::RunParameters::pad_capture},
    {"dust that floors hold bound", &dust::RunParameters::bound},
    {"what vacuuming takes", &dust::RunParameters::vacuum},
    {"how much slower edges come clean", &dust::RunParameters::edge_penalty},
    {"what a vacuum blows out", &dust::RunParameters::exhaust},
    {"what bags and sheeting let go", &dust::RunParameters::handling},
    {"shade of the verification card", &dust::RunParameters::card_coverage},
}};
static_assert(sizeof(dust::RunParameters) == uncertainties.size() * sizeof(double), "a study writes down every parameter that a seed draws");

}
