#pragma once

#include "core/result.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace flapdoor::quiz {

/// Names without their prefix, attributes with theirs; references resolved.
struct XmlAttribute {
    std::string name;
    std::string value;
};

/// One element of a file from elsewhere, its content in order.
struct XmlElement {
    std::string name;
    Place where;
    std::vector<XmlAttribute> attributes;
    std::vector<std::variant<std::string, XmlElement>> content;

    /// Nothing where the attribute is missing.
    std::optional<std::string> attribute(std::string_view attribute_name) const;

    /// Elements directly inside, of all names or of one.
    std::vector<const XmlElement*> children() const;
    std::vector<const XmlElement*> children(std::string_view child_name) const;
    const XmlElement* child(std::string_view child_name) const;     ///< the first; null where there is none
};

inline constexpr int deepest_element = 64;
inline constexpr std::size_t most_elements = 50'000;
inline constexpr std::size_t most_attributes = 64;      ///< of one element

/// The root of an XML file that asks nothing of whoever reads it: no DOCTYPE, hence no entities but the five of XML itself;
/// UTF-8; not too deep, too many or too large (8 MiB). Looked at before anything is built; everything found is told with its
/// place, up to the first mistake that makes the rest unreadable.
/// @param file_name  for the places only; nothing is opened, ever
Result<XmlElement> parse_xml(std::string_view text, const std::string& file_name);

}
