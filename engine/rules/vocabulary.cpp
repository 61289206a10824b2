#include "rules/vocabulary.hpp"

#include "job/contents.hpp"
#include "job/step.hpp"
#include "text/field_types.hpp"

#include <algorithm>
#include <array>
#include <variant>

namespace flapdoor::rules {
namespace {

template <class T> inline constexpr ThingKind thing_of = ThingKind::none;
template <> inline constexpr ThingKind thing_of<job::ZoneId> = ThingKind::zone;
template <> inline constexpr ThingKind thing_of<job::OpeningId> = ThingKind::opening;
template <> inline constexpr ThingKind thing_of<job::ObjectId> = ThingKind::object;
template <> inline constexpr ThingKind thing_of<job::SillId> = ThingKind::sill;
template <> inline constexpr ThingKind thing_of<job::CounterId> = ThingKind::counter;
template <> inline constexpr ThingKind thing_of<job::ComponentId> = ThingKind::component;
template <> inline constexpr ThingKind thing_of<job::PersonId> = ThingKind::person;
template <> inline constexpr ThingKind thing_of<job::SupplyId> = ThingKind::supply;
template <> inline constexpr ThingKind thing_of<job::BagId> = ThingKind::bag;

struct ParameterGatherer {
    std::vector<ParameterWords>& into;

    template <class Field, class... Given>
    void operator()(std::string_view key, const Field&, const Given&...)
    {
        using Plain = text::Leaf<Field>;
        ParameterWords words;
        words.name = key;
        if constexpr (std::same_as<Plain, bool>) words.type = ParameterType::flag;
        else if constexpr (text::WholeNumber<Plain>) words.type = ParameterType::whole;
        else if constexpr (std::same_as<Plain, double>) words.type = ParameterType::number;
        else if constexpr (text::Measured<Plain>) {
            words.type = ParameterType::quantity;
            words.quantity = text::KindOf<Plain>::kind;
        }
        else if constexpr (Worded<Plain>) {
            words.type = ParameterType::word;
            words.words.assign(Words<Plain>::words.begin(), Words<Plain>::words.end());
        }
        else if constexpr (text::is_id<Plain>) {
            words.type = text::is_list<Field> ? ParameterType::id_list : ParameterType::id;
            words.thing = thing_of<Plain>;
        }
        into.push_back(std::move(words));
    }
};

template <class Kind>
StepWords words_of()
{
    StepWords words{Kind::name, Kind::title, Kind::phase, Kind::hands, {}};
    const Kind card{};
    ParameterGatherer gatherer{words.parameters};
    Kind::fields(card, gatherer);
    return words;
}

template <class... Kinds>
std::vector<StepWords> words_of_all(const std::variant<Kinds...>*)
{
    return {words_of<Kinds>()...};
}

// As the page of job/run_log.hpp lists them.
constexpr std::array states{
    StateWords{"signs-up", ThingKind::opening, "the signs were up", "the signs were not up", "post-signs take-down-signs"},
    StateWords{"certified-on-site", ThingKind::none, "the certified renovator was on site", "the certified renovator was not on site", "leave-site return-to-site"},
    StateWords{"certified-reachable", ThingKind::none, "the certified renovator was on site or could be reached by telephone",
               "the certified renovator was neither on site nor could be reached by telephone", "leave-site return-to-site"},
    StateWords{"hvac-running", ThingKind::none, "the heating and cooling ran", "the heating and cooling was off", "switch-hvac-off switch-hvac-on"},
    StateWords{"window-closed", ThingKind::opening, "the window was closed", "the window was not closed", "close-window open-window fit-window"},
    StateWords{"register-closed", ThingKind::opening, "the register was closed", "the register was not closed", "close-register"},
    StateWords{"register-covered", ThingKind::opening, "the register was covered with taped-down sheeting",
               "the register was not covered with taped-down sheeting", "cover-register repair-containment take-down-covers"},
    StateWords{"door-closed", ThingKind::opening, "the door was closed", "the door was not closed", "close-door hang-flap"},
    StateWords{"door-covered", ThingKind::opening, "the door was covered with taped-down sheeting", "the door was not covered with taped-down sheeting",
               "cover-door repair-containment take-down-covers"},
    StateWords{"flap-hung", ThingKind::opening, "the flap door hung", "the flap door did not hang", "hang-flap take-down-flap"},
    StateWords{"flap-taped", ThingKind::opening, "the flap door was taped round its frame", "the flap door was not taped round its frame",
               "hang-flap tape-seam take-down-flap"},
    StateWords{"tack-pad-down", ThingKind::none, "the tack pad lay at the entrance", "no tack pad lay at the entrance", "lay-tack-pad"},
    StateWords{"objects-safe", ThingKind::object, "it was out or covered and sealed", "it was neither out nor covered and sealed", "move-out cover-object"},
    StateWords{"floor-covered", ThingKind::none, "the floor was covered with taped-down sheeting", "the floor was not covered with taped-down sheeting",
               "lay-floor-sheet fold-sheeting"},
    StateWords{"containment-whole", ThingKind::none, "the containment was whole", "the containment was not whole", ""},
    StateWords{"waste-contained", ThingKind::bag, "the waste was contained", "the waste was not contained", "close-bag"},
    StateWords{"paint-disturbed", ThingKind::none, "paint had been disturbed", "no paint had been disturbed", "disturb-paint"},
    StateWords{"inspection-passed", ThingKind::none, "the inspection by eye was passed", "the inspection by eye was not passed", "inspect disturb-paint"},
    StateWords{"verified", ThingKind::none, "it was verified", "it was not verified", "wipe-sill wipe-counter wipe-floor dry-wipe"},
    StateWords{"passed", ThingKind::none, "the verification was passed", "the verification was not passed",
               "inspect wipe-sill wipe-counter wipe-floor dry-wipe disturb-paint"},
    StateWords{"occupants-in", ThingKind::none, "the occupants were back", "the occupants were not back", "admit-occupants"},
};

using job::MeasureKind;
constexpr std::array measures{
    MeasureWords{"reach", MeasureKind::length, ThingKind::component, "the reach of the floor sheeting"},
    MeasureWords{"debris-beyond", MeasureKind::truth, ThingKind::component, "debris on bare floor beyond the sheeting"},
    MeasureWords{"cleaned-margin", MeasureKind::length, ThingKind::none, "the strip cleaned beyond the work area"},
    MeasureWords{"fill", MeasureKind::share, ThingKind::bag, "the fill of the bag"},
    MeasureWords{"result", MeasureKind::number, ThingKind::none, "the result of the wipe"},
    MeasureWords{"cloth-area", MeasureKind::area, ThingKind::none, "the area wiped with one cloth"},
    MeasureWords{"bare-floor", MeasureKind::area, ThingKind::none, "the bare floor of the work area"},
    MeasureWords{"sections", MeasureKind::number, ThingKind::none, "the number of floor sections"},
    MeasureWords{"dust-seen", MeasureKind::truth, ThingKind::none, "dust seen"},
    MeasureWords{"places-seen", MeasureKind::number, ThingKind::none, "the places with dust seen"},
    MeasureWords{"way-out-free", MeasureKind::truth, ThingKind::none, "the way out free"},
    MeasureWords{"containment-whole", MeasureKind::truth, ThingKind::none, "the containment whole"},
    MeasureWords{"waited", MeasureKind::time, ThingKind::none, "the wait since the second darker cloth"},
    MeasureWords{"is-dry", MeasureKind::truth, ThingKind::none, "dry before the dry cloth"},
    MeasureWords{"soles-cleaned", MeasureKind::truth, ThingKind::person, "soles cleaned before leaving"},
    MeasureWords{"clothes-cleaned", MeasureKind::truth, ThingKind::person, "clothes cleaned before leaving"},
    MeasureWords{"skin-cleaned", MeasureKind::truth, ThingKind::bag, "outside of the bag vacuumed"},
    MeasureWords{"sealed", MeasureKind::truth, ThingKind::bag, "bag closed"},
    MeasureWords{"wet-cloths", MeasureKind::number, ThingKind::none, "the wet cloths used"},
    MeasureWords{"dry-cloths", MeasureKind::number, ThingKind::none, "the dry cloths used"},
    MeasureWords{"stepped-on-cleaned", MeasureKind::number, ThingKind::none, "the footsteps on cleaned floor"},
    MeasureWords{"visible-release", MeasureKind::truth, ThingKind::none, "dust seen outside the shroud"},
};

template <class List>
auto* find_named(const List& list, std::string_view name)
{
    const auto found = std::find_if(list.begin(), list.end(), [&](const auto& words) { return words.name == name; });
    return found == list.end() ? nullptr : &*found;
}

}

const ParameterWords* StepWords::parameter(std::string_view wanted) const
{
    return find_named(parameters, wanted);
}

const std::vector<StepWords>& step_words()
{
    static const std::vector<StepWords> all = words_of_all(static_cast<const job::Step*>(nullptr));
    return all;
}

const StepWords* find_step(std::string_view name) { return find_named(step_words(), name); }

std::string_view title_of(std::string_view step)
{
    const StepWords* words = find_step(step);
    return words ? words->title : step;
}

std::span<const StateWords> state_words() { return states; }
const StateWords* find_state(std::string_view name) { return find_named(states, name); }
std::span<const MeasureWords> measure_words() { return measures; }
const MeasureWords* find_measure_words(std::string_view name) { return find_named(measures, name); }

std::span<const std::string_view> kind_words(ThingKind thing)
{
    if (thing == ThingKind::supply) return Words<job::SupplyKindOf>::words;
    if (thing == ThingKind::opening) return Words<job::OpeningKindOf>::words;
    if (thing == ThingKind::component) return Words<job::ComponentKindOf>::words;
    if (thing == ThingKind::person) return Words<job::Role>::words;
    return {};
}

}
