#include "quiz/blueprint.hpp"

#include "quiz/making/dice.hpp"
#include "quiz/making/posing.hpp"
#include "text/quote.hpp"
#include "text/reading.hpp"

#include <fmt/format.h>

#include <filesystem>
#include <set>

namespace flapdoor::quiz {
namespace {

struct Candidate {
    std::string item;
    const Question* question;
};

/// Two templates of one generator are one question with other words: a paper has one of them.
std::string source_of(const Candidate& candidate)
{
    const auto* made = std::get_if<Generated>(&candidate.question->kind);
    return made != nullptr ? "generator " + made->by.text : candidate.item;
}

std::vector<Candidate> candidates(const std::vector<Bank>& banks, const BlueprintPart& part)
{
    std::vector<Candidate> found;
    for (const Bank& bank : banks)
        for (const Question& question : bank.questions)
            if ((!part.topic || question.topic == *part.topic) && (!part.level || question.level == *part.level)) found.push_back({bank.id + "/" + question.id.text, &question});
    return found;
}

/// Beside the blueprint, or among the shipped banks.
std::optional<std::string> bank_file(const std::string& name, const std::string& blueprint, const std::string& drills)
{
    namespace fs = std::filesystem;
    std::error_code error;
    if (name.find_first_of("/\\") != std::string::npos) return std::nullopt;
    for (const fs::path& folder : {fs::path(blueprint).parent_path(), fs::path(drills) / "banks"})
        if (const fs::path file = folder / (name + ".toml"); file != fs::path(blueprint) && fs::exists(file, error)) return file.string();
    return std::nullopt;
}

void add_problem(Problems& problems, Place where, std::string expected, std::string found)
{
    Problem problem;
    problem.where = std::move(where);
    problem.expected = std::move(expected);
    problem.found = std::move(found);
    problems.push_back(std::move(problem));
}

std::string in_words(const BlueprintPart& part)
{
    std::string words = fmt::format("{} question{}", part.questions, part.questions == 1 ? "" : "s");
    if (part.topic) words += fmt::format(" about \"{}\"", word_of(*part.topic));
    if (part.level) words += fmt::format(" at level \"{}\"", word_of(*part.level));
    return words;
}

}

Result<Blueprint> read_blueprint(std::string_view text, const std::string& file_name)
{
    Result<Blueprint> blueprint = text::read_document<Blueprint>(text, file_name);
    if (!blueprint) return blueprint;
    Problems problems;
    int questions = 0;
    for (const BlueprintPart& part : blueprint->parts) questions += part.questions;
    if (questions > 200) add_problem(problems, {file_name, 0, 0}, "at most 200 questions on a paper", std::to_string(questions));
    if (!problems.empty()) return failed(std::move(problems));
    return blueprint;
}

Result<BlueprintFiles> load_blueprint(const std::string& path, const FindScenario& find)
{
    const Result<std::string> text = text::read_file(path);
    if (!text) return failed(text.error());
    Result<Blueprint> blueprint = read_blueprint(*text, path);
    if (!blueprint) return failed(std::move(blueprint.error()));
    BlueprintFiles files{std::move(*blueprint), {}};
    Problems problems;
    for (const rules::Marked& name : files.blueprint.banks) {
        const std::optional<std::string> file = bank_file(name.text, path, find.folder());
        if (!file) {
            add_problem(problems, name.where, "the name of a bank beside the blueprint, or of a shipped one", text::quoted(name.text));
            continue;
        }
        Result<Bank> bank = load_bank(*file, find);
        if (bank) files.banks.push_back(std::move(*bank));
        else problems.insert(problems.end(), bank.error().begin(), bank.error().end());
    }
    for (const rules::Marked& drill : files.blueprint.drills) {
        const auto scenario = find(drill.text);
        if (!scenario) problems.insert(problems.end(), scenario.error().begin(), scenario.error().end());
        else if (*scenario == nullptr) add_problem(problems, drill.where, "the name of a drill", text::quoted(drill.text));
    }
    if (!problems.empty()) return failed(std::move(problems));
    return files;
}

Result<Paper> draw_paper(const BlueprintFiles& files, Workshop& workshop, std::uint64_t seed)
{
    const Blueprint& blueprint = files.blueprint;
    std::vector<std::string> drills;
    for (const rules::Marked& drill : blueprint.drills) drills.push_back(drill.text);
    if (drills.empty()) drills = workshop.find().all();
    Paper paper{blueprint.id, blueprint.title, seed, blueprint.feedback, blueprint.limit, {}};
    Problems problems;
    std::set<std::string> used;
    for (std::size_t i = 0; i < blueprint.parts.size(); ++i) {
        const BlueprintPart& part = blueprint.parts[i];
        Dice dice(seed, fmt::format("part {}", i));
        std::vector<Candidate> pool = candidates(files.banks, part);
        dice.shuffle(pool);
        int taken = 0;
        for (const Candidate& candidate : pool) {
            if (taken == part.questions) break;
            if (used.contains(source_of(candidate))) continue;
            const std::uint64_t own = Dice(seed, candidate.item).seed();
            Result<Question> posed = pose(*candidate.question, workshop, drills, own);
            if (!posed) continue;
            used.insert(source_of(candidate));
            paper.items.push_back({candidate.item, own, std::move(*posed)});
            ++taken;
        }
        if (taken < part.questions) add_problem(problems, {}, in_words(part) + " for paper " + text::quoted(blueprint.id), fmt::format("{} that can be asked and are not on it yet", taken));
    }
    if (!problems.empty()) return failed(std::move(problems));
    Dice(seed, "order").shuffle(paper.items);
    return paper;
}

}
