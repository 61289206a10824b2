#include "text/significant.hpp"

#include <fmt/format.h>

#include <charconv>
#include <string>

namespace flapdoor::text {

double round_to_digits(double number, int digits)
{
    const std::string text = fmt::format("{:.{}e}", number, digits - 1);
    double rounded = number;
    std::from_chars(text.data(), text.data() + text.size(), rounded);
    return rounded;
}

}
