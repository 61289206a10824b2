#pragma once

#include "quiz/kinds/point_at_plan.hpp"
#include "quiz/kinds/predict.hpp"
#include "quiz/kinds/put_in_order.hpp"
#include "quiz/kinds/spot_fault.hpp"
#include "quiz/making/amount.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace flapdoor::quiz {

/// A figure to be found, and the figures that mistakes lead to, each with the mistake's name.
struct MadeFigure {
    struct Wrong {
        std::string mistake;
        Amount amount;
    };
    Amount right;
    Tolerance tolerance;
    std::vector<Wrong> wrong;
    bool is_choice_only = false;    ///< typing the question's own figure would pass for an answer
};

struct MadeOption {
    std::string id;
    Phrase text;
    bool is_right = false;
    std::string mistake;            ///< behind choosing it; of a right one, behind missing it, and may be empty
};

struct MadeChoice {
    bool is_several = true;
    std::vector<MadeOption> options;
};

/// What a generator worked out. Regions name their mistakes; what is told about them comes from the template.
struct Made {
    std::map<std::string, Phrase> blanks;
    std::variant<MadeFigure, MadeChoice, PutInOrder, PointAtPlan, SpotFault, Predict> answer;
};

/// A way to go wrong, as the figure it leads to; what is no number or below zero is no answer that anybody would give.
template <class Facts>
struct Mistake {
    std::string_view name;
    double (*leads_to)(const Facts&);
};

template <class Facts, std::size_t N>
std::vector<std::string_view> names_of(const Mistake<Facts> (&mistakes)[N])
{
    std::vector<std::string_view> names;
    for (const auto& mistake : mistakes) names.push_back(mistake.name);
    return names;
}

/// The key and what the mistakes lead to with these facts; those that come out as the key, or as an earlier one, are left
/// out. Nothing when fewer than two are left: then the figures are no good for a question.
template <class Facts, std::size_t N>
std::optional<MadeFigure> made_figure(const Facts& facts, double key, const Mistake<Facts> (&mistakes)[N], AsAmount as, double relative_tolerance = 0.0)
{
    MadeFigure made;
    made.right = as(key);
    if (relative_tolerance > 0.0) made.tolerance = {std::to_string(static_cast<int>(relative_tolerance * 100.0 + 0.5)) + " %", NumberUnit::percent(), relative_tolerance, true, {}};
    std::vector<double> taken{key};
    for (const auto& mistake : mistakes) {
        const double value = mistake.leads_to(facts);
        if (!std::isfinite(value) || value < 0.0) continue;
        Amount amount = as(value);
        const bool is_new = amount.shown.en != made.right.shown.en && std::none_of(made.wrong.begin(), made.wrong.end(), [&](const auto& wrong) { return wrong.amount.shown.en == amount.shown.en; });
        const bool is_apart = std::none_of(taken.begin(), taken.end(), [&](double other) { return std::fabs(value - other) <= 2.0 * relative_tolerance * std::max(value, other) + 1e-9 * other; });
        if (!is_new || !is_apart) continue;
        taken.push_back(value);
        made.wrong.push_back({std::string(mistake.name), std::move(amount)});
    }
    if (made.wrong.size() < 2) return std::nullopt;
    return made;
}

}
