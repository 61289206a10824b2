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
    count_ = std::make_shared<Count>();
    work_ = std::async(std::launch::async, [inputs = std::move(inputs), reference = std::move(reference), seed = report.seed, count = count_] {
        debrief::WhatIfOrder order;
        order.threads = threads_beside_the_window();
        order.progress = [&](std::size_t done, std::size_t of) { count->done = done, count->of = of; };
        order.should_stop = [&] { return count->is_let_go.load(); };
        return debrief::what_ifs(inputs, reference ? &*reference : nullptr, seed, order);
    });
}

void WhatIfJob::stop()
{
    if (!work_.valid()) return;
    count_->is_let_go = true;
    work_ = {};     // waits for the run under way
    report_.reset();
}

const debrief::Report* WhatIfJob::report()
{
    if (work_.valid() && work_.wait_for(std::chrono::seconds(0)) == std::future_status::ready) report_->what_ifs = work_.get();
    return report_ && report_->what_ifs ? &*report_ : nullptr;
}

void WhatIfJob::wait()
{
    if (work_.valid()) report_->what_ifs = work_.get();
}

}
