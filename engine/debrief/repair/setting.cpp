#include "debrief/repair/setting.hpp"

#include "rules/value_match.hpp"
#include "text/writing.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::debrief {

namespace {

using Setting = std::pair<std::string, text::Node>;

/// Is that value none of those forbidden?
bool is_allowed(const text::Node& value, const rules::Match& match, const rules::ParameterWords& words, const std::string& object, const job::Scenario& scenario)
{
    const std::string text = text::plain_text(value);
    return std::none_of(match.any_of.words.begin(), match.any_of.words.end(),
                        [&](const std::string& forbidden) { return rules::fits(text, forbidden, words, object, scenario); });
}

/// Values worth trying for a key, the likeliest first.
std::vector<text::Node> candidates(const Shelf& shelf, int card, const rules::ParameterWords& words)
{
    const std::string key(words.name);
    std::vector<text::Node> all;
    if (words.type == rules::ParameterType::flag) {
        all.push_back(text::leaf_node(true));
        all.push_back(text::leaf_node(false));
        return all;
    }
    if (std::optional<text::Node> twins = shelf.pattern_value(card, key)) all.push_back(std::move(*twins));
    for (text::Node& value : shelf.pattern_values(shelf.entry(card).step, key)) all.push_back(std::move(value));
    for (const std::string_view word : words.words) all.push_back(text::leaf_node(std::string(word)));
    if (words.thing == rules::ThingKind::supply)
        for (const job::Supply& supply : shelf.shop().scenario.supplies) all.push_back(text::leaf_node(supply.id.name));
    return all;
}

}

std::vector<Setting> settings_against(const Shelf& shelf, int card, const rules::Spot& spot, const std::string& object)
{
    const rules::StepWords* step = rules::find_step(shelf.entry(card).step);
    if (step == nullptr) return {};
    // A switch is turned round before another tool is taken.
    std::vector<const rules::Match*> order;
    for (const rules::Match& match : spot.with.all) order.push_back(&match);
    const auto is_flag = [&](const rules::Match* match) {
        const rules::ParameterWords* words = step->parameter(match->parameter);
        return words != nullptr && words->type == rules::ParameterType::flag;
    };
    std::stable_partition(order.begin(), order.end(), is_flag);
    for (const rules::Match* match : order) {
        const rules::ParameterWords* words = step->parameter(match->parameter);
        if (words == nullptr) continue;
        for (text::Node& value : candidates(shelf, card, *words))
            if (is_allowed(value, *match, *words, object, shelf.shop().scenario)) return {{match->parameter, std::move(value)}};
    }
    return {};
}

std::string_view deciding_step(std::string_view measure)
{
    struct Decider {
        std::string_view measure, step;
    };
    static constexpr std::array deciders{Decider{"reach", "lay-floor-sheet"}, Decider{"soles-cleaned", "clean-off"}, Decider{"clothes-cleaned", "clean-off"},
                                         Decider{"skin-cleaned", "vacuum-bag"}, Decider{"sealed", "close-bag"}};
    const auto found = std::find_if(deciders.begin(), deciders.end(), [&](const Decider& decider) { return decider.measure == measure; });
    return found == deciders.end() ? std::string_view{} : found->step;
}

}
