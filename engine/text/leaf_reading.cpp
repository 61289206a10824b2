#include "text/leaf_reading.hpp"

#include "text/nearest.hpp"
#include "text/quote.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace flapdoor::text {
namespace {

std::string named(const Subject& subject)
{
    if (subject.key.empty()) return {};
    if (subject.entry == 0) return fmt::format("`{}` to be ", subject.key);
    return fmt::format("entry {} of `{}` to be ", subject.entry, subject.key);
}

std::string from_to(std::string_view what, const std::string& least, const std::string& most)
{
    return fmt::format("{} from {} to {}", what, least, most);
}

/// A value that stands there without its unit.
bool is_bare_number(const Node& node)
{
    return std::holds_alternative<std::int64_t>(node.value) || std::holds_alternative<double>(node.value);
}

std::string found_instead_of_quantity(const Node& node)
{
    return is_bare_number(node) ? found_text(node) + " (no unit and no quotes)" : found_text(node);
}

bool has_control_character(std::string_view text)
{
    return std::any_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; });
}

}

std::string found_text(const Node& node)
{
    struct Shown {
        std::string operator()(const std::string& value) const { return text::quoted(value); }
        std::string operator()(std::int64_t value) const { return fmt::format("{}", value); }
        std::string operator()(double value) const { return canonical_text(value); }
        std::string operator()(bool value) const { return value ? "true" : "false"; }
        std::string operator()(const Array& value) const { return value.empty() ? "an empty list" : "a list"; }
        std::string operator()(const Table&) const { return "a table"; }
    };
    return std::visit(Shown{}, node.value);
}

void refuse(const Node& node, const Subject& subject, const std::string& expected, Problems& problems)
{
    refuse_as(node, subject, expected, found_text(node), problems);
}

void refuse_as(const Node& node, const Subject& subject, const std::string& expected, const std::string& found, Problems& problems)
{
    if (problems.size() < most_problems) problems.push_back({node.where, named(subject) + expected, found});
}

void refuse_missing(const Place& table, std::string_view key, Problems& problems)
{
    if (problems.size() < most_problems) problems.push_back({table, fmt::format("the key `{}`", key), "a table without it"});
}

void refuse_unknown(const Entry& entry, std::span<const std::string_view> known, Problems& problems)
{
    if (problems.size() >= most_problems) return;
    const std::string found = "unknown key " + text::quoted(entry.key);
    if (const auto near = nearest(entry.key, known)) {
        problems.push_back({entry.where, fmt::format("a known key, the nearest is \"{}\"", *near), found});
        return;
    }
    const std::string all = one_of(known);
    problems.push_back({entry.where, all.empty() ? "no key here" : "a known key: " + all, found});
}

std::optional<bool> take_flag(const Node& node, const Subject& subject, Problems& problems)
{
    if (const bool* flag = std::get_if<bool>(&node.value)) return *flag;
    refuse(node, subject, "true or false", problems);
    return std::nullopt;
}

std::optional<std::int64_t> take_whole(const Node& node, const Subject& subject, Range<std::int64_t> range, bool is_plain, Problems& problems)
{
    const auto* number = std::get_if<std::int64_t>(&node.value);
    if (number && *number >= range.least && *number <= range.most) return *number;
    const bool is_silent = is_plain && !number;     // the limits of the machine's number mean nothing to a reader
    const std::string expected = is_silent ? "a whole number" : fmt::format("a whole number from {} to {}", range.least, range.most);
    refuse(node, subject, expected, problems);
    return std::nullopt;
}

std::optional<double> take_number(const Node& node, const Subject& subject, const std::optional<Range<double>>& range, Problems& problems)
{
    std::optional<double> number;
    if (const auto* whole = std::get_if<std::int64_t>(&node.value)) number = static_cast<double>(*whole);
    if (const auto* real = std::get_if<double>(&node.value); real && std::isfinite(*real)) number = *real;
    if (number && (!range || (*number >= range->least && *number <= range->most))) return number;

    const auto bound = [](double value) { return fmt::format("{}", value); };
    refuse(node, subject, range ? from_to("a number", bound(range->least), bound(range->most)) : "a number", problems);
    return std::nullopt;
}

std::optional<double> take_si(const Node& node, const Subject& subject, Kind kind, const std::optional<Range<double>>& range, Problems& problems)
{
    const auto* text = std::get_if<std::string>(&node.value);
    if (!text) {
        refuse_as(node, subject, expectation(kind), found_instead_of_quantity(node), problems);
        return std::nullopt;
    }
    const Result<double> si = parse_si(*text, kind, node.where);
    if (!si) {
        refuse_as(node, subject, si.error().front().expected, si.error().front().found, problems);
        return std::nullopt;
    }
    if (!range || (*si >= range->least && *si <= range->most)) return *si;
    const std::string a_kind = expectation(kind).substr(0, expectation(kind).find(" such as"));
    refuse(node, subject, from_to(a_kind, canonical_text(range->least, kind), canonical_text(range->most, kind)), problems);
    return std::nullopt;
}

std::optional<Picograms> take_picograms(const Node& node, const Subject& subject, const std::optional<Range<Picograms>>& range, Problems& problems)
{
    const auto* text = std::get_if<std::string>(&node.value);
    if (!text) {
        refuse_as(node, subject, expectation(Kind::dust_mass), found_instead_of_quantity(node), problems);
        return std::nullopt;
    }
    const Result<Picograms> amount = parse_picograms(*text, node.where);
    if (!amount) {
        refuse_as(node, subject, amount.error().front().expected, amount.error().front().found, problems);
        return std::nullopt;
    }
    if (!range || (*amount >= range->least && *amount <= range->most)) return *amount;
    refuse(node, subject, from_to("a mass", canonical_text(range->least), canonical_text(range->most)), problems);
    return std::nullopt;
}

std::optional<std::string> take_text(const Node& node, const Subject& subject, bool may_be_empty, Problems& problems)
{
    const auto* text = std::get_if<std::string>(&node.value);
    if (text && (may_be_empty || !text->empty())) return *text;
    refuse(node, subject, "text in quotes", problems);
    return std::nullopt;
}

std::optional<std::string> take_name(const Node& node, const Subject& subject, bool may_be_empty, Problems& problems)
{
    constexpr std::size_t longest = 80;
    const auto* name = std::get_if<std::string>(&node.value);
    if (name && name->empty() && may_be_empty) return *name;
    if (name && !name->empty() && name->size() <= longest && name->front() != ' ' && name->back() != ' ' && !has_control_character(*name))
        return *name;
    const bool is_unfit = name && !name->empty();
    refuse(node, subject, is_unfit ? "a name of at most 80 bytes, without spaces around it or line ends in it" : "a name in quotes", problems);
    return std::nullopt;
}

std::optional<std::size_t> take_word(const Node& node, const Subject& subject, std::span<const std::string_view> words, Problems& problems)
{
    const auto* word = std::get_if<std::string>(&node.value);
    if (word) {
        const auto at = std::find(words.begin(), words.end(), *word);
        if (at != words.end()) return static_cast<std::size_t>(at - words.begin());
    }
    if (problems.size() >= most_problems) return std::nullopt;
    const auto near = word ? nearest(*word, words) : std::nullopt;
    const bool is_short_list = words.size() <= 6;
    if (near && is_short_list) refuse(node, subject, fmt::format("{}; the nearest is \"{}\"", one_of(words), *near), problems);
    else if (near) refuse(node, subject, fmt::format("a known word, the nearest is \"{}\"", *near), problems);
    else refuse(node, subject, one_of(words), problems);
    return std::nullopt;
}

const Array* take_list(const Node& node, const Subject& subject, bool may_be_empty, Problems& problems)
{
    const auto* list = std::get_if<Array>(&node.value);
    if (!list) {
        refuse(node, subject, "a list", problems);
        return nullptr;
    }
    if (list->empty() && !may_be_empty) refuse(node, subject, "a list with at least one entry", problems);
    if (list->size() <= most_entries) return list;
    refuse_as(node, subject, fmt::format("a list of at most {} entries", most_entries), fmt::format("{} entries", list->size()), problems);
    return nullptr;
}

const Table* take_table(const Node& node, const Subject& subject, Problems& problems)
{
    const auto* table = std::get_if<Table>(&node.value);
    if (!table) {
        refuse(node, subject, "a table", problems);
        return nullptr;
    }
    if (table->entries.size() <= most_entries) return table;
    refuse_as(node, subject, fmt::format("a table of at most {} keys", most_entries), fmt::format("{} keys", table->entries.size()), problems);
    return nullptr;
}

}
