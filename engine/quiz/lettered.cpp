#include "quiz/lettered.hpp"

#include "text/show.hpp"
#include "text/units.hpp"

#include <algorithm>

namespace flapdoor::quiz {
namespace {

std::string letter_of(std::size_t index)
{
    const std::string last(1, static_cast<char>('A' + index % 26));
    return index < 26 ? last : letter_of(index / 26 - 1) + last;
}

void add(std::vector<Lettered>& list, const std::string& id, const Phrase& text, bool is_right) { list.push_back({letter_of(list.size()), id, text, is_right}); }

std::vector<Lettered> of(const std::vector<Option>& options)
{
    std::vector<Lettered> list;
    for (const Option& option : options) add(list, option.id.text, option.text, option.is_right);
    return list;
}

std::vector<Lettered> of(const ChooseOne& asked) { return of(asked.options); }
std::vector<Lettered> of(const ChooseSeveral& asked) { return of(asked.options); }
std::vector<Lettered> of(const SpotFault& asked) { return of(asked.moments); }
std::vector<Lettered> of(const Predict& asked) { return of(asked.options); }
std::vector<Lettered> of(const Number&) { return {}; }
std::vector<Lettered> of(const Generated&) { return {}; }

std::vector<Lettered> of(const PutInOrder& asked)
{
    std::vector<Lettered> list;
    for (const LayCard& card : asked.cards) add(list, card.id.text, card.text, false);
    return list;
}

std::vector<Lettered> of(const PointAtPlan& asked)
{
    std::vector<Lettered> list;
    for (const Region& region : asked.regions) add(list, region.id.text, region.text, region.is_right);
    return list;
}

/// Letters of those ids: in the order of the ids for cards, of the letters otherwise.
std::string letters_of(const std::vector<Lettered>& list, const std::vector<std::string>& ids, const char* between, bool keeps_order)
{
    std::vector<std::string> letters;
    for (const std::string& id : ids)
        for (const Lettered& one : list)
            if (one.id == id) letters.push_back(one.letter);
    if (!keeps_order) std::sort(letters.begin(), letters.end());
    std::string text;
    for (const std::string& letter : letters) text += (text.empty() ? "" : between) + letter;
    return text.empty() ? "-" : text;
}

}

std::vector<Lettered> lettered(const Question& question)
{
    return std::visit([](const auto& kind) { return of(kind); }, question.kind);
}

Response right_response(const Question& question)
{
    if (const auto* number = std::get_if<Number>(&question.kind)) return Typed{number->answer.text};
    if (const auto* order = std::get_if<PutInOrder>(&question.kind)) return one_right_order(*order);
    Chosen right;
    for (const Lettered& one : lettered(question))
        if (one.is_right) right.options.push_back(one.id);
    if (std::holds_alternative<PointAtPlan>(question.kind)) return Pointed{right.options.empty() ? std::string() : right.options.front(), {}, {}};
    return right;
}

std::string key_text(const Question& question) { return response_text(question, right_response(question)); }

std::string response_text(const Question& question, const Response& response)
{
    const std::vector<Lettered> list = lettered(question);
    if (const auto* chosen = std::get_if<Chosen>(&response)) return letters_of(list, chosen->options, ", ", false);
    if (const auto* laid = std::get_if<Laid>(&response)) return letters_of(list, laid->cards, " ", true);
    if (const auto* typed = std::get_if<Typed>(&response)) return typed->text.empty() ? "-" : typed->text;
    if (const auto* pointed = std::get_if<Pointed>(&response)) {
        if (!pointed->region.empty()) return letters_of(list, {pointed->region}, "", true);
        return text::show_short(pointed->x) + ", " + text::show_short(pointed->y);
    }
    return "-";
}

}
