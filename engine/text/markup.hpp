#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace flapdoor::text {

/// Text made safe for HTML and SVG, in content and in attributes: `& < > " '` become entities, broken UTF-8 and control
/// characters become U+FFFD; tabs and line ends stay.
std::string escaped(std::string_view text);

/// One element of a page with its attributes and content. Everything put in is escaped when written, so that whatever a
/// user wrote stays text.
///
///     Element("p").with("class", "note").say("Training model")
class Element {
public:
    /// @param name  a tag of our own code; insists on letters and digits
    explicit Element(std::string_view name);

    Element& with(std::string_view attribute, std::string_view value) &;
    Element& with(std::string_view attribute, double value) &;      ///< at most two decimals
    Element& say(std::string_view text) &;
    Element& add(Element child) &;

    Element&& with(std::string_view attribute, std::string_view value) && { return std::move(with(attribute, value)); }
    Element&& with(std::string_view attribute, double value) && { return std::move(with(attribute, value)); }
    Element&& say(std::string_view text) && { return std::move(say(text)); }
    Element&& add(Element child) && { return std::move(add(std::move(child))); }

    /// The element as HTML (SVG inside it included). Containers stand on lines of their own, so that pages can be compared.
    std::string html() const;

private:
    void write(std::string& out) const;

    std::string name_;
    std::vector<std::pair<std::string, std::string>> attributes_;
    std::vector<std::variant<std::string, Element>> content_;
};

/// A number for an attribute: at most two decimals, no idle zeros, never `-0`.
std::string coordinate(double value);

}
