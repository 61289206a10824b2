#include "text/language.hpp"

#include <array>
#include <atomic>
#include <clocale>
#include <cstdlib>
#include <libintl.h>
#include <mutex>

namespace flapdoor::text {

namespace {

// The one thing in the program that is the same for everybody: which language is spoken. It changes no result.
std::atomic<Language> in_force = Language::english;

constexpr std::array codes{"en", "es"};
constexpr std::array names{"English", "Español"};
constexpr std::array domains{"", "flapdoor-es"};

const char* domain() { return domains[static_cast<std::size_t>(in_force.load(std::memory_order_relaxed))]; }

// The library picks a catalog by the environment, which threads cannot change safely. So all catalogs stand in one folder
// of the name that is set here once, and the language is told by the catalog's own name.
void open_catalogs(const std::string& folder)
{
    static std::once_flag once;
    std::call_once(once, [&] {
        setenv("LANGUAGE", "all", 1);
        setlocale(LC_MESSAGES, "C.UTF-8");
        for (const char* name : domains) {
            if (*name == '\0') continue;
            bindtextdomain(name, folder.c_str());
            bind_textdomain_codeset(name, "UTF-8");
        }
    });
}

// What is looked up must end in a zero; a text that no catalog holds comes back as it was given.
std::string_view looked_up(const std::string& key, std::string_view otherwise)
{
    const char* found = dgettext(domain(), key.c_str());
    return found == key.c_str() ? otherwise : std::string_view(found);
}

}

std::string_view code_of(Language language) { return codes[static_cast<std::size_t>(language)]; }

std::string_view name_of(Language language) { return names[static_cast<std::size_t>(language)]; }

Language language_asked(const std::string& asked)
{
    const auto coded = [](std::string_view code) { return code.starts_with("es") && (code.size() == 2 || code.find_first_of("_.:@-") == 2) ? Language::spanish : Language::english; };
    if (!asked.empty()) return coded(asked);
    for (const char* name : {"LANGUAGE", "LC_ALL", "LC_MESSAGES", "LANG"})
        if (const char* set = std::getenv(name); set != nullptr && *set != '\0') return coded(set);
    return Language::english;
}

void speak(Language language, const std::string& catalogs)
{
    if (!catalogs.empty()) open_catalogs(catalogs);
    in_force.store(language);
}

Language spoken() { return in_force.load(); }

std::string_view say(std::string_view english)
{
    if (spoken() == Language::english || english.empty()) return english;
    return looked_up(std::string(english), english);
}

std::string_view say_of(std::string_view context, std::string_view english)
{
    if (spoken() == Language::english) return english;
    return looked_up(std::string(context) + '\x04' + std::string(english), english);
}

std::string_view say_counted(std::string_view one, std::string_view many, unsigned long number)
{
    const std::string_view english = number == 1 ? one : many;
    if (spoken() == Language::english) return english;
    const std::string key(one), others(many);
    const char* found = dngettext(domain(), key.c_str(), others.c_str(), number);
    return found == key.c_str() || found == others.c_str() ? english : std::string_view(found);
}

std::string filled(std::string_view text, std::span<const std::string> blanks)
{
    std::string whole;
    std::size_t next = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if ((c == '{' || c == '}') && text.substr(i + 1).starts_with(c)) {
            whole += c;
            ++i;
            continue;
        }
        const std::size_t end = c == '{' ? text.find('}', i) : std::string_view::npos;
        if (end == std::string_view::npos) {
            whole += c;
            continue;
        }
        const std::string_view inside = text.substr(i + 1, end - i - 1);
        const bool is_digit = inside.size() == 1 && inside[0] >= '0' && inside[0] <= '9';
        const std::size_t which = inside.empty() ? next++ : is_digit ? static_cast<std::size_t>(inside[0] - '0') : blanks.size();
        if (which < blanks.size()) whole += blanks[which];
        else whole += text.substr(i, end - i + 1);
        i = end;
    }
    return whole;
}

}
