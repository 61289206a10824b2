#pragma once

#include "core/picograms.hpp"
#include "core/quantity.hpp"

#include <string>

/// How numbers are shown to people, everywhere: US customary first, metric in parentheses. Rounded; never read back.
namespace flapdoor::text {

std::string show(Length length);            ///< `6 ft 3 in (1.91 m)`; below 1/20 in metric only: `35 um`
std::string show(Area area);                ///< `12 ft2 (1.11 m2)`
std::string show(Volume volume);            ///< `850 ft3 (24.1 m3)`; below 1 ft3 `2 gal (7.57 L)`
std::string show(Time time);                ///< `1 h 20 min`, `2 min 30 s`, `4.5 s`, `2 d 3 h`
std::string show(Speed speed);              ///< `59.1 ft/min (0.3 m/s)`
std::string show(AirFlow flow);             ///< `100 cfm (170 m3/h)`
std::string show(Pressure pressure);        ///< `5 Pa`
std::string show(Temperature temperature);  ///< `68 F (20 C)`
std::string show(Mass mass);                ///< `0.551 lb (250 g)`
std::string show(Density density);          ///< `2000 kg/m3`; below 1 g/m3 in ug/m3, the unit of air samples
std::string show(Loading loading);          ///< `40 ug/ft2 (430 ug/m2)`, two significant digits; from 0.1 g/ft2 on in g
std::string show(Rate rate);                ///< `0.5 /h`
std::string show(Picograms amount);         ///< `12.3 ug`: the unit that leaves 1 to 999, three significant digits

std::string show_short(Length length);      ///< `6 ft 3 in`
std::string show_short(Area area);          ///< `12 ft2`
std::string show_short(Volume volume);
std::string show_short(Speed speed);
std::string show_short(AirFlow flow);       ///< `100 cfm`
std::string show_short(Temperature temperature);
std::string show_short(Mass mass);
std::string show_short(Loading loading);    ///< `40 ug/ft2`

/// Time of day, `08:05`. @param since_midnight  wraps after a day
std::string show_clock(Time since_midnight);

/// Share 0.123 as `12 %`; below ten percent with one decimal, below 0.1 % `< 0.1 %`.
std::string show_percent(double share);

/// A number rounded to significant digits, without exponent or idle zeros: 1234 at two digits is `1200`.
std::string show_number(double number, int digits = 3);

}
