#pragma once

#include "job/run_log.hpp"
#include "text/units.hpp"

#include <charconv>
#include <optional>
#include <type_traits>

namespace flapdoor::window {

/// A step as an entry of the log tells it: its ids, lengths and settings, which stand there in the spelling of files. A run that is
/// still being played has a log and no plan. Nothing when the entry is about another kind of step.
template <class Step>
std::optional<Step> logged_step(const job::LogEntry& entry)
{
    if (entry.step != Step::name) return std::nullopt;
    Step step;
    Step::fields(step, [&](std::string_view key, auto& field, auto&&...) {
        using Field = std::decay_t<decltype(field)>;
        const std::string value = job::parameter(entry, std::string(key));
        if constexpr (std::is_same_v<Field, bool>) field = value.empty() ? field : value == "true";
        else if constexpr (std::is_integral_v<Field>) std::from_chars(value.data(), value.data() + value.size(), field);
        else if constexpr (requires { field.name = value; }) field.name = value;
        else if constexpr (text::Measured<Field>) field = text::parse_quantity<Field>(value).value_or(field);
    });
    return step;
}

}
