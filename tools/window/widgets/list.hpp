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

struct Row {
    std::string name = {};
    std::string title = {};
    std::string note = {};   ///< small, below
    std::string figure = {}; ///< at the right edge
    Icon icon = Icon::none;
    bool is_enabled = true;
};

/// Rows to choose from. Up and Down walk. @return the row pressed in this frame
std::optional<std::size_t> list(Ui& ui, std::string_view name, std::span<const Row> rows, std::optional<std::size_t> chosen = {});

struct Column {
    std::string title = {};
    float share = 1.0F;     ///< of the width
    bool is_figure = false; ///< set to the right
};

/// A table to read; it wraps nothing and cuts long words with an ellipsis. Rows may be pressed when `name` is not empty.
/// @param cells  [row][column]; insists that every row has all columns
std::optional<std::size_t> table(Ui& ui, std::string_view name, std::span<const Column> columns,
                                 std::span<const std::vector<std::string>> cells, std::optional<std::size_t> chosen = {});

}
