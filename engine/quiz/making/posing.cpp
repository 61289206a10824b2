#include "quiz/making/posing.hpp"

#include "core/insist.hpp"
#include "quiz/making/generator.hpp"
#include "quiz/making/run_answers.hpp"
#include "text/quote.hpp"

#include <algorithm>
#include <numeric>

namespace flapdoor::quiz {
namespace {

/// Turns what a generator made into a kind of question, with what the template says about each mistake.
class Maker {
public:
    Maker(const Generated& from, const Made& made) : template_(from), made_(made) {}

    AnyKind make() const
    {
        return std::visit([&](const auto& answer) -> AnyKind { return of(answer); }, made_.answer);
    }

private:
    Phrase told(const std::string& mistake) const
    {
        for (const Misled& misled : template_.wrong)
            if (misled.misconception.text == mistake) {
                Phrase told = misled.told;
                told.blanks = made_.blanks;
                return told;
            }
        return {};
    }

    AnyKind of(const MadeFigure& figure) const
    {
        if (template_.as == AskAs::number && !figure.is_choice_only) {
            Number number{figure.right.figure, figure.tolerance, {}};
            for (const auto& wrong : figure.wrong) number.wrong.push_back({wrong.amount.figure, wrong.mistake, told(wrong.mistake)});
            return number;
        }
        ChooseOne choice;
        choice.options.push_back({{"right", {}}, figure.right.shown, true, {}, {}});
        for (const auto& wrong : figure.wrong) choice.options.push_back({{wrong.mistake, {}}, wrong.amount.shown, false, wrong.mistake, told(wrong.mistake)});
        return choice;
    }

    AnyKind of(const MadeChoice& made) const
    {
        std::vector<Option> options;
        for (const MadeOption& option : made.options) options.push_back({{option.id, {}}, option.text, option.is_right, option.is_right ? std::string() : option.mistake, told(option.mistake)});
        if (made.is_several) return ChooseSeveral{std::move(options)};
        return ChooseOne{std::move(options)};
    }

    AnyKind of(const PutInOrder& order) const { return order; }

    AnyKind of(PointAtPlan plan) const
    {
        for (Region& region : plan.regions) region.told = told(region.misconception);
        return plan;
    }

    AnyKind of(SpotFault spot) const
    {
        spot.told = told("fault-not-seen");
        return spot;
    }

    AnyKind of(Predict predict) const
    {
        predict.told = told("foretold-otherwise");
        return predict;
    }

    const Generated& template_;
    const Made& made_;
};

/// Fills a template in with one drill's figures; nothing where that drill is no good for it.
std::optional<Question> filled(const Question& question, const Generator& generator, const job::Scenario& scenario, const std::string& drill, Workshop& workshop, std::uint64_t seed)
{
    std::optional<Made> made = generator.make({scenario, drill, workshop, seed});
    if (!made) return std::nullopt;
    Question posed = question;
    posed.kind = Maker(std::get<Generated>(question.kind), *made).make();
    posed.text.blanks = made->blanks;
    posed.why.blanks = made->blanks;
    return posed;
}

Result<void> play_if_needed(Question& question, Workshop& workshop)
{
    if (auto* spot = std::get_if<SpotFault>(&question.kind)) return play(question, *spot, workshop);
    if (auto* predict = std::get_if<Predict>(&question.kind)) return play(question, *predict, workshop);
    return {};
}

Result<Question> from_template(const Question& question, Workshop& workshop, const std::vector<std::string>& drills, std::uint64_t seed)
{
    const Generated& asked = std::get<Generated>(question.kind);
    const Generator* generator = find_generator(asked.by.text);
    insist(generator != nullptr, "a template that was checked names a generator");
    const std::size_t first = static_cast<std::size_t>(Dice(seed, "drill").between(0, static_cast<int>(drills.size()) - 1));
    for (std::size_t i = 0; i < drills.size(); ++i) {
        const std::string& drill = drills[(first + i) % drills.size()];
        const auto scenario = workshop.find()(drill);
        if (!scenario) return failed(scenario.error());
        if (*scenario == nullptr) return failed(Problem{asked.by.where, "the name of a drill", text::quoted(drill)});
        auto posed = filled(question, *generator, **scenario, drill, workshop, seed);
        if (posed && play_if_needed(*posed, workshop)) return std::move(*posed);
    }
    return failed(Problem{asked.by.where, "a drill that has what the generator needs", text::quoted(asked.by.text)});
}

/// Orders of their own; cards never in an order that is right already. What a run shows keeps its time.
void shuffle(Question& question, std::uint64_t seed)
{
    Dice dice(seed, "shuffle");
    if (auto* one = std::get_if<ChooseOne>(&question.kind)) dice.shuffle(one->options);
    else if (auto* several = std::get_if<ChooseSeveral>(&question.kind)) dice.shuffle(several->options);
    else if (auto* predict = std::get_if<Predict>(&question.kind)) dice.shuffle(predict->options);
    else if (auto* place = std::get_if<PointAtPlan>(&question.kind)) dice.shuffle(place->regions);
    else if (auto* order = std::get_if<PutInOrder>(&question.kind)) {
        constexpr int tries = 20;   // of two cards with one rule, every other throw is right
        for (int i = 0; i < tries; ++i) {
            dice.shuffle(order->cards);
            Laid as_shown;
            for (const LayCard& card : order->cards) as_shown.cards.push_back(card.id.text);
            if (!mark(*order, as_shown).is_right) return;
        }
    }
}

}

Result<Question> pose(const Question& question, Workshop& workshop, const std::vector<std::string>& drills, std::uint64_t seed)
{
    insist(!drills.empty(), "a question is posed with some drill");
    Question posed = question;
    if (std::holds_alternative<Generated>(question.kind)) {
        Result<Question> made = from_template(question, workshop, drills, seed);
        if (!made) return made;
        posed = std::move(*made);
    }
    else if (const Result<void> played = play_if_needed(posed, workshop); !played) return failed(played.error());
    shuffle(posed, seed);
    return posed;
}

}
