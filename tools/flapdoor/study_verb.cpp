#include "verbs.hpp"

#include "interrupt.hpp"
#include "places.hpp"
#include "progress_line.hpp"

#include "debrief/main_job.hpp"
#include "debrief/repaired_plans.hpp"
#include "debrief/seed_list.hpp"
#include "debrief/study_file.hpp"
#include "debrief/study_picture.hpp"
#include "debrief/study_sheet.hpp"
#include "debrief/wording.hpp"
#include "text/atomic_file.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <chrono>
#include <filesystem>

namespace flapdoor::command {

using text::say;
using text::say_number;
using text::say_with;
using text::to_say;

namespace {

namespace fs = std::filesystem;

constexpr auto between_saves = std::chrono::seconds(5);

int refuse(const Problems& problems, Exit code)
{
    tell(problems);
    return code;
}

/// What a file already holds of the study; nothing more than `begun` when there is no file. A file of other inputs, of another
/// model or a damaged one is a problem, and stays as it is.
Result<debrief::Study> kept_study(const std::string& path, debrief::Study begun, const std::vector<debrief::Inputs>& plans)
{
    std::error_code ignored;
    if (!fs::exists(path, ignored)) return begun;
    Result<debrief::Study> kept = debrief::load_study(path);
    if (!kept) return kept;
    if (const auto other = debrief::difference(kept->basis, begun.basis)) return failed(problem_with(path, "a study of the same inputs, or another --out", *other));
    if (kept->rows.empty()) return kept;
    const debrief::StudyRow& first = kept->rows.front();
    mechanics::FlapBook flaps;
    if (debrief::study_row(plans[first.plan], kept->basis, first.plan, first.seed, flaps) != first)
        return failed(problem_with(path, "results that this program gives too, or another --out", fmt::format("others for seed {}: the model has changed since", first.seed)));
    return kept;
}

/// Saves what there is every few seconds, so that little is lost when the power fails.
class Keeper {
public:
    explicit Keeper(std::string path) : path_(std::move(path)) {}

    void keep(const debrief::Study& study)
    {
        const auto now = std::chrono::steady_clock::now();
        if (now - saved_ < between_saves) return;
        saved_ = now;
        if (auto saved = debrief::save_study(study, path_); !saved) problems_ = saved.error();
    }

    const Problems& problems() const { return problems_; }

private:
    std::string path_;
    std::chrono::steady_clock::time_point saved_ = std::chrono::steady_clock::now();
    Problems problems_;
};

int write_results(const debrief::Study& study, const std::string& path, std::size_t width)
{
    if (auto saved = debrief::save_study(study, path); !saved) return refuse(saved.error(), bad_file);
    if (study.rows.empty()) {
        fmt::print("{}\n{}\n  {}\n", say("No run yet."), say("Written:"), path);
        return fine;
    }
    const std::string picture = fs::path(path).replace_extension(".svg").string();
    if (auto saved = text::save_atomically(picture, debrief::study_picture(study)); !saved) return refuse(saved.error(), bad_file);
    fmt::print("{}\n{}\n  {}\n  {}\n", debrief::study_sheet(study, width), say("Written:"), say_with("{} (one line a run)", path), say_with("{} (bands)", picture));
    return fine;
}

std::string study_path(const std::string& folder, const std::string& scenario, const debrief::StudyPart& part)
{
    const std::string number = part.parts > 1 ? fmt::format("-part-{}-of-{}", part.part, part.parts) : std::string();
    return (fs::path(folder) / (file_name_from(scenario) + "-study" + number + ".csv")).string();
}

/// What `--faults` adds to the plans; says which faults it cannot tell of.
Result<std::vector<debrief::RepairedPlan>> repairs_for(const StudyChoice& choice, const std::vector<debrief::Inputs>& plans, std::uint64_t seed, unsigned threads)
{
    if (!choice.asks_faults) return {};
    const auto reference = read_reference(choice.scenario, choice.reference, choice.books);
    if (!reference) return failed(reference.error());
    fmt::print(stderr, "{}\n", say("Looking for what repairs each fault."));
    debrief::RepairedPlans found = debrief::repaired_plans(plans, *reference ? &**reference : nullptr, seed, threads);
    for (const auto& left_out : found.left_out)
        fmt::print(stderr, "{}\n", say_with("{}: fault {} is left out: {}.", say(plans[left_out.from].plan.title), left_out.fault, left_out.why));
    if (found.plans.empty()) fmt::print(stderr, "{}\n", say("No plan has a fault that can be repaired: there is nothing to tell about faults."));
    return std::move(found.plans);
}

Result<void> make_folder(const std::string& folder)
{
    std::error_code error;
    fs::create_directories(folder, error);
    std::error_code ignored;
    if (fs::is_directory(folder, ignored)) return {};
    return failed(problem_with(folder, "a folder that can be written to", error ? error.message() : "a file"));
}

}

int study(const StudyChoice& choice)
{
    const auto asked = read_plans(choice.scenario, choice.plans, choice.books);
    if (!asked) return refuse(asked.error(), bad_file);
    auto seeds = debrief::read_seeds(choice.seeds, "--seeds", debrief::most_study_runs / asked->size());
    if (!seeds) return refuse(seeds.error(), bad_use);
    const auto part = debrief::read_part(choice.part, "--part");
    if (!part) return refuse(part.error(), bad_use);
    const unsigned threads = choice.threads > 0 ? choice.threads : usual_threads();
    // The first seed of all parts: then all parts have the same plans.
    const auto repaired = repairs_for(choice, *asked, seeds->front(), threads);
    if (!repaired) return refuse(repaired.error(), bad_file);
    const std::vector<debrief::Inputs> plans = debrief::all_inputs(*asked, *repaired);
    seeds = debrief::read_seeds(choice.seeds, "--seeds", debrief::most_study_runs / plans.size());
    if (!seeds) return refuse(seeds.error(), bad_use);
    debrief::StudyOrder order{debrief::part_of(*seeds, part->part, part->parts), threads};

    debrief::Study begun = debrief::begin_study(*asked, FLAPDOOR_VERSION, choice.detail, *repaired);
    const std::string path = study_path(choice.out, begun.basis.scenario.name, *part);
    Result<debrief::Study> kept = kept_study(path, std::move(begun), plans);
    if (!kept) return refuse(kept.error(), bad_file);
    // A folder that cannot be written to is told now, not after an hour's work.
    if (auto made = make_folder(choice.out); !made) return refuse(made.error(), bad_file);
    if (auto saved = debrief::save_study(*kept, path); !saved) return refuse(saved.error(), bad_file);
    if (!kept->rows.empty()) fmt::print(stderr, "{}\n", say_number("{1} holds {0} run already.", "{1} holds {0} runs already.", kept->rows.size(), path));

    note_interrupts();
    ProgressLine line(to_say("Study: {} of {} runs, about {} left"));
    Keeper keeper(path);
    const std::size_t before = kept->rows.size();
    order.should_stop = [&] { return is_interrupted() || !keeper.problems().empty(); };
    order.after_run = [&](const debrief::Study& so_far, std::size_t todo) {
        line.show(so_far.rows.size() - before, todo);
        keeper.keep(so_far);
    };
    const debrief::Study made = debrief::carry_on(plans, std::move(*kept), order);
    line.end();
    if (!keeper.problems().empty()) return refuse(keeper.problems(), bad_file);
    const int written = write_results(made, path, terminal_width(choice.width));
    if (written != fine || !is_interrupted()) return written;
    fmt::print(stderr, "{}\n", say("Stopped. The same command carries on where it stopped."));
    return interrupted;
}

int pool(const PoolChoice& choice)
{
    std::optional<debrief::Study> pooled;
    const auto add = [&](const std::string& path) -> Result<void> {
        Result<debrief::Study> read = debrief::load_study(path);
        if (!read) return failed(read.error());
        if (!pooled) pooled = std::move(*read);
        else if (const auto other = debrief::pool(*pooled, *read)) return failed(problem_with(path, fmt::format("a part of the same study as {}", choice.files.front()), *other));
        if (pooled->rows.size() > debrief::most_study_runs) return failed(problem_with(path, fmt::format("at most {} runs in all", debrief::most_study_runs), "more"));
        return {};
    };
    Problems problems;
    for (const std::string& file : choice.files)
        if (const auto added = add(file); !added) problems.insert(problems.end(), added.error().begin(), added.error().end());
    if (!problems.empty()) return refuse(problems, bad_file);
    const std::string path = study_path(choice.out, pooled->basis.scenario.name, {});
    std::error_code ignored;
    // What is there already is part of it, or is left alone.
    if (fs::exists(path, ignored))
        if (const auto added = add(path); !added) return refuse(added.error(), bad_file);
    if (auto made = make_folder(choice.out); !made) return refuse(made.error(), bad_file);
    return write_results(*pooled, path, terminal_width(choice.width));
}

}
