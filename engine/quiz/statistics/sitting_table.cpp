#include "quiz/statistics/sitting_table.hpp"

#include "text/language.hpp"

#include <algorithm>
#include <map>

namespace flapdoor::quiz {

namespace {

/// The question of an item "bank/question", or null.
const Question* question_of(std::span<const Bank> banks, const std::string& item)
{
    const std::size_t slash = item.find('/');
    if (slash == std::string::npos) return nullptr;
    for (const Bank& bank : banks)
        if (bank.id == item.substr(0, slash)) return find_question(bank, item.substr(slash + 1));
    return nullptr;
}

/// The question's words; what every paper fills in anew is left open.
std::string title_of(const Question& question)
{
    Phrase text = question.text;
    for (const std::string& blank : blanks_in(text.en)) text.blanks.emplace(blank, phrase("..."));
    return shown(text);
}

template <class List>
std::vector<OfferedAnswer> offered_in(const List& list)
{
    std::vector<OfferedAnswer> offered;
    for (const auto& one : list) offered.push_back({one.id.text, shown(one.text), one.is_right});
    return offered;
}

/// What the bank itself offers; answers that are worked out, typed or laid are told as they were given.
std::vector<OfferedAnswer> offered_by(const Question& question)
{
    if (const auto* one = std::get_if<ChooseOne>(&question.kind)) return offered_in(one->options);
    if (const auto* several = std::get_if<ChooseSeveral>(&question.kind)) return offered_in(several->options);
    if (const auto* point = std::get_if<PointAtPlan>(&question.kind)) return offered_in(point->regions);
    return {};
}

std::string joined(const std::vector<std::string>& words)
{
    std::string all;
    for (const std::string& word : words) all += (all.empty() ? "" : ", ") + word;
    return all;
}

/// An answer as it was given, for those that no list offers.
std::string as_given(const Answered& answer)
{
    if (answer.is_right) return std::string(text::say("a right answer"));
    if (!answer.misconceptions.empty()) return joined(answer.misconceptions);
    if (const auto* typed = std::get_if<Typed>(&answer.response)) return typed->text;
    if (const auto* laid = std::get_if<Laid>(&answer.response)) return joined(laid->cards);
    if (const auto* chosen = std::get_if<Chosen>(&answer.response)) return joined(chosen->options);
    return std::string(text::say("another place"));
}

GivenAnswer given(const Answered& answer, const AskedQuestion& question)
{
    GivenAnswer out;
    out.points = static_cast<double>(answer.share.part) / static_cast<double>(answer.share.whole) * question.most;
    out.points = std::clamp(out.points, 0.0, question.most);
    if (std::holds_alternative<LeftOut>(answer.response)) return out;
    std::vector<std::string> ids;
    if (const auto* chosen = std::get_if<Chosen>(&answer.response)) ids = chosen->options;
    else if (const auto* pointed = std::get_if<Pointed>(&answer.response); pointed && !pointed->region.empty()) ids = {pointed->region};
    const auto is_offered = [&](const std::string& id) { return std::any_of(question.offered.begin(), question.offered.end(), [&](const OfferedAnswer& one) { return one.id == id; }); };
    out.chosen = !ids.empty() && std::all_of(ids.begin(), ids.end(), is_offered) ? ids : std::vector<std::string>{as_given(answer)};
    return out;
}

}

AnswerTable table_of(std::span<const SittingResult> sittings, std::span<const Bank> banks)
{
    AnswerTable table;
    std::map<std::string, std::size_t> places;
    for (const SittingResult& sitting : sittings) {
        if (!sitting.is_finished) continue;
        for (const Answered& answer : sitting.answers) {
            if (!places.emplace(answer.item, table.questions.size()).second) continue;
            AskedQuestion asked;
            asked.id = answer.item;
            asked.most = answer.of;
            if (const Question* question = question_of(banks, answer.item)) {
                asked.title = title_of(*question);
                asked.offered = offered_by(*question);
            }
            table.questions.push_back(std::move(asked));
        }
    }
    for (const SittingResult& sitting : sittings) {
        if (!sitting.is_finished || sitting.answers.empty()) continue;
        AnswerRow row{sitting.person, {}};
        row.answers.resize(table.questions.size());
        for (const Answered& answer : sitting.answers) {
            const std::size_t place = places.at(answer.item);
            row.answers[place] = given(answer, table.questions[place]);
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

}
