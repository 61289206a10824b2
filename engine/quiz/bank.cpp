#include "quiz/bank.hpp"

#include "quiz/complaints.hpp"
#include "quiz/each_phrase.hpp"
#include "quiz/making/generator.hpp"
#include "text/quote.hpp"
#include "text/reading.hpp"

#include <algorithm>
#include <cctype>
#include <set>
#include <utility>

namespace flapdoor::quiz {
namespace {

/// Blanks that the program fills in the texts of such a question.
std::vector<std::string> blanks_of(const Question& question)
{
    if (std::holds_alternative<SpotFault>(question.kind)) return {"rule", "reason", "cite"};
    const auto* made = std::get_if<Generated>(&question.kind);
    const Generator* generator = made != nullptr ? find_generator(made->by.text) : nullptr;
    if (generator == nullptr) return {};
    return {generator->blanks.begin(), generator->blanks.end()};
}

void check_plan(const rules::Marked& scenario, const rules::Marked& plan, const FindScenario& find, Complaints& complaints)
{
    const std::vector<std::string> all = find.all();
    if (std::find(all.begin(), all.end(), scenario.text) == all.end()) return complaints.unknown(scenario, "scenario", all);
    const std::vector<std::string> plans = find.plans(scenario.text);
    if (std::find(plans.begin(), plans.end(), plan.text) == plans.end()) complaints.unknown(plan, "work plan of that scenario", plans);
}

/// Are the runs there that a question speaks of?
void check_runs(const Question& question, const FindScenario& find, Complaints& complaints)
{
    if (const auto* spot = std::get_if<SpotFault>(&question.kind)) check_plan(spot->scenario, spot->plan, find, complaints);
    if (const auto* predict = std::get_if<Predict>(&question.kind))
        for (const rules::Marked& plan : predict->plans) check_plan(predict->scenario, plan, find, complaints);
}

/// What is wrong with the meaning of one question, whatever its kind.
void check_question(Question& question, const FindScenario& find, Problems& problems)
{
    Complaints complaints(question.id.text, problems);
    if (question.cite.empty()) complaints.add(question.id.where, "a `cite`, or \"" + std::string(no_source) + "\"", "none");
    for (const auto& [key, phrase] : {std::pair{"text", &question.text}, std::pair{"why", &question.why}})
        if (phrase->is_empty()) complaints.add(phrase->where, "words in `" + std::string(key) + "`", "none");
    if (auto* pointing = std::get_if<PointAtPlan>(&question.kind)) locate(*pointing, find, complaints);
    std::visit([&](const auto& kind) { check(kind, question.id.where, complaints); }, question.kind);
    check_runs(question, find, complaints);
    const std::vector<std::string> blanks = blanks_of(question);
    each_phrase(question, [&](const Phrase& phrase) {
        for (const std::string& blank : blanks_in(phrase.en))
            if (std::find(blanks.begin(), blanks.end(), blank) == blanks.end()) complaints.unknown({blank, phrase.where}, "blank", blanks);
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
