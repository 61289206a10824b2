#include "debrief/seed_list.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace flapdoor::debrief {

namespace {

constexpr std::size_t most_parts = 1000;

/// A number from 1 up; 0 for anything else.
template <class Number>
Number whole(std::string_view text)
{
    Number value{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc{} && end == text.data() + text.size() ? value : Number{};
}

struct Span {
    std::uint64_t first = 1, last = 1;
};

/// Told as one problem of one place.
tl::unexpected<Problems> wrong(const Place& place, std::string expected, std::string found)
{
    Problem problem;
    problem.where = place;
    problem.expected = std::move(expected);
    problem.found = std::move(found);
    return failed(Problems{std::move(problem)});
}

/// "7" or "1-200".
Result<Span> span_from(std::string_view text, const Place& place)
{
    const std::size_t dash = text.find('-');
    const auto first = whole<std::uint64_t>(text.substr(0, dash));
    const auto last = dash == std::string_view::npos ? first : whole<std::uint64_t>(text.substr(dash + 1));
    if (first == 0 || last == 0) return wrong(place, "seeds from 1 up such as \"1-200\" or \"1-50,101-150\"", fmt::format("`{}`", text.substr(0, 40)));
    if (last < first) return wrong(place, "the smaller seed first", fmt::format("`{}`", text));
    return Span{first, last};
}

}

Result<std::vector<std::uint64_t>> read_seeds(std::string_view text, const std::string& what, std::size_t most)
{
    std::vector<std::uint64_t> seeds;
    int column = 1;
    while (true) {
        const std::size_t comma = text.find(',');
        const Place place{what, 1, column};
        const Result<Span> span = span_from(text.substr(0, comma), place);
        if (!span) return failed(span.error());
        if (span->last - span->first >= most || seeds.size() + (span->last - span->first) >= most)
            return wrong(place, fmt::format("at most {} seeds; for more, make several studies", most), "more");
        for (std::uint64_t seed = span->first; seed < span->last; ++seed) seeds.push_back(seed);
        seeds.push_back(span->last);
        if (comma == std::string_view::npos) break;
        text.remove_prefix(comma + 1);
        column += static_cast<int>(comma) + 1;
    }
    std::sort(seeds.begin(), seeds.end());
    seeds.erase(std::unique(seeds.begin(), seeds.end()), seeds.end());
    return seeds;
}

Result<StudyPart> read_part(std::string_view text, const std::string& what)
{
    const std::size_t slash = text.find('/');
    const auto part = whole<std::size_t>(text.substr(0, slash));
    const auto parts = slash == std::string_view::npos ? std::size_t{0} : whole<std::size_t>(text.substr(slash + 1));
    if (part == 0 || parts == 0 || part > parts || parts > most_parts)
        return wrong({what, 0, 0}, fmt::format("a part such as \"2/8\", of at most {}", most_parts), fmt::format("`{}`", text.substr(0, 40)));
    return StudyPart{part, parts};
}

}
