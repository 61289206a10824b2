#pragma once

#include "core/fields.hpp"
#include "core/id.hpp"
#include "core/picograms.hpp"
#include "text/document.hpp"
#include "text/units.hpp"

#include <array>
#include <concepts>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

/// What the type of a field tells reader, writer, fingerprint and format pages.
namespace flapdoor::text {

/// Tag of a variant field that stands in a table of its own: the key in that table which names the alternative.
/// Without it a variant stands flat: its key holds the name, the alternative's keys stand beside it (reading.hpp).
struct ChosenBy {
    std::string_view key;
};

/// A struct written as a list of its fields, `at = ["3 ft", "2 ft"]`: `static constexpr bool is_written_as_list = true`.
template <class T>
concept WrittenAsList = Described<T> && T::is_written_as_list;

/// A struct with its own spelling: `static void from_node(const Node&, T&, Problems&)` and `static Node to_node(const T&)`.
template <class T>
concept SpellsItself = requires(const Node& node, T& thing, Problems& problems) {
    T::from_node(node, thing, problems);
    { T::to_node(thing) } -> std::same_as<Node>;
};

/// An alternative of a variant: described, and called by its name in files.
template <class T>
concept Named = Described<T> && requires { std::string_view{T::name}; };

template <class T> inline constexpr bool is_id = false;
template <class Kind> inline constexpr bool is_id<Id<Kind>> = true;

template <class T> inline constexpr bool is_list = false;
template <class T> inline constexpr bool is_list<std::vector<T>> = true;

template <class T> inline constexpr bool is_optional = false;
template <class T> inline constexpr bool is_optional<std::optional<T>> = true;

template <class T> inline constexpr bool is_choice = false;
template <class... T> inline constexpr bool is_choice<std::variant<T...>> = true;

template <class T> concept WholeNumber = std::integral<T> && !std::same_as<T, bool> && !std::same_as<T, char>;

/// What a list or an optional field holds in the end.
template <class T> struct LeafOf { using type = T; };
template <class T> struct LeafOf<std::vector<T>> : LeafOf<T> {};
template <class T> struct LeafOf<std::optional<T>> : LeafOf<T> {};
template <class T> using Leaf = typename LeafOf<T>::type;

template <class T>
concept Bounded = WholeNumber<T> || std::same_as<T, double> || Measured<T> || std::same_as<T, Picograms>;

/// The tags of one field, gathered.
template <class LeafType>
struct Tags {
    struct NoRange {};
    using RangeType = std::conditional_t<Bounded<LeafType>, Range<LeafType>, NoRange>;

    bool is_required = false;
    std::optional<RangeType> range;
    std::string_view about;
    std::string_view chosen_by;

    void take(Required) { is_required = true; }
    void take(About tag) { about = tag.text; }
    void take(ChosenBy tag) { chosen_by = tag.key; }
    template <class V>
    void take(const Range<V>& tag)
    {
        static_assert(Bounded<LeafType>, "only numbers and quantities have a range");
        if constexpr (WholeNumber<LeafType>) range = {static_cast<LeafType>(tag.least), static_cast<LeafType>(tag.most)};
        else range = {LeafType{tag.least}, LeafType{tag.most}};
    }
};

template <class Field, class... Given>
Tags<Leaf<Field>> gather(const Given&... given)
{
    Tags<Leaf<Field>> tags;
    (tags.take(given), ...);
    return tags;
}

template <class Choice>
struct NamesOf;
template <Named... A>
struct NamesOf<std::variant<A...>> {
    static constexpr std::array<std::string_view, sizeof...(A)> names{std::string_view{A::name}...};
};

/// Makes `choice` hold its alternative number `index`, with that alternative's defaults.
template <class... A>
void choose(std::variant<A...>& choice, std::size_t index)
{
    [&]<std::size_t... I>(std::index_sequence<I...>) {
        ((I == index ? static_cast<void>(choice.template emplace<I>()) : static_cast<void>(0)), ...);
    }(std::index_sequence_for<A...>{});
}

}
