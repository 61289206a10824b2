#pragma once

#include "core/result.hpp"
#include "quiz/find_scenario.hpp"
#include "quiz/question.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// A file of questions. Only `read_bank` and `load_bank` give banks that have been checked.
struct Bank {
    static constexpr int format_version = 1;

    int format = format_version;
    std::string id;
    Phrase title;
    std::string edition;                ///< which text the answers follow, and of when
    std::vector<Question> questions;

    static void fields(auto& self, auto&& visit)
    {
        visit("format", self.format, required, Range{1, format_version});
        visit("id", self.id, required, About{"name of the bank; stays for good: statistics count by it"});
        visit("title", self.title, required);
        visit("edition", self.edition, required, About{"which text the answers follow, and of when"});
        visit("question", self.questions, required);
    }
};

/// A bank from text or disk, checked; every problem with its place. Plans are read from `find`'s scenarios.
Result<Bank> read_bank(std::string_view text, const std::string& file_name, const FindScenario& find);
Result<Bank> load_bank(const std::string& path, const FindScenario& find);

/// The question of that id, or null.
const Question* find_question(const Bank& bank, std::string_view id);

/// Texts that stand in one language only though they are sentences: what a translator still has to do.
std::vector<Place> without_spanish(const Bank& bank);

}
