#pragma once

#include "dust/run_parameters.hpp"
#include "text/language.hpp"

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
    {text::to_say("dust that the work makes"), &dust::RunParameters::yield},
    {text::to_say("size of the dust clouds"), &dust::RunParameters::cloud_median},
    {text::to_say("lead in the dust"), &dust::RunParameters::lead_share},
    {text::to_say("share of the dust that hangs in the air"), &dust::RunParameters::airborne},
    {text::to_say("stirring of the room's air"), &dust::RunParameters::eddy},
    {text::to_say("air swapped at each passage"), &dust::RunParameters::passage},
    {text::to_say("size of slits and seams"), &dust::RunParameters::leak},
    {text::to_say("flow into an open return"), &dust::RunParameters::return_flow},
    {text::to_say("dust raised by steps"), &dust::RunParameters::raised},
    {text::to_say("what soles pick up"), &dust::RunParameters::sole_uptake},
    {text::to_say("what a tack pad takes"), &dust::RunParameters::pad_capture},
    {text::to_say("dust that floors hold bound"), &dust::RunParameters::bound},
    {text::to_say("what vacuuming takes"), &dust::RunParameters::vacuum},
    {text::to_say("how much slower edges come clean"), &dust::RunParameters::edge_penalty},
    {text::to_say("what a vacuum blows out"), &dust::RunParameters::exhaust},
    {text::to_say("what bags and sheeting let go"), &dust::RunParameters::handling},
    {text::to_say("shade of the verification card"), &dust::RunParameters::card_coverage},
}};
static_assert(sizeof(dust::RunParameters) == uncertainties.size() * sizeof(double), "a study writes down every parameter that a seed draws");

}
