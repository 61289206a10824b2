#include "job/card_key.hpp"

#include "core/hash.hpp"
#include "text/field_types.hpp"

#include <map>
#include <type_traits>

namespace flapdoor::job {

std::uint64_t card_key(const Card& card)
{
    Fingerprint print;
    std::visit([&]<class S>(const S& step) {
        print.add_text(S::name);
        print.add_text(card.label);
        if (!card.label.empty()) return;
        S::fields(step, [&]<class Field>(std::string_view, const Field& field, const auto&...) {
            if constexpr (text::is_id<Field> && !std::is_same_v<Field, SupplyId>) print.add_text(field.name);
        });
    }, card.step);
    return print.value();
}

std::uint64_t subject_key(const Card& card)
{
    Fingerprint print;
    std::visit([&]<class S>(const S& step) {
        print.add_text(S::name);
        S::fields(step, [&]<class Field>(std::string_view, const Field& field, const auto&...) {
            if constexpr (text::is_id<Field> && !std::is_same_v<Field, SupplyId> && !std::is_same_v<Field, BagId>) print.add_text(field.name);
        });
    }, card.step);
    return print.value();
}

std::vector<int> cards_in_common(const WorkPlan& first, const WorkPlan& second)
{
    std::map<std::uint64_t, std::vector<int>> there;
    for (std::size_t i = 0; i < second.cards.size(); ++i) there[subject_key(second.cards[i])].push_back(static_cast<int>(i));
    std::map<std::uint64_t, std::size_t> met;
    std::vector<int> twins;
    for (const Card& card : first.cards) {
        const std::uint64_t key = subject_key(card);
        const std::size_t turn = met[key]++;
        twins.push_back(turn < there[key].size() ? there[key][turn] : -1);
    }
    return twins;
}

}
