#include "debrief/study.hpp"

#include "core/hash.hpp"
#include "core/insist.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <atomic>
#include <exception>
#include <filesystem>
#include <mutex>
#include <set>
#include <thread>
#include <utility>

namespace flapdoor::debrief {

namespace {

/// What a cell of a file may hold: no line ends, and nothing that a spreadsheet takes for a formula.
std::string plain(std::string text)
{
    for (char& c : text)
        if (static_cast<unsigned char>(c) < ' ') c = ' ';
    if (!text.empty() && std::string_view("=+-@").find(text.front()) != std::string_view::npos) text.insert(text.begin(), '\'');
    return text;
}

StudyInput study_input(std::string name, const drill::InputText& input, const std::string& title) { return {plain(std::move(name)), input.hash, plain(title)}; }

std::string stem_of(const drill::InputText& input) { return std::filesystem::path(input.name).stem().string(); }

/// Gives a plan another name when an earlier one has it: two files may be called the same in two folders.
void tell_apart(std::vector<StudyPlan>& plans)
{
    std::set<std::string> names;
    for (StudyPlan& plan : plans) {
        const std::string name = plan.name;
        for (int i = 2; !names.insert(plan.name).second; ++i) plan.name = fmt::format("{}-{}", name, i);
    }
}

bool are_of(const std::vector<Inputs>& plans, const StudyBasis& basis)
{
    return std::equal(plans.begin(), plans.end(), basis.plans.begin(), basis.plans.end(), [&](const Inputs& inputs, const StudyPlan& plan) {
        return inputs.plan_text.hash == plan.hash && inputs.scenario_text.hash == basis.scenario.hash && inputs.book_text.hash == basis.book.hash;
    });
}

bool comes_before(const StudyRow& row, const std::pair<std::uint64_t, std::size_t>& key) { return std::pair(row.seed, row.plan) < key; }

std::vector<StudyRow>::iterator place_for(std::vector<StudyRow>& rows, std::uint64_t seed, std::size_t plan)
{
    return std::lower_bound(rows.begin(), rows.end(), std::pair(seed, plan), comes_before);
}

bool has_run(std::vector<StudyRow>::iterator place, const std::vector<StudyRow>& rows, std::uint64_t seed, std::size_t plan)
{
    return place != rows.end() && place->seed == seed && place->plan == plan;
}

/// The runs of an order that a study lacks, handed out one by one to the threads that carry them out.
class Worklist {
public:
    Worklist(const std::vector<Inputs>& plans, Study& study, const StudyOrder& order) : plans_(plans), study_(study), order_(order)
    {
        const std::set<std::uint64_t> seeds(order.seeds.begin(), order.seeds.end());
        for (const std::uint64_t seed : seeds)
            for (std::size_t plan = 0; plan < plans.size(); ++plan)
                if (!has_run(place_for(study.rows, seed, plan), study.rows, seed, plan)) todo_.emplace_back(seed, plan);
    }

    std::size_t size() const { return todo_.size(); }

    /// Works until nothing is left, somebody asks to stop, or a run fails.
    void work()
    {
        try {
            mechanics::FlapBook flaps;
            while (!is_stopped_) {
                const std::size_t next = next_++;
                if (next >= todo_.size() || (order_.should_stop && order_.should_stop())) return;
                const auto [seed, plan] = todo_[next];
                keep(study_row(plans_[plan], study_.basis, plan, seed, flaps));
            }
        }
        catch (...) {
            const std::lock_guard lock(mutex_);
            if (!failure_) failure_ = std::current_exception();
            is_stopped_ = true;
        }
    }

    void rethrow_failure() const
    {
        if (failure_) std::rethrow_exception(failure_);
    }

private:
    void keep(StudyRow row)
    {
        const std::lock_guard lock(mutex_);
        const auto place = place_for(study_.rows, row.seed, row.plan);
        study_.rows.insert(place, std::move(row));
        ++done_;
        if (order_.after_run) order_.after_run(study_, todo_.size() - done_);
    }

    const std::vector<Inputs>& plans_;
    Study& study_;
    const StudyOrder& order_;
    std::vector<std::pair<std::uint64_t, std::size_t>> todo_;
    std::atomic<std::size_t> next_ = 0;
    std::atomic<bool> is_stopped_ = false;
    std::mutex mutex_;
    std::size_t done_ = 0;
    std::exception_ptr failure_;
};

}

Study begin_study(const std::vector<Inputs>& plans, const std::string& program, double detail, const std::vector<RepairedPlan>& repaired)
{
    insist(!plans.empty(), "a study has a plan");
    insist(detail > 0.0 && detail <= 1.0, "a study takes a share of the usual parcels");
    const Inputs& first = plans.front();
    Study study;
    study.basis = {plain(program), detail, study_input(first.scenario.id, first.scenario_text, first.scenario.title),
                   study_input(first.book.id, first.book_text, first.book.title), {}, study_columns(first.scenario)};
    for (const Inputs& plan : plans) {
        insist(plan.scenario_text.hash == first.scenario_text.hash && plan.book_text.hash == first.book_text.hash, "the plans of a study have one scenario and one book");
        study.basis.plans.push_back({study_input(stem_of(plan.plan_text), plan.plan_text, plan.plan.title), {}, {}});
    }
    tell_apart(study.basis.plans);
    for (const RepairedPlan& plan : repaired) {
        insist(plan.from < plans.size() && !plan.faults.empty(), "a repaired plan comes from one of the study and has faults repaired");
        const std::string from = study.basis.plans[plan.from].name;
        study.basis.plans.push_back({study_input(fmt::format("{}-without-{}", from, fmt::join(plan.faults, "-")), plan.inputs.plan_text, plan.rule), from, plan.faults});
    }
    tell_apart(study.basis.plans);
    return study;
}

std::vector<std::size_t> plans_asked_about(const Study& study)
{
    std::vector<std::size_t> numbers;
    for (std::size_t plan = 0; plan < study.basis.plans.size(); ++plan)
        if (!study.basis.plans[plan].is_repaired()) numbers.push_back(plan);
    return numbers;
}

std::vector<Inputs> all_inputs(std::vector<Inputs> plans, const std::vector<RepairedPlan>& repaired)
{
    for (const RepairedPlan& plan : repaired) plans.push_back(plan.inputs);
    return plans;
}

Study carry_on(const std::vector<Inputs>& plans, Study study, const StudyOrder& order)
{
    insist(order.threads >= 1, "a study takes at least one thread");
    insist(are_of(plans, study.basis), "a study is carried on with the inputs it was begun with");
    Worklist list(plans, study, order);
    std::vector<std::thread> helpers;
    for (std::size_t i = 1; i < std::min<std::size_t>(order.threads, list.size()); ++i) helpers.emplace_back([&] { list.work(); });
    list.work();
    for (std::thread& helper : helpers) helper.join();
    list.rethrow_failure();
    return study;
}

StudyRow study_row(const Inputs& inputs, const StudyBasis& basis, std::size_t plan, std::uint64_t seed, mechanics::FlapBook& flaps)
{
    drill::RunOptions options;
    options.seed = seed;
    options.detail = basis.detail;
    options.hashes_every_card = false;
    options.flaps = std::move(flaps);
    drill::Run run = drill::carry_out(inputs.scenario, inputs.plan, options);
    flaps = std::move(run.site.flaps);
    const rules::MarkingSheet sheet = rules::marking_sheet(inputs.book, inputs.scenario, run.site.log);
    return {seed, plan, run.hashes.empty() ? 0 : run.hashes.back().hash, measured(basis.columns, run.site, sheet)};
}

std::vector<std::uint64_t> part_of(const std::vector<std::uint64_t>& seeds, std::size_t part, std::size_t parts)
{
    insist(part >= 1 && part <= parts, "a part of a study is one of its parts");
    std::vector<std::uint64_t> mine;
    for (std::size_t i = part - 1; i < seeds.size(); i += parts) mine.push_back(seeds[i]);
    return mine;
}

std::optional<std::string> difference(const StudyBasis& a, const StudyBasis& b)
{
    if (a.program != b.program) return fmt::format("another version of the program, {} and {}", a.program, b.program);
    if (a.detail != b.detail) return fmt::format("another detail, {} and {}", a.detail, b.detail);
    if (a.scenario.hash != b.scenario.hash) return fmt::format("another scenario, {} ({}) and {} ({})", a.scenario.name, to_hex(a.scenario.hash), b.scenario.name, to_hex(b.scenario.hash));
    if (a.book.hash != b.book.hash) return fmt::format("another rule book, {} ({}) and {} ({})", a.book.name, to_hex(a.book.hash), b.book.name, to_hex(b.book.hash));
    if (a.plans.size() != b.plans.size()) return fmt::format("another number of plans, {} and {}", a.plans.size(), b.plans.size());
    for (std::size_t i = 0; i < a.plans.size(); ++i)
        if (a.plans[i].hash != b.plans[i].hash || a.plans[i].name != b.plans[i].name)
            return fmt::format("another plan {}, {} ({}) and {} ({})", i + 1, a.plans[i].name, to_hex(a.plans[i].hash), b.plans[i].name, to_hex(b.plans[i].hash));
    if (a != b) return std::string("other columns or titles");
    return std::nullopt;
}

std::optional<std::string> pool(Study& into, const Study& more)
{
    if (auto other = difference(into.basis, more.basis)) return other;
    Study pooled = into;
    for (const StudyRow& row : more.rows) {
        const auto place = place_for(pooled.rows, row.seed, row.plan);
        if (!has_run(place, pooled.rows, row.seed, row.plan)) pooled.rows.insert(place, row);
        else if (*place != row) return fmt::format("other results for seed {} of plan {}", row.seed, into.basis.plans.at(row.plan).name);
    }
    into = std::move(pooled);
    return std::nullopt;
}

}
