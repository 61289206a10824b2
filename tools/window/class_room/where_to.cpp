#include "window/class_room/class_question.hpp"

#include "text/language.hpp"
#include "text/show.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

using text::sentence;
using text::to_say;

constexpr Time least_wait = 10.0_min;
constexpr double least_told = 1.0;      // ug: less than this is told as nothing
constexpr double least_share = 0.2;     // of the most that any zone gained
constexpr std::size_t most_zones = 5;

struct Gain {
    std::size_t zone = 0;
    double micrograms = 0.0;
};

}

double lead_in_zone(const Story& story, const drill::Frame& frame, std::size_t zone)
{
    const plan::Raster& raster = story.film.rasters[zone];
    const double square_feet = raster.cell_area().si / (meters_per_foot * meters_per_foot);
    double sum = 0.0;
    for (const float loading : frame.lead[zone]) sum += static_cast<double>(loading) * square_feet;
    return sum + frame.air_lead[zone] * (raster.rect().area() * story.film.zones[zone].ceiling).si;
}

ClassQuestion where_will_it_go(const Story& played, Time now)
{
    const debrief::StepLine& step = played.report.steps[played.card_at(now)];
    const Time until = std::min(std::max(step.end, now + least_wait), played.end);
    const drill::Frame& before = played.film.at(now);
    const drill::Frame& after = played.film.at(until);
    std::vector<Gain> gains;
    for (std::size_t z = 0; z < played.film.zones.size(); ++z)
        if (z != played.film.work_room) gains.push_back({z, lead_in_zone(played, after, z) - lead_in_zone(played, before, z)});
    double most = 0.0;
    for (const Gain& gain : gains) most = std::max(most, gain.micrograms);
    const bool stays = most < least_told;
    const auto is_right = [&](const Gain& gain) { return !stays && gain.micrograms >= least_told && gain.micrograms >= least_share * most; };
    // Of many zones those that matter, the others in the order of the scenario.
    std::vector<Gain> offered = gains;
    std::stable_sort(offered.begin(), offered.end(), [&](const Gain& a, const Gain& b) { return is_right(a) > is_right(b); });
    offered.resize(std::min(offered.size(), most_zones));
    std::stable_sort(offered.begin(), offered.end(), [](const Gain& a, const Gain& b) { return a.zone < b.zone; });

    ClassQuestion question;
    question.text = sentence("Where will dust go by {}?", text::show_clock(until));
    question.asked_at = now;
    question.answers.push_back({"stays", to_say("It stays in the work room"),
                                stays ? to_say("In this run no other room gained as much as 1 \xC2\xB5g of lead.") : to_say("In this run lead got out of the room."), stays, 0});
    for (const Gain& gain : offered) {
        const text::Sentence reason = gain.micrograms >= least_told ? sentence("{} \xC2\xB5g of lead more than at the freeze, in this run.", text::show_number(gain.micrograms, 2))
                                                                    : text::Sentence(to_say("Less than 1 \xC2\xB5g more, in this run."));
        question.answers.push_back({played.film.zones[gain.zone].id.name, played.film.zones[gain.zone].title, reason, is_right(gain), 0});
    }
    return question;
}

}
