#pragma once

#include "quiz/practice/attempt.hpp"

#include <string>
#include <string_view>

namespace flapdoor::quiz {

/// Days that run backwards and a field day before the first day are problems too.
Result<Practice> read_practice(std::string_view text, const std::string& file_name);

/// A damaged file is told, place by place, and left as it is.
Result<Practice> load_practice(const std::string& path);

/// Whole or not at all, after each answer: whoever stops goes on from there.
Result<void> save_practice(const Practice& practice, const std::string& path);

}
