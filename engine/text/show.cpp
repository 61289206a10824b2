#include "text/show.hpp"

#include "text/significant.hpp"
#include "text/unit_sizes.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <string_view>
#include <utility>

namespace flapdoor::text {
namespace {

std::string with_metric(const std::string& customary, const std::string& metric) { return customary + " (" + metric + ")"; }

std::string metric(Length length)
{
    const double size = std::abs(length.si);
    if (size >= 0.9995) return show_number(length.si) + " m";
    if (size >= 0.00995) return show_number(length.si * 100.0) + " cm";
    if (size >= 0.0000995 || size == 0.0) return show_number(length.si * 1000.0) + " mm";
    return show_number(length.si * 1e6) + " um";
}

std::string metric(Volume volume)
{
    return std::abs(volume.si) >= 0.9995 ? show_number(volume.si) + " m3" : show_number(volume.si * 1000.0) + " L";
}

std::string metric(Mass mass)
{
    const double size = std::abs(mass.si);
    if (size >= 0.9995) return show_number(mass.si) + " kg";
    if (size >= 0.0009995 || size == 0.0) return show_number(mass.si * 1e3) + " g";
    return show_number(mass.si * 1e6) + " mg";
}

bool is_tiny(Length length) { return length.si != 0.0 && std::abs(length.si) < 0.05 * inch; }

/// Feet and inches: to a tenth of an inch below 10 ft, to the inch beyond.
std::string feet_and_inches(double meters)
{
    const bool is_large = meters >= 10.0 * meters_per_foot;
    const auto tenths = is_large ? 10 * std::llround(meters / inch) : std::llround(meters / inch * 10.0);
    const long long feet = tenths / 120;
    const long long rest = tenths % 120;
    const std::string inches = rest % 10 == 0 ? fmt::format("{} in", rest / 10) : fmt::format("{}.{} in", rest / 10, rest % 10);
    if (feet == 0) return inches;
    return rest == 0 ? fmt::format("{} ft", feet) : fmt::format("{} ft {}", feet, inches);
}

/// Two units of which the larger divides into `parts` of the smaller, `1 h 20 min`.
std::string in_two(long long smaller, long long parts, std::string_view large, std::string_view small)
{
    const long long whole = smaller / parts, rest = smaller % parts;
    if (whole == 0) return fmt::format("{} {}", rest, small);
    return rest == 0 ? fmt::format("{} {}", whole, large) : fmt::format("{} {} {} {}", whole, large, rest, small);
}

constexpr double micrograms_per_square_foot = square_foot / 1e-9;
constexpr double large_loading = 99500.0;   ///< ug per area from which grams are easier to read

std::string per_area(double micrograms, std::string_view area)
{
    const bool is_large = std::abs(micrograms) >= large_loading;
    return fmt::format("{} {}/{}", show_number(is_large ? micrograms * 1e-6 : micrograms, 2), is_large ? "g" : "ug", area);
}

}

std::string show_number(double number, int digits)
{
    if (!std::isfinite(number)) return fmt::format("{}", number);
    if (number == 0.0) return "0";
    const double rounded = round_to_digits(number, digits);
    const int exponent = static_cast<int>(std::floor(std::log10(std::abs(rounded)) + 1e-12));
    const int decimals = std::max(0, digits - 1 - exponent);
    std::string text = fmt::format("{:.{}f}", rounded, decimals);
    if (decimals > 0) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') text.pop_back();
    }
    return text;
}

std::string show_short(Length length)
{
    if (is_tiny(length)) return metric(length);
    return fmt::format("{}{}", length.si < 0.0 ? "-" : "", feet_and_inches(std::abs(length.si)));
}

std::string show(Length length) { return is_tiny(length) ? metric(length) : with_metric(show_short(length), metric(length)); }

std::string show_short(Area area)
{
    const bool is_small = std::abs(area.si) < 0.1 * square_foot && area.si != 0.0;
    return is_small ? show_number(area.si / (inch * inch)) + " in2" : show_number(area.si / square_foot) + " ft2";
}

std::string show(Area area)
{
    const bool is_small = std::abs(area.si) < 0.01;
    return with_metric(show_short(area), is_small ? show_number(area.si * 1e4) + " cm2" : show_number(area.si) + " m2");
}

std::string show_short(Volume volume)
{
    return std::abs(volume.si) < cubic_foot ? show_number(volume.si / gallon) + " gal" : show_number(volume.si / cubic_foot) + " ft3";
}

std::string show(Volume volume) { return with_metric(show_short(volume), metric(volume)); }

std::string show(Time time)
{
    const double seconds = std::abs(time.si);
    const std::string sign = time.si < 0.0 ? "-" : "";
    if (seconds < 9.95) return sign + show_number(seconds, 2) + " s";
    if (seconds < 599.5) return sign + in_two(std::llround(seconds), 60, "min", "s");
    if (seconds < 86370.0) return sign + in_two(std::llround(seconds / 60.0), 60, "h", "min");
    return sign + in_two(std::llround(seconds / 3600.0), 24, "d", "h");
}

std::string show_short(Speed speed) { return show_number(speed.si / meters_per_foot * 60.0) + " ft/min"; }

std::string show(Speed speed)
{
    const double size = std::abs(speed.si);
    const std::string si = size >= 0.0995 || size == 0.0 ? show_number(speed.si) + " m/s" : show_number(speed.si * 1000.0) + " mm/s";
    return with_metric(show_short(speed), si);
}

std::string show_short(AirFlow flow) { return show_number(flow.si / cubic_foot * 60.0) + " cfm"; }
std::string show(AirFlow flow) { return with_metric(show_short(flow), show_number(flow.si * 3600.0) + " m3/h"); }

std::string show(Pressure pressure)
{
    return std::abs(pressure.si) >= 9995.0 ? show_number(pressure.si / 1000.0, 4) + " kPa" : show_number(pressure.si) + " Pa";
}

std::string show_short(Temperature temperature) { return fmt::format("{} F", std::llround((temperature.kelvin - 273.15) * 1.8 + 32.0)); }
std::string show(Temperature temperature)
{
    return with_metric(show_short(temperature), fmt::format("{} C", std::llround(temperature.kelvin - 273.15)));
}

std::string show_short(Mass mass)
{
    return std::abs(mass.si) < 0.1 * pound && mass.si != 0.0 ? show_number(mass.si / pound * 16.0) + " oz" : show_number(mass.si / pound) + " lb";
}
std::string show(Mass mass)
{
    if (mass.si != 0.0 && std::abs(mass.si) < 1e-3) return metric(mass);
    return with_metric(show_short(mass), metric(mass));
}

std::string show(Density density)
{
    const double size = std::abs(density.si);
    if (size >= 1e-3 || size == 0.0) return show_number(density.si) + " kg/m3";
    return show_number(density.si * 1e9) + " ug/m3";
}

std::string show_short(Loading loading) { return per_area(loading.si * micrograms_per_square_foot, "ft2"); }
std::string show(Loading loading) { return with_metric(show_short(loading), per_area(loading.si * 1e9, "m2")); }

std::string show(Rate rate) { return show_number(rate.si * 3600.0) + " /h"; }

std::string show(Picograms amount)
{
    constexpr std::array<std::pair<double, std::string_view>, 5> units{{{1e12, "g"}, {1e9, "mg"}, {1e6, "ug"}, {1e3, "ng"}, {1.0, "pg"}}};
    const auto count = static_cast<double>(amount.count);
    if (amount.count == 0) return "0 ug";
    for (const auto& [size, name] : units)
        if (std::abs(count) >= 0.9995 * size) return fmt::format("{} {}", show_number(count / size), name);
    return fmt::format("{} pg", amount.count);
}

std::string show_clock(Time since_midnight)
{
    const long long minutes = static_cast<long long>(std::floor(since_midnight.si / 60.0)) % 1440;
    const long long of_day = minutes < 0 ? minutes + 1440 : minutes;
    return fmt::format("{:02}:{:02}", of_day / 60, of_day % 60);
}

std::string show_percent(double share)
{
    const double percent = share * 100.0;
    const double size = std::abs(percent);
    if (percent > 0.0 && size < 0.1) return "< 0.1 %";
    return fmt::format("{:.{}f} %", percent, size < 9.95 && size != 0.0 ? 1 : 0);
}

}
