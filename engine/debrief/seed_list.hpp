#pragma once

#include "core/result.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::debrief {

/// Seeds as people write them: "7", "1-200", "1-50,101-150"; each once, rising.
/// @param what  what the text is called in a complaint, "--seeds"
/// @param most  seeds there may be; a longer list is a problem before any of it is made
Result<std::vector<std::uint64_t>> read_seeds(std::string_view text, const std::string& what, std::size_t most);

/// "2/8": the second of eight parts of a study.
struct StudyPart {
    std::size_t part = 1, parts = 1;
};
Result<StudyPart> read_part(std::string_view text, const std::string& what);

}
