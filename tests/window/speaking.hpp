#pragma once

#include "text/language.hpp"

namespace flapdoor::window {

/// A language as long as this lasts, then English again.
struct Speaking {
    explicit Speaking(text::Language language) { text::speak(language, FLAPDOOR_CATALOGS); }
    ~Speaking() { text::speak(text::Language::english); }
    Speaking(const Speaking&) = delete;
    Speaking& operator=(const Speaking&) = delete;
};

}
