#pragma once

#include <concepts>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The language in which people are spoken to. Every sentence stands in the code in English and is looked up, as it is
/// shown, in the catalog of the language in force (assets/translations); what no catalog holds is shown in English.
/// What is kept or compared (files, logs, hashes) stays English and is looked up when it is shown.
namespace flapdoor::text {

enum class Language { english, spanish };

/// Its code in file names and on the command line: "en", "es".
std::string_view code_of(Language language);

/// Its own name for itself: "English", "Español".
std::string_view name_of(Language language);

/// What somebody asks for: by a code such as "es" or "es_MX.UTF-8", or when nothing is asked by the environment (LANGUAGE, LC_ALL,
/// LC_MESSAGES, LANG, in the order in which gettext looks). What is unknown is English.
Language language_asked(const std::string& asked = {});

/// Speaks that language from now on; English from the start. Any thread may be speaking meanwhile.
/// @param catalogs  folder with the compiled catalogs; a missing one leaves English. The first call that names one decides
void speak(Language language, const std::string& catalogs = {});

Language spoken();

/// A sentence in the language in force. @return  lives as long as the program, or as what was given
std::string_view say(std::string_view english);

/// The same where a word is written alike in English and not in others. @param context  tells the two apart, "to open a window"
std::string_view say_of(std::string_view context, std::string_view english);

/// One of two sentences by a number, by the rules of the language: "{} card", "{} cards".
std::string_view say_counted(std::string_view one, std::string_view many, unsigned long number);

/// A sentence that a catalog holds, where it is written down but not yet shown: tables of words, titles. Does nothing but
/// mark it for the collecting of sentences.
constexpr std::string_view to_say(std::string_view english) { return english; }
constexpr std::string_view to_say_of(std::string_view /*context*/, std::string_view english) { return english; }

/// What goes into a blank: a text as it is, a whole number as digits. Figures with units come from text/show.hpp.
inline std::string blank(std::string_view text) { return std::string(text); }
std::string blank(std::integral auto number) { return std::to_string(number); }

/// A text with its blanks filled in: {} one after the other, {0} and {1} by number where languages differ in order, {{ for a
/// brace. A blank that nothing is given for stays as it is, so that a slip in a catalog shows and stops nothing.
std::string filled(std::string_view text, std::span<const std::string> blanks);

/// A sentence with its blanks filled in.
template <typename... Values> std::string say_with(std::string_view english, const Values&... values)
{
    return filled(say(english), std::vector<std::string>{blank(values)...});
}

/// One of two sentences by a number, with the number itself in the first blank.
template <typename... Values> std::string say_number(std::string_view one, std::string_view many, unsigned long number, const Values&... values)
{
    return filled(say_counted(one, many, number), std::vector<std::string>{blank(number), blank(values)...});
}

}
