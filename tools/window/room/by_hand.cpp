#include "window/room/by_hand.hpp"

#include "core/insist.hpp"
#include "text/language.hpp"

namespace flapdoor::window {

namespace {

const job::Opening* doorway_of(const site::Site& site, const job::Step& step)
{
    const auto* flap = std::get_if<job::HangFlap>(&step);
    return flap == nullptr ? nullptr : find_by_id(site.scenario.openings, flap->opening);
}

const site::Bag* bag_of(const site::Site& site, const job::Step& step)
{
    const auto* close = std::get_if<job::CloseBag>(&step);
    return close == nullptr ? nullptr : site::find_bag(site, close->bag);
}

std::variant<FlapCloseUp, BagCloseUp> opened(const site::Site& site, const job::Step& step)
{
    if (const job::Opening* doorway = doorway_of(site, step)) return FlapCloseUp(*doorway, std::get<job::HangFlap>(step));
    const site::Bag* bag = bag_of(site, step);
    insist(bag != nullptr, "a close-up shows a doorway or a bag that is there");
    return BagCloseUp(std::get<job::CloseBag>(step), bag->fill, false);
}

}

std::string ByHand::label_for(const site::Site& site, const job::Step& step)
{
    if (doorway_of(site, step) != nullptr) return std::string(text::say("Hang it move by move"));
    if (bag_of(site, step) != nullptr) return std::string(text::say("Close it move by move"));
    return {};
}

ByHand::ByHand(const site::Site& site, const job::Step& step) : view_(opened(site, step)) {}

CloseUpEnd ByHand::play(Ui& ui, const Box& box, bool keeps_still)
{
    if (auto* flap = std::get_if<FlapCloseUp>(&view_)) return flap->play(ui, box, keeps_still);
    return std::get<BagCloseUp>(view_).play(ui, box);
}

std::vector<job::Step> ByHand::steps() const
{
    if (const auto* flap = std::get_if<FlapCloseUp>(&view_)) return {flap->card()};
    const auto& bag = std::get<BagCloseUp>(view_);
    const job::CloseBag close = bag.card();
    std::vector<job::Step> steps{close};
    // Which vacuum is for the crew to choose: it may be a wrong one.
    if (bag.vacuums_outside()) steps.insert(bag.vacuums_too_early() ? steps.begin() : steps.end(), job::VacuumBag{close.bag, {}});
    return steps;
}

bool ByHand::is_moving() const
{
    const auto* flap = std::get_if<FlapCloseUp>(&view_);
    return flap != nullptr && flap->is_moving();
}

}
