#include "window/room/room_screen.hpp"

#include "window/room/site_sheet.hpp"
#include "window/run/plan_panel.hpp"
#include "window/run/section_panel.hpp"
#include "window/run/sheets.hpp"
#include "window/run/time_bar.hpp"
#include "window/shell/left_threads.hpp"
#include "window/shell/masthead.hpp"
#include "window/run/phrases.hpp"
#include "window/stage/icon.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "core/insist.hpp"
#include "debrief/wording.hpp"

#include <fmt/format.h>

#include <array>
#include <chrono>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;
using text::to_say;


bool is_ready(const auto& future) { return future.valid() && future.wait_for(std::chrono::seconds(0)) == std::future_status::ready; }

debrief::Inputs begun(const Sitting& sitting, const job::Scenario& taken)
{
    return inputs_of(sitting.drill->careful, taken, {job::WorkPlan::format_version, taken.id, sitting.who, {}});
}

}

RoomScreen::RoomScreen(Shell& shell, Sitting sitting, job::Scenario taken, std::optional<drill::Resumed> resumed)
    : shell_(shell), sitting_(std::move(sitting)), attempt_(taken, sitting_.seed, 30.0_s, leave_behind),
      live_(begun(sitting_, taken), attempt_, sitting_.mode != Mode::marked), playback_(*live_.story())
{
    playback_.set_speed(calm_speed);
    for (const job::Person& person : taken.crew) team_.push_back(person.id);
    if (!resumed || resumed->plan.cards.empty()) return;
    expected_state_ = resumed->kept.state;
    attempt_.play(std::move(resumed->plan.cards));
}

RoomScreen::~RoomScreen() = default;

bool RoomScreen::is_moving() const { return (by_hand_ && by_hand_->is_moving()) || (state_.strip == Strip::flap && state_.strip_flap.is_moving()) || playback_.is_playing() || attempt_.is_busy() || finishing_.valid() || keeping_.valid() || dealing_ != nullptr; }

std::vector<KeyLine> RoomScreen::keys() const
{
    return {{to_say("/"), to_say("find a card")},
            {to_say("Ctrl + Enter"), to_say("carry the card in hand out")},
            {to_say("Ctrl + Z"), to_say("take the last card back (to practice)")},
            {to_say("Esc"), to_say("put the card down; leave, the drill is kept")},
            {to_say("Space"), to_say("pause, go on")},
            {"\xE2\x86\x90  \xE2\x86\x92", to_say("half a minute back, forward")},
            {to_say("Home, End"), to_say("start, now")},
            {to_say("S"), to_say("next speed")},
            {to_say("1, 2, 3"), to_say("what is there, what you could see, in the air")},
            {to_say("L"), to_say("the flashlight on or off; arrow keys move it while it has the focus")},
            {to_say("W, Shift + W"), to_say("below the plan: section, the four walls, the flap door")},
            {to_say("+, -, 0"), to_say("closer, further away, fit")},
            {to_say("T"), to_say("next sheet: cards, done, site")}};
}

// --- deciding -----------------------------------------------------------------------------------------------------------

void RoomScreen::take_up(job::Card card)
{
    draft_ = drafted(attempt_.site(), std::move(card));
    tab_ = Tab::cards;
}

void RoomScreen::put_down()
{
    draft_.reset();
    by_hand_.reset();
    next_up_.clear();
}

void RoomScreen::take_by_hand()
{
    if (draft_ && !ByHand::label_for(attempt_.site(), draft_->card.step).empty()) by_hand_.emplace(attempt_.site(), draft_->card.step);
}

/// The card that follows from the close-up of the one just done; its tools are for the crew to choose.
void RoomScreen::take_up_next()
{
    if (next_up_.empty() || is_busy() || draft_) return;
    const job::Step step = next_up_.front();
    next_up_.erase(next_up_.begin());
    job::Card card{step, team_, {}};
    if (const auto* vacuum = std::get_if<job::VacuumBag>(&step)) { // the vacuum is filled in where only one would do
        card = proposed(attempt_.site(), step_kinds()[step.index()], team_);
        std::get<job::VacuumBag>(card.step).bag = vacuum->bag;
    }
    take_up(std::move(card));
}

void RoomScreen::do_it()
{
    if (!draft_ || draft_->why_not || is_busy()) return;
    team_ = draft_->card.by;
    news_.clear();
    notice_.clear();
    playback_.go_to(live_.story()->end);
    is_paused_ = false;
    attempt_.play({std::move(draft_->card)});
    draft_.reset();
    by_hand_.reset();
    live_.follow(attempt_);
}

bool RoomScreen::can_step_back() const { return sitting_.mode != Mode::marked && !is_busy() && !attempt_.cards().empty(); }

void RoomScreen::step_back()
{
    if (!can_step_back()) return;
    const job::Card last = attempt_.cards().back();
    attempt_.step_back();
    live_.follow(attempt_);
    put_down();
    news_.clear();
    is_deck_stale_ = true;
    playback_.go_to(live_.story()->end);
    if (!attempt_.is_busy()) take_up(last), keep();
}

void RoomScreen::take_news()
{
    const drill::Attempt::News news = attempt_.take_news();
    if (news.has_pictures || news.cards_done > 0 || news.is_over) {
        std::vector<debrief::FaultLine> faults = live_.follow(attempt_);
        if (expected_state_.empty()) news_.insert(news_.end(), faults.begin(), faults.end());
    }
    if (news.cards_done > 0) is_deck_stale_ = true;
    if (!news.is_over) return;
    if (!expected_state_.empty()) { // a drill gone on with stands again where it was left
        if (as_it_stands(sitting_, attempt_).state != expected_state_)
            notice_ = say("The program has changed since this drill was left: the same cards give another result now.");
        expected_state_.clear();
        playback_.go_to(live_.story()->end);
        if (!attempt_.cards().empty()) team_ = attempt_.cards().back().by;
    }
    keep();
    take_up_next();
}

/// The deck is tried out beside the window: what cannot be done takes many tries.
void RoomScreen::deal()
{
    if (dealing_)
        if (auto dealt = dealing_->take()) deck_ = std::move(*dealt), dealing_.reset();
    if (!is_deck_stale_ || attempt_.is_busy() || dealing_) return;
    dealing_ = std::make_unique<Beside<std::vector<DeckCard>>>([site = attempt_.shared_site(), team = team_](const std::atomic<bool>&) { return deck_of(*site, team); });
    if (draft_) draft_ = drafted(attempt_.site(), draft_->card);
    is_deck_stale_ = false;
}

void RoomScreen::keep()
{
    if (keeping_.valid()) keeping_.wait(); // the one before is some kilobytes: it is all but done
    if (attempt_.cards().empty()) {
        std::error_code not_there;
        std::filesystem::remove(unfinished_file(shell_.places(), sitting_.drill->id), not_there);
        return;
    }
    keeping_ = std::async(std::launch::async, [kept = as_it_stands(sitting_, attempt_), file = unfinished_file(shell_.places(), sitting_.drill->id).string()] {
        return drill::save_unfinished(kept, file);
    });
}

void RoomScreen::finish()
{
    if (attempt_.is_busy() || attempt_.cards().empty() || finishing_.valid()) return;
    if (keeping_.valid()) keeping_.wait();
    const std::string title(sitting_.who.empty() ? to_say("Played in the drill room") : std::string_view(sitting_.who));
    finishing_ = std::async(std::launch::async, [this, title] {
        debrief::Inputs inputs = inputs_of(sitting_.drill->careful, attempt_.scenario(), attempt_.plan(title));
        debrief::Job job = as_job(inputs, attempt_, title);
        if (keep_run(shell_.places(), inputs, job)) {
            std::error_code gone_already;
            std::filesystem::remove(unfinished_file(shell_.places(), sitting_.drill->id), gone_already);
        }
        return tell(std::move(inputs), std::move(job));
    });
}

void RoomScreen::leave()
{
    attempt_.give_up(); // what is done is kept already
    shell_.go_to(start_screen(shell_));
}

// --- a frame ------------------------------------------------------------------------------------------------------------

void RoomScreen::advance(float seconds)
{
    const bool follows = !is_paused_ && expected_state_.empty();
    if (!expected_state_.empty()) playback_.go_to(live_.story()->end);
    if (follows && !playback_.is_at_end()) playback_.play();
    if (follows && state_.keeps_still && !attempt_.is_busy()) playback_.go_to(live_.story()->end);
    playback_.advance(seconds);
}

void RoomScreen::play(Ui& ui)
{
    static_cast<Settings&>(state_) = shell_.settings();
    if (is_ready(finishing_)) shell_.go_to(debrief_screen(shell_, std::make_shared<const Story>(finishing_.get()), sitting_.drill->careful));
    if (is_ready(keeping_))
        if (const Result<void> kept = keeping_.get(); !kept) notice_ = say_with("This drill cannot be kept: {}", describe(kept.error().front()));
    take_news();
    deal();
    advance(ui.input().seconds);

    const Story& story = *live_.story();
    const Layout layout = lay_out(ui.screen(), ui.text_scale());
    const Moment moment = moment_of(story, playback_.now(), !state_.keeps_still);
    Masthead head{.title = std::string(say(story.inputs.scenario.title)),
                  .lines = {std::string(sitting_.mode == Mode::marked ? say("Marked: nothing is told before the end") : say("To practice: faults are told as they happen"))},
                  .mark = attempt_.is_busy() ? std::string(say("being carried out")) : text::say_number("{} card done", "{} cards done", attempt_.cards().size()),
                  .caution = say(model_caution),
                  .has_way_back = true,
                  .back_hint = say("Leave; the drill is kept (Esc)")};
    if (masthead(ui, layout.header, head, shell_.settings())) leave();
    if (by_hand_) return close_up(ui, {{ui.px(14.0F), layout.header.high.y + ui.px(10.0F)}, {ui.screen().high.x - ui.px(14.0F), ui.screen().high.y - ui.px(12.0F)}});
    state_.on_plan = {};
    if (draft_ && !is_busy() && PlanTools::has_tools(draft_->card.step))
        state_.on_plan = [this](Ui& stage, const Box& window, const PaperView& view) { tools_on_plan(stage, window, view); };
    if (layout.is_wide) plan_panel(ui, layout.plan, true, story, moment, state_);
    if (layout.is_tall) section_panel(ui, layout.section, story, moment, state_);
    if (std::exchange(state_.asks_for_strip, false) && !layout.is_tall) tab_ = Tab::section;
    tabs(ui, layout);
    side(ui, layout, moment);
    const bool was_playing = playback_.is_playing();
    const Time before = playback_.now();
    time_bar(ui, layout.time, layout.is_roomy, story, playback_);
    if (was_playing != playback_.is_playing()) is_paused_ = !playback_.is_playing();
    else if (playback_.now() != before) is_paused_ = !playback_.is_at_end(), playback_.pause(); // looked back
    take_keys(ui);
    if (std::exchange(is_taken_on_plan_, false)) do_it();
    if (asks_to_finish_) asks_to_finish(ui);
}

/// What is set on the plan is the card that is being filled in.
void RoomScreen::tools_on_plan(Ui& ui, const Box& window, const PaperView& view)
{
    if (!draft_) return;
    const Story& story = *live_.story();
    const PlanEdit edit = tools_.play(ui, window, view, {story.inputs.scenario, story.film.frames.back().is_object_there}, draft_->card.step);
    if (edit.has_changed) draft_ = drafted(attempt_.site(), draft_->card);
    is_taken_on_plan_ = is_taken_on_plan_ || edit.is_taken;
}

/// The card in hand, move by move, over everything below the head. What the moves say becomes the draft.
void RoomScreen::close_up(Ui& ui, const Box& box)
{
    CloseUpEnd end = by_hand_->play(ui, box, shell_.settings().keeps_still);
    take_keys_of_all_screens(ui, shell_.settings());
    if (end == CloseUpEnd::goes_on && !shell_.settings().shows_help && ui.shortcut(Key::escape)) end = CloseUpEnd::left;
    if (end == CloseUpEnd::goes_on) return;
    if (end == CloseUpEnd::taken) {
        next_up_ = by_hand_->steps();
        const std::vector<job::PersonId> by = draft_->card.by;
        team_ = by;
        draft_.reset();
        take_up_next();
        ui.focus_on("do-it");
    }
    else ui.focus_on("by-hand");
    by_hand_.reset();
}

void RoomScreen::tabs(Ui& ui, const Layout& layout)
{
    struct Word {
        Tab tab;
        std::string_view name, label;
    };
    constexpr std::array<Word, 5> all{{{Tab::plan, "plan", to_say("Plan")}, {Tab::section, "section", to_say("Section")}, {Tab::cards, "cards", to_say("Cards")}, {Tab::done, "done", to_say("Done")}, {Tab::site, "site", to_say("Site")}}};
    const std::size_t first = layout.is_wide ? (layout.is_tall ? 2U : 1U) : 0U;
    if (static_cast<std::size_t>(tab_) < first) tab_ = Tab::cards;
    std::vector<Option> options;
    for (std::size_t i = first; i < all.size(); ++i) options.push_back({std::string(all[i].name), std::string(say(all[i].label))});
    auto chosen = static_cast<std::size_t>(tab_) - first;
    ui.go_to(layout.tabs.low);
    choice_row(ui, "sheet", options, chosen);
    if (ui.shortcut(Key::t)) chosen = (chosen + 1) % options.size();
    tab_ = static_cast<Tab>(chosen + first);
}

void RoomScreen::side(Ui& ui, const Layout& layout, const Moment& moment)
{
    Box box = layout.sheet;
    if (tab_ == Tab::plan) return plan_panel(ui, layout.plan, false, *live_.story(), moment, state_);
    if (tab_ == Tab::section) return section_panel(ui, layout.is_wide ? layout.sheet : layout.section, *live_.story(), moment, state_);
    foot(ui, cut_bottom(box, ui.px(56.0F)));
    if (const float slip = fault_slip(ui, box); slip > 0.0F) cut_top(box, slip + ui.px(8.0F));
    switch (tab_) {
        case Tab::done:
            return steps_sheet(ui, box, *live_.story(), moment, state_, playback_);
        case Tab::site:
            return site_sheet(ui, box, attempt_.site());
        default:
            return cards(ui, box);
    }
}

void RoomScreen::cards(Ui& ui, const Box& box)
{
    if (attempt_.is_busy()) {
        panel(ui, "busy", box, {.padding = 16.0F}, [&] {
            if (const job::Card* card = attempt_.in_play()) strong(ui, say(title_of(card->step)));
            words(ui, say("It is being carried out."));
            if (attempt_.waiting() > 0) aside(ui, text::say_number("{} more card", "{} more cards", attempt_.waiting()));
            ui.gap(8.0F);
            if (expected_state_.empty() && button(ui, "give-up", say("Stop it"), {.hint = say("As if it had not been begun")})) {
                attempt_.give_up();
                live_.follow(attempt_);
                is_deck_stale_ = true;
                playback_.go_to(live_.story()->end);
            }
        });
        return;
    }
    if (draft_) return draft_sheet(ui, box);
    panel(ui, "deck", box, {.padding = 12.0F}, [&] {
        if (const StepKind* kind = deck(ui, deck_, filter_)) {
            take_up(proposed(attempt_.site(), *kind, team_));
            ui.focus_on("team/" + live_.story()->inputs.scenario.crew.front().id.name);
        }
    });
}

/// Above the form: what can be set on the plan, the way to the close-up, and what it says comes next.
void RoomScreen::draft_head(Ui& ui)
{
    const std::string help = PlanTools::help_for(draft_->card.step);
    const std::string by_hand = ByHand::label_for(attempt_.site(), draft_->card.step);
    if (!help.empty()) aside(ui, help);
    if (!by_hand.empty() && button(ui, "by-hand", by_hand, {.icon = Icon::eye, .width = -1.0F, .hint = say("A close-up in which the order of the moves matters")})) take_by_hand();
    if (!next_up_.empty()) aside(ui, say_with("After it, as you did it by hand: {}", say(title_of(next_up_.front()))));
}

void RoomScreen::draft_sheet(Ui& ui, const Box& box)
{
    Box rest = box;
    const Canvas canvas = ui.canvas();
    const std::string why = draft_->why_not ? draft_->why_not->said() : std::string();
    const float why_height = why.empty() ? 0.0F : canvas.measure_wrapped(box.width() - ui.px(56.0F), why, TextStyle::small).y + ui.px(10.0F);
    const Box foot = cut_bottom(rest, ui.px(60.0F) + why_height);
    bool has_changed = false;
    panel(ui, "draft", rest, {.title = say(title_of(draft_->card.step)), .padding = 16.0F}, [&] {
        draft_head(ui);
        has_changed = card_form(ui, live_.story()->inputs.scenario, *draft_);
    });
    panel(ui, "draft-foot", foot, {.can_scroll = false, .padding = 0.0F}, [&] {
        Canvas paint = ui.canvas();
        Box inner = foot.inset(ui.px(10.0F));
        if (!why.empty()) {
            const Box line = cut_top(inner, why_height);
            draw_icon(paint, Icon::info, line.low + Point{ui.px(9.0F), ui.px(10.0F)}, ui.px(15.0F), ui.theme().caution, ui.theme().sheet);
            paint.text_wrapped(line.low + Point{ui.px(26.0F), ui.px(1.0F)}, box.width() - ui.px(56.0F), why, TextStyle::small, ui.theme().caution);
            ui.note({"why-not", Role::text, why, {}, line});
        }
        ui.go_to(inner.low);
        if (button(ui, "put-down", say("Back"), {.hint = say("Put the card down (Esc)")})) return put_down();
        ui.beside(8.0F);
        if (button(ui, "do-it", say("Carry it out"), {.emphasis = Emphasis::primary, .width = (inner.high.x - ui.cursor().x) / ui.text_scale(), .is_enabled = why.empty(), .hint = say("Ctrl + Enter")})) {
            const std::string kind(step_kinds()[draft_->card.step.index()].name);
            do_it();
            ui.focus_on("deck/" + kind);
            return;
        }
    });
    if (has_changed && draft_) draft_ = drafted(attempt_.site(), draft_->card);
}

float RoomScreen::fault_slip(Ui& ui, const Box& box)
{
    if (news_.empty() && notice_.empty()) return 0.0F;
    const Theme& t = ui.theme();
    const Canvas measure = ui.canvas();
    const float width = box.width() - ui.px(60.0F);
    const std::string head = notice_.empty() ? debrief::as_sentence(std::string(say(news_.front().rule.says))) + "." : notice_;
    const std::string reason(notice_.empty() ? say(news_.front().rule.reason) : std::string_view());
    const std::string more = news_.size() > 1 && notice_.empty() ? text::say_number("and {} more fault", "and {} more faults", news_.size() - 1) : std::string();
    const float head_height = measure.measure_wrapped(width, head, TextStyle::strong).y;
    const float reason_height = reason.empty() ? 0.0F : measure.measure_wrapped(width, reason, TextStyle::small).y;
    const float more_height = more.empty() ? 0.0F : measure.measure_wrapped(width, more, TextStyle::small).y;
    const float height = std::min(head_height + reason_height + more_height + ui.px(68.0F), box.height() * 0.6F);
    const Box slip = box_at(box.low, {box.width(), height});
    panel(ui, "fault-slip", slip, {.is_sheet = false, .padding = 0.0F}, [&] {
        Canvas canvas = ui.canvas();
        canvas.fill_box(slip, t.caution_tint, ui.px(4.0F));
        canvas.frame_box(slip, t.caution, ui.px(1.6F), ui.px(4.0F));
        draw_icon(canvas, Icon::caution, slip.low + Point{ui.px(24.0F), ui.px(24.0F)}, ui.px(22.0F), t.caution, t.caution_tint);
        Point at = slip.low + Point{ui.px(46.0F), ui.px(10.0F)};
        at.y += canvas.text_wrapped(at, width, head, TextStyle::strong, t.ink);
        at.y += canvas.text_wrapped(at, width, reason, TextStyle::small, t.ink);
        if (!more.empty()) at.y += canvas.text_wrapped(at, width, more, TextStyle::small, t.caution);
        ui.note({"fault", Role::text, head, reason, slip});
        ui.go_to({slip.low.x + ui.px(46.0F), at.y + ui.px(8.0F)});
        if (can_step_back() && !news_.empty()) {
            if (button(ui, "fault/back", say("Take it back"))) return step_back();
            ui.beside(8.0F);
        }
        if (button(ui, "fault/on", say("Go on"))) news_.clear(), notice_.clear();
    });
    return height;
}

void RoomScreen::foot(Ui& ui, const Box& box)
{
    panel(ui, "room-foot", box, {.is_sheet = false, .can_scroll = false, .padding = 0.0F}, [&] {
        ui.go_to({box.low.x, box.low.y + ui.px(10.0F)});
        if (sitting_.mode != Mode::marked) {
            if (button(ui, "take-back", say("Take back"), {.icon = Icon::repeat, .is_enabled = can_step_back(), .hint = say("The last card (Ctrl + Z)")})) step_back();
            ui.beside(8.0F);
        }
        const bool can_finish = !attempt_.cards().empty() && !is_busy();
        if (button(ui, "finish", finishing_.valid() ? say("Being marked ...") : say("Finish"), {.width = -1.0F, .is_enabled = can_finish, .hint = say("To the debrief")}))
            asks_to_finish_ = true;
    });
}

void RoomScreen::asks_to_finish(Ui& ui)
{
    const bool stays = dialog(ui, "finish-sheet", say("Finish the drill?"), {460.0F, 260.0F}, [&] {
        words(ui, say("It is marked as it stands now, and the debrief shows what happened to the dust. It cannot be gone on with after that."));
        ui.gap(10.0F);
        if (button(ui, "finish/yes", say("Finish"), {.emphasis = Emphasis::primary})) finish(), asks_to_finish_ = false;
        ui.beside(8.0F);
        if (button(ui, "finish/no", say("Go on"))) asks_to_finish_ = false;
    });
    if (!stays) asks_to_finish_ = false;
}

void RoomScreen::take_keys(Ui& ui)
{
    take_keys_of_all_screens(ui, shell_.settings());
    if (ui.take_key(Key::enter, {.control = true})) do_it();
    if (ui.shortcut(Key::z, {.control = true})) step_back();
    if (ui.shortcut(Key::space)) playback_.play_or_pause(), is_paused_ = !playback_.is_playing();
    while (ui.shortcut(Key::right)) playback_.step_by(30.0_s);
    while (ui.shortcut(Key::left)) playback_.step_by(Time{-30.0}), is_paused_ = true, playback_.pause();
    if (ui.shortcut(Key::home)) playback_.go_to(live_.story()->start), is_paused_ = true, playback_.pause();
    if (ui.shortcut(Key::end)) playback_.go_to(live_.story()->end), is_paused_ = false;
    if (ui.shortcut(Key::s)) playback_.set_speed((playback_.speed() + 1) % playing_speeds.size());
    if (ui.shortcut(Key::digit_1)) state_.view = ViewKind::there;
    if (ui.shortcut(Key::digit_2)) state_.view = ViewKind::seen;
    if (ui.shortcut(Key::digit_3)) state_.view = ViewKind::airborne;
    while (ui.shortcut(Key::plus) || ui.shortcut(Key::plus, {.shift = true})) zoom_plan(state_, 1.25);
    while (ui.shortcut(Key::minus)) zoom_plan(state_, 0.8);
    if (ui.shortcut(Key::digit_0)) fit_plan(state_);
    if (!ui.is_writing() && ui.input().typed.find(U'/') != std::u32string::npos) put_down(), tab_ = Tab::cards, ui.focus_on("filter");
    if (asks_to_finish_ || shell_.settings().shows_help) return;
    if (ui.shortcut(Key::escape)) {
        if (draft_) put_down();
        else leave();
    }
}

std::unique_ptr<Screen> room_screen(Shell& shell, Sitting sitting, job::Scenario taken)
{
    return std::make_unique<RoomScreen>(shell, std::move(sitting), std::move(taken));
}

std::unique_ptr<Screen> resumed_room(Shell& shell, Sitting sitting, drill::Resumed resumed)
{
    insist(sitting.drill != nullptr && sitting.drill->id == resumed.kept.drill, "a drill is gone on with on its own scenario");
    job::Scenario taken = resumed.scenario;
    return std::make_unique<RoomScreen>(shell, std::move(sitting), std::move(taken), std::move(resumed));
}

}
