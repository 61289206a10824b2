#pragma once

#include <cstddef>
#include <cstdlib>
#include <string>
#include <vector>

/// What every page must keep to be read by machines and by people who cannot see it. Each check gives what is wrong, or nothing.
namespace flapdoor::debrief::html_checks {

/// Empty when every element is closed in the right order, else what is wrong.
inline std::string imbalance(const std::string& html)
{
    std::vector<std::string> open;
    for (std::size_t at = html.find('<'); at != std::string::npos; at = html.find('<', at + 1)) {
        const std::size_t end = html.find('>', at);
        if (end == std::string::npos) return "a tag without an end";
        const std::string tag = html.substr(at + 1, end - at - 1);
        if (tag.starts_with('!') || tag.starts_with('?')) continue;
        const std::string name = tag.substr(tag.starts_with('/'), tag.find_first_of(" /", 1) - tag.starts_with('/'));
        if (name == "meta" || name == "br") continue;
        if (!tag.starts_with('/')) {
            open.push_back(name);
            continue;
        }
        const std::string closed = tag.substr(1);
        if (open.empty() || open.back() != closed) return "</" + closed + "> where " + (open.empty() ? "nothing" : open.back()) + " is open";
        open.pop_back();
    }
    return open.empty() ? "" : open.back() + " is never closed";
}

/// Tags of that name with all their attributes, in order.
inline std::vector<std::string> tags(const std::string& html, const std::string& name)
{
    std::vector<std::string> found;
    for (std::size_t at = html.find("<" + name); at != std::string::npos; at = html.find("<" + name, at + 1)) {
        const char next = html[at + 1 + name.size()];
        if (next != ' ' && next != '>') continue;
        found.push_back(html.substr(at, html.find('>', at) - at + 1));
    }
    return found;
}

/// The number in that attribute of a tag; 0 without it.
inline double number_of(const std::string& tag, const std::string& attribute)
{
    const std::size_t at = tag.find(" " + attribute + "=\"");
    return at == std::string::npos ? 0.0 : std::atof(tag.c_str() + at + attribute.size() + 3);
}

/// One h1 first, and no level is jumped over on the way down.
inline std::string headings_astray(const std::string& html)
{
    int last = 0, first_level = 0;
    for (std::size_t at = html.find("<h"); at != std::string::npos; at = html.find("<h", at + 1)) {
        const char digit = html[at + 2];
        if (digit < '1' || digit > '6' || (html[at + 3] != '>' && html[at + 3] != ' ')) continue;
        const int level = digit - '0';
        if (level == 1) ++first_level;
        if (level > last + 1) return "h" + std::to_string(level) + " follows h" + std::to_string(last);
        last = level;
    }
    return first_level == 1 ? "" : std::to_string(first_level) + " headings of the first level";
}

/// Every head of a table says what it heads, and every table has a caption.
inline std::string heads_without_scope(const std::string& html)
{
    for (const std::string& tag : tags(html, "th"))
        if (tag.find(" scope=") == std::string::npos) return tag;
    if (tags(html, "table").size() != tags(html, "caption").size()) return "a table without a caption";
    return "";
}

/// Every drawing is an image with a name, or is said to be for the eye alone.
inline std::string unnamed_drawing(const std::string& html)
{
    for (const std::string& tag : tags(html, "svg")) {
        const bool is_named = tag.find("role=\"img\"") != std::string::npos && (tag.find("aria-label=\"") != std::string::npos || tag.find("aria-labelledby=\"") != std::string::npos);
        if (!is_named && tag.find("aria-hidden=\"true\"") == std::string::npos) return tag;
    }
    return "";
}

}
