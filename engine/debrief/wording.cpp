#include "debrief/wording.hpp"

#include "text/show.hpp"
#include "text/significant.hpp"

#include <fmt/format.h>

#include <array>

namespace flapdoor::debrief {

namespace {

constexpr std::array<std::string_view, 12> all_cautions{
    "This sheet comes from practice. It makes nobody a certified renovator and takes the place of no accredited course.",
    "Every color and every dust figure comes from a model. None is a clearance result, and none says anything about a real room.",
    "Looking clean is not being clean: lead dust that matters cannot be seen.",
    "A passed cloth check means that the rule's own test was met. It does not tell how much lead is left.",
    "On a real job only a certified renovator inspects and verifies. Having practiced here does not change that.",
    "Never put a flame, a machine without its shroud and HEPA exhaust, or a heat gun at 1,100 F or more to old paint, not even for one spot.",
    "When containment fails: stop, close it, clean up what got out, and only then go on.",
    "Take no dust home. Clean clothes and shoes before you leave, wash hands and face before you eat.",
    "A way out that is blocked is worse than dust. Whoever is inside must be able to get out at once.",
    "Wet plastic is slippery, water and live outlets do not mix, and a respirator needs its own fitting and training program.",
    "Rules change, and states, tribes and towns add to them. The book used here and its edition stand on this sheet; in doubt ask your program.",
    "What is marked as practice is advice of the trade. Another tidy way may be just as good.",
};

constexpr std::array<std::string_view, dust::pathway_count> ways_out{
    "",
    "Drawn into the return register and carried through the ducts to the rooms it serves.",
    "Through open seams of the sheeting, gaps under doors and leaks in walls.",
    "With the air that changes places at each passage through the entrance.",
    "On soles that were not cleaned, step by step into the hall.",
    "On clothes, shaken off outside the work area.",
    "On tools that went out dusty.",
    "On the outside of bags and bundles, or puffed out when they were closed.",
    "Thrown up when sheeting was taken up and folded.",
    "Taken back by cleaning beyond the work area.",
};

constexpr std::array<std::string_view, dust::pathway_count> knowledge{
    "",
    "Settling and filters are well known; how much air an open return draws and what its leaks pass is judgment.",
    "Leak areas are judgment, two and a half times more or less; what coarse dust does in a slit is hardly measured.",
    "The air swapped in a passage was measured on rigid hospital doors, never on a flap.",
    "What soles pick up and lose was measured, in few studies and not on renovation dust.",
    "Clothing was measured with household dust in one study; shaking it out was not.",
    "No measurement was found: judgment.",
    "No measurement was found; ten times more or less. Possible only.",
    "No measurement was found; ten times more or less. Possible only.",
    "",
};

constexpr std::array<std::string_view, 6> what_is_left_out{
    "Air inside a room drifts and is stirred smoothly: no jet from a supply, no plume over a heater. Where dust goes first is a picture.",
    "Weather comes as small gusts on a steady house: no storms, no season, no stove or dryer switched on halfway.",
    "People walk, work and clean evenly. No child runs in, nobody trips, nobody hurries more in the afternoon.",
    "Dust does not clump, charge or get wet through, and no fume of hot paint is counted.",
    "Old dust lies evenly on floors, sills and furniture before the job; nobody knows what really lies in a house.",
    "No whole room of the model was compared with a sampled one; its parts were compared with published figures.",
};

}

std::span<const std::string_view> cautions() { return all_cautions; }

std::string_view how_it_leaves(dust::Pathway pathway) { return ways_out[static_cast<std::size_t>(pathway)]; }

std::string_view how_well_known(dust::Pathway pathway) { return knowledge[static_cast<std::size_t>(pathway)]; }

std::span<const std::string_view> left_out() { return what_is_left_out; }

bool is_barely_known(dust::Pathway pathway) { return pathway == dust::Pathway::bag || pathway == dust::Pathway::sheeting_removal; }

std::string_view title_of(job::Phase phase)
{
    constexpr std::array<std::string_view, Words<job::Phase>::words.size()> titles{
        "Paper and people", "Setting up", "Work", "Waste", "Cleaning", "Verification", "Handing over"};
    return titles[static_cast<std::size_t>(phase)];
}

std::string_view title_of(rules::RuleClass rule_class) { return word_of(rule_class); }

std::string show_roughly(Picograms amount)
{
    const double rounded = text::round_to_digits(static_cast<double>(amount.count), 2);
    return text::show(Picograms{static_cast<std::int64_t>(rounded)});
}

std::string as_sentence(std::string text)
{
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text;
}

std::string counted(std::size_t count, std::string_view one, std::string_view many)
{
    return fmt::format("{} {}", count, count == 1 ? one : many);
}

}
