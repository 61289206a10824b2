#include "quiz/qti/figure_units.hpp"

#include "core/insist.hpp"

#include <fmt/format.h>

#include <charconv>

namespace flapdoor::quiz {

namespace {

double si_of_count(const std::string& count, const std::string& unit)
{
    const auto number = number_in(unit.empty() ? count : count + " " + unit);
    insist(number.has_value(), "the unit of a figure can be read back");
    return number->si;
}

}

std::string number_text(const Figure& figure, const std::string& unit)
{
    const std::string::size_type end = figure.text.size() - unit.size();
    // "6 ft" as it stands; "6 ft 3 in" is worked out.
    if (figure.text.ends_with(unit)) {
        const std::string count = figure.text.substr(0, figure.text.find_last_not_of(' ', end == 0 ? 0 : end - 1) + 1);
        if (!count.empty() && count.find_first_not_of("+-.0123456789") == std::string::npos) return count;
    }
    const double zero = si_of_count("0", unit), one = si_of_count("1", unit);
    return fmt::format("{:.12g}", (figure.si - zero) / (one - zero));
}

double width_in(double si, const std::string& unit) { return si / (si_of_count("1", unit) - si_of_count("0", unit)); }

std::optional<Figure> figure_from(const std::string& number, const std::string& unit)
{
    Figure figure;
    figure.text = number;
    if (number.find_first_of("eE") != std::string::npos) {      // 1.5E2, as floats are written there
        double value = 0.0;
        const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), value);
        if (error != std::errc() || end != number.data() + number.size()) return std::nullopt;
        figure.text = fmt::format("{:.15g}", value);
    }
    if (!unit.empty()) figure.text += " " + unit;
    const auto read = number_in(figure.text);
    if (!read) return std::nullopt;
    figure.unit = read->unit;
    figure.si = read->si;
    return figure;
}

}
