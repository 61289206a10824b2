#include "debrief/main_job.hpp"

#include "job/files.hpp"
#include "rules/layers.hpp"
#include "text/field_types.hpp"
#include "text/input_file.hpp"
#include "text/writing.hpp"

#include <algorithm>
#include <filesystem>

namespace flapdoor::debrief {

namespace {

/// Several books laid on one another are kept as one text, written anew.
drill::InputText kept_book(const rules::RuleBook& book, std::vector<drill::InputText> texts)
{
    if (texts.size() == 1) return std::move(texts.front());
    std::string name;
    for (const drill::InputText& text : texts) name += (name.empty() ? "" : "+") + std::filesystem::path(text.name).stem().string();
    return drill::input_text(name + ".toml", text::write_toml(book));
}

Result<Inputs> parse_inputs(drill::InputText scenario_text, drill::InputText plan_text, std::vector<drill::InputText> book_texts)
{
    Problems problems;
    const auto keep = [&](const auto& result) {
        if (!result) problems.insert(problems.end(), result.error().begin(), result.error().end());
    };
    Result<job::Scenario> scenario = job::read_scenario(scenario_text.text, scenario_text.name);
    std::vector<rules::BookText> layers;
    for (const drill::InputText& text : book_texts) layers.push_back({text.name, text.text});
    Result<rules::RuleBook> book = rules::read_layers(layers);
    keep(scenario);
    keep(book);
    if (!scenario) return failed(std::move(problems));   // a plan cannot be checked against a scenario that does not read
    Result<job::WorkPlan> plan = job::read_plan(plan_text.text, plan_text.name, *scenario);
    keep(plan);
    if (!problems.empty()) return failed(std::move(problems));
    drill::InputText book_text = kept_book(*book, std::move(book_texts));
    return Inputs{std::move(*scenario), std::move(*plan), std::move(*book), std::move(scenario_text), std::move(plan_text), std::move(book_text)};
}

/// Marks as one exact line: wanted points and lost quarters, then what was broken.
std::string claim_of(const rules::MarkingSheet& sheet)
{
    std::string claim = std::to_string(sheet.wanted) + " wanted, " + std::to_string(sheet.lost.count) + " quarters lost";
    for (const auto* list : {&sheet.broken, &sheet.lines})
        for (const rules::SheetRule& rule : *list) claim += ", " + rule.rule;
    return claim;
}

}

Result<Inputs> read_inputs(const std::string& scenario_path, const std::string& plan_path, const std::vector<std::string>& book_paths)
{
    Problems problems;
    const auto text_of = [&](const std::string& path) {
        Result<std::string> text = text::read_file(path);
        if (!text) problems.insert(problems.end(), text.error().begin(), text.error().end());
        return drill::input_text(path, text ? std::move(*text) : std::string());
    };
    drill::InputText scenario = text_of(scenario_path);
    drill::InputText plan = text_of(plan_path);
    std::vector<drill::InputText> books;
    for (const std::string& path : book_paths) books.push_back(text_of(path));
    if (!problems.empty()) return failed(std::move(problems));
    return parse_inputs(std::move(scenario), std::move(plan), std::move(books));
}

Job carry_through(const Inputs& inputs, std::uint64_t seed, bool with_film, unsigned threads, const std::function<void(const site::Site&)>& after_card)
{
    drill::Camera camera;
    drill::RunOptions options;
    options.seed = seed;
    options.threads = threads;
    options.traces_sources = true;
    if (with_film) options.watcher = [&](const site::Site& site) { camera.watch(site); };
    options.after_card = [&](const site::Site& site) {
        if (with_film) camera.end_card(site);
        if (after_card) after_card(site);
    };
    drill::Run run = drill::carry_out(inputs.scenario, inputs.plan, options);
    run.site.watcher = {};   // it looked at a camera that is about to go
    rules::MarkingSheet sheet = rules::marking_sheet(inputs.book, inputs.scenario, run.site.log);
    Outcome result = outcome(run);
    Trace trace = trace_of(run.site);
    return {std::move(run), std::move(sheet), std::move(result), camera.take_film(), std::move(trace)};
}

drill::RunFile run_file(const Inputs& inputs, const Job& job)
{
    // Only the names of the files, so that the same run gives the same file in every folder.
    const auto kept = [](drill::InputText input) {
        input.name = std::filesystem::path(input.name).filename().string();
        return input;
    };
    drill::RunFile file;
    file.scenario = kept(inputs.scenario_text);
    file.plan = kept(inputs.plan_text);
    file.book = kept(inputs.book_text);
    file.seed = job.run.site.seed;
    file.hashes = job.run.hashes;
    file.claimed_marks = claim_of(job.sheet);
    file.outside_lead = job.outcome.outside.lead.count;
    file.released_lead = job.outcome.released.lead.count;
    return file;
}

Result<Check> check(const drill::RunFile& file, unsigned threads)
{
    Result<drill::Replay> replay = drill::replay(file, threads);
    if (!replay) return failed(replay.error());
    Result<Inputs> inputs = parse_inputs(file.scenario, file.plan, {file.book});
    if (!inputs) return failed(inputs.error());
    rules::MarkingSheet sheet = rules::marking_sheet(inputs->book, inputs->scenario, replay->run.site.log);
    Outcome result = outcome(replay->run);
    const bool has_same_marks = claim_of(sheet) == file.claimed_marks;
    const bool has_same_ledger = result.outside.lead.count == file.outside_lead && result.released.lead.count == file.released_lead;
    return Check{std::move(*inputs), Job{std::move(replay->run), std::move(sheet), std::move(result), {}, {}}, replay->first_difference, has_same_marks, has_same_ledger};
}

}
