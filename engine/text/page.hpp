#pragma once

#include "text/markup.hpp"
#include "text/table.hpp"

#include <string>
#include <string_view>

namespace flapdoor::text {

/// One self-contained page: no script, no picture and no style from elsewhere; nothing leaves the reader's machine. Prints
/// on letter and A4 paper.
struct PageHead {
    std::string title;
    std::string language = "en";
};

/// @param content  an Element("main") with everything below the title bar
std::string make_page(const PageHead& head, Element content);

/// A ruled table. @param caption  may be empty
Element page_table(const TextTable& table, std::string_view caption = {});

/// A box with a mark and a word, never told by its color alone: `note` explains, `caution` warns.
enum class Tone { note, caution };
Element box(Tone tone, std::string_view word, std::string_view text);

/// The rules of style that every page carries.
std::string page_style();

}
