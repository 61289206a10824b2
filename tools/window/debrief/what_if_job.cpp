#include "window/debrief/what_if_job.hpp"

#include <chrono>
#include <thread>

namespace flapdoor::window {

namespace {

/// One core is left to the window.
unsigned threads_beside_the_window() { return std::max(2U, std::thread::hardware_concurrency()) - 1; }

}

void WhatIfJob::start(debrief::Inputs inputs, std::optional<job::WorkPlan> reference, const debrief::Report& report)
{
    if (is_under_way() || (report_ && report_->what_ifs)) return;
    report_ = report;
    plan_ = inputs.plan;
    reference_ = reference;
    told_in_ = text::spoken();
    count_ = std::make_shared<Count>();
    work_ = std::make_unique<Beside<debrief::WhatIfs>>(
        [inputs = std::move(inputs), reference = std::move(reference), seed = report.seed, count = count_](const std::atomic<bool>& is_let_go) {
            debrief::WhatIfOrder order;
            order.threads = threads_beside_the_window();
            order.progress = [&](std::size_t done, std::size_t of) { count->done = done, count->of = of; };
            order.should_stop = [&] { return is_let_go.load(); };
            return debrief::what_ifs(inputs, reference ? &*reference : nullptr, seed, order);
        });
}

void WhatIfJob::stop()
{
    if (!work_) return;
    work_.reset();
    report_.reset();
}

const debrief::Report* WhatIfJob::report()
{
    if (work_)
        if (auto found = work_->take()) {
            report_->what_ifs = std::move(*found);
            work_.reset();
        }
    if (!report_ || !report_->what_ifs) return nullptr;
    if (told_in_ != text::spoken()) tell_again();
    return &*report_;
}

void WhatIfJob::tell_again()
{
    told_in_ = text::spoken();
    for (debrief::WhatIf& what_if : report_->what_ifs->list) {
        const job::WorkPlan& plan = what_if.kind == debrief::WhatIf::Kind::put_in && reference_ ? *reference_ : plan_;
        what_if.told.clear();
        for (const debrief::PlanEdit& edit : what_if.edits) what_if.told.push_back(debrief::told(edit, plan, report_->scenario));
    }
}

void WhatIfJob::wait()
{
    while (report() == nullptr && is_under_way()) std::this_thread::sleep_for(std::chrono::milliseconds(2));
}

}
