#pragma once

#include "../job/shipped.hpp"

#include "drill/run.hpp"

#include <string>

namespace flapdoor::drill {

/// A few cards in which dust flies, is trodden about, carried out and cleaned: every random stream is drawn on.
inline const std::string short_plan_text = R"(format = 1
scenario = "back-bedroom"
title = "A short run"
card = [
  { do = "lay-floor-sheet", by = ["rosa", "lee"], sheeting = "poly", reach = "6 ft" },
  { do = "lay-tack-pad", by = ["lee"], opening = "door", pad = "tack-pad" },
  { do = "disturb-paint", by = ["lee"], component = "casing-1", technique = "hand-sand", is-misted = false, time = "3 min", share = 0.2 },
  { do = "bag-debris", by = ["lee"], bag = "bag-1", kind = "heavy-bags", fill = 0.9 },
  { do = "close-bag", by = ["lee"], bag = "bag-1", closure = "tape" },
  { do = "carry-out", by = ["lee"], bag = "bag-1", opening = "door" },
  { do = "enter-work-area", by = ["lee"], opening = "door" },
  { do = "fold-sheeting", by = ["rosa", "lee"] },
  { do = "vacuum-surfaces", by = ["lee"], target = "everything", vacuum = "hepa-vacuum", minutes-per-square-meter = 0.5 },
  { do = "inspect", by = ["rosa"] },
]
)";

inline job::WorkPlan short_plan(const job::Scenario& scenario) { return job::sound(job::read_plan(short_plan_text, "short.toml", scenario)); }

inline Run run_short(std::uint64_t seed = 1, unsigned threads = 1)
{
    const job::Scenario scenario = job::shipped_scenario();
    RunOptions options;
    options.seed = seed;
    options.threads = threads;
    return carry_out(scenario, short_plan(scenario), options);
}

}
