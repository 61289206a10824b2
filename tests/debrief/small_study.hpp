#pragma once

#include "debrief/study.hpp"
#include "small_job.hpp"

#include <numeric>
#include <string>
#include <vector>

/// Studies of the small job: two plans that take a moment each.
namespace flapdoor::debrief::small_study {

inline Inputs inputs(const std::string& cards, const std::string& name, const std::string& title = "A small job")
{
    drill::InputText scenario = drill::input_text("small.toml", small_job::scenario_text(title));
    drill::InputText plan = drill::input_text(name + ".toml", small_job::plan_text(title + " " + name, cards));
    drill::InputText book = drill::input_text("book.toml", small_job::book_text(title + " book"));
    auto scenario_read = job::read_scenario(scenario.text, scenario.name);
    REQUIRE(scenario_read);
    auto plan_read = job::read_plan(plan.text, plan.name, *scenario_read);
    REQUIRE(plan_read);
    auto book_read = rules::read_rule_book(book.text, book.name);
    REQUIRE(book_read);
    return {*scenario_read, *plan_read, *book_read, scenario, plan, book};
}

inline std::vector<Inputs> both(const std::string& title = "A small job")
{
    return {inputs(small_job::careful, "careful", title), inputs(small_job::careless, "careless", title)};
}

inline std::vector<std::uint64_t> seeds(std::size_t count)
{
    std::vector<std::uint64_t> list(count);
    std::iota(list.begin(), list.end(), std::uint64_t{1});
    return list;
}

inline Study made(const std::vector<Inputs>& plans, std::size_t count, unsigned threads = 1)
{
    return carry_on(plans, begin_study(plans, "1.2.3"), {seeds(count), threads});
}

}
