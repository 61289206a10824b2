#include "verbs.hpp"

#include "places.hpp"
#include "progress_line.hpp"

#include "debrief/main_job.hpp"
#include "debrief/page.hpp"
#include "debrief/picture.hpp"
#include "debrief/report.hpp"
#include "debrief/side_page.hpp"
#include "debrief/study.hpp"
#include "debrief/terminal.hpp"
#include "debrief/what_if_sheet.hpp"
#include "text/atomic_file.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <map>
#include <optional>

namespace flapdoor::command {

using text::say;
using text::say_with;
using text::to_say;

namespace {

/// What a run cost, card by card.
class Stopwatch {
public:
    void card_done(const site::Site& site)
    {
        const auto now = std::chrono::steady_clock::now();
        Cost& cost = by_step_[site.log.entries.back().step];
        cost.seconds += std::chrono::duration<double>(now - last_).count();
        cost.parcel_steps += site.parcel_steps - parcel_steps_;
        last_ = now;
        parcel_steps_ = site.parcel_steps;
    }

    /// The kinds of step that took longest, with their share of the parcel-steps.
    std::string text() const
    {
        std::vector<std::pair<std::string, Cost>> order(by_step_.begin(), by_step_.end());
        std::stable_sort(order.begin(), order.end(), [](const auto& a, const auto& b) { return a.second.seconds > b.second.seconds; });
        double all = 0.0;
        for (const auto& [step, cost] : order) all += cost.seconds;
        std::string lines = fmt::format("  {:.1f} million parcel-steps, {:.2f} s carrying out\n", static_cast<double>(parcel_steps_) * 1e-6, all);
        for (std::size_t i = 0; i < std::min<std::size_t>(order.size(), 6); ++i)
            lines += fmt::format("  {:<18} {:5.1f} % of the time, {:7.2f} million parcel-steps\n", order[i].first, all > 0.0 ? 100.0 * order[i].second.seconds / all : 0.0,
                                 static_cast<double>(order[i].second.parcel_steps) * 1e-6);
        return lines;
    }

private:
    struct Cost {
        double seconds = 0.0;
        std::uint64_t parcel_steps = 0;
    };
    std::map<std::string, Cost> by_step_;
    std::chrono::steady_clock::time_point last_ = std::chrono::steady_clock::now();
    std::uint64_t parcel_steps_ = 0;
};

/// Pages, pictures and run files of one job, into a folder.
Result<void> write_out(const std::string& folder, const std::string& sheet, const std::string& name, const debrief::Inputs& inputs, const debrief::Job& job,
                       const debrief::Report& report)
{
    std::error_code made;
    std::filesystem::create_directories(folder, made);
    const std::string stem = folder + "/" + file_name_from(inputs.scenario.id) + "-" + name;
    if (sheet != "trainee")
        if (auto done = text::save_atomically(stem + ".html", debrief::page(report)); !done) return done;
    if (sheet != "instructor")
        if (auto done = text::save_atomically(stem + "-trainee.html", debrief::trainee_page(report)); !done) return done;
    for (std::size_t map = 0; map < report.maps.size(); ++map) {
        const std::string moment = map + 1 < report.maps.size() ? "before-cleaning" : "end";
        if (auto done = text::save_atomically(stem + "-floor-" + moment + ".svg", debrief::picture(report, map)); !done) return done;
    }
    if (auto done = drill::save_run(debrief::run_file(inputs, job), stem + ".run"); !done) return done;
    if (sheet != "trainee") fmt::print("  {}\n", say_with("{}.html (debrief for the instructor)", stem));
    if (sheet != "instructor") fmt::print("  {}\n", say_with("{}-trainee.html (the trainee's sheet, one page)", stem));
    fmt::print("  {}\n", say_with("{0}-floor-*.svg (floor before the cleaning and at the end), {0}.run (run file)", stem));
    return {};
}

/// A small study of the plans, for the bands beside every level. @return  what it cost, a line
std::string add_bands(const std::vector<debrief::Inputs>& inputs, const RunChoice& choice, std::vector<debrief::Report>& reports)
{
    if (choice.bands == 0) return {};
    const auto begun = std::chrono::steady_clock::now();
    ProgressLine line(to_say("Bands: {} of {} runs, about {} left"));
    debrief::StudyOrder order;
    for (std::uint64_t seed = 1; seed <= choice.bands; ++seed) order.seeds.push_back(seed);
    order.threads = choice.threads > 0 ? choice.threads : usual_threads();
    order.after_run = [&](const debrief::Study& so_far, std::size_t todo) { line.show(so_far.rows.size(), todo); };
    const debrief::Study study = debrief::carry_on(inputs, debrief::begin_study(inputs, FLAPDOOR_VERSION), order);
    line.end();
    for (std::size_t plan = 0; plan < reports.size(); ++plan) reports[plan].bands = debrief::bands_of(study, plan);
    return fmt::format("Bands: {} light runs in {:.2f} s, {} at a time\n", study.rows.size(), std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count(), order.threads);
}

/// What each mistake of each plan did. @return  what it cost, a line each
std::string add_what_ifs(const std::vector<debrief::Inputs>& inputs, const std::optional<debrief::Inputs>& reference, const RunChoice& choice, std::vector<debrief::Report>& reports)
{
    std::string work;
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        const auto begun = std::chrono::steady_clock::now();
        ProgressLine line(to_say("What if: {} of {} rounds, about {} left"));
        debrief::WhatIfOrder order;
        order.threads = choice.threads > 0 ? choice.threads : usual_threads();
        for (std::uint64_t seed = 1; order.seeds.size() < choice.what_if_runs; ++seed)
            if (seed != choice.seed) order.seeds.push_back(seed);
        order.progress = [&](std::size_t done, std::size_t of) { line.show(done, of - done); };
        const bool is_other = reference && reference->plan_text.hash != inputs[i].plan_text.hash;
        reports[i].what_ifs = debrief::what_ifs(inputs[i], is_other ? &reference->plan : nullptr, choice.seed, order);
        line.end();
        const debrief::WhatIfs& found = *reports[i].what_ifs;
        work += fmt::format("What if, {}: {} changed plans at full detail, {:.1f} million parcel-steps made of {:.1f} million in the run itself; {} light pairs each; {:.2f} s, {} at a time\n", inputs[i].plan.title,
                            found.list.size(), static_cast<double>(found.parcel_steps) * 1e-6, static_cast<double>(found.base_parcel_steps) * 1e-6, found.seeds.size(),
                            std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count(), order.threads);
    }
    return work;
}

}

int run(const RunChoice& choice)
{
    const auto read = read_plans(choice.scenario, choice.plans, choice.books);
    if (!read) {
        tell(read.error());
        return bad_file;
    }
    const std::vector<debrief::Inputs>& inputs = *read;
    std::optional<debrief::Inputs> reference;
    if (choice.asks_what_if) {
        auto found = read_reference(choice.scenario, choice.reference, choice.books);
        if (!found) {
            tell(found.error());
            return bad_file;
        }
        reference = std::move(*found);
    }
    std::vector<debrief::Job> jobs;
    std::vector<debrief::Report> reports;
    std::string work;
    for (const debrief::Inputs& input : inputs) {
        Stopwatch watch;
        jobs.push_back(debrief::carry_through(input, choice.seed, !choice.out.empty(), std::max(1U, choice.threads), [&](const site::Site& site) { watch.card_done(site); }));
        const debrief::Job& job = jobs.back();
        work += fmt::format("{}: run hash {:016x}\n{}", input.plan.title, job.run.hashes.empty() ? 0 : job.run.hashes.back().hash, watch.text());
        reports.push_back(debrief::make_report(input, job));
    }
    work += add_bands(inputs, choice, reports);
    if (choice.asks_what_if) work += add_what_ifs(inputs, reference, choice, reports);
    const std::size_t width = terminal_width(choice.width);
    if (reports.size() == 2) fmt::print("{}\n", debrief::side_by_side(reports[0], reports[1], width));
    else
        for (const debrief::Report& report : reports) fmt::print("{}\n", debrief::sheet_text(report, width));
    for (const debrief::Report& report : reports) {
        if (!report.what_ifs) continue;
        if (reports.size() > 1) fmt::print("\n{}\n", report.plan);
        fmt::print("{}", debrief::what_if_sheet(report, width));
    }
    if (choice.shows_work) fmt::print("{}", work);
    if (choice.out.empty()) return fine;
    fmt::print("{}\n", say("Written:"));
    for (std::size_t i = 0; i < jobs.size(); ++i) {
        const std::string name = std::filesystem::path(choice.plans[i]).stem().string();
        if (const auto done = write_out(choice.out, choice.sheet, name, inputs[i], jobs[i], reports[i]); !done) {
            tell(done.error());
            return bad_file;
        }
    }
    if (jobs.size() == 2) {
        const std::string path = choice.out + "/" + file_name_from(inputs.front().scenario.id) + "-side-by-side.html";
        if (const auto done = text::save_atomically(path, debrief::side_page(reports[0], jobs[0].film, reports[1], jobs[1].film)); !done) {
            tell(done.error());
            return bad_file;
        }
        fmt::print("  {} (both on one time line)\n", path);
    }
    return fine;
}

}
