#include "quiz/making/amount.hpp"

#include "text/show.hpp"
#include "text/significant.hpp"

#include <fmt/format.h>

#include <cmath>
#include <cstdint>

namespace flapdoor::quiz {
namespace {

Amount amount(NumberUnit unit, double si, std::string text, std::string shown) { return {{std::move(text), unit, si, {}}, phrase(shown)}; }

}

Amount as_count(double number)
{
    const std::string text = fmt::format("{}", std::llround(number));
    return amount({}, number, text, text);
}

Amount as_length(double meters) { return amount(text::Kind::length, meters, fmt::format("{} ft", text::show_number(meters / meters_per_foot, 4)), text::show(Length{meters})); }

Amount as_area(double square_meters)
{
    const double square_feet = square_meters / (1.0_ft2).si;
    return amount(text::Kind::area, square_meters, fmt::format("{} ft2", text::show_number(square_feet, 4)), text::show(Area{square_meters}));
}

Amount as_time(double seconds) { return amount(text::Kind::time, seconds, fmt::format("{} min", text::show_number(seconds / 60.0, 4)), text::show(Time{seconds})); }

Amount as_rough_time(double seconds) { return as_time(text::round_to_digits(seconds, 2)); }

Amount as_clock(double seconds)
{
    const std::string text = text::show_clock(Time{seconds});
    return amount(text::Kind::time, seconds, text, text);
}

Amount as_loading(double si) { return amount(text::Kind::loading, si, fmt::format("{} ug/ft2", text::show_number(si / (1.0_ugpft2).si, 3)), text::show(Loading{si})); }

Amount as_concentration(double si) { return amount(text::Kind::density, si, fmt::format("{} ug/m3", text::show_number(si * 1e9, 3)), fmt::format("{} ug/m3", text::show_number(si * 1e9, 3))); }

Amount as_plain_meters(double meters)
{
    const std::string text = fmt::format("{} m", text::show_number(meters, 3));
    return amount(text::Kind::length, meters, text, text);
}

Amount as_plain_square_meters(double square_meters)
{
    const std::string text = fmt::format("{} m2", text::show_number(square_meters, 3));
    return amount(text::Kind::area, square_meters, text, text);
}

Amount as_celsius(double kelvin)
{
    const std::string text = fmt::format("{} C", std::llround(kelvin - 273.15));
    return amount(text::Kind::temperature, kelvin, text, text);
}

}
