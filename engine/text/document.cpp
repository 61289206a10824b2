#include "text/document.hpp"

#include "text/nesting.hpp"

#include <fmt/format.h>
#include <toml++/toml.h>

#include <algorithm>
#include <exception>
#include <tuple>
#include <utility>

namespace flapdoor::text {
namespace {

Place place_of(const std::string& file, const toml::source_position& position)
{
    return {file, static_cast<int>(position.line), static_cast<int>(position.column)};
}

/// toml++'s tree turned into ours; gathers what we do not take.
class Conversion {
public:
    explicit Conversion(const std::string& file) : file_(file) {}

    Node convert(const toml::node& from, int depth)
    {
        Node node{place_of(file_, from.source().begin), false};
        if (depth > deepest) refuse(node.where, fmt::format("at most {} tables and lists inside one another", deepest), "more");
        else if (++values_ > most_values) refuse(node.where, fmt::format("at most {} values in a file", most_values), "more");
        else from.visit([&](const auto& value) { fill(node, value, depth); });
        return node;
    }

    Problems problems;

private:
    void fill(Node& node, const toml::table& from, int depth)
    {
        Table table;
        table.entries.reserve(from.size());
        for (auto&& [key, value] : from) {
            if (!problems.empty()) return;
            table.entries.push_back({std::string(key.str()), place_of(file_, key.source().begin), convert(value, depth + 1)});
        }
        std::sort(table.entries.begin(), table.entries.end(), [](const Entry& a, const Entry& b) {
            return std::tie(a.where.line, a.where.column, a.key) < std::tie(b.where.line, b.where.column, b.key);
        });
        node.value = std::move(table);
    }

    void fill(Node& node, const toml::array& from, int depth)
    {
        Array array;
        array.reserve(from.size());
        for (const toml::node& value : from) {
            if (!problems.empty()) return;
            array.push_back(convert(value, depth + 1));
        }
        node.value = std::move(array);
    }

    void fill(Node& node, const toml::value<std::string>& from, int) { node.value = from.get(); }
    void fill(Node& node, const toml::value<std::int64_t>& from, int) { node.value = from.get(); }
    void fill(Node& node, const toml::value<double>& from, int) { node.value = from.get(); }
    void fill(Node& node, const toml::value<bool>& from, int) { node.value = from.get(); }

    template <class DateOrTime>
    void fill(Node& node, const toml::value<DateOrTime>&, int)
    {
        refuse(node.where, "text, a number, true or false, a list or a table", "a date or time without quotes");
    }

    void refuse(const Place& where, std::string expected, std::string found)
    {
        if (problems.empty()) problems.push_back({where, std::move(expected), std::move(found)});
    }

    const std::string& file_;
    std::size_t values_ = 0;
};

Problem unreadable(Place where, std::string_view why)
{
    constexpr std::string_view habit = "Error while parsing ";
    if (why.starts_with(habit)) why.remove_prefix(habit.size());
    return {std::move(where), "correct TOML", "a mistake: " + std::string(why)};
}

}

const Node* Table::find(std::string_view key) const
{
    const auto entry = std::find_if(entries.begin(), entries.end(), [&](const Entry& e) { return e.key == key; });
    return entry == entries.end() ? nullptr : &entry->value;
}

Result<Node> parse_document(std::string_view text, const std::string& file_name)
{
    if (text.size() > most_bytes)
        return failed({Place{file_name}, fmt::format("at most {} bytes", most_bytes), fmt::format("{} bytes", text.size())});
    if (auto problem = find_excess(text, file_name)) return failed(std::move(*problem));

    try {
        const toml::table root = toml::parse(text);
        Conversion conversion(file_name);
        Node node = conversion.convert(root, 0);
        node.where = {file_name, 1, 1};
        if (!conversion.problems.empty()) return failed(std::move(conversion.problems));
        return node;
    }
    catch (const toml::parse_error& error) {
        return failed(unreadable(place_of(file_name, error.source().begin), error.description()));
    }
    catch (const std::exception& error) {
        return failed(unreadable({file_name}, error.what()));
    }
}

}
