#include "window/room/card_fields.hpp"

#include "core/insist.hpp"
#include "job/card_words.hpp"
#include "text/field_types.hpp"
#include "text/language.hpp"

#include <algorithm>
#include <array>
#include <type_traits>

namespace flapdoor::window {

namespace {


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
        const std::string part = field.type == FieldType::thing ? title(field) : field.key == "technique" ? job::word_label(field.words[field.word]) : std::string();
        if (!part.empty()) detail += (detail.empty() ? "" : ", ") + part;
    }
    return detail;
}

}
