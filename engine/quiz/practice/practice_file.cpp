#include "quiz/practice/practice_file.hpp"

#include "text/atomic_file.hpp"
#include "text/input_file.hpp"
#include "text/reading.hpp"
#include "text/writing.hpp"

namespace flapdoor::quiz {

namespace {

/// Where a value of the root, or of its nth entry of a list, stands.
Place place_of(const text::Node& root, std::string_view key, std::optional<std::size_t> entry = std::nullopt, std::string_view inner = {})
{
    const auto* table = std::get_if<text::Table>(&root.value);
    const text::Node* node = table ? table->find(key) : nullptr;
    if (node == nullptr) return root.where;
    if (!entry) return node->where;
    const text::Node& one = std::get<text::Array>(node->value).at(*entry);
    const text::Node* value = std::get<text::Table>(one.value).find(inner);
    return value ? value->where : one.where;
}

void check_days(const text::Node& root, const Practice& practice, Problems& problems)
{
    if (practice.field_day && *practice.field_day < practice.begun)
        problems.push_back({place_of(root, "field-day"), "a day not before the first, " + text_of(practice.begun), text_of(*practice.field_day)});
    Day last = practice.begun;
    for (std::size_t i = 0; i < practice.attempts.size(); ++i) {
        const Day day = practice.attempts[i].day;
        if (day < last) problems.push_back({place_of(root, "attempt", i, "day"), "a day not before " + text_of(last), text_of(day)});
        else last = day;
    }
}

}

Result<Practice> read_practice(std::string_view text, const std::string& file_name)
{
    const Result<text::Node> root = text::parse_document(text, file_name);
    if (!root) return failed(root.error());
    Practice practice;
    Problems problems;
    text::read(*root, practice, problems);
    if (problems.empty()) check_days(*root, practice, problems);
    if (problems.empty()) return practice;
    text::sort_by_place(problems);
    return failed(std::move(problems));
}

Result<Practice> load_practice(const std::string& path)
{
    const Result<std::string> text = text::read_file(path);
    if (!text) return failed(text.error());
    return read_practice(*text, path);
}

Result<void> save_practice(const Practice& practice, const std::string& path) { return text::save_atomically(path, text::write_toml(practice)); }

}
