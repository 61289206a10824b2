#include "quiz/practice/pool.hpp"

#include "quiz/making/posing.hpp"

#include <algorithm>
#include <filesystem>

namespace flapdoor::quiz {

namespace fs = std::filesystem;

PracticePool::PracticePool(std::vector<Bank> from) : banks(std::move(from))
{
    for (const Bank& bank : banks)
        for (const Question& question : bank.questions) items.push_back({bank.id + "/" + question.id.text, &question});
    topics = topics_of(items);
}

Result<PracticePool> load_pool(const FindScenario& find)
{
    std::vector<fs::path> files;
    std::error_code unreadable;
    for (const fs::directory_entry& entry : fs::directory_iterator(fs::path(find.folder()) / "banks", unreadable))
        if (entry.path().extension() == ".toml") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    std::vector<Bank> banks;
    Problems problems;
    for (const fs::path& file : files) {
        Result<Bank> bank = load_bank(file.string(), find);
        if (bank) banks.push_back(std::move(*bank));
        else problems.insert(problems.end(), bank.error().begin(), bank.error().end());
    }
    if (!problems.empty()) return failed(std::move(problems));
    return PracticePool(std::move(banks));
}

std::optional<PracticeQuestion> question_of(const Practice& practice, std::span<const PoolItem> pool, Topic topic, Workshop& workshop)
{
    const std::uint64_t seed = practice.attempts.size() + 1;
    const std::vector<std::string> drills = workshop.find().all();
    for (const PoolItem& one : by_turn(practice, pool, topic))
        if (Result<Question> question = pose(*one.question, workshop, drills, seed)) return PracticeQuestion{one, {one.item, seed, std::move(*question)}};
    return std::nullopt;
}

}
