#pragma once

#include "window/shell/settings.hpp"
#include "window/stage/ui.hpp"
#include "window/widgets/words.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::window {

/// What the head of a screen says. All words in the language in force.
struct Masthead {
    std::string title;
    std::vector<std::string> lines = {}; ///< the same line, longest first: the first that fits is shown
    std::string mark = {};               ///< on a label at the right; empty: none
    Standing standing = Standing::plain;
    std::string_view caution = {};       ///< below the mark where there is room
    bool has_way_back = false;           ///< a button at the left
    std::string_view back_hint = {};
};

/// Title, mark, text size, motion, language, help: on every screen in the same place. True when the way back was pressed.
bool masthead(Ui& ui, const Box& box, const Masthead& head, Settings& settings);

/// Keys that all screens share: language, projector, text size, motion. Call once a frame.
void take_keys_of_all_screens(Ui& ui, Settings& settings);

/// Height of a head on a screen of that size. @param scale  of the text
float masthead_height(const Box& screen, float scale);

}
