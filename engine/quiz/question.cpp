#include "quiz/question.hpp"

#include "text/language.hpp"

namespace flapdoor::quiz {
namespace {

using text::to_say;

constexpr std::string_view how(const ChooseOne&) { return to_say("Choose one."); }
constexpr std::string_view how(const ChooseSeveral&) { return to_say("Choose every right one; there may be one or several."); }
constexpr std::string_view how(const PutInOrder&) { return to_say("Put in order. Where the rules leave it free, any order is right."); }
constexpr std::string_view how(const Number&) { return to_say("Write the number with its unit; any unit of the kind will do."); }
constexpr std::string_view how(const PointAtPlan&) { return to_say("Point at the place on the plan."); }
constexpr std::string_view how(const SpotFault&) { return to_say("Choose the step with which the rule is first broken."); }
constexpr std::string_view how(const Predict&) { return to_say("Say what will come out before it is shown."); }
constexpr std::string_view how(const Generated&) { return {}; }

}

std::string_view kind_name(const Question& question)
{
    return std::visit([]<class Kind>(const Kind&) { return Kind::name; }, question.kind);
}

Mark mark(const Question& question, const Response& response)
{
    Mark mark = std::visit([&](const auto& kind) { return quiz::mark(kind, response); }, question.kind);
    mark.of = question.points;
    return mark;
}

double points(const Mark& mark) { return rules::value(mark.share) * mark.of; }

std::string_view how_to_answer(const Question& question)
{
    if (const auto* number = std::get_if<Number>(&question.kind); number && !number->answer.unit.kind && !number->answer.unit.is_percent) return to_say("Write the number.");
    return std::visit([](const auto& kind) { return how(kind); }, question.kind);
}

}
