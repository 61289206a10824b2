#include "debrief/repaired_plans.hpp"

#include "debrief/fault_line.hpp"
#include "debrief/what_if.hpp"
#include "job/card_node.hpp"
#include "text/language.hpp"

#include <algorithm>

namespace flapdoor::debrief {

namespace {

std::vector<FaultLine> faults_of(const Inputs& inputs, std::uint64_t seed)
{
    drill::RunOptions options;
    options.seed = seed;
    options.detail = light_detail;
    options.hashes_every_card = false;
    return fault_lines(rules::marking_sheet(inputs.book, inputs.scenario, drill::carry_out(inputs.scenario, inputs.plan, options).site.log));
}

/// Takes in what is found about the faults of one plan.
class Mender {
public:
    Mender(RepairedPlans& found, const Inputs& inputs, std::size_t number, std::uint64_t seed) : found_(found), inputs_(inputs), number_(number), faults_(faults_of(inputs, seed)) {}

    void add(const WhatIf& what_if)
    {
        const std::vector<const FaultLine*> faults = faults_in(what_if.rules);
        if (!what_if.is_done) return leave_out(faults, what_if.refused.front());
        if (!what_if.is_mended) return leave_out(faults, std::string(text::say("a rule is still broken after the change")));
        RepairedPlan plan{number_, faults.front()->rule.says, {}, inputs_};
        for (const FaultLine* fault : faults) plan.faults.push_back(fault->number);
        plan.inputs.plan = edited(inputs_.plan, what_if.edits);
        plan.inputs.plan_text = drill::input_text(inputs_.plan_text.name, job::plan_text(plan.inputs.plan));
        found_.plans.push_back(std::move(plan));
    }

    void add(const NoRepair& none) { leave_out(faults_in({none.rule}), none.why); }

private:
    std::vector<const FaultLine*> faults_in(const std::vector<std::string>& rules) const
    {
        std::vector<const FaultLine*> list;
        for (const FaultLine& fault : faults_)
            if (std::find(rules.begin(), rules.end(), fault.rule.rule) != rules.end()) list.push_back(&fault);
        return list;
    }

    void leave_out(const std::vector<const FaultLine*>& faults, const std::string& why)
    {
        for (const FaultLine* fault : faults) found_.left_out.push_back({number_, fault->number, why});
    }

    RepairedPlans& found_;
    const Inputs& inputs_;
    std::size_t number_ = 0;
    std::vector<FaultLine> faults_;
};

}

RepairedPlans repaired_plans(const std::vector<Inputs>& plans, const Inputs* reference, std::uint64_t seed, unsigned threads)
{
    WhatIfOrder order;
    order.threads = threads;
    order.detail = light_detail;
    order.tries_reverse = false;
    RepairedPlans repaired;
    for (std::size_t i = 0; i < plans.size(); ++i) {
        const bool is_other = reference != nullptr && reference->plan_text.hash != plans[i].plan_text.hash;
        const WhatIfs found = what_ifs(plans[i], is_other ? &reference->plan : nullptr, seed, order);
        Mender mender(repaired, plans[i], i, seed);
        for (const WhatIf& what_if : found.list)
            if (what_if.kind == WhatIf::Kind::repaired) mender.add(what_if);
        for (const NoRepair& none : found.none) mender.add(none);
    }
    return repaired;
}

}
