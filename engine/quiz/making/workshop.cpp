#include "quiz/making/workshop.hpp"

#include "debrief/study.hpp"
#include "drill/run.hpp"

#include <utility>

namespace flapdoor::quiz {

Result<std::shared_ptr<const debrief::Inputs>> Workshop::inputs(const std::string& drill, const std::string& plan)
{
    if (const auto known = read_.find({drill, plan}); known != read_.end()) return known->second;
    const std::string place = find_.folder() + "/" + drill + "/";
    Result<debrief::Inputs> inputs = debrief::read_inputs(place + "scenario.toml", place + plan + ".toml", {find_.folder() + "/rules/federal.toml"});
    if (!inputs) return failed(std::move(inputs.error()));
    return read_[{drill, plan}] = std::make_shared<const debrief::Inputs>(std::move(*inputs));
}

Result<std::shared_ptr<const Played>> Workshop::play(const std::string& drill, const std::string& plan, std::uint64_t seed)
{
    const std::tuple key{drill, plan, seed};
    if (const auto known = played_.find(key); known != played_.end()) return known->second;
    auto from = inputs(drill, plan);
    if (!from) return failed(std::move(from.error()));
    const debrief::Inputs& inputs = **from;
    drill::RunOptions options;
    options.seed = seed;
    options.detail = debrief::light_detail;
    options.hashes_every_card = false;
    drill::Run run = drill::carry_out(inputs.scenario, inputs.plan, options);
    rules::MarkingSheet sheet = rules::marking_sheet(inputs.book, inputs.scenario, run.site.log);
    debrief::Outcome outcome = debrief::outcome(run);
    return played_[key] = std::make_shared<const Played>(Played{*from, std::move(run.site.log), std::move(sheet), std::move(outcome)});
}

}
