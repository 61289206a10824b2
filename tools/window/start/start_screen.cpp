#include "window/room/keeping.hpp"
#include "window/shell/masthead.hpp"
#include "window/shell/screens.hpp"
#include "window/start/drill_card.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/field.hpp"
#include "window/widgets/panel.hpp"

#include <algorithm>
#include <array>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;
using text::to_say;

struct ModeWords {
    Mode mode;
    std::string_view name, label, note;
};
constexpr std::array<ModeWords, 5> modes{{
    {Mode::step_by_step, "step", to_say("Step by step, to practice"), to_say("Faults are told as they happen. Steps can be taken back.")},
    {Mode::marked, "marked", to_say("Step by step, marked"), to_say("Nothing is told before the end, and what is done is done.")},
    {Mode::order_first, "order", to_say("Order first, then watch"), to_say("Put the cards of a careful crew in order and see the day go by.")},
    {Mode::spot_the_fault, "spot", to_say("Spot the fault"), to_say("Watch a hurried crew and mark what goes wrong.")},
    {Mode::for_a_class, "class", to_say("With a class"), to_say("On the wall: stop, ask, vote, and look.")},
}};

/// Choose a drill at the left, how to take it at the right.
class StartScreen final : public Screen {
public:
    explicit StartScreen(Shell& shell) : shell_(shell), shelf_(read_drills(shell.places().scenarios, shell.places().book)), left_(left_drills(shell.places())) {}

    void play(Ui& ui) override
    {
        take_keys_of_all_screens(ui, shell_.settings());
        Box rest = ui.screen();
        const Masthead head{.title = "Flapdoor",
                            .lines = {std::string(say("Rehearse lead-safe renovation: see the dust, make the mistakes, hurt nobody")),
                                      std::string(say("Rehearse lead-safe renovation"))}};
        masthead(ui, cut_top(rest, masthead_height(ui.screen(), ui.text_scale())), head, shell_.settings());
        rest = {{rest.low.x + ui.px(14.0F), rest.low.y + ui.px(12.0F)}, {rest.high.x - ui.px(14.0F), rest.high.y - ui.px(12.0F)}};
        const float width = rest.width() / ui.text_scale();
        if (width < 820.0F) {
            panel(ui, "start", rest, {.is_sheet = false, .padding = 2.0F}, [&] { drills(ui, 0.0F), ui.gap(12.0F), choices(ui); });
        }
        else {
            const Box right = cut_right(rest, ui.px(std::clamp(width * 0.3F, 340.0F, 430.0F)));
            cut_right(rest, ui.px(14.0F));
            panel(ui, "drills", rest, {.is_sheet = false, .padding = 2.0F}, [&] { drills(ui, rest.high.y); });
            panel(ui, "choices", right, {.padding = 18.0F}, [&] { choices(ui); });
        }
        if (ui.shortcut(Key::escape) || ui.shortcut(Key::q)) shell_.quit();
    }

    std::vector<KeyLine> keys() const override
    {
        return {{to_say("Arrows"), to_say("from drill to drill, from choice to choice")},
                {to_say("Enter"), to_say("choose; begin")},
                {to_say("Esc, Q"), to_say("close")}};
    }

private:
    /// Drills that were left before their end, each with a way to go on; files that do not read are told and stay.
    void left_behind(Ui& ui)
    {
        for (std::size_t i = 0; i < left_.size(); ++i) {
            const LeftDrill& left = left_[i];
            const std::shared_ptr<const Drill> drill = left.drill ? shelf_.find(left.drill->kept.drill) : nullptr;
            if (!left.drill)
                left_strip(ui, i, say_with("A drill that was left does not read any more. Its file stays where it is: {}", describe(left.drill.error().front())), false);
            else if (drill == nullptr)
                left_strip(ui, i, say_with("A drill that was left is not among these: {}", left.drill->kept.drill), false);
            else if (left_strip(ui, i, left_words(*drill, *left.drill), true))
                shell_.go_to(resumed_room(shell_, sitting_of(drill, *left.drill), *left.drill));
        }
    }

    static Sitting sitting_of(std::shared_ptr<const Drill> drill, const drill::Resumed& left)
    {
        return {std::move(drill), left.kept.manner == drill::Manner::marked ? Mode::marked : Mode::step_by_step, left.seed, left.kept.who};
    }

    static std::string left_words(const Drill& drill, const drill::Resumed& left)
    {
        const std::string cards = text::say_number("after {} card", "after {} cards", left.plan.cards.size());
        const std::string title(say(drill.careful.scenario.title));
        return left.kept.who.empty() ? say_with("\"{}\" was left {}.", title, cards) : say_with("{2} left \"{0}\" {1}.", title, cards, left.kept.who);
    }

    /// @return true when it was asked to go on
    bool left_strip(Ui& ui, std::size_t number, const std::string& told, bool can_go_on)
    {
        const Theme& t = ui.theme();
        Canvas canvas = ui.canvas();
        const float width = ui.width_left() - ui.px(4.0F);
        const std::string_view label = say("Go on with it");
        const float button_width = can_go_on ? canvas.measure(label, TextStyle::body).x + ui.px(60.0F) : 0.0F;
        const float text_width = width - button_width - ui.px(36.0F);
        const float height = std::max(canvas.measure_wrapped(text_width, told, TextStyle::body).y + ui.px(20.0F), ui.px(can_go_on ? 56.0F : 40.0F));
        const Box box = box_at(ui.cursor(), {width, height});
        canvas.fill_box(box, can_go_on ? t.accent_tint : t.caution_tint, ui.px(3.0F));
        canvas.frame_box(box, can_go_on ? t.accent : t.caution, ui.px(1.2F), ui.px(3.0F));
        const float text_height = canvas.measure_wrapped(text_width, told, TextStyle::body).y;
        canvas.text_wrapped({box.low.x + ui.px(14.0F), box.center().y - text_height * 0.5F}, text_width, told, TextStyle::body, t.ink);
        ui.note({"left-" + std::to_string(number), Role::text, told, {}, box});
        bool goes_on = false;
        if (can_go_on) {
            ui.go_to({box.high.x - button_width - ui.px(8.0F), box.center().y - ui.px(20.0F)});
            goes_on = button(ui, "go-on-" + std::to_string(number), label, {.emphasis = Emphasis::primary, .icon = Icon::play, .width = button_width / ui.text_scale()});
        }
        ui.go_to({box.low.x, box.high.y + ui.px(12.0F)});
        return goes_on;
    }

    /// @param bottom  of the panel: pictures grow into what is free, within bounds
    void drills(Ui& ui, float bottom)
    {
        constexpr float gap = 14.0F;
        constexpr float least_picture = 0.52F, most_picture = 0.85F; // of the width
        left_behind(ui);
        const Point low = ui.cursor();
        const float width = ui.width_left() - ui.px(4.0F);
        const auto columns = static_cast<std::size_t>(std::max(1, static_cast<int>((width + ui.px(gap)) / ui.px(290.0F + gap))));
        const float card_width = std::min((width - ui.px(gap) * static_cast<float>(columns - 1)) / static_cast<float>(columns), ui.px(460.0F));
        std::vector<float> words; // of each row
        for (std::size_t i = 0; i < shelf_.drills.size(); ++i) {
            if (i % columns == 0) words.push_back(0.0F);
            words.back() = std::max(words.back(), drill_words_height(ui, card_width, *shelf_.drills[i]));
        }
        float taken = 0.0F;
        for (const float height : words) taken += height + ui.px(gap);
        const float rows = static_cast<float>(std::max<std::size_t>(words.size(), 1));
        const float picture = std::clamp((bottom - low.y - taken) / rows, card_width * least_picture, card_width * most_picture);
        float y = low.y;
        const std::size_t count = shelf_.drills.size();
        for (std::size_t row = 0; row < words.size(); ++row) {
            const float height = picture + words[row];
            for (std::size_t i = row * columns; i < std::min((row + 1) * columns, count); ++i) {
                const float x = low.x + static_cast<float>(i % columns) * (card_width + ui.px(gap));
                const Touch touch = drill_card(ui, box_at({x, y}, {card_width, height}), picture, *shelf_.drills[i], i == chosen_);
                if (touch.is_clicked) chosen_ = i;
                if (touch.has_focus && i + 1 < count && (ui.take_key(Key::right) || ui.take_key(Key::down))) choose(ui, i + 1);
                if (touch.has_focus && i > 0 && (ui.take_key(Key::left) || ui.take_key(Key::up))) choose(ui, i - 1);
            }
            y += height + ui.px(gap);
        }
        for (const BrokenDrill& broken : shelf_.broken) y += draw_broken_drill(ui, {low.x, y}, width, broken) + ui.px(gap);
        ui.go_to({low.x, y});
        ui.place({width, 1.0F});
    }

    void choose(Ui& ui, std::size_t drill)
    {
        chosen_ = drill;
        ui.focus_on("drill/" + shelf_.drills[drill]->id);
    }

    void choices(Ui& ui)
    {
        strong(ui, say("How do you take it?"));
        std::vector<Option> options;
        for (const ModeWords& mode : modes) options.push_back({.name = std::string(mode.name), .label = std::string(say(mode.label)), .note = std::string(say(mode.note))});
        std::optional<std::size_t> mode = mode_;
        choose_one(ui, "mode", options, mode);
        mode_ = mode.value_or(mode_);
        ui.gap(8.0F);
        text_field(ui, "who", say("Who is playing? Kept in the run file and nowhere else."), who_, {.empty_text = say("nobody")});
        ui.gap(8.0F);
        const bool can_begin = !shelf_.drills.empty();
        if (button(ui, "begin", say("Begin"), {.emphasis = Emphasis::primary, .icon = Icon::forward, .width = -1.0F, .is_enabled = can_begin}) && can_begin)
            shell_.go_to(screen_of(shell_, {shelf_.drills[chosen_], modes[mode_].mode, 1, who_}));
        if (button(ui, "questions", say("Be asked questions instead"), {.width = -1.0F, .hint = say("Papers of questions, to practice or as a sitting")})) shell_.go_to(quiz_start_screen(shell_));
        ui.gap(8.0F);
        aside(ui, say("A teaching program. It gives no clearance, no certification and no legal advice: follow your licensed instructor, your state's program and local codes."));
    }

    Shell& shell_;
    DrillShelf shelf_;
    std::vector<LeftDrill> left_;
    std::size_t chosen_ = 0;
    std::size_t mode_ = 0;
    std::string who_;
};

}

std::unique_ptr<Screen> start_screen(Shell& shell) { return std::make_unique<StartScreen>(shell); }

}
