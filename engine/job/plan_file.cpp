#include "job/files.hpp"

#include "job/places.hpp"
#include "text/reading.hpp"

#include <algorithm>
#include <string>
#include <type_traits>
#include <vector>

namespace flapdoor::job {

namespace {

/// The list of a scenario in which an id of that type is looked up; nothing for bags, which a plan names itself.
const std::vector<Opening>& things_of(const Scenario& s, const OpeningId*) { return s.openings; }
const std::vector<Zone>& things_of(const Scenario& s, const ZoneId*) { return s.zones; }
const std::vector<Object>& things_of(const Scenario& s, const ObjectId*) { return s.objects; }
const std::vector<Sill>& things_of(const Scenario& s, const SillId*) { return s.sills; }
const std::vector<Counter>& things_of(const Scenario& s, const CounterId*) { return s.counters; }
const std::vector<Component>& things_of(const Scenario& s, const ComponentId*) { return s.components; }
const std::vector<Person>& things_of(const Scenario& s, const PersonId*) { return s.crew; }
const std::vector<Supply>& things_of(const Scenario& s, const SupplyId*) { return s.supplies; }

constexpr const char* noun(const OpeningId*) { return "an opening"; }
constexpr const char* noun(const ZoneId*) { return "a zone"; }
constexpr const char* noun(const ObjectId*) { return "an object"; }
constexpr const char* noun(const SillId*) { return "a sill"; }
constexpr const char* noun(const CounterId*) { return "a counter"; }
constexpr const char* noun(const ComponentId*) { return "a component"; }
constexpr const char* noun(const PersonId*) { return "a member of the crew"; }
constexpr const char* noun(const SupplyId*) { return "a supply"; }

template <class T>
concept Named = requires(const Scenario& s, const T* id) { things_of(s, id); };

class Checker {
public:
    Checker(const Scenario& scenario, const text::Node& root, Problems& problems) : scenario_(scenario), root_(root), problems_(problems) {}

    void check(std::size_t card, const Card& what)
    {
        card_ = card;
        for (auto id = what.by.begin(); id != what.by.end(); ++id) {
            if (std::find(what.by.begin(), id, *id) == id) must_exist("by", *id);
            else problems_.push_back({place_of(root_, "card", card, "by"), "each person once", "`" + id->name + "` a second time"});
        }
        std::visit([&]<class S>(const S& step) { S::fields(step, *this); }, what.step);
    }

    template <class T, class... Tags>
    void operator()(std::string_view key, const T& value, const Tags&...)
    {
        if constexpr (Named<T>) {
            if (!value.is_empty()) must_exist(key, value);
        }
        else if constexpr (std::is_same_v<T, std::vector<SupplyId>>) {
            for (const SupplyId& id : value) must_exist(key, id);
        }
    }

private:
    template <class T>
    void must_exist(std::string_view key, const T& id)
    {
        const auto& things = things_of(scenario_, &id);
        if (find_by_id(things, id) != nullptr) return;
        std::vector<std::string> known;
        for (const auto& thing : things) known.push_back(thing.id.name);
        problems_.push_back({place_of(root_, "card", card_, key), "the id of " + std::string(noun(&id)) + " of scenario `" + scenario_.id + "`" + nearest_hint(id.name, known),
                             "`" + id.name + "`"});
    }

    const Scenario& scenario_;
    const text::Node& root_;
    Problems& problems_;
    std::size_t card_ = 0;
};

}

Result<WorkPlan> read_plan(std::string_view text, const std::string& file_name, const Scenario& scenario)
{
    Result<WorkPlan> plan = text::read_document<WorkPlan>(text, file_name);
    if (!plan) return plan;
    const Result<text::Node> root = text::parse_document(text, file_name);
    Problems problems;
    if (plan->scenario != scenario.id) {
        const text::Node* named = std::get<text::Table>(root->value).find("scenario");
        problems.push_back({named->where, "a plan for scenario `" + scenario.id + "`", "one for `" + plan->scenario + "`"});
    }
    Checker checker(scenario, *root, problems);
    for (std::size_t i = 0; i < plan->cards.size(); ++i) checker.check(i, plan->cards[i]);
    for (std::size_t i = 0; i < plan->cards.size(); ++i)
        for (std::size_t earlier = 0; earlier < i; ++earlier)
            if (!plan->cards[i].label.empty() && plan->cards[i].label == plan->cards[earlier].label)
                problems.push_back({place_of(*root, "card", i, "label"), "a label that no earlier card has", "`" + plan->cards[i].label + "` a second time"});
    if (problems.empty()) return plan;
    text::sort_by_place(problems);
    return failed(std::move(problems));
}

}
