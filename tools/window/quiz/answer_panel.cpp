#include "window/quiz/answer_panel.hpp"

#include "quiz/lettered.hpp"
#include "quiz/terminal/asking.hpp"
#include "text/language.hpp"
#include "text/show.hpp"
#include "window/quiz/plan_pointing.hpp"
#include "window/run/phrases.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/field.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::window {

namespace {

std::vector<Option> options_of(const std::vector<quiz::Lettered>& list, bool is_open)
{
    std::vector<Option> options;
    for (const quiz::Lettered& one : list) options.push_back({.name = one.id, .label = fmt::format("{}   {}", one.letter, with_signs(quiz::shown(one.text))), .is_enabled = is_open});
    return options;
}

/// A letter key, by its place in the alphabet, for the first so many.
std::optional<std::size_t> letter_pressed(Ui& ui, std::size_t count)
{
    for (std::size_t i = 0; i < std::min<std::size_t>(count, 12); ++i)
        if (ui.shortcut(static_cast<Key>(static_cast<int>(Key::a) + static_cast<int>(i)))) return i;
    return std::nullopt;
}

std::vector<Verdict> verdicts_of(const std::vector<quiz::Lettered>& list, const std::vector<bool>& chosen)
{
    std::vector<Verdict> verdicts;
    for (std::size_t i = 0; i < list.size(); ++i)
        verdicts.push_back(list[i].is_right ? (chosen[i] ? Verdict::right : Verdict::missed) : chosen[i] ? Verdict::wrong : Verdict::none);
    return verdicts;
}

void choose_among(Ui& ui, const std::vector<quiz::Lettered>& list, AnswerInHand& draft, bool is_told)
{
    const std::vector<Option> options = options_of(list, !is_told);
    std::vector<bool> chosen(list.size(), false);
    if (draft.chosen) chosen[*draft.chosen] = true;
    if (!is_told)
        if (const auto letter = letter_pressed(ui, list.size())) draft.chosen = letter;
    std::optional<std::size_t> shown = draft.chosen;
    if (choose_one(ui, "answer", options, shown, is_told ? verdicts_of(list, chosen) : std::vector<Verdict>{}) && !is_told) {
        draft.chosen = shown;
        draft.pointed.reset();
    }
}

void tick(Ui& ui, const std::vector<quiz::Lettered>& list, AnswerInHand& draft, bool is_told)
{
    const std::vector<Option> options = options_of(list, !is_told);
    if (!is_told)
        if (const auto letter = letter_pressed(ui, list.size())) draft.ticked[*letter] = !draft.ticked[*letter];
    std::vector<bool> shown = draft.ticked;
    if (choose_several(ui, "answer", options, shown, is_told ? verdicts_of(list, draft.ticked) : std::vector<Verdict>{}) && !is_told) draft.ticked = shown;
}

void lay(Ui& ui, const std::vector<quiz::Lettered>& list, AnswerInHand& draft, bool is_told)
{
    std::vector<CardFace> faces;
    for (std::size_t i = 0; i < draft.order.size(); ++i) {
        const quiz::Lettered& card = list[draft.order[i]];
        faces.push_back({.name = "answer/" + card.id, .number = static_cast<int>(i) + 1, .title = with_signs(quiz::shown(card.text)), .is_chosen = draft.chosen == draft.order[i]});
    }
    const auto event = card_list(ui, faces, draft.drag, !is_told);
    if (!event || is_told) return;
    if (event->kind == CardListEvent::Kind::chosen) draft.chosen = draft.order[event->from];
    else {
        const std::size_t card = draft.order[event->from];
        draft.order.erase(draft.order.begin() + static_cast<std::ptrdiff_t>(event->from));
        draft.order.insert(draft.order.begin() + static_cast<std::ptrdiff_t>(event->to), card);
        draft.chosen = card;
    }
}

void type(Ui& ui, const quiz::Question& question, AnswerInHand& draft, bool is_told)
{
    text_field(ui, "answer", quiz::wanted_text(question), draft.typed, {.width = 320.0F, .is_enabled = !is_told});
}

/// The plan, and its letters beside it where there is room, so that both are seen at once; below it where there is none.
void point(Ui& ui, const quiz::PointAtPlan& place, const std::vector<quiz::Lettered>& list, AnswerInHand& draft, bool is_told)
{
    const float all = ui.width_left();
    const Point low = ui.cursor();
    if (all < ui.px(640.0F)) {
        plan_pointing(ui, place, draft, {std::min(all, ui.px(520.0F)), ui.px(420.0F)}, is_told);
        ui.gap(10.0F);
        return choose_among(ui, list, draft, is_told);
    }
    const Box plan = plan_pointing(ui, place, draft, {all * 0.5F, ui.px(330.0F)}, is_told);
    const Point below = ui.cursor();
    const Box side{{plan.high.x + ui.px(16.0F), low.y}, {low.x + all, plan.high.y}};
    panel(ui, "places", side, {.is_sheet = false, .padding = 2.0F}, [&] { choose_among(ui, list, draft, is_told); });
    ui.go_to({low.x, std::max(below.y, plan.high.y + ui.px(10.0F))});
}

}

void answer_panel(Ui& ui, const quiz::Question& question, AnswerInHand& draft, const quiz::Response* told)
{
    const bool is_told = told != nullptr;
    const std::vector<quiz::Lettered> list = quiz::lettered(question);
    if (std::holds_alternative<quiz::Number>(question.kind)) return type(ui, question, draft, is_told);
    if (std::holds_alternative<quiz::PutInOrder>(question.kind)) return lay(ui, list, draft, is_told);
    if (std::holds_alternative<quiz::ChooseSeveral>(question.kind)) return tick(ui, list, draft, is_told);
    if (const auto* place = std::get_if<quiz::PointAtPlan>(&question.kind)) return point(ui, *place, list, draft, is_told);
    choose_among(ui, list, draft, is_told);
}

}
