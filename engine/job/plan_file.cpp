#include "job/files.hpp"

#include "job/places.hpp"
#include "text/reading.hpp"

#include <algorithm>
#include <map>
#include <set>
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

class PlanChecker {
public:
    PlanChecker(const Scenario& scenario, const text::Node& root, Problems& problems) : scenario_(scenario), root_(root), problems_(problems) {}

    void check(std::size_t card, const Card& what)
    {
        card_ = card;
        for (auto id = what.by.begin(); id != what.by.end(); ++id) {
            const Place place = place_in_list(root_, "card", card, "by", static_cast<std::size_t>(id - what.by.begin()));
            if (std::find(what.by.begin(), id, *id) == id) must_exist(*id, place);
            else problems_.push_back({place, "each person once", "`" + id->name + "` a second time"});
        }
        std::visit([&]<class S>(const S& step) { S::fields(step, *this); }, what.step);
        if (const auto* debris = std::get_if<BagDebris>(&what.step)) take_bag(debris->kind, debris->bag);
        if (const auto* sheeting = std::get_if<BagSheeting>(&what.step)) take_bag(sheeting->kind, sheeting->bag);
    }

    template <class T, class... Tags>
    void operator()(std::string_view key, const T& value, const Tags&...)
    {
        if constexpr (Named<T>) {
            if (!value.is_empty()) must_exist(value, place_of(root_, "card", card_, key));
        }
        else if constexpr (std::is_same_v<T, std::vector<SupplyId>>) {
            for (std::size_t i = 0; i < value.size(); ++i) must_exist(value[i], place_in_list(root_, "card", card_, key, i));
        }
    }

private:
    template <class T>
    void must_exist(const T& id, const Place& place)
    {
        const auto& things = things_of(scenario_, &id);
        if (find_by_id(things, id) != nullptr) return;
        std::vector<std::string> known;
        for (const auto& thing : things) known.push_back(thing.id.name);
        problems_.push_back({place, "the id of " + std::string(noun(&id)) + " of scenario `" + scenario_.id + "`" + nearest_hint(id.name, known), "`" + id.name + "`"});
    }

    /// A plan fills no more bags than there are.
    void take_bag(const SupplyId& kind, const BagId& bag)
    {
        const Supply* supply = find_by_id(scenario_.supplies, kind);
        if (supply == nullptr || (supply->kind != SupplyKindOf::bag && supply->kind != SupplyKindOf::trash_bag)) return;   // refused when it is carried out
        std::set<std::string>& taken = bags_[kind.name];
        const bool is_new = taken.insert(bag.name).second;
        if (is_new && taken.size() > static_cast<std::size_t>(supply->count))
            problems_.push_back({place_of(root_, "card", card_, "bag"), "at most " + std::to_string(supply->count) + " bags of `" + kind.name + "`", "`" + bag.name + "`, one more"});
    }

    const Scenario& scenario_;
    const text::Node& root_;
    Problems& problems_;
    std::size_t card_ = 0;
    std::map<std::string, std::set<std::string>> bags_;     // names of the bags filled so far, by supply
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
    PlanChecker checker(scenario, *root, problems);
    for (std::size_t i = 0; i < plan->cards.size(); ++i) checker.check(i, plan->cards[i]);
    std::set<std::string> labels;
    for (std::size_t i = 0; i < plan->cards.size(); ++i)
        if (const std::string& label = plan->cards[i].label; !label.empty() && !labels.insert(label).second)
            problems.push_back({place_of(*root, "card", i, "label"), "a label that no earlier card has", "`" + label + "` a second time"});
    if (problems.empty()) return plan;
    text::sort_by_place(problems);
    if (problems.size() > text::most_problems) problems.resize(text::most_problems);
    return failed(std::move(problems));
}

}
