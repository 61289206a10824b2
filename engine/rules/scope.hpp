#pragma once

#include "core/quantity.hpp"
#include "job/scenario.hpp"

#include <string>
#include <vector>

/// Does the renovation rule apply at all? Areas are compared as whole hundredths of a square foot.
namespace flapdoor::rules {

/// One piece of interior work in one room.
struct RoomWork {
    std::string room;
    Area disturbed;     ///< painted surface; the whole area of a component that is removed
    int day = 0;        ///< any day count; work in one room within the same 30 days is one job
};

struct JobScope {
    int built = 0;                                  ///< year
    job::HousingKind housing = job::HousingKind::dwelling;
    bool is_paid = true;
    bool is_for_elderly_without_child = false;      ///< or for persons with disabilities, no child under six there
    bool has_bedroom = true;
    std::vector<RoomWork> interior;
    Area exterior{};
    bool replaces_window = false;
    bool demolishes_painted_area = false;
    bool uses_barred_practice = false;              ///< flame, machine without HEPA attachment, heat gun at 1,100 F or more
    bool is_shown_free_of_lead = false;             ///< see exempts()
    bool is_assisted_housing = false;               ///< federally assisted: 24 CFR 35 besides
};

enum class Scope {
    outside,            ///< housing, year or payment put it outside, or the paint was shown to be free of lead
    minor,              ///< minor repair and maintenance: outside the rule
    covered
};

/// 40 CFR 745.82, 745.83: housing of before 1978; up to 6 sq ft a room (20 sq ft outside) without a barred practice, window
/// replacement or demolition is minor.
Scope scope_of(const JobScope& job);

/// The job of a scenario: its house, and each painted part that is worked on in its room, all at once. What only a plan
/// shows (windows taken out, practices) is left as if it were not done.
JobScope job_scope(const job::Scenario& scenario);

/// Assisted housing asks for safe work practices beyond 2 sq ft a room, 20 sq ft outside. Source: 24 CFR 35.1350(d).
bool asks_for_safe_practices(const JobScope& job);

enum class Tester { inspector, risk_assessor, certified_renovator, trained_worker };

/// One affected component's result.
struct PaintTest {
    Tester by = Tester::certified_renovator;
    bool is_recognized = true;      ///< a recognized kit or laboratory; a written report of an inspector or risk assessor
    double milligrams_per_square_centimeter = 0.0;
    double percent_by_weight = 0.0;
};

/// 1.0 mg/cm2 or 0.5 % by weight, the limit itself included. Source: 40 CFR 745.82(a).
bool is_lead_paint(const PaintTest& test);

/// Every affected component tested by somebody whose test counts, and none holds lead paint; false without a test.
bool exempts(const std::vector<PaintTest>& tests);

/// Visits of one child, in hours, a row of seven days (Sunday first) a week.
struct ChildVisits {
    int age = 0;
    std::vector<std::vector<double>> weeks;
};

/// A child under six, on two days of one week at least 3 h each, 6 h in that week, 60 h in the year. Source: 40 CFR 745.83.
bool is_child_occupied(const ChildVisits& visits);

}
