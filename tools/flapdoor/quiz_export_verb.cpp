#include "quiz_verbs.hpp"

#include "quiz_files.hpp"

#include "quiz/blueprint.hpp"
#include "quiz/making/posing.hpp"
#include "quiz/qti/package.hpp"
#include "text/atomic_file.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

#include <filesystem>

namespace flapdoor::command {

namespace fs = std::filesystem;

namespace {

/// Every question of a bank, ready to be asked; what cannot be is told and left out.
std::vector<quiz::PaperItem> posed(const quiz::Bank& bank, quiz::Workshop& workshop, std::uint64_t seed)
{
    std::vector<quiz::PaperItem> items;
    const std::vector<std::string> drills = workshop.find().all();
    for (const quiz::Question& question : bank.questions) {
        const std::string name = bank.id + "/" + question.id.text;
        Result<quiz::Question> asked = quiz::pose(question, workshop, drills, seed);
        if (asked) items.push_back({name, seed, std::move(*asked)});
        else {
            fmt::print("{}\n", text::say_with("{} left out:", name));
            tell(asked.error());
        }
    }
    return items;
}

Result<quiz::QtiPackage> package_of(const QuizExportChoice& choice)
{
    quiz::Workshop workshop(scenario_folder());
    if (!choice.paper.empty()) {
        const auto files = quiz::load_blueprint(paper_path(choice.paper), workshop.find());
        if (!files) return failed(files.error());
        const Result<quiz::Paper> paper = quiz::draw_paper(*files, workshop, choice.seed);
        if (!paper) return failed(paper.error());
        return quiz::export_paper(*paper);
    }
    const Result<quiz::Bank> bank = quiz::load_bank(bank_path(choice.bank), workshop.find());
    if (!bank) return failed(bank.error());
    return quiz::export_items(bank->id, posed(*bank, workshop, choice.seed));
}

Result<void> write(const quiz::QtiPackage& package, const std::string& folder)
{
    for (const quiz::QtiFile& file : package.files) {
        const fs::path path = fs::path(folder) / file.path;
        if (const auto made = make_folder(path.parent_path().string()); !made) return made;
        if (const auto saved = text::save_atomically(path.string(), file.bytes); !saved) return saved;
    }
    return {};
}

}

int quiz_export(const QuizExportChoice& choice)
{
    if (choice.bank.empty() && choice.paper.empty()) {
        tell({problem_with("quiz-export", "a bank, or a paper with --paper", "neither")});
        return bad_use;
    }
    const Result<quiz::QtiPackage> package = package_of(choice);
    if (!package) {
        tell(package.error());
        return bad_file;
    }
    if (const auto written = write(*package, choice.out); !written) {
        tell(written.error());
        return bad_file;
    }
    for (const quiz::Loss& loss : package->losses) fmt::print("{}: {}\n", loss.item, loss.what);
    fmt::print("{}\n", text::say("Texts go out in the language spoken now, one at a time."));
    fmt::print("{}: {}\n", choice.out, text::say_number("{} file", "{} files", package->files.size()));
    return fine;
}

}
