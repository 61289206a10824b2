#include "verbs.hpp"

#include "places.hpp"

#include "debrief/main_job.hpp"
#include "debrief/page.hpp"
#include "debrief/picture.hpp"
#include "debrief/report.hpp"
#include "debrief/terminal.hpp"
#include "text/atomic_file.hpp"

#include <fmt/format.h>
#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <filesystem>
#include <map>

namespace flapdoor::command {

namespace {

std::size_t terminal_width(int asked)
{
    if (asked > 0) return static_cast<std::size_t>(asked);
    winsize size{};
    if (isatty(STDOUT_FILENO) != 0 && ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col >= 60) return size.ws_col;
    return 110;
}

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
Result<void> write_out(const std::string& folder, const std::string& name, const debrief::Inputs& inputs, const debrief::Job& job, const debrief::Report& report)
{
    std::error_code made;
    std::filesystem::create_directories(folder, made);
    const std::string stem = folder + "/" + inputs.scenario.id + "-" + name;
    if (auto done = text::save_atomically(stem + ".html", debrief::page(report)); !done) return done;
    for (std::size_t map = 0; map < report.maps.size(); ++map) {
        const std::string moment = map + 1 < report.maps.size() ? "before-cleaning" : "end";
        if (auto done = text::save_atomically(stem + "-floor-" + moment + ".svg", debrief::picture(report, map)); !done) return done;
    }
    if (auto done = drill::save_run(debrief::run_file(inputs, job), stem + ".run"); !done) return done;
    fmt::print("  {0}.html (debrief page), {0}-floor-*.svg (floor before the cleaning and at the end), {0}.run (run file)\n", stem);
    return {};
}

}

int run(const RunChoice& choice)
{
    const std::string scenario = scenario_path(choice.scenario);
    std::vector<debrief::Inputs> inputs;
    for (const std::string& plan : choice.plans) {
        Result<debrief::Inputs> read = debrief::read_inputs(scenario, plan_path(plan, scenario), book_path(choice.book));
        if (!read) {
            tell(read.error());
            return bad_file;
        }
        inputs.push_back(std::move(*read));
    }
    std::vector<debrief::Job> jobs;
    std::vector<debrief::Report> reports;
    std::string work;
    for (const debrief::Inputs& input : inputs) {
        Stopwatch watch;
        jobs.push_back(debrief::carry_through(input, choice.seed, !choice.out.empty(), choice.threads, [&](const site::Site& site) { watch.card_done(site); }));
        const debrief::Job& job = jobs.back();
        work += fmt::format("{}: run hash {:016x}\n{}", input.plan.title, job.run.hashes.empty() ? 0 : job.run.hashes.back().hash, watch.text());
        reports.push_back(debrief::make_report(input, job));
    }
    const std::size_t width = terminal_width(choice.width);
    if (reports.size() == 2) fmt::print("{}\n", debrief::side_by_side(reports[0], reports[1], width));
    else
        for (const debrief::Report& report : reports) fmt::print("{}\n", debrief::sheet_text(report, width));
    if (choice.shows_work) fmt::print("{}", work);
    if (choice.out.empty()) return fine;
    fmt::print("Written:\n");
    for (std::size_t i = 0; i < jobs.size(); ++i) {
        const std::string name = std::filesystem::path(choice.plans[i]).stem().string();
        if (const auto done = write_out(choice.out, name, inputs[i], jobs[i], reports[i]); !done) {
            tell(done.error());
            return bad_file;
        }
    }
    return fine;
}

}
