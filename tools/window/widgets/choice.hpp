#pragma once

#include "window/stage/icon.hpp"
#include "window/stage/ui.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::window {

struct Option {
    std::string name = {}; ///< part of the widget's name: "views" + "plan" -> "views/plan"
    std::string label = {};
    Icon icon = Icon::none;
    std::string hint = {};
    bool is_enabled = true;
    std::string note = {}; ///< small, below the label; in columns only
};

/// A row of which one is chosen; each is a Tab stop, arrow keys walk while the focus is on it. True when it changed.
bool choice_row(Ui& ui, std::string_view name, std::span<const Option> options, std::size_t& chosen);

/// How an answer came out; shown by sign and word, never by color alone.
enum class Verdict : int { none, right, wrong, missed };

/// A column of round answers of which one is chosen, or none yet. `verdicts` is empty or one entry an option.
bool choose_one(Ui& ui, std::string_view name, std::span<const Option> options, std::optional<std::size_t>& chosen,
                std::span<const Verdict> verdicts = {});

/// A column of square answers, any number of them chosen. @param chosen  one entry an option; insists
bool choose_several(Ui& ui, std::string_view name, std::span<const Option> options, std::vector<bool>& chosen,
                    std::span<const Verdict> verdicts = {});

}
