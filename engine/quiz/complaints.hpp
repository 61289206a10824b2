#pragma once

#include "core/result.hpp"
#include "rules/rule.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// Gathers what is wrong with one question; each line ends with its name.
class Complaints {
public:
    Complaints(std::string question, Problems& problems) : question_(std::move(question)), problems_(problems) {}

    void add(const Place& where, std::string expected, const std::string& found);

    /// `word` is not among the known ones: names the nearest, or all of them.
    void unknown(const rules::Marked& word, std::string_view what, std::span<const std::string> known);

    /// The second of two equal names.
    void must_differ(std::string_view what, const std::vector<rules::Marked>& names);

private:
    std::string question_;
    Problems& problems_;
};

}
