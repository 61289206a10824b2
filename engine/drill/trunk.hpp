#pragma once

#include "drill/run.hpp"
#include "dust/flight_log.hpp"

#include <cstddef>
#include <vector>

namespace flapdoor::drill {

/// A run with the site as it was before each of its cards, so that a changed plan repeats nothing that both have in common.
struct Trunk {
    Run run;
    std::vector<site::Site> before;     ///< [card] the site when the card is about to be carried out; one more: the end
    dust::FlightLog flights;            ///< of every parcel
};

/// The same run as `carry_out` gives, with the site kept before every card: about a megabyte a card.
Trunk grow(const job::Scenario& scenario, const job::WorkPlan& plan, const RunOptions& options = {});

/// How many cards two plans begin with in common: same step, same settings, same people, same label.
std::size_t shared_cards(const job::WorkPlan& a, const job::WorkPlan& b);

/// Carries out another plan for the same scenario with the trunk's seed, uncertainties and detail, from the first card in which it
/// differs. The same bits as `carry_out` of that plan, which a test asks. Several may grow from one trunk at a time.
/// @param options  threads, hooks, hashing and tracing (if the trunk has it) are taken from it; hooks see the cards from the first different one on
Run branch(const Trunk& trunk, const job::WorkPlan& changed, const RunOptions& options = {});

}
