#pragma once

#include "quiz/kinds/choose_one.hpp"
#include "quiz/kinds/choose_several.hpp"
#include "quiz/kinds/generated.hpp"
#include "quiz/kinds/number.hpp"
#include "quiz/kinds/point_at_plan.hpp"
#include "quiz/kinds/predict.hpp"
#include "quiz/kinds/put_in_order.hpp"
#include "quiz/kinds/spot_fault.hpp"
#include "quiz/topic.hpp"

#include <string>
#include <string_view>
#include <variant>

namespace flapdoor::quiz {

/// Every kind of question. A new kind is a header and a source in kinds/ and one line here.
using AnyKind = std::variant<ChooseOne, ChooseSeveral, PutInOrder, Number, PointAtPlan, SpotFault, Predict, Generated>;

/// What stands as `cite` where no document says so.
inline constexpr std::string_view no_source = "common practice, no source";

/// A question as it stands in a bank, or as it is asked: then it is no longer a template, and a question about a run has been
/// played (`pose` in posing.hpp).
struct Question {
    rules::Marked id;
    Topic topic = Topic::other;
    Level level = Level::know;
    std::string cite;
    int points = 1;
    Phrase text;
    Phrase why;
    AnyKind kind;

    static void fields(auto& self, auto&& visit)
    {
        visit("id", self.id, required, About{"name inside its bank; stays for good: statistics count by it"});
        visit("kind", self.kind, required, About{"kind of question"});
        visit("topic", self.topic, required, About{"what it is about"});
        visit("level", self.level, required, About{"what answering asks of a person"});
        visit("cite", self.cite, required, About{"paragraph it rests on, or \"common practice, no source\""});
        visit("points", self.points, Range{1, 10}, About{"what it is worth"});
        visit("text", self.text, required, About{"the question"});
        visit("why", self.why, required, About{"why the right answer is right; told with every answer"});
    }
};

std::string_view kind_name(const Question& question);

/// What an answer is worth. An answer of another kind's form, or none, is worth nothing. Insists on a question that can be
/// asked.
Mark mark(const Question& question, const Response& response);

/// What is said below the question: "Choose one.", "Put in order." In English; a catalog holds it.
std::string_view how_to_answer(const Question& question);

}
