#include "text/writing.hpp"

#include "text/utf8.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace flapdoor::text {
namespace {

bool is_table(const Node& node) { return std::holds_alternative<Table>(node.value); }

bool holds_tables(const Node& node)
{
    const auto* list = std::get_if<Array>(&node.value);
    return list && std::any_of(list->begin(), list->end(), is_table);
}

bool is_list_of_tables(const Node& node)
{
    const auto* list = std::get_if<Array>(&node.value);
    return list && !list->empty() && std::all_of(list->begin(), list->end(), is_table);
}

std::string in_quotes(std::string_view text)
{
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') (out += '\\') += c;
        else if (c == '\n') out += "\\n";
        else if (c == '\t') out += "\\t";
        else if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F) fmt::format_to(std::back_inserter(out), "\\u{:04X}", static_cast<int>(c));
        else out += c;
    }
    return out + '"';
}

std::string key_text(std::string_view key)
{
    const auto is_bare = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_'; };
    return !key.empty() && std::all_of(key.begin(), key.end(), is_bare) ? std::string(key) : in_quotes(key);
}

/// A value on one line.
std::string inline_text(const Node& node)
{
    struct Written {
        std::string operator()(const std::string& value) const { return in_quotes(value); }
        std::string operator()(std::int64_t value) const { return fmt::format("{}", value); }
        std::string operator()(double value) const { return canonical_text(value); }
        std::string operator()(bool value) const { return value ? "true" : "false"; }
        std::string operator()(const Array& list) const
        {
            std::string out = "[";
            for (const Node& entry : list) out += (out.size() > 1 ? ", " : "") + inline_text(entry);
            return out + "]";
        }
        std::string operator()(const Table& table) const
        {
            std::string out = "{";
            for (const Entry& entry : table.entries)
                out += fmt::format("{} {} = {}", out.size() > 1 ? "," : "", key_text(entry.key), inline_text(entry.value));
            return out + (table.entries.empty() ? "}" : " }");
        }
    };
    return std::visit(Written{}, node.value);
}

void print_table(const Table& table, const std::string& path, std::string& out);

void print_section(const std::string& path, const Node& node, std::string_view open, std::string_view close, std::string& out)
{
    if (!out.empty()) out += '\n';
    fmt::format_to(std::back_inserter(out), "{}{}{}\n", open, path, close);
    print_table(std::get<Table>(node.value), path, out);
}

/// Plain keys must stand before the first table: behind it they would belong to that table.
void print_table(const Table& table, const std::string& path, std::string& out)
{
    const auto is_section = [](const Node& node) { return is_table(node) || is_list_of_tables(node); };
    for (const Entry& entry : table.entries)
        if (!is_section(entry.value)) fmt::format_to(std::back_inserter(out), "{} = {}\n", key_text(entry.key), inline_text(entry.value));

    for (const Entry& entry : table.entries) {
        if (!is_section(entry.value)) continue;
        const std::string inner = path.empty() ? key_text(entry.key) : path + "." + key_text(entry.key);
        if (is_table(entry.value)) print_section(inner, entry.value, "[", "]", out);
        else
            for (const Node& node : std::get<Array>(entry.value.value)) print_section(inner, node, "[[", "]]", out);
    }
}

void flatten_into(const Node& node, const std::string& path, std::vector<ShownField>& fields)
{
    if (const auto* table = std::get_if<Table>(&node.value)) {
        for (const Entry& entry : table->entries) flatten_into(entry.value, path.empty() ? entry.key : path + "." + entry.key, fields);
    }
    else if (holds_tables(node)) {
        const auto& list = std::get<Array>(node.value);
        for (std::size_t i = 0; i < list.size(); ++i) flatten_into(list[i], fmt::format("{}[{}]", path, i + 1), fields);
    }
    else fields.push_back({path, plain_text(node)});
}

}

Node leaf_node(std::string value) { return {{}, std::move(value)}; }
Node leaf_node(std::int64_t value) { return {{}, value}; }
Node leaf_node(double value) { return {{}, value}; }
Node leaf_node(bool value) { return {{}, value}; }
Node list_node(Array value) { return {{}, std::move(value)}; }
Node table_node(Table value) { return {{}, std::move(value)}; }

void FieldWriter::add(std::string_view key, Node value)
{
    Entry& entry = table.entries.emplace_back();
    entry.key = key;
    entry.value = std::move(value);
}

std::string plain_text(const Node& node)
{
    if (const auto* text = std::get_if<std::string>(&node.value)) return *text;
    if (const auto* list = std::get_if<Array>(&node.value)) {
        std::string out;
        for (const Node& entry : *list) out += (out.empty() ? "" : ", ") + plain_text(entry);
        return out;
    }
    return inline_text(node);
}

std::vector<ShownField> flatten(const Node& node)
{
    std::vector<ShownField> fields;
    flatten_into(node, "", fields);
    return fields;
}

std::string print_toml(const Node& root)
{
    insist(is_table(root), "a TOML file is a table");
    std::string out;
    print_table(std::get<Table>(root.value), "", out);
    return out;
}

}
