#include "quiz/bank.hpp"

#include "quiz/complaints.hpp"
#include "quiz/each_phrase.hpp"
#include "text/quote.hpp"
#include "text/reading.hpp"

#include <algorithm>
#include <cctype>
#include <set>
#include <utility>

namespace flapdoor::quiz {
namespace {

/// What is wrong with the meaning of one question, whatever its kind.
void check_question(Question& question, const FindScenario& find, Problems& problems)
{
    Complaints complaints(question.id.text, problems);
    if (question.cite.empty()) complaints.add(question.id.where, "a `cite`, or \"" + std::string(no_source) + "\"", "none");
    for (const auto& [key, phrase] : {std::pair{"text", &question.text}, std::pair{"why", &question.why}})
        if (phrase->is_empty()) complaints.add(phrase->where, "words in `" + std::string(key) + "`", "none");
    if (auto* pointing = std::get_if<PointAtPlan>(&question.kind)) locate(*pointing, find, complaints);
    std::visit([&](const auto& kind) { check(kind, question.id.where, complaints); }, question.kind);
    each_phrase(question, [&](const Phrase& phrase) {
        if (phrase.es.empty()) return;
        const auto en = blanks_in(phrase.en), es = blanks_in(phrase.es);
        if (std::set(en.begin(), en.end()) != std::set(es.begin(), es.end())) complaints.add(phrase.where, "the same blanks in both languages", text::quoted(phrase.es));
    });
}

Result<Bank> checked(Result<Bank> bank, const FindScenario& find)
{
    if (!bank) return bank;
    Problems problems;
    std::set<std::string> ids;
    for (Question& question : bank->questions) {
        if (!ids.insert(question.id.text).second && problems.size() < text::most_problems)
            problems.push_back({question.id.where, "an id that no other question has", text::quoted(question.id.text) + " a second time"});
        check_question(question, find, problems);
    }
    if (problems.empty()) return bank;
    text::sort_by_place(problems);
    return failed(std::move(problems));
}

/// A sentence has a small word of letters; figures and names do without.
bool is_sentence(const std::string& text)
{
    int letters = 0;
    bool begins_small = false;
    for (const char c : text + " ") {
        if (std::isalpha(static_cast<unsigned char>(c)) != 0) {
            if (letters++ == 0) begins_small = std::islower(static_cast<unsigned char>(c)) != 0;
            continue;
        }
        if (letters >= 4 && begins_small) return true;
        letters = 0;
    }
    return false;
}

}

Result<Bank> read_bank(std::string_view text, const std::string& file_name, const FindScenario& find)
{
    return checked(text::read_document<Bank>(text, file_name), find);
}

Result<Bank> load_bank(const std::string& path, const FindScenario& find) { return checked(text::load<Bank>(path), find); }

const Question* find_question(const Bank& bank, std::string_view id)
{
    const auto found = std::find_if(bank.questions.begin(), bank.questions.end(), [&](const Question& question) { return question.id.text == id; });
    return found == bank.questions.end() ? nullptr : &*found;
}

std::vector<Place> without_spanish(const Bank& bank)
{
    std::vector<Place> places;
    const auto look = [&](const Phrase& phrase) {
        if (phrase.es.empty() && is_sentence(phrase.en)) places.push_back(phrase.where);
    };
    look(bank.title);
    for (const Question& question : bank.questions) each_phrase(question, look);
    return places;
}

}
