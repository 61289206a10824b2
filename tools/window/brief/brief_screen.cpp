#include "window/run/plan_part.hpp"
#include "window/run/site_plan.hpp"
#include "window/shell/masthead.hpp"
#include "window/shell/screens.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/chips.hpp"
#include "window/widgets/panel.hpp"

#include "debrief/wording.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;
using text::to_say;

/// The job, the place, the crew; and what is taken along, right or wrong.
class BriefScreen final : public Screen {
public:
    BriefScreen(Shell& shell, Sitting sitting) : shell_(shell), sitting_(std::move(sitting)), is_taken_(scenario().supplies.size(), false) {}

    void play(Ui& ui) override
    {
        take_keys_of_all_screens(ui, shell_.settings());
        Box rest = ui.screen();
        const Masthead head{.title = std::string(say(scenario().title)),
                            .lines = {say_with("{}, built {}", say(scenario().building.title), scenario().building.built)},
                            .has_way_back = true,
                            .back_hint = say("Back (Esc)")};
        if (masthead(ui, cut_top(rest, masthead_height(ui.screen(), ui.text_scale())), head, shell_.settings())) back();
        rest = {{rest.low.x + ui.px(14.0F), rest.low.y + ui.px(12.0F)}, {rest.high.x - ui.px(14.0F), rest.high.y - ui.px(12.0F)}};
        const Box foot = cut_bottom(rest, ui.px(56.0F));
        const float width = rest.width() / ui.text_scale();
        if (width < 900.0F) {
            panel(ui, "brief", rest, {.padding = 16.0F}, [&] { told(ui), ui.gap(10.0F), supplies(ui); });
        }
        else {
            const Box right = cut_right(rest, ui.px(std::clamp(width * 0.36F, 400.0F, 520.0F)));
            cut_right(rest, ui.px(12.0F));
            Box left = rest;
            const Box text = cut_left(left, ui.px(std::clamp(width * 0.27F, 300.0F, 400.0F)));
            cut_left(left, ui.px(12.0F));
            panel(ui, "told", text, {.padding = 16.0F}, [&] { told(ui); });
            drawing(ui, left);
            panel(ui, "supplies", right, {.title = say("What do you take along?"), .padding = 16.0F}, [&] { supplies(ui); });
        }
        begin_row(ui, foot);
        if (ui.shortcut(Key::escape)) back();
    }

    std::vector<KeyLine> keys() const override
    {
        return {{to_say("Arrows"), to_say("from one thing to the next")}, {to_say("Space"), to_say("take along, leave behind")}, {to_say("Esc"), to_say("back")}};
    }

private:
    const job::Scenario& scenario() const { return sitting_.drill->careful.scenario; }
    void back() { shell_.go_to(start_screen(shell_)); }

    void told(Ui& ui)
    {
        strong(ui, say("The job"));
        words(ui, say(scenario().job));
        rule(ui);
        strong(ui, say("The house"));
        words(ui, scenario().building.has_young_child ? say("A child under six lives there or comes by regularly.") : say("No child under six is there regularly."));
        words(ui, scenario().building.occupants_read == job::Language::spanish ? say("Those who live there read Spanish best.") : say("Those who live there read English best."));
        for (const job::Component& part : scenario().components) aside(ui, say_with("To be worked on: {}", say(part.title)));
        rule(ui);
        strong(ui, say("The crew"));
        for (const job::Person& person : scenario().crew) words(ui, say(person.title));
        rule(ui);
        strong(ui, say("What is asked"));
        words(ui, say("Decide every step from the pamphlet to the key: set up, do the work, take the waste out, clean, check, and hand the room back. The order is yours; the dust goes where your steps send it."));
        aside(ui, say_with("Marked by: {}", say(sitting_.drill->careful.book.title)));
        aside(ui, say("Training model, not a clearance prediction. On a real job follow the rule, your state's program and your licensed renovator."));
    }

    void supplies(Ui& ui)
    {
        words(ui, say("Not everything here is right for the job, and what you leave behind is not there later."));
        std::vector<Option> options;
        for (const job::Supply& supply : scenario().supplies) options.push_back({.name = supply.id.name, .label = debrief::as_sentence(std::string(say(supply.title)))});
        choose_chips(ui, "take", options, is_taken_);
    }

    void drawing(Ui& ui, const Box& box)
    {
        panel(ui, "brief-plan", box, {.can_scroll = false, .padding = 0.0F}, [&] {
            Board board{ui.canvas(), comfortable_view(near_part(scenario()), whole_plan(scenario()), box, ui.px(18.0F)), ui};
            const auto clip = board.canvas.clipped_to(box);
            draw_empty_site(board, scenario(), box);
            board.canvas.frame_box(box, ui.theme().ink, ui.px(1.2F), ui.px(2.0F));
        });
    }

    void begin_row(Ui& ui, const Box& box)
    {
        const auto taken = static_cast<unsigned long>(std::count(is_taken_.begin(), is_taken_.end(), true));
        panel(ui, "begin-row", box, {.is_sheet = false, .can_scroll = false, .padding = 0.0F}, [&] {
            Canvas canvas = ui.canvas();
            const std::string_view label = say("Start the drill");
            const float width = canvas.measure(label, TextStyle::body).x + ui.px(64.0F);
            ui.go_to({box.high.x - width, box.low.y + ui.px(12.0F)});
            if (button(ui, "begin", label, {.emphasis = Emphasis::primary, .icon = Icon::forward, .width = width / ui.text_scale()})) begin();
            const std::string count = text::say_number("{} thing taken along", "{} things taken along", taken);
            const Box at{{box.low.x, box.low.y + ui.px(12.0F)}, {box.high.x - width - ui.px(16.0F), box.low.y + ui.px(52.0F)}};
            canvas.text_in(at, count, TextStyle::body, ui.theme().muted, Align::right);
            ui.note({"taken", Role::text, count, {}, at});
        });
    }

    void begin()
    {
        job::Scenario taken = scenario();
        taken.supplies.clear();
        for (std::size_t i = 0; i < is_taken_.size(); ++i)
            if (is_taken_[i]) taken.supplies.push_back(scenario().supplies[i]);
        shell_.go_to(room_screen(shell_, sitting_, std::move(taken)));
    }

    Shell& shell_;
    Sitting sitting_;
    std::vector<bool> is_taken_; ///< in the order of the scenario's supplies
};

}

std::unique_ptr<Screen> brief_screen(Shell& shell, Sitting sitting) { return std::make_unique<BriefScreen>(shell, std::move(sitting)); }

}
