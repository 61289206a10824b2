#include "quiz/making/generator.hpp"

#include "dust/wiping.hpp"
#include "rules/clearance.hpp"
#include "rules/things.hpp"
#include "text/show.hpp"

#include <cmath>

namespace flapdoor::quiz {
namespace {

/// A floor that is gone over again and again; each pass takes the same share of what it finds.
struct Passes {
    Loading before;
    double share = 0.0;
    int count = 0;

    double left(int n) const { return before.si * dust::residual_after(std::vector<double>(static_cast<std::size_t>(n), share)); }
};

Loading floor_level() { return rules::clearance_level(rules::SampledSurface::floor); }

/// Passes until what is left is below a level.
double passes_below(const Passes& p, Loading level)
{
    int n = 0;
    while (n < 100 && p.left(n) >= level.si) ++n;
    return n;
}

constexpr Mistake<Passes> left_mistakes[] = {
    {"shares-added-up", [](const Passes& p) { return std::max(0.0, p.before.si * (1.0 - p.count * p.share)); }},
    {"one-pass-counted", [](const Passes& p) { return p.left(1); }},
    {"taken-for-left", [](const Passes& p) { return p.before.si - p.left(p.count); }},
    {"one-pass-short", [](const Passes& p) { return p.left(p.count - 1); }},
};

constexpr Mistake<Passes> needed_mistakes[] = {
    {"shares-added-up", [](const Passes& p) { return std::ceil((p.before.si - floor_level().si) / (p.share * p.before.si)); }},
    {"one-pass-short", [](const Passes& p) { return passes_below(p, floor_level()) - 1.0; }},
    {"sill-level", [](const Passes& p) { return passes_below(p, rules::clearance_level(rules::SampledSurface::sill)); }},
    {"former-level", [](const Passes& p) { return passes_below(p, 10.0_ugpft2); }},
    {"to-be-sure-twice", [](const Passes& p) { return 2.0 * passes_below(p, floor_level()); }},
};

/// A multiple of what lies on the floor of this room before any work, and a share that one pass takes.
Passes some_passes(const Setting& setting, std::string_view purpose)
{
    const job::Zone* room = rules::work_room(setting.scenario);
    Dice dice = setting.dice(purpose);
    const std::vector<int> multiples{8, 12, 16, 24, 40};
    const int multiple = dice.one_of(multiples);
    return {(room ? room->lead_before : 5.0_ugpft2) * multiple, dice.between(4, 8) / 10.0, dice.between(2, 4)};
}

std::map<std::string, Phrase> blanks_of(const Passes& p)
{
    return {{"before", phrase(text::show_short(p.before))}, {"share", phrase(text::show_percent(p.share))}, {"passes", as_count(p.count).shown},
            {"level", phrase(text::show_short(floor_level()))}};
}

std::optional<Made> lead_left(const Setting& setting)
{
    const Passes passes = some_passes(setting, "lead-left-after-passes");
    const auto figure = made_figure(passes, passes.left(passes.count), left_mistakes, as_loading, 0.05);
    if (!figure) return std::nullopt;
    return Made{blanks_of(passes), *figure};
}

std::optional<Made> passes_needed(const Setting& setting)
{
    const Passes passes = some_passes(setting, "passes-needed");
    const auto figure = made_figure(passes, passes_below(passes, floor_level()), needed_mistakes, as_count);
    if (!figure) return std::nullopt;
    return Made{blanks_of(passes), *figure};
}

}

std::vector<Generator> pass_generators()
{
    return {{"lead-left-after-passes", {"before", "share", "passes"}, names_of(left_mistakes), lead_left},
            {"passes-needed", {"before", "share", "level"}, names_of(needed_mistakes), passes_needed}};
}

}
