#include "window/run/story.hpp"

#include "core/insist.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace flapdoor::window {

namespace {

constexpr double real_step = 0.05; // m; below this nobody turns

/// What the scenario calls a thing; empty when it knows no such id.
std::string title_in(const job::Scenario& scenario, const std::string& id)
{
    const auto look = [&](const auto& list) -> std::string {
        for (const auto& thing : list)
            if (thing.id.name == id) return thing.title;
        return {};
    };
    for (const std::string& title : {look(scenario.components), look(scenario.openings), look(scenario.objects), look(scenario.sills),
                                     look(scenario.counters), look(scenario.zones)})
        if (!title.empty()) return title;
    return {};
}

/// "bag 1" of the bag that plans call `bag-1`; other names as they are.
text::Sentence bag_words(const std::string& id)
{
    constexpr std::string_view numbered = "bag-";
    const bool is_numbered = id.starts_with(numbered) && id.size() > numbered.size() && id.find_first_not_of("0123456789", numbered.size()) == std::string::npos;
    return is_numbered ? text::sentence("bag {}", id.substr(numbered.size())) : text::Sentence(id);
}

text::Sentence detail_of(const job::LogEntry& entry, const job::Scenario& scenario)
{
    text::Sentence detail;
    const auto add = [&](text::Sentence part) { detail = detail.empty() ? std::move(part) : text::Sentence("{}, {}", {std::move(detail), std::move(part)}); };
    for (const job::Parameter& parameter : entry.with) {
        if (parameter.name == "bag") add(bag_words(parameter.value));
        else if (parameter.name == "technique") {
            std::string words = parameter.value;
            std::replace(words.begin(), words.end(), '-', ' ');
            add(words);
        }
        else if (const std::string title = title_in(scenario, parameter.value); !title.empty()) add(title);
    }
    return detail;
}

CardWords words_of(const job::LogEntry& entry, const job::Scenario& scenario)
{
    CardWords words{detail_of(entry, scenario), {}};
    for (const job::PersonId& id : entry.by) {
        const job::Person* person = find_by_id(scenario.crew, id);
        words.crew += (words.crew.empty() ? "" : ", ") + short_name(person ? person->title : id.name);
    }
    return words;
}

/// The card at which a fault is shown: where it was seen, not the one that should have come before.
int card_of(const rules::Fault& fault, const job::RunLog& log)
{
    int best = -1;
    for (const int entry : {fault.first, fault.second}) {
        if (entry < 0) continue;
        const job::LogEntry& card = log.entries.at(static_cast<std::size_t>(entry));
        if (card.start <= fault.at && fault.at <= card.end) best = std::max(best, entry);
    }
    return best >= 0 ? best : std::max(fault.first, fault.second);
}

std::vector<Happening> happenings_of(const debrief::Report& report, const job::RunLog& log)
{
    std::vector<Happening> happenings;
    for (std::size_t i = 0; i < report.faults.size(); ++i)
        for (const rules::Fault& fault : report.faults[i].rule.faults)
            happenings.push_back({fault.at, i, card_of(fault, log), fault.what});
    std::stable_sort(happenings.begin(), happenings.end(),
                     [](const Happening& a, const Happening& b) { return std::tuple(a.at.si, a.fault) < std::tuple(b.at.si, b.fault); });
    return happenings;
}

/// People look the way they go, and keep looking that way while they stand.
std::vector<std::vector<double>> facings_of(const drill::Film& film)
{
    std::vector<std::vector<double>> facing(film.frames.size());
    std::vector<double> now(film.frames.front().people.size(), 3.14159265);
    for (std::size_t f = 0; f < film.frames.size(); ++f) {
        const auto& people = film.frames[f].people;
        for (std::size_t p = 0; f + 1 < film.frames.size() && p < people.size(); ++p) {
            const plan::Point next = film.frames[f + 1].people[p].at;
            const double east = (next.x - people[p].at.x).si;
            const double north = (next.y - people[p].at.y).si;
            if (std::hypot(east, north) > real_step) now[p] = std::atan2(north, east);
        }
        facing[f] = now;
    }
    return facing;
}

}

std::string short_name(const std::string& title) { return title.substr(0, title.find(',')); }

std::size_t Story::card_at(Time time) const
{
    std::size_t card = 0;
    for (std::size_t i = 0; i < log.entries.size(); ++i)
        if (log.entries[i].start <= time) card = i;
    return card;
}

std::size_t Story::happened_by(Time time) const
{
    const auto after = std::upper_bound(happenings.begin(), happenings.end(), time, [](Time t, const Happening& h) { return t < h.at; });
    return static_cast<std::size_t>(after - happenings.begin());
}

std::size_t Story::broken_by(Time time) const
{
    std::vector<bool> is_broken(report.faults.size(), false);
    const std::size_t count = happened_by(time);
    for (std::size_t i = 0; i < count; ++i) is_broken[happenings[i].fault] = true;
    return static_cast<std::size_t>(std::count(is_broken.begin(), is_broken.end(), true));
}

Time Story::first_time(std::size_t fault) const
{
    for (const Happening& happening : happenings)
        if (happening.fault == fault) return happening.at;
    return end;
}

Story tell(debrief::Inputs inputs, debrief::Job job)
{
    insist(!job.film.frames.empty(), "a story is told from a film");
    Story story;
    story.report = debrief::make_report(inputs.scenario, job.run, job.sheet, job.outcome, job.film);
    story.log = job.run.site.log;
    story.film = std::move(job.film);
    story.start = inputs.scenario.start;
    story.end = story.film.frames.back().at;
    story.inputs = std::move(inputs);
    refresh(story);
    return story;
}

void refresh(Story& story)
{
    story.report.steps = debrief::step_lines(story.log, story.inputs.scenario, story.report.faults);
    story.happenings = happenings_of(story.report, story.log);
    story.facing = facings_of(story.film);
    story.words.clear();
    for (const job::LogEntry& entry : story.log.entries) story.words.push_back(words_of(entry, story.inputs.scenario));
}

}
