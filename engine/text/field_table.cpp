#include "text/field_table.hpp"

#include <fmt/format.h>

namespace flapdoor::text {

std::string words_text(std::span<const std::string_view> words)
{
    std::string list = words.size() > 1 ? "one of " : "";
    for (std::size_t i = 0; i < words.size(); ++i) list += fmt::format("{}\"{}\"", i == 0 ? "" : ", ", words[i]);
    return list;
}

std::string numbers_text(double least, double most) { return fmt::format("{} to {}", least, most); }

}
