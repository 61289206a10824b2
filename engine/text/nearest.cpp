#include "text/nearest.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::text {
namespace {

constexpr std::size_t longest = 64;

}

std::size_t edit_distance(std::string_view a, std::string_view b)
{
    a = a.substr(0, longest);
    b = b.substr(0, longest);

    // Three rows of the table of distances between the first i letters of a and the first j letters of b.
    std::array<std::array<std::size_t, longest + 1>, 3> rows{};
    for (std::size_t j = 0; j <= b.size(); ++j) rows[0][j] = j;

    for (std::size_t i = 1; i <= a.size(); ++i) {
        auto& row = rows[i % 3];
        const auto& above = rows[(i - 1) % 3];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t replaced = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
            row[j] = std::min({replaced, above[j] + 1, row[j - 1] + 1});
            const bool is_swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
            if (is_swapped) row[j] = std::min(row[j], rows[(i - 2) % 3][j - 2] + 1);
        }
    }
    return rows[a.size() % 3][b.size()];
}

std::optional<std::string_view> nearest(std::string_view word, std::span<const std::string_view> known)
{
    std::optional<std::string_view> best;
    std::size_t fewest = longest;
    for (const std::string_view candidate : known) {
        const std::size_t changes = edit_distance(word, candidate);
        const std::size_t allowed = std::max<std::size_t>(1, std::max(word.size(), candidate.size()) / 3);
        if (changes <= allowed && changes < fewest && changes < candidate.size()) {
            best = candidate;
            fewest = changes;
        }
    }
    return best;
}

}
