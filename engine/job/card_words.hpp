#pragma once

#include <string>
#include <string_view>

namespace flapdoor::job {

/// A key or a word of files as English words: "machine sand" of `machine-sand`.
std::string with_spaces(std::string_view word);

/// What people call a field of a step card: "Taped at the edges" of `is-taped`; in the language in force.
std::string field_label(std::string_view key);

/// What a word of files is called, with spaces and in the language in force.
std::string word_label(std::string_view word);

}
