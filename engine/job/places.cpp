#include "job/places.hpp"

#include "text/nearest.hpp"

namespace flapdoor::job {

namespace {

/// The value of `key` in entry `index` of the list; the entry, or the document, when there is none.
const text::Node& node_of(const text::Node& root, std::string_view list, std::size_t index, std::string_view key)
{
    const auto* table = std::get_if<text::Table>(&root.value);
    const text::Node* entries = table != nullptr ? table->find(list) : nullptr;
    const auto* array = entries != nullptr ? std::get_if<text::Array>(&entries->value) : nullptr;
    if (array == nullptr || index >= array->size()) return root;
    const auto* entry = std::get_if<text::Table>(&(*array)[index].value);
    const text::Node* value = entry != nullptr ? entry->find(key) : nullptr;
    return value != nullptr ? *value : (*array)[index];
}

}

Place place_of(const text::Node& root, std::string_view list, std::size_t index, std::string_view key) { return node_of(root, list, index, key).where; }

Place place_in_list(const text::Node& root, std::string_view list, std::size_t index, std::string_view key, std::size_t entry)
{
    const text::Node& value = node_of(root, list, index, key);
    const auto* names = std::get_if<text::Array>(&value.value);
    return names != nullptr && entry < names->size() ? (*names)[entry].where : value.where;
}

std::string nearest_hint(const std::string& word, const std::vector<std::string>& known)
{
    const std::vector<std::string_view> views(known.begin(), known.end());
    const auto found = text::nearest(word, views);
    return found ? ", perhaps `" + std::string(*found) + "`" : std::string();
}

}
