#pragma once

#include "core/fields.hpp"
#include "core/result.hpp"
#include "job/files.hpp"

#include <cstdint>
#include <string>

namespace flapdoor::drill {

/// How a drill is taken: with faults told as they happen and steps that can be taken back, or marked at the end.
enum class Manner { practice, marked };

/// A drill in progress as kept on disk: what it was begun from and what has been decided so far. Everything else follows
/// by carrying the cards out again.
struct Unfinished {
    static constexpr int format_version = 1;

    int format = format_version;
    std::string drill;          ///< id of its scenario
    std::string who;            ///< may be empty
    Manner manner = Manner::practice;
    std::string seed = "1";     ///< as digits: a file's whole numbers have one bit less
    std::string state;          ///< fingerprint of the site after the last card, in hexadecimal
    std::string scenario;       ///< text of the scenario, only with what was taken along
    std::string plan;           ///< text of the plan so far

    static void fields(auto& self, auto&& visit)
    {
        visit("format", self.format, required, Range{1, format_version});
        visit("drill", self.drill, required);
        visit("who", self.who);
        visit("manner", self.manner, required);
        visit("seed", self.seed, required, About{"luck of the run"});
        visit("state", self.state, About{"fingerprint of the site after the last card"});
        visit("scenario", self.scenario, required, About{"text of the scenario, only with what was taken along"});
        visit("plan", self.plan, required, About{"text of the plan so far"});
    }
};

/// The same, read and checked.
struct Resumed {
    Unfinished kept;
    job::Scenario scenario;
    job::WorkPlan plan;
    std::uint64_t seed = 1;
};

/// Writes it whole or not at all; makes the folder when it is not there.
Result<void> save_unfinished(const Unfinished& drill, const std::string& path);

/// Reads it back. A damaged or foreign file, or one whose scenario or plan does not read any more, is a problem in plain words.
Result<Resumed> load_unfinished(const std::string& path);

}

namespace flapdoor::inline core {
template <> struct Words<drill::Manner> { static constexpr std::array<std::string_view, 2> words{"practice", "marked"}; };
}
