#include "window/room/proposal.hpp"

#include "drill/run.hpp"
#include "text/language.hpp"
#include "text/sentence.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

constexpr std::size_t most_tries = 1500;

struct Named {
    std::string id, title;
};

std::vector<Named> things(const site::Site& site, ThingKind kind)
{
    std::vector<Named> all;
    const auto take = [&](const auto& list) {
        for (const auto& thing : list) all.push_back({thing.id.name, text::as_sentence(std::string(text::say(thing.title)))});
    };
    const job::Scenario& scenario = site.scenario;
    switch (kind) {
        case ThingKind::opening: take(scenario.openings); break;
        case ThingKind::supply: take(scenario.supplies); break;
        case ThingKind::object: take(scenario.objects); break;
        case ThingKind::component: take(scenario.components); break;
        case ThingKind::person: take(scenario.crew); break;
        case ThingKind::zone: take(scenario.zones); break;
        case ThingKind::sill: take(scenario.sills); break;
        case ThingKind::counter: take(scenario.counters); break;
        case ThingKind::bag: {
            for (const site::Bag& bag : site.bags) all.push_back({bag.id.name, bag.id.name});
            int next = 1;
            const auto name = [&] { return "bag-" + std::to_string(next); };
            while (site::find_bag(site, job::BagId{name()}) != nullptr) ++next;
            all.push_back({name(), name()});
            break;
        }
        case ThingKind::none: break;
    }
    return all;
}

job::Card with(job::Card card, CardField field, const std::string& id)
{
    if (field.type == FieldType::things) field.ids = {id};
    else field.id = id;
    set_field(card.step, field);
    return card;
}

/// Tries the things of each field in turn until the card can be carried out; counts down.
bool fill(const site::Site& site, job::Card& card, const std::vector<CardField>& fields, std::size_t at, std::size_t& tries)
{
    while (at < fields.size() && (fields[at].type != FieldType::thing || (!fields[at].is_required && fields[at].thing != ThingKind::supply))) ++at;
    if (at == fields.size()) {
        if (tries == 0) return false;
        --tries;
        return !drill::why_not(site, card);
    }
    for (const Named& thing : things(site, fields[at].thing)) {
        card = with(card, fields[at], thing.id);
        if (fill(site, card, fields, at + 1, tries)) return true;
        if (tries == 0) return false;
    }
    return false;
}

/// A filled card that can be carried out, if there is one.
std::optional<job::Card> some_card(const site::Site& site, const StepKind& kind, const std::vector<job::PersonId>& by)
{
    job::Card card{kind.blank, by, {}};
    std::size_t tries = most_tries;
    if (!fill(site, card, fields_of(card.step), 0, tries)) return std::nullopt;
    return card;
}

}

std::vector<Candidate> candidates(const site::Site& site, const job::Card& card, const CardField& field)
{
    std::vector<Candidate> all;
    job::Card filled = card;    // other things that are still to choose must not stand in the way
    std::vector<CardField> others;
    for (const CardField& other : fields_of(card.step))
        if (other.key != field.key && other.type == FieldType::thing && other.id.empty() && other.is_required) others.push_back(other);
    const bool is_hopeless = std::any_of(others.begin(), others.end(), [&](const CardField& other) { return things(site, other.thing).empty(); });
    for (Named& thing : things(site, field.thing)) {
        job::Card tried = with(filled, field, thing.id);
        std::size_t tries = most_tries;
        const bool is_filled = !others.empty() && fill(site, tried, others, 0, tries);
        std::optional<text::Sentence> why;
        if (is_hopeless) why = text::sentence("there is nothing here to do it on");
        else if (!is_filled) why = drill::why_not(site, tried);
        if (field.thing == ThingKind::supply && field.type == FieldType::thing && why && why->pattern.find("cannot be used") != std::string::npos) continue;
        all.push_back({std::move(thing.id), std::move(thing.title), std::move(why)});
    }
    std::stable_partition(all.begin(), all.end(), [](const Candidate& candidate) { return !candidate.why_not; });
    return all;
}

job::Card proposed(const site::Site& site, const StepKind& kind, const std::vector<job::PersonId>& by)
{
    job::Card card{kind.blank, by, {}};
    const std::optional<job::Card> some = some_card(site, kind, by);
    if (!some) return card;
    card = *some;
    for (CardField field : fields_of(card.step)) {
        if (field.type != FieldType::thing || field.thing != ThingKind::supply || field.id.empty()) continue;
        const auto choice = candidates(site, card, field);
        if (std::count_if(choice.begin(), choice.end(), [](const Candidate& c) { return !c.why_not; }) < 2) continue;
        field.id.clear();
        set_field(card.step, field);
    }
    return card;
}

std::optional<text::Sentence> why_none(const site::Site& site, const StepKind& kind, const std::vector<job::PersonId>& by)
{
    if (some_card(site, kind, by)) return std::nullopt;
    job::Card card{kind.blank, by, {}};
    for (const CardField& field : fields_of(card.step)) {   // a reason about the first thing there is, not about an empty name
        if (field.type != FieldType::thing || !field.is_required) continue;
        const auto all = things(site, field.thing);
        if (all.empty()) return text::sentence("there is nothing here to do it on");
        card = with(card, field, all.front().id);
    }
    return drill::why_not(site, card).value_or(text::sentence("nothing here needs it now"));
}

const CardField* unchosen(const std::vector<CardField>& fields)
{
    const auto found = std::find_if(fields.begin(), fields.end(), [](const CardField& field) {
        return (field.type == FieldType::thing && field.is_required && field.id.empty()) || (field.type == FieldType::things && field.is_required && field.ids.empty());
    });
    return found == fields.end() ? nullptr : &*found;
}

}
