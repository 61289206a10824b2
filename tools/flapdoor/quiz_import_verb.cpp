#include "quiz_verbs.hpp"

#include "quiz_files.hpp"

#include "quiz/qti/import.hpp"
#include "text/atomic_file.hpp"
#include "text/input_file.hpp"
#include "text/language.hpp"
#include "text/quote.hpp"
#include "text/writing.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

namespace flapdoor::command {

namespace {

std::string told(const quiz::ImportNote& note)
{
    const std::string item = text::printable(note.item);
    if (note.is_question_lost) return text::say_with("{} was left out: {}", item, note.what);
    return item.empty() ? note.what : fmt::format("{}: {}", item, note.what);
}

}

int quiz_import(const QuizImportChoice& choice)
{
    const auto files = files_in(choice.files, ".xml");
    if (!files) {
        tell(files.error());
        return bad_file;
    }
    if (std::error_code error; std::filesystem::exists(choice.out, error)) {
        tell({problem_with(choice.out, "a file that is not there yet", "one that is; nothing was written")});
        return bad_use;
    }
    const quiz::FindScenario find = quiz::scenarios_in(scenario_folder());
    std::vector<quiz::Question> questions;
    bool is_any_bad = false;
    unsigned long lost = 0;
    for (const std::string& file : *files) {
        const Result<std::string> xml = text::read_file(file);
        const Result<quiz::Imported> imported = xml ? quiz::import_item(*xml, file, find) : Result<quiz::Imported>(failed(xml.error()));
        if (!imported) {
            tell(imported.error());
            is_any_bad = true;
            continue;
        }
        questions.insert(questions.end(), imported->questions.begin(), imported->questions.end());
        lost += std::any_of(imported->notes.begin(), imported->notes.end(), [](const quiz::ImportNote& note) { return note.is_question_lost; }) ? 1 : 0;
        for (const quiz::ImportNote& note : imported->notes) fmt::print("{}:{}:{}: {}\n", note.where.file, note.where.line, note.where.column, told(note));
    }
    if (questions.empty()) {
        tell({problem_with(choice.files.front(), "at least one question that can be taken", "none; nothing was written")});
        return bad_file;
    }
    const std::string bank = text::write_toml(quiz::bank_of_imported(choice.id, choice.title, questions));
    // What was written here must be readable here.
    if (const auto read = quiz::read_bank(bank, choice.out, find); !read) {
        tell(read.error());
        return bad_file;
    }
    if (const Result<void> saved = text::save_atomically(choice.out, bank); !saved) {
        tell(saved.error());
        return bad_file;
    }
    if (lost > 0) fmt::print("{}\n", text::say_number("{} question was left out.", "{} questions were left out.", lost));
    fmt::print("{}: {}\n", choice.out, text::say_number("{} question", "{} questions", questions.size()));
    return is_any_bad ? bad_file : fine;
}

}
