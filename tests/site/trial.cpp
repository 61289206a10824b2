#include "trial.hpp"

#include "site/effects.hpp"
#include "site/hands.hpp"

#include <map>
#include <sstream>
#include <utility>

// Apart from the tests: whatever plays a card is compiled for every kind of step.
namespace flapdoor::site {

namespace {

/// The same place without old dust, so that a test sees what it strews itself.
job::Scenario swept(job::Scenario scenario)
{
    for (job::Zone& zone : scenario.zones) zone.dust_before = zone.lead_before = Loading{};
    for (job::Sill& sill : scenario.sills) sill.dust_before = sill.lead_before = Loading{};
    return scenario;
}

const std::map<std::string, job::Card>& careful_cards()
{
    static const std::map<std::string, job::Card> cards = [] {
        std::map<std::string, job::Card> by_label;
        for (const job::Card& card : job::shipped_plan("good", job::shipped_scenario()).cards) by_label[card.label] = card;
        return by_label;
    }();
    return cards;
}

Played play_card(Site& site, const job::Card& card)
{
    site.measured.clear();
    Played played;
    std::visit([&](const auto& step) {
        const bool is_return = std::holds_alternative<job::ReturnToSite>(card.step);
        if (const Refusal refusal = first_of({is_return ? std::nullopt : must_be_on_site(site, card.by), why_not(site, step, card.by)})) {
            played.outcome = "refused: " + refusal->english();
            return;
        }
        const Done done = carry_out(site, step, card.by);
        played.outcome = done.was_needed ? "done" : "not needed: " + done.why.english();
        if (done.was_needed) Trial::kinds_done().insert(step.name);
    }, card.step);
    audit(site);
    played.measured = site.measured;
    return played;
}

}

Trial::Trial(job::Scenario scenario, std::uint64_t seed) : site(build(swept(std::move(scenario)), seed)) {}

Played Trial::play(const std::string& card)
{
    const std::string by = card.find("by = [") == std::string::npos ? ", by = [\"lee\"]" : "";
    const std::string text = "format = 1\nscenario = \"back-bedroom\"\ntitle = \"Trial\"\ncard = [{ " + card + by + " }]\n";
    return play_card(site, job::sound(job::read_plan(text, "trial.toml", site.scenario)).cards.front());
}

Trial& Trial::after(const std::string& labels)
{
    std::istringstream words(labels);
    for (std::string label; words >> label;) {
        INFO(label);
        REQUIRE(careful_cards().count(label) == 1);
        REQUIRE(play_card(site, careful_cards().at(label)).outcome == "done");
    }
    return *this;
}

Trial& Trial::then(const std::string& card)
{
    INFO(card);
    REQUIRE(play(card).outcome == "done");
    return *this;
}

std::set<std::string_view>& Trial::kinds_done()
{
    static std::set<std::string_view> kinds;
    return kinds;
}

}
