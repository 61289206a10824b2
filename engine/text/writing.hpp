#pragma once

#include "core/insist.hpp"
#include "text/field_types.hpp"

#include <limits>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// Plain structs into files, by the structs' own fields(): what reading.hpp reads back is equal to what was written.
namespace flapdoor::text {

Node leaf_node(std::string value);
Node leaf_node(std::int64_t value);
Node leaf_node(double value);
Node leaf_node(bool value);
Node list_node(Array value);
Node table_node(Table value);

template <class T>
Node to_node(const T& value, std::string_view chosen_by = {});

/// The visitor that gathers the fields of a struct as entries of a table.
class FieldWriter {
public:
    template <class Field, class... Given>
    void operator()(std::string_view key, const Field& field, const Given&... given)
    {
        const auto tags = gather<Field>(given...);
        if constexpr (is_choice<Field>) {
            if (tags.chosen_by.empty()) return write_flat(key, field);
        }
        if constexpr (is_optional<Field>) {
            if (!field) return;
        }
        add(key, to_node(field, tags.chosen_by));
    }

    void add(std::string_view key, Node value);

    template <class Choice>
    void write_flat(std::string_view key, const Choice& choice)
    {
        std::visit(
            [&]<class A>(const A& alternative) {
                add(key, leaf_node(std::string(A::name)));
                A::fields(alternative, *this);
            },
            choice);
    }

    Table table;
};

/// A value as it stands in a file; the places are empty.
template <class T>
Node to_node(const T& value, std::string_view chosen_by)
{
    if constexpr (is_optional<T>) {
        insist(value.has_value(), "only a value that is there can be written in a list");
        return to_node(*value, chosen_by);
    }
    else if constexpr (is_list<T>) {
        Array list;
        for (const auto& entry : value) list.push_back(to_node(static_cast<const typename T::value_type&>(entry), chosen_by));
        return list_node(std::move(list));
    }
    else if constexpr (is_choice<T>) {
        FieldWriter writer;
        writer.write_flat(chosen_by, value);
        return table_node(std::move(writer.table));
    }
    else if constexpr (SpellsItself<T>) return T::to_node(value);
    else if constexpr (Described<T>) {
        FieldWriter writer;
        T::fields(value, writer);
        if constexpr (WrittenAsList<T>) {
            Array list;
            for (Entry& entry : writer.table.entries) list.push_back(std::move(entry.value));
            return list_node(std::move(list));
        }
        else return table_node(std::move(writer.table));
    }
    else if constexpr (std::same_as<T, bool> || std::same_as<T, double> || std::same_as<T, std::string>) return leaf_node(value);
    else if constexpr (WholeNumber<T>) {
        insist(std::in_range<std::int64_t>(value), "a whole number fits the 64 bits of a TOML file");
        return leaf_node(static_cast<std::int64_t>(value));
    }
    else if constexpr (Worded<T>) return leaf_node(std::string(word_of(value)));
    else if constexpr (is_id<T>) return leaf_node(value.name);
    else return leaf_node(canonical_text(value));
}

/// A key and its value in the spelling of files, `reach` and `6 ft`.
struct ShownField {
    std::string key;
    std::string value;
    friend bool operator==(const ShownField&, const ShownField&) = default;
};

/// The leaves of a tree in order: `reach`, `from.x`, `wall[1].width`; a list of plain values is one leaf, `rosa, luis`.
std::vector<ShownField> flatten(const Node& node);

/// The fields of a struct in the spelling of files, in the order of fields(). The same text for equal values, always.
template <class T>
std::vector<ShownField> describe_fields(const T& thing)
{
    return flatten(to_node(thing));
}

/// A plain value as text without quotes: `6 ft`, `rosa`, `0.5`, `true`; a list joined by commas.
std::string plain_text(const Node& node);

/// A tree as TOML: plain keys first, then tables, each struct list as `[[key]]`. Insists on a table.
std::string print_toml(const Node& root);

/// A struct as a TOML file that reads back equal.
template <class T>
std::string write_toml(const T& thing)
{
    return print_toml(to_node(thing));
}

}
