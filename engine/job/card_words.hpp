#pragma once

#include <string>
#include <string_view>

namespace flapdoor::job {

/// What people call a field of a step card: "Taped at the edges" of `is-taped`; in the language in force.
std::string field_label(std::string_view key);

/// What a word of files is called: "machine sand" of `machine-sand`; in the language in force.
std::string word_label(std::string_view word);

}
