#include "quiz/qti/item_reading.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::quiz {

namespace {

/// `time-dependent` as `timeDependent`.
std::string in_camel_case(std::string_view name)
{
    std::string out;
    bool is_up = false;
    for (const char c : name) {
        if (c == '-') is_up = true;
        else {
            out += is_up && c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
            is_up = false;
        }
    }
    return out;
}

/// Never words for the candidate: feedback has its own way, the rest is for others.
bool is_apart(const std::string& name)
{
    constexpr std::array<std::string_view, 9> names{"feedbackInline", "feedbackBlock", "modalFeedback", "rubricBlock", "catalogInfo", "stylesheet", "style", "script", "prompt"};
    return std::find(names.begin(), names.end(), name) != names.end();
}

bool is_block(const std::string& name)
{
    constexpr std::array<std::string_view, 14> names{"p", "div", "li", "ul", "ol", "br", "td", "tr", "h1", "h2", "h3", "blockquote", "pre", "simpleChoice"};
    return std::find(names.begin(), names.end(), name) != names.end();
}

void gather(const XmlElement& element, const XmlElement* without, std::string& out)
{
    for (const auto& part : element.content) {
        if (const auto* words = std::get_if<std::string>(&part)) {
            out += *words;
            continue;
        }
        const auto& child = std::get<XmlElement>(part);
        if (&child == without || is_apart(child.name)) continue;
        if (child.name == "textEntryInteraction") out += " ____ ";
        else if (child.name == "img" || child.name == "object") out += " [" + child.attribute("alt").value_or("") + "] ";
        else {
            if (is_block(child.name)) out += ' ';
            gather(child, without, out);
            if (is_block(child.name)) out += ' ';
        }
    }
}

/// Runs of white space as one space, none at the ends.
std::string on_one_line(std::string_view text)
{
    std::string out;
    for (const char c : text) {
        const bool is_space = c == ' ' || c == '\t' || c == '\n' || c == '\r';
        if (!is_space) out += c;
        else if (!out.empty() && out.back() != ' ') out += ' ';
    }
    while (!out.empty() && out.back() == ' ') out.pop_back();
    return out;
}

}

void use_common_names(XmlElement& element)
{
    if (element.name.starts_with("qti-")) element.name = in_camel_case(std::string_view(element.name).substr(4));
    for (XmlAttribute& attribute : element.attributes)
        if (!attribute.name.starts_with("data-") && !attribute.name.starts_with("aria-")) attribute.name = in_camel_case(attribute.name);
    for (auto& part : element.content)
        if (auto* child = std::get_if<XmlElement>(&part)) use_common_names(*child);
}

void ItemReading::note(const XmlElement& where, std::string what) { notes.push_back({where.where, identifier, std::move(what), false}); }

std::nullopt_t ItemReading::give_up(const XmlElement& where, std::string what)
{
    notes.push_back({where.where, identifier, std::move(what), true});
    return std::nullopt;
}

std::vector<const XmlElement*> all_named(const XmlElement& inside, std::string_view name)
{
    std::vector<const XmlElement*> all;
    for (const XmlElement* child : inside.children()) {
        if (child->name == name) all.push_back(child);
        const auto deeper = all_named(*child, name);
        all.insert(all.end(), deeper.begin(), deeper.end());
    }
    return all;
}

std::string words_in(const XmlElement& element, const XmlElement* without)
{
    std::string out;
    gather(element, without, out);
    return on_one_line(out);
}

const XmlElement* declaration_of(const ItemReading& item, const XmlElement& interaction)
{
    const auto identifier = interaction.attribute("responseIdentifier");
    for (const XmlElement* declaration : item.root.children("responseDeclaration"))
        if (declaration->attribute("identifier") == identifier) return declaration;
    return nullptr;
}

std::vector<std::string> key_of(const ItemReading& item, const XmlElement& interaction)
{
    std::vector<std::string> key;
    const XmlElement* declaration = declaration_of(item, interaction);
    if (declaration == nullptr) return key;
    if (const XmlElement* correct = declaration->child("correctResponse"))
        for (const XmlElement* value : correct->children("value")) key.push_back(words_in(*value));
    const XmlElement* mapping = declaration->child("mapping");
    if (mapping == nullptr) return key;
    for (const XmlElement* entry : mapping->children("mapEntry")) {
        const auto points = number_in(entry->attribute("mappedValue").value_or(""));
        const std::string mapped = entry->attribute("mapKey").value_or("");
        const bool is_in = std::find(key.begin(), key.end(), mapped) != key.end();
        // Where several answers get points the key names only one of them.
        if (points && points->si > 0.0 && !is_in && (declaration->child("correctResponse") == nullptr || interaction.name == "hotspotInteraction")) key.push_back(mapped);
    }
    return key;
}

rules::Marked id_of(const XmlElement& element)
{
    std::string id = element.attribute("data-flapdoor-id").value_or(element.attribute("identifier").value_or(""));
    return {on_one_line(id), element.where};
}

Phrase phrase_of(const std::string& words)
{
    std::string doubled;
    for (const char c : words) doubled.append(c == '{' ? 2 : 1, c);
    return phrase(doubled);
}

Phrase told_of(const ItemReading& item, const std::string& identifier, std::string_view otherwise)
{
    const auto found = item.told.find(identifier);
    if (found != item.told.end() && !found->second.empty()) return phrase_of(found->second);
    return phrase(otherwise);
}

}
