#pragma once

#include "debrief/main_job.hpp"
#include "debrief/mark_line.hpp"
#include "debrief/outcome.hpp"
#include "debrief/place_line.hpp"
#include "debrief/plan_bands.hpp"
#include "debrief/step_line.hpp"
#include "debrief/what_if.hpp"
#include "drill/film.hpp"
#include "rules/marking_sheet.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace flapdoor::debrief {

/// One moment of the run whose floors are shown.
struct MapShot {
    std::string title;      ///< "Before the cleaning"
    drill::Frame frame;
};

/// Something the run was made from, told apart by its hash.
struct InputHash {
    std::string what;       ///< "scenario"
    std::string name;       ///< its title or file name
    std::uint64_t hash = 0;
};

/// Everything a debrief shows, as plain data: page, terminal and window lay it out and compute nothing more.
struct Report {
    job::Scenario scenario;
    std::string plan;                   ///< title of the work plan
    std::uint64_t seed = 1;
    std::vector<InputHash> inputs;      ///< scenario and plan as read, or the files they came from
    std::uint64_t end_hash = 0;         ///< of the site after the last card; 0 for a plan without cards

    rules::MarkingSheet sheet;
    std::vector<MarkLine> marks;        ///< their sum is exactly sheet.lost
    std::vector<FaultLine> faults;
    std::vector<StepLine> steps;

    Outcome outcome;
    std::vector<PlaceLine> places;
    Trace trace;                        ///< which card let loose what got out; empty for a run that was not traced
    std::optional<WhatIfs> what_ifs;    ///< what each mistake did, when that was worked out
    std::optional<PlanBands> bands;     ///< of the same plan over many seeds; without them every level is a single run's

    std::vector<plan::Raster> rasters;  ///< [zone]
    std::size_t work_room = 0;
    std::vector<MapShot> maps;          ///< before the cleaning, when the film shows it, and at the end
};

/// @param film  may be empty; the end is shown all the same
/// Insists that the sheet's charges add up to what it says is lost.
Report make_report(const job::Scenario& scenario, const drill::Run& run, const rules::MarkingSheet& sheet, const Outcome& outcome,
                   const drill::Film& film);

/// The same for the main job; its inputs are told by their file names and the hashes of their texts, the rule book with them.
Report make_report(const Inputs& inputs, const Job& job);

/// "NOT PASSED" with the critical rules in words, or "Passed as practice": the first line of every debrief.
std::string result_line(const Report& report);

/// "Wanted 26 points, lost 5.25: 20.75 of 26 left = 79.8 %."
std::string score_line(const Report& report);

/// Time of day at which cleaning begins after the last work on paint; the end of that work when nobody cleaned; nothing
/// when no paint was worked on.
std::optional<Time> start_of_cleaning(const job::RunLog& log);

}
