#include "quiz/statistics/findings.hpp"

#include "text/language.hpp"
#include "text/quote.hpp"
#include "text/show.hpp"

#include <algorithm>

namespace flapdoor::quiz {

namespace {

constexpr double too_easy = 0.95, too_hard = 0.20, idle = 0.05;

/// Whether exactly one of several offered answers is the key: only then do wrong answers compete with it.
const AnswerShare* only_key(const QuestionStatistics& question)
{
    const AnswerShare* key = nullptr;
    for (const AnswerShare& answer : question.answers) {
        if (!answer.is_key) continue;
        if (key != nullptr) return nullptr;
        key = &answer;
    }
    return key;
}

/// A wrong answer that was given, not a blank.
bool is_distractor(const AnswerShare& answer) { return !answer.is_key && !answer.id.empty(); }

bool varies(const QuestionStatistics& question) { return question.with_total.has_value(); }

}

std::vector<Found> findings_in(const QuestionStatistics& question)
{
    std::vector<Found> found;
    const bool is_backwards = question.with_rest && *question.with_rest < 0.0;
    if (varies(question) && (is_backwards || (question.group > 0 && question.upper_lower <= 0.0))) found.push_back({Finding::check_the_key, {}});
    const AnswerShare* key = only_key(question);
    const auto beats_the_key = [&](const AnswerShare& answer) { return key && answer.upper > key->upper; };
    for (const AnswerShare& answer : question.answers)
        if (is_distractor(answer) && beats_the_key(answer)) found.push_back({Finding::strong_choose_another, answer.id});
    for (const AnswerShare& answer : question.answers)
        if (is_distractor(answer) && !beats_the_key(answer) && answer.people() > 1 && answer.with_rest && *answer.with_rest > 0.0) found.push_back({Finding::ambiguous_answer, answer.id});
    for (const AnswerShare& answer : question.answers)
        if (is_distractor(answer) && question.people >= enough_people && answer.share < idle) found.push_back({Finding::idle_answer, answer.id});
    if (question.difficulty > too_easy || question.difficulty < too_hard) found.push_back({Finding::says_little, {}});
    return found;
}

std::string tell(const Found& found, const QuestionStatistics& question)
{
    const auto at = std::find_if(question.answers.begin(), question.answers.end(), [&](const AnswerShare& answer) { return answer.id == found.answer; });
    const std::string answer = at == question.answers.end() ? std::string() : text::quoted(at->text.empty() ? at->id : at->text);
    switch (found.what) {
        case Finding::check_the_key: return std::string(text::say("Check the key: those who are better in the rest are no better here."));
        case Finding::strong_choose_another: return text::say_with("Check the key: more of the strongest people choose {} than the answer that counts as right.", answer);
        case Finding::ambiguous_answer: return text::say_with("Perhaps ambiguous: those who choose {} are better in the rest than those who do not.", answer);
        case Finding::idle_answer: return text::say_with("Nearly nobody chooses {}: it does no work.", answer);
        case Finding::says_little:
            if (question.difficulty >= 1.0) return std::string(text::say("Says little: everybody has it right."));
            if (question.difficulty <= 0.0) return std::string(text::say("Says little: nobody has it right."));
            return text::say_with(question.difficulty > 0.5 ? "Says little: {} have it right." : "Says little: only {} have it right.", text::show_percent(question.difficulty));
    }
    return {};
}

}
