#include "debrief/wording.hpp"

#include "text/show.hpp"
#include "text/language.hpp"
#include "text/sentence.hpp"
#include "text/significant.hpp"

#include <fmt/format.h>

#include <array>

namespace flapdoor::debrief {

using text::say;
using text::to_say;

namespace {

constexpr std::array<std::string_view, 12> all_cautions{
    to_say("This sheet comes from practice. It makes nobody a certified renovator and takes the place of no accredited course."),
    to_say("Every color and every dust figure comes from a model. None is a clearance result, and none says anything about a real room."),
    to_say("Looking clean is not being clean: lead dust that matters cannot be seen."),
    to_say("A passed cloth check means that the rule's own test was met. It does not tell how much lead is left."),
    to_say("On a real job only a certified renovator inspects and verifies. Having practiced here does not change that."),
    to_say("Never put a flame, a machine without its shroud and HEPA exhaust, or a heat gun at 1,100 F or more to old paint, not even for one spot."),
    to_say("When containment fails: stop, close it, clean up what got out, and only then go on."),
    to_say("Take no dust home. Clean clothes and shoes before you leave, wash hands and face before you eat."),
    to_say("A way out that is blocked is worse than dust. Whoever is inside must be able to get out at once."),
    to_say("Wet plastic is slippery, water and live outlets do not mix, and a respirator needs its own fitting and training program."),
    to_say("Rules change, and states, tribes and towns add to them. The book used here and its edition stand on this sheet; in doubt ask your program."),
    to_say("What is marked as practice is advice of the trade. Another tidy way may be just as good."),
};

constexpr std::array<std::string_view, dust::pathway_count> ways_out{
    "",
    to_say("Drawn into the return register and carried through the ducts to the rooms it serves."),
    to_say("Through open seams of the sheeting, gaps under doors and leaks in walls."),
    to_say("With the air that changes places at each passage through the entrance."),
    to_say("On soles that were not cleaned, step by step into the hall."),
    to_say("On clothes, shaken off outside the work area."),
    to_say("On tools that went out dusty."),
    to_say("On the outside of bags and bundles, or puffed out when they were closed."),
    to_say("Thrown up when sheeting was taken up and folded."),
    to_say("Taken back by cleaning beyond the work area."),
};

constexpr std::array<std::string_view, dust::pathway_count> knowledge{
    "",
    to_say("Settling and filters are well known; how much air an open return draws and what its leaks pass is judgment."),
    to_say("Leak areas are judgment, two and a half times more or less; what coarse dust does in a slit is hardly measured."),
    to_say("The air swapped in a passage was measured on rigid hospital doors, never on a flap."),
    to_say("What soles pick up and lose was measured, in few studies and not on renovation dust."),
    to_say("Clothing was measured with household dust in one study; shaking it out was not."),
    to_say("No measurement was found: judgment."),
    to_say("No measurement was found; ten times more or less. Possible only."),
    to_say("No measurement was found; ten times more or less. Possible only."),
    "",
};

constexpr std::array<std::string_view, 6> what_is_left_out{
    to_say("Air inside a room drifts and is stirred smoothly: no jet from a supply, no plume over a heater. Where dust goes first is a picture."),
    to_say("Weather comes as small gusts on a steady house: no storms, no season, no stove or dryer switched on halfway."),
    to_say("People walk, work and clean evenly. No child runs in, nobody trips, nobody hurries more in the afternoon."),
    to_say("Dust does not clump, charge or get wet through, and no fume of hot paint is counted."),
    to_say("Old dust lies evenly on floors, sills and furniture before the job; nobody knows what really lies in a house."),
    to_say("No whole room of the model was compared with a sampled one; its parts were compared with published figures."),
};

}

std::span<const std::string_view> cautions() { return all_cautions; }

std::string_view how_it_leaves(dust::Pathway pathway) { return say(ways_out[static_cast<std::size_t>(pathway)]); }

std::string_view how_well_known(dust::Pathway pathway) { return say(knowledge[static_cast<std::size_t>(pathway)]); }

std::span<const std::string_view> left_out() { return what_is_left_out; }

bool is_barely_known(dust::Pathway pathway) { return pathway == dust::Pathway::bag || pathway == dust::Pathway::sheeting_removal; }

std::string_view title_of(job::Phase phase)
{
    constexpr std::array<std::string_view, Words<job::Phase>::words.size()> titles{
        
        to_say("Paper and people"), to_say("Setting up"), to_say("Work"), to_say("Waste"), to_say("Cleaning"), to_say("Verification"), to_say("Handing over")};
    return say(titles[static_cast<std::size_t>(phase)]);
}

std::string_view title_of(rules::RuleClass rule_class) { return say(word_of(rule_class)); }

std::string show_roughly(Picograms amount)
{
    const double rounded = text::round_to_digits(static_cast<double>(amount.count), 2);
    return text::show(Picograms{static_cast<std::int64_t>(rounded)});
}

std::string as_sentence(std::string text)
{
    return text::as_sentence(std::move(text));
}

std::string called(std::string_view name)
{
    constexpr std::array<std::string_view, 5> of_whom{to_say("cover of {}"), to_say("clothes of {}"), to_say("soles of {}"), to_say("in bag {}"), to_say("on bag {}")};
    const std::string_view said = say(name);
    if (said != name) return std::string(said);
    for (const std::string_view pattern : of_whom) {
        const std::string_view before = pattern.substr(0, pattern.size() - 2);
        if (name.starts_with(before)) return text::say_with(pattern, called(name.substr(before.size())));
    }
    const std::size_t comma = name.rfind(", ");
    if (comma == std::string_view::npos) return std::string(name);
    return fmt::format("{}, {}", called(name.substr(0, comma)), say(name.substr(comma + 2)));
}

}
