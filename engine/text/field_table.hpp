#pragma once

#include "text/field_types.hpp"
#include "text/writing.hpp"


#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::text {

/// One line of a format page.
struct FieldRow {
    std::string key;            ///< `reach`, `building.title`, `zone[].width`
    std::string kind;           ///< `a length such as "0.5 in"`, `one of "must" or "should"`, `a list, each: a name`
    std::string default_value;  ///< in the spelling of files; empty when required or when nothing stands for it
    std::string range;          ///< `0.05 ft to 1 ft`, or empty
    std::string about;
    bool is_required = false;

    friend bool operator==(const FieldRow&, const FieldRow&) = default;
};

std::string words_text(std::span<const std::string_view> words);    ///< `"must", "should" or "practice"`, all of them

std::string numbers_text(double least, double most);                ///< `1 to 4`

/// What kind of value a type is in a file.
template <class T>
std::string kind_text()
{
    if constexpr (is_optional<T>) return kind_text<typename T::value_type>();
    else if constexpr (is_list<T>) return "a list, each: " + kind_text<typename T::value_type>();
    else if constexpr (is_choice<T>) return words_text(NamesOf<T>::names);
    else if constexpr (SpellsItself<T>) return "own spelling";
    else if constexpr (WrittenAsList<T>) return "a list of its values";
    else if constexpr (Described<T>) return "a table";
    else if constexpr (std::same_as<T, bool>) return "true or false";
    else if constexpr (WholeNumber<T>) return "a whole number";
    else if constexpr (std::same_as<T, double>) return "a number";
    else if constexpr (std::same_as<T, std::string>) return "text";
    else if constexpr (is_id<T>) return "a name";
    else if constexpr (Worded<T>) return words_text(Words<T>::words);
    else if constexpr (std::same_as<T, Picograms>) return expectation(Kind::dust_mass);
    else return expectation(KindOf<T>::kind);
}

template <class T>
std::string range_text(const Tags<T>& tags)
{
    if constexpr (!Bounded<T>) return {};
    else if (!tags.range) return {};
    else if constexpr (WholeNumber<T> || std::same_as<T, double>) return numbers_text(static_cast<double>(tags.range->least), static_cast<double>(tags.range->most));
    else return canonical_text(tags.range->least) + " to " + canonical_text(tags.range->most);
}

/// The visitor that gathers the lines of a struct and of the structs inside it.
class FieldTable {
public:
    FieldTable(std::string path, int depth) : path_(std::move(path)), depth_(depth) {}

    template <class Field, class... Given>
    void operator()(std::string_view key, const Field& field, const Given&... given)
    {
        const auto tags = gather<Field>(given...);
        FieldRow row{path_ + std::string(key), kind_text<Field>(), {}, range_text(tags), std::string(tags.about), tags.is_required};
        if (!tags.is_required) row.default_value = default_text(field);
        rows.push_back(row);

        using Inner = Leaf<Field>;
        constexpr bool is_struct = Described<Inner> && !SpellsItself<Inner>;
        if constexpr (is_struct) {
            // A struct may hold a list of its own kind; a page needs to show that once only.
            if (depth_ >= 4) return;
            FieldTable inner(row.key + (is_list<Field> ? "[]." : "."), depth_ + 1);
            const Inner defaults{};
            Inner::fields(defaults, inner);
            rows.insert(rows.end(), inner.rows.begin(), inner.rows.end());
        }
    }

    std::vector<FieldRow> rows;

private:
    template <class Field>
    static std::string default_text(const Field& field)
    {
        if constexpr (is_optional<Field>) return field ? default_text(*field) : std::string{};
        else if constexpr (is_choice<Field> || is_list<Field> || Described<Field>) return {};
        else return plain_text(to_node(field));
    }

    std::string path_;
    int depth_;
};

/// The fields of a struct for its format page, in the order of fields(). The alternatives of a variant have pages of their
/// own: see each_alternative.
template <Described T>
std::vector<FieldRow> field_table()
{
    FieldTable table("", 0);
    const T defaults{};
    T::fields(defaults, table);
    return std::move(table.rows);
}

/// Calls `act` with a default-made thing of every alternative.
template <class Choice, class Act>
void each_alternative(Act&& act)
{
    [&]<std::size_t... I>(std::index_sequence<I...>) {
        (act(std::variant_alternative_t<I, Choice>{}), ...);
    }(std::make_index_sequence<std::variant_size_v<Choice>>{});
}

}
