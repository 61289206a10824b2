#include "window/room/card_fields.hpp"

#include "core/insist.hpp"
#include "text/field_types.hpp"
#include "text/language.hpp"

#include <algorithm>
#include <array>
#include <type_traits>

namespace flapdoor::window {

namespace {

using text::to_say;

template <class T> constexpr ThingKind kind_of_thing = ThingKind::none;
template <> constexpr ThingKind kind_of_thing<job::OpeningId> = ThingKind::opening;
template <> constexpr ThingKind kind_of_thing<job::SupplyId> = ThingKind::supply;
template <> constexpr ThingKind kind_of_thing<job::ObjectId> = ThingKind::object;
template <> constexpr ThingKind kind_of_thing<job::ComponentId> = ThingKind::component;
template <> constexpr ThingKind kind_of_thing<job::PersonId> = ThingKind::person;
template <> constexpr ThingKind kind_of_thing<job::ZoneId> = ThingKind::zone;
template <> constexpr ThingKind kind_of_thing<job::SillId> = ThingKind::sill;
template <> constexpr ThingKind kind_of_thing<job::CounterId> = ThingKind::counter;
template <> constexpr ThingKind kind_of_thing<job::BagId> = ThingKind::bag;

template <class T>
double si(const T& quantity)
{
    if constexpr (std::same_as<T, Temperature>) return quantity.kelvin;
    else return quantity.si;
}

template <class T>
double plain(const T& value)
{
    if constexpr (std::is_arithmetic_v<T>) return static_cast<double>(value);
    else if constexpr (text::Measured<T>) return si(value);
    else return 0.0;
}

/// Gathers the fields.
struct Gatherer {
    std::vector<CardField> fields;

    template <class Field, class... Given>
    void operator()(std::string_view key, const Field& value, const Given&... given)
    {
        const auto tags = text::gather<Field>(given...);
        CardField field;
        field.key = key;
        field.about = tags.about;
        field.is_required = tags.is_required;
        if constexpr (text::Bounded<text::Leaf<Field>>) {
            if (tags.range) field.least = plain(tags.range->least), field.most = plain(tags.range->most);
        }
        if constexpr (requires { take(field, value); }) { // what no form can hold is set elsewhere, on the plan
            take(field, value);
            fields.push_back(std::move(field));
        }
    }

    static void take(CardField& field, bool value) { field.type = FieldType::flag, field.value = value ? 1.0 : 0.0; }
    static void take(CardField& field, int value) { field.type = FieldType::whole, field.value = value; }
    static void take(CardField& field, double value) { field.type = FieldType::number, field.value = value; }
    static void take(CardField& field, Length value) { field.type = FieldType::length, field.value = value.si; }
    static void take(CardField& field, Time value) { field.type = FieldType::time, field.value = value.si; }
    static void take(CardField& field, Temperature value) { field.type = FieldType::temperature, field.value = value.kelvin; }
    static void take(CardField& field, const std::string& value) { field.type = FieldType::text, field.id = value; }
    template <Worded E>
    static void take(CardField& field, E value)
    {
        field.type = FieldType::word, field.words = Words<E>::words, field.word = static_cast<std::size_t>(value);
    }
    template <class Kind>
    static void take(CardField& field, const Id<Kind>& value)
    {
        field.type = FieldType::thing, field.thing = kind_of_thing<Id<Kind>>, field.id = value.name;
    }
    template <class Kind>
    static void take(CardField& field, const std::vector<Id<Kind>>& values)
    {
        field.type = FieldType::things, field.thing = kind_of_thing<Id<Kind>>;
        for (const auto& value : values) field.ids.push_back(value.name);
    }
    template <class Kind>
    static void take(CardField& field, const std::optional<Id<Kind>>& value)
    {
        field.type = FieldType::thing, field.thing = kind_of_thing<Id<Kind>>, field.id = value ? value->name : std::string();
    }
};

/// Puts one of them back.
struct Setter {
    const CardField& from;
    bool is_found = false;

    template <class Field, class... Given>
    void operator()(std::string_view key, Field& value, const Given&...)
    {
        if (key != from.key) return;
        if constexpr (requires { put(value); }) {
            is_found = true;
            put(value);
        }
    }
    void put(bool& value) const { value = from.value != 0.0; }
    void put(int& value) const { value = static_cast<int>(from.value + (from.value < 0.0 ? -0.5 : 0.5)); }
    void put(double& value) const { value = from.value; }
    void put(Length& value) const { value = Length{from.value}; }
    void put(Time& value) const { value = Time{from.value}; }
    void put(Temperature& value) const { value = Temperature{from.value}; }
    void put(std::string& value) const { value = from.id; }
    template <Worded E>
    void put(E& value) const
    {
        value = static_cast<E>(from.word);
    }
    template <class Kind>
    void put(Id<Kind>& value) const
    {
        value.name = from.id;
    }
    template <class Kind>
    void put(std::vector<Id<Kind>>& values) const
    {
        values.clear();
        for (const std::string& id : from.ids) values.push_back({id});
    }
    template <class Kind>
    void put(std::optional<Id<Kind>>& value) const
    {
        value.reset();
        if (!from.id.empty()) value = Id<Kind>{from.id};
    }
};

struct Label {
    std::string_view key, label;
};

/// Fields that read better with words of their own; the others are called by their keys.
constexpr std::array<Label, 66> labels{{
    {"opening", to_say("Where")},
    {"vacuum", to_say("Vacuum")},
    {"sheeting", to_say("Sheeting")},
    {"cloth", to_say("Cloth")},
    {"bag", to_say("Bag")},
    {"is-taped", to_say("Taped at the edges")},
    {"component", to_say("Painted part")},
    {"time", to_say("How long")},
    {"target", to_say("What")},
    {"shoe-covers", to_say("Shoe covers")},
    {"section", to_say("Section")},
    {"reach", to_say("How far it reaches")},
    {"path", to_say("Way of working")},
    {"order", to_say("Order")},
    {"object", to_say("Thing")},
    {"mop", to_say("Mop")},
    {"minutes-per-square-meter", to_say("Minutes a square meter")},
    {"layers", to_say("Layers")},
    {"kind", to_say("Kind")},
    {"at", to_say("At")},
    {"zone", to_say("Room")},
    {"worker", to_say("Who is trained")},
    {"water-changes", to_say("Changes of water")},
    {"twist", to_say("Length of the twist")},
    {"technique", to_say("How")},
    {"tape", to_say("Tape")},
    {"supplies", to_say("What is brought in")},
    {"soles", to_say("Soles")},
    {"sill", to_say("Sill")},
    {"side", to_say("Side")},
    {"sheets", to_say("Sheets")},
    {"share", to_say("Share of the area")},
    {"sections", to_say("Sections")},
    {"respirator", to_say("Respirator")},
    {"receipt", to_say("Proof")},
    {"press", to_say("Air pressed out")},
    {"place", to_say("Place")},
    {"pad", to_say("Pad")},
    {"overlap", to_say("Overlap")},
    {"only-if-due", to_say("Only when it is due")},
    {"notes-exceptions", to_say("Notes exceptions")},
    {"names-people", to_say("Names the people")},
    {"mists-air", to_say("Mists the air")},
    {"mister", to_say("Mister")},
    {"light", to_say("Light")},
    {"length", to_say("Length")},
    {"language", to_say("Language")},
    {"item", to_say("What")},
    {"is-secured", to_say("Secured")},
    {"is-sealed", to_say("Sealed")},
    {"is-reachable", to_say("Can be reached")},
    {"is-misted", to_say("Kept misted")},
    {"heat", to_say("Heat")},
    {"has-shroud", to_say("With a shroud")},
    {"has-hepa", to_say("HEPA vacuum attached")},
    {"has-handle", to_say("On a long handle")},
    {"has-folds", to_say("Folds at top and bottom")},
    {"has-dowel", to_say("Dowel at the lower edge")},
    {"has-beater-bar", to_say("With a beater bar")},
    {"gap", to_say("Gap above the floor")},
    {"fill", to_say("How full")},
    {"does-edges", to_say("Edges once more")},
    {"dirty-side", to_say("Dirty side")},
    {"days-before", to_say("Days before the start")},
    {"crosses", to_say("A second pass across")},
    {"closure", to_say("How it is closed")},
}};

std::string with_spaces(std::string_view key)
{
    std::string words(key);
    std::replace(words.begin(), words.end(), '-', ' ');
    return words;
}

}

std::vector<CardField> fields_of(const job::Step& step)
{
    Gatherer gatherer;
    std::visit([&]<class S>(const S& s) { S::fields(s, gatherer); }, step);
    return std::move(gatherer.fields);
}

void set_field(job::Step& step, const CardField& field)
{
    Setter setter{field};
    std::visit([&]<class S>(S& s) { S::fields(s, setter); }, step);
    insist(setter.is_found, "the step has that field");
}

const std::vector<StepKind>& step_kinds()
{
    static const std::vector<StepKind> kinds = [] {
        std::vector<StepKind> all;
        [&]<std::size_t... I>(std::index_sequence<I...>) {
            // by its place in the variant: finding the place by the type is dear for the compiler
            const auto add = [&]<class S>(std::type_identity<S>, job::Step blank) { all.push_back({S::name, S::title, S::needs, S::phase, S::hands, std::move(blank)}); };
            (add(std::type_identity<std::variant_alternative_t<I, job::Step>>{}, job::Step(std::in_place_index<I>)), ...);
        }(std::make_index_sequence<std::variant_size_v<job::Step>>{});
        return all;
    }();
    return kinds;
}

std::string_view title_of(const job::Step& step) { return step_kinds()[step.index()].title; }

std::string detail_of(const job::Scenario& scenario, const job::Card& card)
{
    const auto title = [&](const CardField& field) -> std::string {
        const auto look = [&](const auto& list) -> std::string {
            for (const auto& thing : list)
                if (thing.id.name == field.id) return std::string(text::say(thing.title));
            return {};
        };
        switch (field.thing) {
            case ThingKind::opening: return look(scenario.openings);
            case ThingKind::object: return look(scenario.objects);
            case ThingKind::component: return look(scenario.components);
            case ThingKind::zone: return look(scenario.zones);
            case ThingKind::sill: return look(scenario.sills);
            case ThingKind::counter: return look(scenario.counters);
            case ThingKind::supply: return look(scenario.supplies);
            case ThingKind::bag: return field.id;
            default: return {};
        }
    };
    std::string detail;
    for (const CardField& field : fields_of(card.step)) {
        const std::string part = field.type == FieldType::thing ? title(field) : field.key == "technique" ? word_label(field.words[field.word]) : std::string();
        if (!part.empty()) detail += (detail.empty() ? "" : ", ") + part;
    }
    return detail;
}

std::string field_label(std::string_view key)
{
    for (const Label& label : labels)
        if (label.key == key) return std::string(text::say(label.label));
    std::string words(text::say(with_spaces(key)));
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z') words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

std::string word_label(std::string_view word) { return std::string(text::say(with_spaces(word))); }

}
