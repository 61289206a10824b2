#include "window/class_room/vote_sheet.hpp"

#include "window/stage/icon.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "text/language.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_number;
using text::say_with;

constexpr int most_votes = 999;

Key digit_key(std::size_t digit) { return static_cast<Key>(static_cast<int>(Key::digit_0) + static_cast<int>(digit)); }

}

void VoteSheet::answer(Ui& ui, ClassQuestion& question, std::size_t place)
{
    ClassAnswer& answer = question.answers[place];
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const float left = ui.px(48.0F);
    const float right = ui.px(84.0F);
    const float width = ui.width_left();
    const float words = std::max(width - left - right, ui.px(60.0F));
    const bool is_told = question.is_revealed;
    const float label = canvas.measure_wrapped(words, answer.label, TextStyle::strong).y;
    const float word = is_told ? ui.px(30.0F) : 0.0F;
    const float reason = is_told ? canvas.measure_wrapped(words, answer.reason, TextStyle::small).y + ui.px(4.0F) : 0.0F;
    const std::string count = std::to_string(answer.votes);
    const Touch touch = ui.touch({.name = "answer/" + answer.name,
                                  .role = Role::choice,
                                  .label = answer.label,
                                  .value = count,
                                  .size = {width, std::max(label + word + reason + ui.px(40.0F), ui.px(84.0F))},
                                  .is_enabled = !is_told,
                                  .lets_others_on_top = true,
                                  .ring_rounding = 5.0F});
    const Box box = touch.box;
    const Point after = ui.cursor();
    if (touch.is_clicked) answer.votes = std::min(answer.votes + 1, most_votes), typing_on_.clear();
    if (touch.has_focus) {
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
    else if (typing_on_ == answer.name) typing_on_.clear();

    const bool is_good = is_told && answer.is_right;
    const Color ground = is_good ? t.accent_tint : touch.is_hovered ? t.field : t.sheet;
    canvas.fill_box(box, ground, ui.px(5.0F));
    canvas.frame_box(box, is_good ? t.accent : t.line, is_good ? ui.px(2.4F) : ui.px(1.2F), ui.px(5.0F));
    const Point tag{box.low.x + ui.px(24.0F), box.low.y + ui.px(26.0F)};
    canvas.fill_circle(tag, ui.px(15.0F), t.ink);
    canvas.text_in(box_around(tag, {ui.px(30.0F), ui.px(30.0F)}), std::to_string(place + 1), TextStyle::strong, t.sheet, Align::center);
    float y = box.low.y + ui.px(12.0F);
    canvas.text_wrapped({box.low.x + left, y}, words, answer.label, TextStyle::strong, t.ink);
    y += label + ui.px(4.0F);
    if (is_told) {
        draw_mark(canvas, ui, {box.low.x + left, y}, answer.is_right ? Standing::good : Standing::caution, answer.is_right ? say("yes") : say("no"));
        y += word;
        canvas.text_wrapped({box.low.x + left, y}, words, answer.reason, TextStyle::small, t.ink);
    }
    // Votes as a bar along the foot, their number at the right.
    const int all = question.votes();
    const Box rail{{box.low.x + left, box.high.y - ui.px(18.0F)}, {box.high.x - right, box.high.y - ui.px(9.0F)}};
    canvas.fill_box(rail, t.field, ui.px(3.0F));
    canvas.frame_box(rail, t.line, 1.0F, ui.px(3.0F));
    if (answer.votes > 0) canvas.fill_box({rail.low, {rail.low.x + rail.width() * static_cast<float>(answer.votes) / static_cast<float>(std::max(all, 1)), rail.high.y}}, t.accent, ui.px(3.0F));
    const Box figure{{box.high.x - right, box.low.y + ui.px(6.0F)}, {box.high.x - ui.px(12.0F), box.low.y + ui.px(42.0F)}};
    canvas.text_in(figure, count, TextStyle::title, t.ink, Align::right);
    if (!is_told) {
        ui.go_to({box.high.x - ui.px(48.0F), box.high.y - ui.px(44.0F)});
        if (button(ui, "less/" + answer.name, "", {.emphasis = Emphasis::quiet, .icon = Icon::minus, .is_enabled = answer.votes > 0, .hint = say("One vote less")}))
            --answer.votes;
        ui.go_to(after);
    }
}

VotePress VoteSheet::play(Ui& ui, const Box& box, ClassQuestion& question)
{
    VotePress press = VotePress::none;
    panel(ui, "votes", box, {.padding = 16.0F}, [&] {
        title(ui, question.text);
        for (std::size_t i = 0; i < question.answers.size(); ++i) answer(ui, question, i);
        for (std::size_t i = 0; i < question.answers.size() && i < 9 && !question.is_revealed; ++i) {
            ClassAnswer& voted = question.answers[i];
            while (ui.shortcut(digit_key(i + 1))) voted.votes = std::min(voted.votes + 1, most_votes);
            while (ui.shortcut(digit_key(i + 1), {.shift = true})) voted.votes = std::max(voted.votes - 1, 0);
        }
        words(ui, say_number("{} vote", "{} votes", static_cast<unsigned long>(question.votes())));
        if (!question.is_revealed) {
            if (button(ui, "reveal", say("Reveal"), {.emphasis = Emphasis::primary, .icon = Icon::eye, .width = -1.0F}) || ui.shortcut(Key::r)) press = VotePress::reveal;
            aside(ui, say("Click an answer for each hand, or type the number of hands on it. Keys 1 to 9 add a vote, with Shift they take one away; R reveals."));
        }
        else if (button(ui, "play-on", say("Play on"), {.emphasis = Emphasis::primary, .icon = Icon::play, .width = -1.0F}) || ui.shortcut(Key::space)) press = VotePress::play_on;
    });
    return press;
}

}
