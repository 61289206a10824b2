#include "debrief/report.hpp"

#include "core/hash.hpp"
#include "core/insist.hpp"
#include "rules/telling.hpp"
#include "rules/vocabulary.hpp"
#include "text/fingerprint_fields.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::debrief {

using text::say;
using text::to_say;
using text::say_with;

namespace {

template <class T>
std::uint64_t hash_of(const T& described)
{
    Fingerprint fingerprint;
    text::fingerprint_fields(fingerprint, described);
    return fingerprint.value();
}

bool is_cleaning(const job::LogEntry& entry)
{
    const rules::StepWords* words = rules::find_step(entry.step);
    return entry.outcome == job::Outcome::done && words != nullptr && words->phase == job::Phase::cleaning;
}

bool is_work_on_paint(const job::LogEntry& entry) { return entry.outcome == job::Outcome::done && entry.step == job::DisturbPaint::name; }

/// The site as it was left, as the last picture of a film would show it.
drill::Frame last_frame(const site::Site& site)
{
    drill::Camera camera;
    camera.end_card(site);
    return camera.take_film().frames.back();
}

/// A sheet that goes from hand to hand need not tell the folders of the machine it was made on.
std::string file_name(const std::string& path) { return path.substr(path.find_last_of('/') + 1); }

std::vector<MapShot> maps_of(const drill::Run& run, const drill::Film& film)
{
    std::vector<MapShot> maps;
    const std::optional<Time> cleaning = start_of_cleaning(run.site.log);
    if (cleaning && !film.frames.empty()) maps.push_back({std::string(to_say("Before the cleaning")), film.at(*cleaning)});
    maps.push_back({std::string(to_say("At the end")), last_frame(run.site)});
    return maps;
}

std::string reasons_said(const rules::MarkingSheet& sheet)
{
    std::string all;
    for (const text::Sentence& reason : why_not_passed(sheet)) all += (all.empty() ? "" : "; ") + reason.said();
    return all;
}

}

Report make_report(const job::Scenario& scenario, const drill::Run& run, const rules::MarkingSheet& sheet, const Outcome& outcome,
                   const drill::Film& film)
{
    Report report;
    report.scenario = scenario;
    report.plan = run.plan.title;
    report.seed = run.site.seed;
    report.inputs = {{std::string(to_say("scenario")), scenario.title, hash_of(scenario)}, {std::string(to_say("plan")), run.plan.title, hash_of(run.plan)}};
    if (!run.hashes.empty()) report.end_hash = run.hashes.back().hash;
    report.sheet = sheet;
    report.faults = fault_lines(sheet);
    report.marks = mark_lines(sheet, report.faults);
    insist(sum(report.marks) == sheet.lost, "the charges of a sheet add up to what it says is lost");
    report.steps = step_lines(run.site.log, scenario, report.faults);
    report.outcome = outcome;
    report.places = place_lines(run.site);
    for (const site::Zone& zone : run.site.zones) report.rasters.push_back(zone.raster);
    report.work_room = run.site.work_room;
    report.maps = maps_of(run, film);
    return report;
}

Report make_report(const Inputs& inputs, const Job& job)
{
    Report report = make_report(inputs.scenario, job.run, job.sheet, job.outcome, job.film);
    report.inputs.clear();
    const auto add = [&](std::string_view what, const drill::InputText& input) {
        report.inputs.push_back({std::string(what), file_name(input.name), input.hash});
    };
    add(to_say("scenario"), inputs.scenario_text);
    add(to_say("plan"), inputs.plan_text);
    add(to_say("rule book"), inputs.book_text);
    report.trace = job.trace;
    return report;
}

std::string result_line(const Report& report)
{
    const rules::MarkingSheet& sheet = report.sheet;
    if (!sheet.outside.empty()) return say_with("The rule book asks nothing here: {}.", say(sheet.outside));
    if (sheet.is_passed) return std::string(say("Passed as practice: no critical rule of the book was broken."));
    if (sheet.critical.empty()) return say_with("NOT PASSED: no critical rule was broken, but {}.", reasons_said(sheet));
    std::string rules;
    for (const std::string& id : report.sheet.critical) {
        const FaultLine* fault = find_fault(report.faults, id);
        rules += fmt::format("{}{}", rules.empty() ? "" : "; ", say(fault ? fault->rule.says : id));
        if (fault && !fault->rule.cite.empty()) rules += fmt::format(" ({})", rules::cited(fault->rule.cite));
    }
    return say_with(report.sheet.critical.size() == 1 ? to_say("NOT PASSED: critical rule broken: {}.") : to_say("NOT PASSED: critical rules broken: {}."), rules);
}

std::string score_line(const Report& report)
{
    const rules::Quarters wanted = rules::whole_points(report.sheet.wanted);
    return say_with("Wanted {} points, lost {}: {} of {} left = {}.", points_text(wanted), points_text(report.sheet.lost),
                       points_text(wanted - report.sheet.lost), points_text(wanted), percent_text(report.sheet.score));
}

std::optional<Time> start_of_cleaning(const job::RunLog& log)
{
    const auto last_work = std::find_if(log.entries.rbegin(), log.entries.rend(), is_work_on_paint);
    if (last_work == log.entries.rend()) return std::nullopt;
    const auto cleaning = std::find_if(last_work.base(), log.entries.end(), is_cleaning);
    return cleaning == log.entries.end() ? last_work->end : cleaning->start;
}

}
