#include "window/room/card_form.hpp"

#include "drill/run.hpp"
#include "job/card_words.hpp"
#include "text/language.hpp"
#include "text/show.hpp"
#include "text/unit_sizes.hpp"
#include "window/run/phrases.hpp"
#include "window/widgets/chips.hpp"
#include "window/widgets/field.hpp"
#include "window/widgets/slider.hpp"
#include "window/widgets/toggle.hpp"
#include "window/widgets/words.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace flapdoor::window {

namespace {

using text::say;


/// Rising steps: each entry says how far apart values lie from there on.
struct Pace {
    double from, step;
};

std::vector<double> paced(double least, double most, std::span<const Pace> paces)
{
    std::vector<double> values{least};
    for (int i = 0; i < 400 && values.back() < most - 1e-9; ++i) {
        double step = paces.front().step;
        for (const Pace& pace : paces)
            if (values.back() >= pace.from - 1e-9) step = pace.step;
        // on the grid of the step, so that round values come up whatever the least one is
        values.push_back(std::min(most, (std::floor(values.back() / step + 1e-6) + 1.0) * step));
    }
    return values;
}

constexpr std::array<Pace, 4> lengths{{{0.0, text::inch}, {1.0 * text::foot, 3.0 * text::inch}, {4.0 * text::foot, 6.0 * text::inch}, {16.0 * text::foot, 1.0 * text::foot}}};
constexpr std::array<Pace, 5> times{{{0.0, 60.0}, {300.0, 300.0}, {3600.0, 900.0}, {14400.0, 3600.0}, {86400.0, 14400.0}}};
constexpr std::array<Pace, 4> wholes{{{0.0, 1.0}, {30.0, 5.0}, {60.0, 30.0}, {365.0, 365.0}}};

std::vector<double> evenly(double least, double most, int count)
{
    std::vector<double> values;
    for (int i = 0; i <= count; ++i) values.push_back(least + (most - least) * i / count);
    return values;
}

std::string shown(const CardField& field, double value)
{
    switch (field.type) {
        case FieldType::length: return text::show(Length{value});
        case FieldType::time: return text::show(Time{value});
        case FieldType::temperature: return text::show(Temperature{value});
        case FieldType::number: return field.most <= 1.0 ? text::show_percent(value) : text::show_number(value, 2);
        default: return text::show_number(value, 4);
    }
}

bool value_slider(Ui& ui, CardField& field)
{
    const std::vector<double> steps = steps_of(field);
    const auto nearest = std::min_element(steps.begin(), steps.end(), [&](double a, double b) { return std::abs(a - field.value) < std::abs(b - field.value); });
    double place = static_cast<double>(nearest - steps.begin());
    const auto value_at = [&](double at) { return steps[static_cast<std::size_t>(std::clamp(at + 0.5, 0.0, static_cast<double>(steps.size() - 1)))]; };
    if (!slider(ui, "field/" + std::string(field.key), job::field_label(field.key), place,
                {.least = 0.0, .most = static_cast<double>(steps.size() - 1), .step = 1.0, .show = [&](double at) { return shown(field, value_at(at)); }}))
        return false;
    field.value = value_at(place);
    return true;
}

/// Things of which one or several are chosen; those with which it cannot be done now say why.
bool thing_chips(Ui& ui, CardField& field, const std::vector<Candidate>& choices)
{
    std::vector<Option> options;
    for (const Candidate& choice : choices)
        options.push_back({.name = choice.id, .label = std::string(say(choice.title)), .hint = choice.why_not ? choice.why_not->said() : std::string(), .is_enabled = field.type == FieldType::things || !choice.why_not || choice.id == field.id});
    if (options.empty()) return aside(ui, say("There is nothing here to choose.")), false;
    const std::string name = "field/" + std::string(field.key);
    if (field.type == FieldType::things) {
        std::vector<bool> chosen;
        for (const Candidate& choice : choices) chosen.push_back(std::find(field.ids.begin(), field.ids.end(), choice.id) != field.ids.end());
        if (!choose_chips(ui, name, options, chosen)) return false;
        field.ids.clear();
        for (std::size_t i = 0; i < choices.size(); ++i)
            if (chosen[i]) field.ids.push_back(choices[i].id);
        return true;
    }
    std::optional<std::size_t> chosen;
    for (std::size_t i = 0; i < choices.size(); ++i)
        if (choices[i].id == field.id) chosen = i;
    if (!choose_chip(ui, name, options, chosen) || !chosen) return false;
    field.id = choices[*chosen].id;
    return true;
}

bool word_chips(Ui& ui, CardField& field)
{
    std::vector<Option> options;
    for (const std::string_view word : field.words) options.push_back({.name = std::string(word), .label = job::word_label(word)});
    std::optional<std::size_t> chosen = field.word;
    if (!choose_chip(ui, "field/" + std::string(field.key), options, chosen)) return false;
    field.word = chosen.value_or(field.word);
    return true;
}

void label_of(Ui& ui, const CardField& field)
{
    words(ui, job::field_label(field.key));
    if (!field.about.empty()) {
        ui.gap(-4.0F);
        aside(ui, say(field.about));
    }
}

bool field_widget(Ui& ui, CardField& field, const Draft& draft)
{
    const std::string name = "field/" + std::string(field.key);
    switch (field.type) {
        case FieldType::flag: {
            bool is_on = field.value != 0.0;
            const bool has_changed = toggle(ui, name, job::field_label(field.key), is_on, {.hint = say(field.about)});
            field.value = is_on ? 1.0 : 0.0;
            return has_changed;
        }
        case FieldType::word:
            label_of(ui, field);
            return word_chips(ui, field);
        case FieldType::thing:
        case FieldType::things:
            label_of(ui, field);
            return thing_chips(ui, field, draft.choices.at(std::string(field.key)));
        case FieldType::text:
            return text_field(ui, name, job::field_label(field.key), field.id);
        default: {
            const bool has_changed = value_slider(ui, field);
            if (!field.about.empty()) aside(ui, say(field.about));
            return has_changed;
        }
    }
}

bool team_chips(Ui& ui, const job::Scenario& scenario, std::vector<job::PersonId>& by)
{
    words(ui, say("Who does it"));
    std::vector<Option> options;
    std::vector<bool> chosen;
    for (const job::Person& person : scenario.crew) {
        options.push_back({.name = person.id.name, .label = std::string(say(person.title))});
        chosen.push_back(std::find(by.begin(), by.end(), person.id) != by.end());
    }
    if (!choose_chips(ui, "team", options, chosen)) return false;
    by.clear();
    for (std::size_t i = 0; i < chosen.size(); ++i)
        if (chosen[i]) by.push_back(scenario.crew[i].id);
    return true;
}

}

std::vector<double> steps_of(const CardField& field)
{
    std::vector<double> values;
    switch (field.type) {
        case FieldType::length: values = paced(field.least, field.most, lengths); break;
        case FieldType::time: values = paced(field.least, field.most, times); break;
        case FieldType::temperature: values = evenly(field.least, field.most, 54); break; // 50 F apart up to 2700 F
        case FieldType::whole: values = paced(field.least, field.most, wholes); break;
        default: values = field.most <= 1.0 ? evenly(field.least, field.most, 100) : paced(field.least, field.most, std::array<Pace, 3>{{{0.0, 0.05}, {0.5, 0.25}, {5.0, 1.0}}});
    }
    const auto at = std::lower_bound(values.begin(), values.end(), field.value);
    if (at == values.end() || std::abs(*at - field.value) > 1e-9) values.insert(at, field.value);
    return values;
}

Draft drafted(const site::Site& site, job::Card card)
{
    Draft draft{std::move(card), {}, {}, {}};
    draft.fields = fields_of(draft.card.step);
    for (const CardField& field : draft.fields)
        if (field.type == FieldType::thing || field.type == FieldType::things) draft.choices[std::string(field.key)] = candidates(site, draft.card, field);
    if (draft.card.by.empty()) draft.why_not = text::sentence("Choose who does it.");
    else if (const CardField* field = unchosen(draft.fields)) draft.why_not = text::sentence("Still to choose: {}.", text::Sentence(job::field_label(field->key)));
    else draft.why_not = drill::why_not(site, draft.card);
    return draft;
}

bool card_form(Ui& ui, const job::Scenario& scenario, Draft& draft)
{
    bool has_changed = team_chips(ui, scenario, draft.card.by);
    for (CardField& field : draft.fields) {
        ui.gap(6.0F);
        if (!field_widget(ui, field, draft)) continue;
        set_field(draft.card.step, field);
        has_changed = true;
    }
    return has_changed;
}

}
