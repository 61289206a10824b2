#pragma once

#include "quiz/qti/xml.hpp"

#include <initializer_list>
#include <string>
#include <string_view>

/// Elements to be written. Element and attribute names are those of Question and Test Interoperability 3.0 (1EdTech), an open
/// standard; attributes that begin with `data-flapdoor-` are ours and ignored by others.
namespace flapdoor::quiz {

XmlElement tag(std::string_view name, std::initializer_list<XmlAttribute> attributes = {});

/// Adds an element or words at the end. @return  the element added
XmlElement& add(XmlElement& to, XmlElement element);
void say(XmlElement& to, std::string_view words);

/// Adds an attribute, none for an empty value.
void give(XmlElement& to, std::string_view name, std::string_view value);

/// The file, with its declaration. Elements that hold only elements stand on lines of their own; words stay as they are.
std::string write_xml(const XmlElement& root);

/// An identifier as the standard wants it: begins with a letter or `_`, then letters, digits, `_`, `-`, `.`.
std::string identifier_of(std::string_view id);

}
