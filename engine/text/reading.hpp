#pragma once

#include "core/insist.hpp"
#include "text/field_types.hpp"
#include "text/input_file.hpp"
#include "text/leaf_reading.hpp"

#include <algorithm>
#include <limits>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

/// Files into plain structs, by the structs' own fields(). Every mistake of meaning is told at once, each with its place:
/// unknown keys, missing ones, values of the wrong type or out of their range.
///
/// A variant field stands flat in its table. With
///
///     visit("do", self.step, required);  visit("by", self.by);
///
/// the table `{ do = "lay-floor-sheet", by = ["rosa"], reach = "6 ft" }` chooses the alternative whose `name` is
/// "lay-floor-sheet"; its fields are read from the same table, and keys unknown to both are refused.
namespace flapdoor::text {

template <class T>
void read_value(const Node& node, T& into, const Subject& subject, const Tags<Leaf<T>>& tags, Problems& problems);

/// The visitor that fills a struct from the keys of one table.
class FieldReader {
public:
    FieldReader(const Node& node, const Table& table, Problems& problems) : node_(node), table_(table), problems_(problems) {}

    template <class Field, class... Given>
    void operator()(std::string_view key, Field& field, const Given&... given)
    {
        const auto tags = gather<Field>(given...);
        learn(key);
        const Node* value = table_.find(key);
        if (!value) {
            if (tags.is_required) refuse_missing(node_.where, key, problems_);
            // Which keys belong to the missing alternative cannot be known.
            if constexpr (is_choice<Field>) is_any_key_known_ = is_any_key_known_ || (tags.is_required && tags.chosen_by.empty());
            return;
        }
        if constexpr (is_choice<Field>) {
            if (tags.chosen_by.empty()) return read_flat(*value, key, field);
        }
        read_value(*value, field, Subject{key}, tags, problems_);
    }

    /// Keys that no field asked for.
    void refuse_unknown_keys() const
    {
        if (is_any_key_known_) return;
        for (const Entry& entry : table_.entries)
            if (std::find(known_.begin(), known_.end(), entry.key) == known_.end()) refuse_unknown(entry, known_, problems_);
    }

private:
    void learn(std::string_view key)
    {
        insist(std::find(known_.begin(), known_.end(), key) == known_.end(), "two fields of one table share a key");
        known_.push_back(key);
    }

    template <class Choice>
    void read_flat(const Node& value, std::string_view key, Choice& choice)
    {
        const auto index = take_word(value, Subject{key}, NamesOf<Choice>::names, problems_);
        if (!index) {
            is_any_key_known_ = true;
            return;
        }
        choose(choice, *index);
        std::visit([&]<class A>(A& alternative) { A::fields(alternative, *this); }, choice);
    }

    const Node& node_;
    const Table& table_;
    Problems& problems_;
    std::vector<std::string_view> known_;
    bool is_any_key_known_ = false;
};

/// The visitor that fills a struct written as a list.
class ListReader {
public:
    ListReader(const Node& node, const Array& list, Problems& problems) : node_(node), list_(list), problems_(problems) {}

    template <class Field, class... Given>
    void operator()(std::string_view key, Field& field, const Given&... given)
    {
        const auto tags = gather<Field>(given...);
        if (at_ < list_.size()) read_value(list_[at_], field, Subject{key}, tags, problems_);
        else if (tags.is_required) refuse_as(node_, Subject{}, "a list with its `" + std::string(key) + "`", "a shorter one", problems_);
        ++at_;
    }

    void refuse_surplus() const
    {
        if (list_.size() > at_) refuse_as(list_[at_], Subject{}, "the list to end after entry " + std::to_string(at_), found_text(list_[at_]), problems_);
    }

private:
    const Node& node_;
    const Array& list_;
    Problems& problems_;
    std::size_t at_ = 0;
};

/// A struct from its table, read into its defaults: what the file leaves out stays as it is.
template <class T>
    requires Described<T> || SpellsItself<T>
void read(const Node& node, T& into, Problems& problems, const Subject& subject = {})
{
    if constexpr (SpellsItself<T>) {
        T::from_node(node, into, problems);
        return;
    }
    else {
        if constexpr (WrittenAsList<T>) {
            if (const auto* list = std::get_if<Array>(&node.value)) {
                ListReader reader(node, *list, problems);
                T::fields(into, reader);
                return reader.refuse_surplus();
            }
        }
        const Table* table = take_table(node, subject, problems);
        if (!table) return;
        FieldReader reader(node, *table, problems);
        T::fields(into, reader);
        reader.refuse_unknown_keys();
    }
}

/// A variant from a table of its own in which `key` names the alternative.
template <class... A>
void read_variant(const Node& node, std::string_view key, std::variant<A...>& into, Problems& problems, const Subject& subject = {})
{
    const Table* table = take_table(node, subject, problems);
    if (!table) return;
    FieldReader reader(node, *table, problems);
    reader(key, into, required);
    reader.refuse_unknown_keys();
}

template <class T>
void read_list(const Node& node, std::vector<T>& into, const Subject& subject, const Tags<Leaf<T>>& tags, Problems& problems)
{
    const Array* list = take_list(node, subject, !tags.is_required, problems);
    if (!list) return;
    into.clear();
    into.reserve(list->size());
    for (std::size_t i = 0; i < list->size(); ++i) {
        T entry{};
        Tags<Leaf<T>> each = tags;
        each.is_required = is_id<T>;    // an entry that names nobody is a mistake; an empty text or list may be meant
        read_value((*list)[i], entry, Subject{subject.key, i + 1}, each, problems);
        into.push_back(std::move(entry));
    }
}

template <WholeNumber T>
Range<std::int64_t> limits_of(const Tags<T>& tags)
{
    if (tags.range) return {static_cast<std::int64_t>(tags.range->least), static_cast<std::int64_t>(tags.range->most)};
    constexpr auto most = std::numeric_limits<T>::max();
    constexpr bool is_wide = std::cmp_greater(most, std::numeric_limits<std::int64_t>::max());
    return {static_cast<std::int64_t>(std::numeric_limits<T>::min()), is_wide ? std::numeric_limits<std::int64_t>::max() : static_cast<std::int64_t>(most)};
}

template <class T>
void read_value(const Node& node, T& into, const Subject& subject, const Tags<Leaf<T>>& tags, Problems& problems)
{
    const auto keep = [&](auto&& taken) {
        if (taken) into = static_cast<T>(*std::forward<decltype(taken)>(taken));
    };
    if constexpr (is_optional<T>) read_value(node, into.emplace(), subject, tags, problems);
    else if constexpr (is_list<T>) read_list(node, into, subject, tags, problems);
    else if constexpr (is_choice<T>) {
        insist(!tags.chosen_by.empty(), "a variant in a list or in a table of its own says which key chooses: ChosenBy");
        read_variant(node, tags.chosen_by, into, problems, subject);
    }
    else if constexpr (SpellsItself<T> || Described<T>) read(node, into, problems, subject);
    else if constexpr (std::same_as<T, bool>) keep(take_flag(node, subject, problems));
    else if constexpr (WholeNumber<T>) keep(take_whole(node, subject, limits_of(tags), !tags.range, problems));
    else if constexpr (std::same_as<T, double>) keep(take_number(node, subject, tags.range, problems));
    else if constexpr (std::same_as<T, Picograms>) keep(take_picograms(node, subject, tags.range, problems));
    else if constexpr (std::same_as<T, std::string>) keep(take_text(node, subject, !tags.is_required, problems));
    else if constexpr (Worded<T>) keep(take_word(node, subject, Words<T>::words, problems));
    else if constexpr (is_id<T>) {
        if (auto name = take_name(node, subject, !tags.is_required, problems)) into.name = std::move(*name);
    }
    else {
        static_assert(Measured<T>, "a field is a plain value, a described struct, or a list, option or variant of these");
        std::optional<Range<double>> range;
        if (tags.range) range = Range<double>{si_of(tags.range->least), si_of(tags.range->most)};
        if (const auto si = take_si(node, subject, KindOf<T>::kind, range, problems)) into = T{*si};
    }
}

/// Problems in the order of the file.
inline void sort_by_place(Problems& problems)
{
    std::stable_sort(problems.begin(), problems.end(), [](const Problem& a, const Problem& b) { return a.where < b.where; });
}

/// A whole file's text, or every problem in it.
template <class T>
Result<T> read_document(std::string_view text, const std::string& file_name)
{
    const Result<Node> root = parse_document(text, file_name);
    if (!root) return failed(root.error());
    T thing{};
    Problems problems;
    read(*root, thing, problems);
    if (problems.empty()) return thing;
    sort_by_place(problems);
    return failed(std::move(problems));
}

/// A file from disk, or every problem with it.
template <class T>
Result<T> load(const std::string& path)
{
    const Result<std::string> text = read_file(path);
    if (!text) return failed(text.error());
    return read_document<T>(*text, path);
}

}
