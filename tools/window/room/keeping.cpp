#include "window/room/keeping.hpp"

#include "core/insist.hpp"
#include "text/writing.hpp"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include <algorithm>
#include <ctime>

namespace flapdoor::window {

namespace fs = std::filesystem;

namespace {

std::string file_name_from(std::string id)
{
    for (char& c : id)
        if (c == '/') c = '-';
    return id;
}

std::string state_of(const drill::Attempt& attempt) { return attempt.hashes().empty() ? std::string() : fmt::format("{:016x}", attempt.hashes().back().hash); }

}

fs::path unfinished_file(const Places& places, const std::string& drill) { return places.own / "unfinished" / (file_name_from(drill) + ".toml"); }

std::vector<LeftDrill> left_drills(const Places& places)
{
    std::vector<std::pair<fs::file_time_type, fs::path>> files;
    std::error_code unreadable;
    for (const fs::directory_entry& entry : fs::directory_iterator(places.own / "unfinished", unreadable))
        if (entry.path().extension() == ".toml") files.emplace_back(entry.last_write_time(unreadable), entry.path());
    std::sort(files.rbegin(), files.rend());
    std::vector<LeftDrill> left;
    for (const auto& [time, file] : files) left.push_back({file, drill::load_unfinished(file.string())});
    return left;
}

drill::Unfinished as_it_stands(const Sitting& sitting, const drill::Attempt& attempt)
{
    drill::Unfinished kept;
    kept.drill = sitting.drill->id;
    kept.who = sitting.who;
    kept.manner = sitting.mode == Mode::marked ? drill::Manner::marked : drill::Manner::practice;
    kept.seed = std::to_string(sitting.seed);
    kept.state = state_of(attempt);
    kept.scenario = text::write_toml(attempt.site().scenario);
    kept.plan = text::write_toml(attempt.plan("in progress"));
    return kept;
}

debrief::Inputs inputs_of(const debrief::Inputs& drill, const job::Scenario& taken, job::WorkPlan plan)
{
    debrief::Inputs inputs{taken, std::move(plan), drill.book, {}, {}, drill.book_text};
    inputs.scenario_text = drill::input_text(drill.scenario_text.name, text::write_toml(inputs.scenario));
    inputs.plan_text = drill::input_text("played.toml", text::write_toml(inputs.plan));
    return inputs;
}

debrief::Job as_job(const debrief::Inputs& inputs, const drill::Attempt& attempt, const std::string& title)
{
    drill::Run run = attempt.run(title);
    rules::MarkingSheet sheet = rules::marking_sheet(inputs.book, inputs.scenario, run.site.log);
    debrief::Outcome outcome = debrief::outcome(run);
    return {std::move(run), std::move(sheet), std::move(outcome), attempt.film(), {}};
}

Result<fs::path> keep_run(const Places& places, const debrief::Inputs& inputs, const debrief::Job& job)
{
    const std::string stamp = fmt::format("{:%Y%m%d-%H%M%S}", fmt::localtime(std::time(nullptr)));
    const fs::path folder = places.own / "runs";
    std::error_code told_by_the_save;
    fs::create_directories(folder, told_by_the_save);
    const fs::path file = folder / fmt::format("{}-{}.run", file_name_from(inputs.scenario.id), stamp);
    const Result<void> saved = drill::save_run(debrief::run_file(inputs, job), file.string());
    if (!saved) return failed(saved.error());
    return file;
}

}
