#pragma once

#include "dust/bag.hpp"
#include "site/effects.hpp"

#include <initializer_list>
#include <string>

// Small things that many step cards have in common.
namespace flapdoor::site {

/// Refuses when somebody of the team is not in the work area though work has begun. Before the first dust people come
/// and go freely.
Refusal must_be_inside(const Site& site, const Team& by);
Refusal must_be_outside(const Site& site, const Team& by);

/// Refuses when somebody of the team is off the site: no card but the return is theirs then.
Refusal must_be_on_site(const Site& site, const Team& by);

/// Refuses when there is no card on the site to compare a cloth with.
Refusal must_have_card(const Site& site);

/// Refuses when a supply is not of a kind that can serve at all, or is left outside a hung flap.
Refusal must_have(const Site& site, const job::SupplyId& supply, std::initializer_list<job::SupplyKindOf> kinds, std::string_view purpose);

/// Refuses when the opening is not of that kind.
Refusal must_be(const OpeningState& opening, std::initializer_list<job::OpeningKindOf> kinds, std::string_view wanted);

/// Refuses when that opening is not where people pass, or nobody can get through it.
/// @param otherwise  what to say then, with a blank for the opening
Refusal must_be_way(const Site& site, const job::OpeningId& id, std::string_view otherwise);

/// The first refusal of several.
Refusal first_of(std::initializer_list<Refusal> refusals);

job::SupplyKindOf kind_of(const Site& site, const job::SupplyId& supply);
bool is_certified(const Site& site, const Team& by);
bool is_inside(const Site& site, const Team& by);

/// Everybody of the team walks to a place in their zone.
void gather(Site& site, const Team& by, plan::Point where);

/// The team works at a place of the work area: time passes, feet shuffle, clothes get dusty.
void work_at(Site& site, const Team& by, plan::Point where, Time time);

/// What gets onto the clothes of a team at work in one place. Called with half the time before and half after, as the dust
/// there grows.
void soil_at_work(Site& site, const Team& by, plan::Point where, Time time);

/// Lets time pass with people at rest.
void spend(Site& site, Time time);

/// Bags and sheeting never let go more than this, however roughly they are handled.
inline constexpr double most_let_go = 0.5;

/// Does the containment stand: sheeting, flap, registers and unused doors, windows?
bool is_containment_whole(const Site& site);

/// After openings or sheeting changed: air flows anew, states follow.
void containment_changed(Site& site);

/// After somebody left the site or came back: states of the certified renovators follow.
void presence_changed(Site& site);

/// How far the sheeting really reaches beyond a component: to the nearest floor that lies bare, corners and what lies beside
/// furniture included; width and depth of the room together when none does.
Length sheeting_reach(const Site& site, const job::Component& component);

/// Do chips lie on bare floor of the work room?
bool has_debris_on_floor(const Site& site);

/// Everything in one load goes over to another, class by class.
void pour(Site& site, Body& from, Body& to, double share, dust::Pathway pathway = dust::Pathway::none);

}
