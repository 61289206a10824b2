#include "rules/scope.hpp"

#include "plan/sections.hpp"

#include <algorithm>
#include <numeric>

namespace flapdoor::rules {
namespace {

constexpr int days_of_one_job = 30;

/// Most hundredths of a square foot disturbed in one room within any 30 days.
std::int64_t most_in_a_room(const JobScope& job)
{
    std::int64_t most = 0;
    for (const RoomWork& first : job.interior) {
        std::int64_t sum = 0;
        for (const RoomWork& work : job.interior)
            if (work.room == first.room && work.day >= first.day && work.day - first.day < days_of_one_job) sum += plan::hundredths_of_square_foot(work.disturbed);
        most = std::max(most, sum);
    }
    return most;
}

bool is_small(const JobScope& job, std::int64_t inside_hundredths)
{
    return most_in_a_room(job) <= inside_hundredths && plan::hundredths_of_square_foot(job.exterior) <= 2000;
}

bool is_target(const JobScope& job)
{
    if (job.built >= 1978 || job.housing == job::HousingKind::other) return false;
    if (job.housing == job::HousingKind::child_occupied_facility) return true;
    return !job.is_for_elderly_without_child && job.has_bedroom;
}

}

Scope scope_of(const JobScope& job)
{
    if (!is_target(job) || !job.is_paid || job.is_shown_free_of_lead) return Scope::outside;
    const bool is_minor = is_small(job, 600) && !job.replaces_window && !job.demolishes_painted_area && !job.uses_barred_practice;
    return is_minor ? Scope::minor : Scope::covered;
}

JobScope job_scope(const job::Scenario& scenario)
{
    JobScope job;
    job.built = scenario.building.built;
    job.housing = scenario.building.housing;
    for (const job::Component& component : scenario.components) job.interior.push_back({component.zone.name, component.area, 0});
    return job;
}

bool asks_for_safe_practices(const JobScope& job)
{
    return job.is_assisted_housing && is_target(job) && !job.is_shown_free_of_lead && !is_small(job, 200);
}

bool is_lead_paint(const PaintTest& test) { return test.milligrams_per_square_centimeter >= 1.0 || test.percent_by_weight >= 0.5; }

bool exempts(const std::vector<PaintTest>& tests)
{
    return !tests.empty() && std::all_of(tests.begin(), tests.end(), [](const PaintTest& test) {
        return test.by != Tester::trained_worker && test.is_recognized && !is_lead_paint(test);
    });
}

bool is_child_occupied(const ChildVisits& visits)
{
    if (visits.age >= 6) return false;
    double year = 0.0;
    bool has_full_week = false;
    for (const std::vector<double>& week : visits.weeks) {
        const double hours = std::accumulate(week.begin(), week.end(), 0.0);
        const auto long_days = std::count_if(week.begin(), week.end(), [](double h) { return h >= 3.0; });
        has_full_week = has_full_week || (long_days >= 2 && hours >= 6.0);
        year += hours;
    }
    return has_full_week && year >= 60.0;
}

}
