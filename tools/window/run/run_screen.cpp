#include "window/run/run_screen.hpp"

#include "window/debrief/what_if_panel.hpp"
#include "window/run/help.hpp"
#include "window/run/hung_flap.hpp"
#include "window/run/plan_panel.hpp"
#include "window/run/section_panel.hpp"
#include "window/run/sheets.hpp"
#include "window/run/time_bar.hpp"
#include "window/shell/masthead.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/panel.hpp"

#include "text/language.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

namespace flapdoor::window {

namespace {

using text::say;

constexpr Time short_step = 30.0_s;
constexpr Time long_step = 5.0_min;
constexpr double zoom_of_a_key = 1.25;

constexpr std::array<std::string_view, page_count> page_names{"plan", "section", "steps", "faults", "marks", "dust", "what-if"};
constexpr std::array<std::string_view, page_count> page_labels{text::to_say("Plan"), text::to_say("Section"), text::to_say("Steps"), text::to_say("Faults"), text::to_say("Marks"), text::to_say("Dust"), text::to_say("What if")};

/// Where the tabs begin: on a wide screen the plan and the section have their own places.
std::size_t first_tab(const Layout& layout) { return layout.is_wide ? (layout.is_tall ? 2U : 1U) : 0U; }

}

RunScreen::RunScreen(std::shared_ptr<const Story> story) : story_(std::move(story)), playback_(*story_) {}

void RunScreen::take_keys_first(Ui& ui)
{
    while (ui.shortcut(Key::page_down)) playback_.to_card(+1);
    while (ui.shortcut(Key::page_up)) playback_.to_card(-1);
}

void RunScreen::take_keys_left(Ui& ui)
{
    if (ui.shortcut(Key::space)) playback_.play_or_pause();
    while (ui.shortcut(Key::right)) playback_.step_by(short_step);
    while (ui.shortcut(Key::left)) playback_.step_by(short_step * -1.0);
    while (ui.shortcut(Key::right, {.shift = true})) playback_.step_by(long_step);
    while (ui.shortcut(Key::left, {.shift = true})) playback_.step_by(long_step * -1.0);
    while (ui.shortcut(Key::f)) playback_.to_fault(+1);
    while (ui.shortcut(Key::f, {.shift = true})) playback_.to_fault(-1);
    if (ui.shortcut(Key::home)) playback_.go_to(story_->start);
    if (ui.shortcut(Key::end)) playback_.go_to(story_->end);
    if (ui.shortcut(Key::s)) playback_.set_speed((playback_.speed() + 1) % playing_speeds.size());
    if (ui.shortcut(Key::digit_1)) state_.view = ViewKind::there;
    if (ui.shortcut(Key::digit_2)) state_.view = ViewKind::seen;
    if (ui.shortcut(Key::digit_3)) state_.view = ViewKind::airborne;
    while (ui.shortcut(Key::plus) || ui.shortcut(Key::plus, {.shift = true})) zoom_plan(state_, zoom_of_a_key);
    while (ui.shortcut(Key::minus)) zoom_plan(state_, 1.0 / zoom_of_a_key);
    if (ui.shortcut(Key::digit_0)) fit_plan(state_);
    if (ui.shortcut(Key::b)) state_.mode = state_.mode == PlanMode::swipe ? PlanMode::plan : PlanMode::swipe;
    if (ui.shortcut(Key::d)) state_.mode = state_.mode == PlanMode::flap || !hung_flap(*story_, playback_.now()) ? PlanMode::plan : PlanMode::flap;
    if (reference_ && ui.shortcut(Key::c)) state_.mode = state_.mode == PlanMode::compare ? PlanMode::plan : PlanMode::compare;
    take_keys_of_all_screens(ui, state_);
    const bool asks = ui.input().typed.find(U'?') != std::u32string::npos;
    if (!state_.shows_help && (asks || ui.shortcut(Key::f1))) state_.shows_help = true;
    if (ui.shortcut(Key::escape) || ui.shortcut(Key::q)) state_.wants_to_quit = true;
}

void RunScreen::tabs(Ui& ui, const Layout& layout)
{
    const std::size_t first = first_tab(layout);
    std::vector<Option> options;
    for (std::size_t i = first; i < page_labels.size(); ++i) options.push_back({std::string(page_names[i]), std::string(text::say(page_labels[i]))});
    auto chosen = static_cast<std::size_t>(std::max(static_cast<int>(state_.page) - static_cast<int>(first), 0));
    if (layout.is_wide && static_cast<std::size_t>(state_.page) < first) chosen = static_cast<std::size_t>(Page::steps) - first;
    ui.go_to(layout.tabs.low);
    choice_row(ui, "sheet", options, chosen);
    if (ui.shortcut(Key::t)) chosen = (chosen + 1) % options.size();
    if (static_cast<Page>(chosen + first) != state_.page) state_.card_in_sight.reset();
    state_.page = static_cast<Page>(chosen + first);
}

void RunScreen::offer_reference(debrief::Inputs careful) { reference_ = std::make_unique<ReferenceRun>(std::move(careful), story_->report.seed); }

const Story* RunScreen::other() { return reference_ ? reference_->story().get() : nullptr; }

/// The large drawing, and above it what it shows.
void RunScreen::drawing(Ui& ui, Box box, bool is_wide, const Moment& moment)
{
    const Box head = cut_top(box, ui.px(46.0F));
    std::vector<Option> options{{"plan", std::string(say("Plan")), Icon::none, std::string(say("The site at the time played"))},
                                {"swipe", std::string(say("Before and after")), Icon::none, std::string(say("The floor at two moments (B)"))}};
    const std::optional<mechanics::FlapDoor> door = hung_flap(*story_, playback_.now());
    if (!door && state_.mode == PlanMode::flap) state_.mode = PlanMode::plan;
    options.push_back({"flap", std::string(say("Flap door")), Icon::none, std::string(door ? say("Its sheets while somebody walks through (D)") : say("No flap door hangs at this time")), door.has_value()});
    if (reference_) options.push_back({"compare", std::string(is_wide ? say("Beside the careful run") : say("Beside")), Icon::none, std::string(say("The careful plan on the same seed (C)"))});
    auto chosen = static_cast<std::size_t>(state_.mode);
    ui.go_to(head.low);
    if (choice_row(ui, "mode", options, chosen)) state_.mode = static_cast<PlanMode>(chosen);
    if (!door && state_.mode == PlanMode::flap) state_.mode = PlanMode::plan; // arrow keys walk over it
    switch (state_.mode) {
        case PlanMode::plan:
            return plan_panel(ui, box, is_wide, *story_, moment, state_);
        case PlanMode::swipe:
            return swipe_.play(ui, box, *story_, state_.view, state_.keeps_still);
        case PlanMode::flap:
            return panel(ui, "flap", box, {.can_scroll = false, .padding = 0.0F}, [&] {
                flap_.play(ui, box.inset(ui.px(12.0F)), {.door = *door, .keeps_still = state_.keeps_still, .offers_variants = true});
            });
        case PlanMode::compare:
            return compare_.play(ui, box, *story_, other(), playback_.now(), state_);
    }
}

/// The strip below: the section, or the figures of both runs.
void RunScreen::section(Ui& ui, const Box& box, const Moment& moment)
{
    if (state_.mode == PlanMode::compare) return compare_sheet(ui, box, *story_, other(), playback_.now());
    section_panel(ui, box, *story_, moment, state_);
}

void RunScreen::page(Ui& ui, const Layout& layout, const Moment& moment)
{
    switch (state_.page) {
        case Page::plan:
            return drawing(ui, layout.plan, false, moment);
        case Page::section:
            return section(ui, layout.is_wide ? layout.sheet : layout.section, moment);
        case Page::steps:
            return steps_sheet(ui, layout.sheet, *story_, moment, state_, playback_);
        case Page::faults:
            return faults_sheet(ui, layout.sheet, *story_, moment, state_, playback_);
        case Page::marks:
            return marks_sheet(ui, layout.sheet, *story_);
        case Page::dust:
            return dust_sheet(ui, layout.sheet, *story_, moment);
        case Page::what_if:
            return what_if(ui, layout.sheet);
    }
}

/// The sheet of what-ifs; a row that is pressed leads to its fault.
void RunScreen::what_if(Ui& ui, const Box& box)
{
    const WhatIfPress press = what_if_panel(ui, box, what_ifs_, !story_->report.faults.empty());
    if (press.is_asked) what_ifs_.start(story_->inputs, reference_ ? std::optional(reference_->inputs().plan) : std::nullopt, story_->report);
    if (press.is_stopped) what_ifs_.stop();
    const auto& faults = story_->report.faults;
    const auto shown = std::find_if(faults.begin(), faults.end(), [&](const debrief::FaultLine& fault) { return fault.rule.rule == press.shown_rule; });
    if (press.shown_rule.empty() || shown == faults.end()) return;
    playback_.pause();
    playback_.go_to(story_->first_time(static_cast<std::size_t>(shown - faults.begin())));
    state_.page = Page::faults;
    ui.focus_on("fault-" + std::to_string(shown->number));
}

void RunScreen::play(Ui& ui)
{
    playback_.advance(ui.input().seconds);
    take_keys_first(ui);
    const Layout layout = lay_out(ui.screen(), ui.text_scale());
    const Moment moment = moment_of(*story_, playback_.now(), !state_.keeps_still);
    RunTitle title = title_of(story_->inputs, story_->report.seed, story_->report.sheet.is_passed);
    title.has_way_back = state_.has_way_back;

    if (header(ui, layout.header, title, state_)) state_.wants_to_quit = true;
    if (layout.is_wide) drawing(ui, layout.plan, true, moment);
    if (layout.is_tall) section(ui, layout.section, moment);
    if (std::exchange(state_.asks_for_strip, false) && !layout.is_tall) state_.page = Page::section;
    tabs(ui, layout);
    page(ui, layout, moment);
    time_bar(ui, layout.time, layout.is_roomy, *story_, playback_);
    take_keys_left(ui);
    if (state_.shows_help) state_.shows_help = help(ui, title, state_);
}

}
