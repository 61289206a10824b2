#include "quiz/phrase.hpp"

#include "text/language.hpp"
#include "text/reading.hpp"
#include "text/writing.hpp"

#include <algorithm>

namespace flapdoor::quiz {
namespace {

/// How a text with two languages stands in a file.
struct Both {
    std::string en, es;

    static void fields(auto& self, auto&& visit)
    {
        visit("en", self.en, required, About{"in English"});
        visit("es", self.es, required, About{"in Spanish"});
    }
};

/// Goes through a text: `plain(piece)` for what stands there, `blank(name)` for each blank.
template <class Plain, class Blank>
void walk(std::string_view text, Plain&& plain, Blank&& blank)
{
    while (!text.empty()) {
        const std::size_t open = text.find('{');
        plain(text.substr(0, open));
        if (open == std::string_view::npos) return;
        text.remove_prefix(open + 1);
        if (text.starts_with('{')) {
            plain(text.substr(0, 1));
            text.remove_prefix(1);
            continue;
        }
        const std::size_t close = text.find('}');
        if (close == std::string_view::npos) {
            plain("{");
            continue;
        }
        blank(text.substr(0, close));
        text.remove_prefix(close + 1);
    }
}

template <class Show>
std::string filled(std::string_view text, const std::map<std::string, Phrase>& blanks, Show&& show)
{
    std::string out;
    walk(text, [&](std::string_view piece) { out += piece; },
         [&](std::string_view name) {
             const auto found = blanks.find(std::string(name));
             if (found == blanks.end()) out.append("{").append(name).append("}");
             else out += show(found->second);
         });
    return out;
}

}

bool operator==(const Phrase& a, const Phrase& b) { return a.en == b.en && a.es == b.es && a.blanks == b.blanks; }

void Phrase::from_node(const text::Node& node, Phrase& into, Problems& problems)
{
    into.where = node.where;
    if (std::holds_alternative<text::Table>(node.value)) {
        Both both;
        text::read(node, both, problems);
        into.en = std::move(both.en);
        into.es = std::move(both.es);
    }
    else if (std::holds_alternative<std::string>(node.value)) {
        if (auto plain = text::take_text(node, {}, true, problems)) into.en = std::move(*plain);
    }
    else text::refuse(node, {}, "a text in two languages such as { en = \"...\", es = \"...\" }, or one that reads alike in both", problems);
}

text::Node Phrase::to_node(const Phrase& phrase)
{
    if (phrase.es.empty()) return text::leaf_node(phrase.en);
    return text::to_node(Both{phrase.en, phrase.es});
}

Phrase phrase(std::string_view english) { return {std::string(english), {}, {}, {}}; }

std::string shown(const Phrase& phrase)
{
    const bool is_spanish = text::spoken() == text::Language::spanish && !phrase.es.empty();
    return filled(is_spanish ? std::string_view(phrase.es) : text::say(phrase.en), phrase.blanks, [](const Phrase& blank) { return shown(blank); });
}

std::string in_english(const Phrase& phrase)
{
    return filled(phrase.en, phrase.blanks, [](const Phrase& blank) { return in_english(blank); });
}

std::vector<std::string> blanks_in(std::string_view text)
{
    std::vector<std::string> names;
    walk(text, [](std::string_view) {},
         [&](std::string_view name) {
             if (std::find(names.begin(), names.end(), name) == names.end()) names.emplace_back(name);
         });
    return names;
}

}
