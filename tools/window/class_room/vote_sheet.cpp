#include "window/class_room/vote_sheet.hpp"

#include "window/stage/icon.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "text/language.hpp"
#include "text/show.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_number;
using text::say_with;

constexpr int most_votes = 999;

Key digit_key(std::size_t digit) { return static_cast<Key>(static_cast<int>(Key::digit_0) + static_cast<int>(digit)); }

/// The right end of an answer: its count, left of it the button that takes a vote away, or below it how it stands.
struct AnswerLook {
    float left, right;              ///< beside the words, pixels
    float words, height;
    float label, reason;
    std::string said_label, said_reason;
    std::string_view standing;
};

AnswerLook look_of(Ui& ui, const ClassQuestion& question, const ClassAnswer& answer)
{
    const Canvas canvas = ui.canvas();
    AnswerLook look;
    look.said_label = answer.label.said();
    look.standing = answer.is_right ? say("yes") : say("no");
    look.left = ui.px(48.0F);
    look.right = question.is_revealed ? std::max(canvas.measure(look.standing, TextStyle::small).x + ui.px(56.0F), ui.px(84.0F)) : ui.px(112.0F);
    look.words = std::max(ui.width_left() - look.left - look.right, ui.px(60.0F));
    look.label = canvas.measure_wrapped(look.words, look.said_label, TextStyle::strong).y;
    look.reason = 0.0F;
    if (question.is_revealed) {
        look.said_reason = answer.reason.said();
        look.reason = canvas.measure_wrapped(look.words, look.said_reason, TextStyle::small).y + ui.px(4.0F);
    }
    const float least = question.is_revealed ? 78.0F : 54.0F;
    look.height = std::max(look.label + look.reason + ui.px(32.0F), ui.px(least));
    return look;
}

/// A count as a bar along the foot of its answer; what was counted first as a line below it.
void draw_counts(Ui& ui, Canvas& canvas, const Box& rail, const ClassQuestion& question, const ClassAnswer& answer)
{
    const Theme& t = ui.theme();
    const auto share = [](int count, int all) { return static_cast<float>(count) / static_cast<float>(std::max(all, 1)); };
    canvas.fill_box(rail, t.field, ui.px(3.0F));
    canvas.frame_box(rail, t.line, 1.0F, ui.px(3.0F));
    if (answer.votes > 0) canvas.fill_box({rail.low, {rail.low.x + rail.width() * share(answer.votes, question.votes()), rail.high.y}}, t.accent, ui.px(3.0F));
    if (!question.is_second_vote || answer.first_votes == 0) return;
    const float end = rail.low.x + rail.width() * share(answer.first_votes, question.first_votes());
    canvas.fill_box({{rail.low.x, rail.high.y + ui.px(2.0F)}, {end, rail.high.y + ui.px(5.0F)}}, t.muted, ui.px(1.0F));
}

}

void VoteSheet::take_votes(Ui& ui, ClassAnswer& answer, const Touch& touch)
{
    if (touch.is_clicked) answer.votes = std::min(answer.votes + 1, most_votes), typing_on_.clear();
    if (!touch.has_focus) {
        if (typing_on_ == answer.name) typing_on_.clear();
        return;
    }
    for (const char32_t c : ui.input().typed) {
        if (c < U'0' || c > U'9') continue;
        if (typing_on_ != answer.name) answer.votes = 0, typing_on_ = answer.name;
        const int typed = answer.votes * 10 + static_cast<int>(c - U'0');
        if (typed <= most_votes) answer.votes = typed;
    }
    for (std::size_t d = 0; d <= 9; ++d) // these are not votes for the answer of that number
        while (ui.take_key(digit_key(d))) {}
    while (ui.take_key(Key::backspace)) answer.votes /= 10;
    while (ui.take_key(Key::minus)) answer.votes = std::max(answer.votes - 1, 0);
    while (ui.take_key(Key::plus)) answer.votes = std::min(answer.votes + 1, most_votes);
}

void VoteSheet::answer(Ui& ui, ClassQuestion& question, std::size_t place)
{
    ClassAnswer& answer = question.answers[place];
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const bool is_told = question.is_revealed;
    const AnswerLook look = look_of(ui, question, answer);
    const Touch touch = ui.touch({.name = "answer/" + answer.name,
                                  .role = Role::choice,
                                  .label = look.said_label,
                                  .value = std::to_string(answer.votes),
                                  .size = {ui.width_left(), look.height},
                                  .is_enabled = !is_told,
                                  .lets_others_on_top = true,
                                  .ring_rounding = 5.0F});
    const Box box = touch.box;
    const Point after = ui.cursor();
    if (!is_told) take_votes(ui, answer, touch);

    const bool is_good = is_told && answer.is_right;
    canvas.fill_box(box, is_good ? t.accent_tint : touch.is_hovered ? t.field : t.sheet, ui.px(5.0F));
    canvas.frame_box(box, is_good ? t.accent : t.line, is_good ? ui.px(2.4F) : ui.px(1.2F), ui.px(5.0F));
    const Point tag{box.low.x + ui.px(24.0F), box.low.y + ui.px(24.0F)};
    canvas.fill_circle(tag, ui.px(15.0F), t.ink);
    canvas.text_in(box_around(tag, {ui.px(30.0F), ui.px(30.0F)}), std::to_string(place + 1), TextStyle::strong, t.sheet, Align::center);
    const Box rail{{box.low.x + look.left, box.high.y - ui.px(15.0F)}, {box.high.x - look.right, box.high.y - ui.px(8.0F)}};
    const float slack = std::max(rail.low.y - box.low.y - look.label - look.reason, 0.0F);
    Point at{box.low.x + look.left, box.low.y + std::min(slack * 0.5F, ui.px(12.0F))};
    at.y += canvas.text_wrapped(at, look.words, look.said_label, TextStyle::strong, t.ink) + ui.px(4.0F);
    if (is_told) canvas.text_wrapped(at, look.words, look.said_reason, TextStyle::small, t.ink);
    draw_counts(ui, canvas, rail, question, answer);

    const float count_height = ui.px(36.0F);
    const float count_top = is_told ? box.low.y + ui.px(6.0F) : box.center().y - count_height * 0.5F;
    const Box figure{{box.high.x - ui.px(66.0F), count_top}, {box.high.x - ui.px(12.0F), count_top + count_height}};
    canvas.text_in(figure, std::to_string(answer.votes), TextStyle::title, t.ink, Align::right);
    if (is_told) {
        const float width = canvas.measure(look.standing, TextStyle::small).x + ui.px(34.0F);
        draw_mark(canvas, ui, {box.high.x - ui.px(12.0F) - width, figure.high.y}, answer.is_right ? Standing::good : Standing::caution, look.standing);
        return;
    }
    ui.go_to({box.high.x - ui.px(108.0F), box.center().y - ui.px(20.0F)});
    if (button(ui, "less/" + answer.name, "", {.emphasis = Emphasis::quiet, .icon = Icon::minus, .is_enabled = answer.votes > 0, .hint = say("One vote less")}))
        --answer.votes;
    ui.go_to(after);
}

/// The question, and beside it when the day was frozen; above it where there is no room beside.
void VoteSheet::head(Ui& ui, const ClassQuestion& question)
{
    const std::string asked = question.text.said();
    const std::string when = say_with("Frozen at {}", text::show_clock(question.asked_at));
    Canvas canvas = ui.canvas();
    const float width = canvas.measure(when, TextStyle::small).x;
    if (canvas.measure(asked, TextStyle::title).x + width + ui.px(16.0F) > ui.width_left()) {
        aside(ui, when);
        return title(ui, asked);
    }
    const float right = ui.cursor().x + ui.width_left();
    const float top = ui.cursor().y;
    title(ui, asked);
    canvas.text_in({{right - width - 1.0F, top}, {right, top + canvas.measure(asked, TextStyle::title).y}}, when, TextStyle::small, ui.theme().muted, Align::right);
}

VotePress VoteSheet::foot(Ui& ui, const Box& box, ClassQuestion& question)
{
    VotePress press = VotePress::none;
    panel(ui, "votes-foot", box, {.is_sheet = false, .can_scroll = false, .padding = 0.0F}, [&] {
        ui.go_to({box.low.x, box.low.y + ui.px(8.0F)});
        if (question.is_revealed) {
            if (button(ui, "play-on", say("Play on"), {.emphasis = Emphasis::primary, .icon = Icon::play, .width = -1.0F}) || ui.shortcut(Key::space)) press = VotePress::play_on;
            return;
        }
        if (button(ui, "reveal", say("Reveal"), {.emphasis = Emphasis::primary, .icon = Icon::eye, .hint = say("R")}) || ui.shortcut(Key::r)) press = VotePress::reveal;
        ui.beside(8.0F);
        const bool can_vote_again = question.votes() > 0 && !question.is_second_vote;
        if ((button(ui, "vote-again", say("Vote again"), {.is_enabled = can_vote_again, .hint = say("After the class has talked it over; the first count stays as a line (V)")}) || ui.shortcut(Key::v)) && can_vote_again)
            question.vote_again();
        const std::string told = question.is_second_vote ? say_with("{}, first {}", say_number("{} vote", "{} votes", static_cast<unsigned long>(question.votes())), question.first_votes())
                                                         : say_number("{} vote", "{} votes", static_cast<unsigned long>(question.votes()));
        Canvas canvas = ui.canvas();
        const float width = canvas.measure(told, TextStyle::strong).x;
        const Box at{{box.high.x - width, box.low.y + ui.px(8.0F)}, {box.high.x, box.low.y + ui.px(48.0F)}};
        ui.beside(0.0F);
        if (ui.cursor().x + ui.px(8.0F) <= at.low.x) canvas.text_in(at, told, TextStyle::strong, ui.theme().ink, Align::right);
        ui.note({"votes/count", Role::text, told, {}, at});
    });
    return press;
}

VotePress VoteSheet::play(Ui& ui, const Box& box, ClassQuestion& question)
{
    Box rest = box;
    const Box below = cut_bottom(rest, ui.px(56.0F));
    panel(ui, "votes", rest, {.padding = 14.0F}, [&] {
        head(ui, question);
        for (std::size_t i = 0; i < question.answers.size(); ++i) answer(ui, question, i);
        if (question.is_revealed) return;
        for (std::size_t i = 0; i < question.answers.size() && i < 9; ++i) {
            ClassAnswer& voted = question.answers[i];
            while (ui.shortcut(digit_key(i + 1))) voted.votes = std::min(voted.votes + 1, most_votes);
            while (ui.shortcut(digit_key(i + 1), {.shift = true})) voted.votes = std::max(voted.votes - 1, 0);
        }
        aside(ui, say("Click an answer for each hand, or type the number of hands on it. Keys 1 to 9 add a vote, with Shift they take one away; R reveals."));
    });
    return foot(ui, below, question);
}

}
