#include "window/room/card_fields.hpp"
#include "window/room/keeping.hpp"
#include "window/run/phrases.hpp"
#include "window/run/plan_panel.hpp"
#include "window/run/playback.hpp"
#include "window/run/screen_state.hpp"
#include "window/run/time_bar.hpp"
#include "window/shell/masthead.hpp"
#include "window/shell/screens.hpp"
#include "window/shell/side_job.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/card.hpp"
#include "window/widgets/chips.hpp"
#include "window/widgets/panel.hpp"

#include "core/philox.hpp"
#include "debrief/wording.hpp"

#include <algorithm>
#include <optional>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;
using text::to_say;

constexpr std::size_t watching_speed = 3; // in playing_speeds: a day in some ten seconds

/// The cards of the careful plan, a part of them shuffled, to be put in order; then the day is watched, and the nearest
/// order that keeps every rule stands beside one's own.
class OrderScreen final : public Screen {
public:
    OrderScreen(Shell& shell, Sitting sitting) : shell_(shell), sitting_(std::move(sitting))
    {
        for (const job::Card& card : plan().cards) {
            const job::Phase phase = phase_of(card);
            if (std::find(phases_.begin(), phases_.end(), phase) == phases_.end()) phases_.push_back(phase);
        }
        std::sort(phases_.begin(), phases_.end());
        const auto set_up = std::find(phases_.begin(), phases_.end(), job::Phase::set_up);
        part_ = set_up == phases_.end() ? 0 : static_cast<std::size_t>(set_up - phases_.begin());
        shuffle();
    }

    void play(Ui& ui) override
    {
        static_cast<Settings&>(state_) = shell_.settings();
        if (job_)
            if (auto story = job_->take()) begin_watching(std::move(*story));
        Masthead head{.title = std::string(say(sitting_.drill->careful.scenario.title)),
                      .lines = {std::string(say("Put the cards in order, then watch the day"))},
                      .mark = story_ ? (story_->report.sheet.fewest_moves == 0 ? std::string(say("every order holds")) : text::say_number("{} card to move", "{} cards to move", static_cast<unsigned long>(story_->report.sheet.fewest_moves))) : std::string(),
                      .standing = story_ && story_->report.sheet.fewest_moves == 0 ? Standing::good : Standing::caution,
                      .caution = say(model_caution),
                      .has_way_back = true,
                      .back_hint = say("Back (Esc)")};
        const Layout layout = lay_out(ui.screen(), ui.text_scale());
        if (masthead(ui, layout.header, head, shell_.settings())) back();
        if (story_) watch(ui, layout);
        else order(ui, layout);
        take_keys_of_all_screens(ui, shell_.settings());
        if (!shell_.settings().shows_help && ui.shortcut(Key::escape)) back();
    }

    bool is_moving() const override { return job_ != nullptr || (playback_ && playback_->is_playing()); }

    std::vector<KeyLine> keys() const override
    {
        return {{to_say("Enter"), to_say("pick a card up, put it down")},
                {"\xE2\x86\x91  \xE2\x86\x93", to_say("move the card in hand; otherwise walk")},
                {to_say("Alt + arrows"), to_say("move the card without picking it up")},
                {to_say("Space"), to_say("pause, go on")},
                {to_say("Esc"), to_say("back")}};
    }

private:
    const job::WorkPlan& plan() const { return sitting_.drill->careful.plan; }
    static job::Phase phase_of(const job::Card& card) { return step_kinds()[card.step.index()].phase; }

    void back()
    {
        if (story_) return again();
        shell_.go_to(start_screen(shell_));
    }

    void again()
    {
        playback_.reset();
        story_.reset();
    }

    /// Places in the plan whose cards are put in order.
    std::vector<std::size_t> places() const
    {
        std::vector<std::size_t> places;
        for (std::size_t i = 0; i < plan().cards.size(); ++i)
            if (part_ >= phases_.size() || phase_of(plan().cards[i]) == phases_[part_]) places.push_back(i);
        return places;
    }

    void shuffle()
    {
        order_ = places();
        const Luck luck{sitting_.seed, Stream::handling};
        for (std::size_t i = order_.size(); i > 1; --i) std::swap(order_[i - 1], order_[luck.draw(i, static_cast<std::uint32_t>(part_))[0] % i]);
        in_hand_.reset();
    }

    // --- putting in order -------------------------------------------------------------------------------------------

    void order(Ui& ui, const Layout& layout)
    {
        Box rest{{layout.header.low.x + ui.px(14.0F), layout.header.high.y + ui.px(10.0F)}, {layout.header.high.x - ui.px(14.0F), ui.screen().high.y - ui.px(12.0F)}};
        if (rest.width() >= ui.px(760.0F)) {
            const Box left = cut_left(rest, ui.px(320.0F));
            cut_left(rest, ui.px(12.0F));
            panel(ui, "order-part", left, {.padding = 16.0F}, [&] { part(ui); });
            panel(ui, "order-cards", rest, {.padding = 14.0F}, [&] { list(ui); });
        }
        else {
            panel(ui, "order-cards", rest, {.padding = 14.0F}, [&] { part(ui), ui.gap(10.0F), list(ui); });
        }
    }

    void part(Ui& ui)
    {
        strong(ui, say("Which part do you put in order?"));
        std::vector<Option> options;
        for (const job::Phase phase : phases_) options.push_back({.name = std::string(word_of(phase)), .label = std::string(say(debrief::title_of(phase)))});
        options.push_back({.name = "all", .label = std::string(say("The whole day"))});
        std::optional<std::size_t> part = part_;
        if (choose_chip(ui, "part", options, part) && part) part_ = *part, shuffle();
        ui.gap(4.0F);
        aside(ui, say("The cards are those of a careful crew, shuffled. What is not shown here stays where the careful crew has it."));
        rule(ui);
        words(ui, say("Drag a card, or pick it up with Enter and move it with the arrows."));
        ui.gap(8.0F);
        if (job_) {
            words(ui, text::say_number("{} card carried out", "{} cards carried out", job_->cards_done()));
            return;
        }
        if (button(ui, "watch", say("Carry it out"), {.emphasis = Emphasis::primary, .icon = Icon::play, .width = -1.0F})) carry_out();
    }

    void list(Ui& ui)
    {
        const job::Scenario& scenario = sitting_.drill->careful.scenario;
        std::vector<CardFace> faces;
        for (std::size_t i = 0; i < order_.size(); ++i) {
            const job::Card& card = plan().cards[order_[i]];
            faces.push_back({.name = "order/" + std::to_string(order_[i]), .number = static_cast<int>(i) + 1, .title = std::string(say(title_of(card.step))), .note = detail_of(scenario, card), .is_chosen = in_hand_ == order_[i]});
        }
        const auto event = card_list(ui, faces, drag_, job_ == nullptr);
        if (!event || job_) return;
        if (event->kind == CardListEvent::Kind::chosen) {
            in_hand_ = in_hand_ == order_[event->from] ? std::nullopt : std::optional(order_[event->from]);
            return;
        }
        const std::size_t card = order_[event->from];
        order_.erase(order_.begin() + static_cast<std::ptrdiff_t>(event->from));
        order_.insert(order_.begin() + static_cast<std::ptrdiff_t>(event->to), card);
    }

    void carry_out()
    {
        job::WorkPlan mine = plan();
        const std::vector<std::size_t> where = places();
        for (std::size_t i = 0; i < where.size(); ++i) mine.cards[where[i]] = plan().cards[order_[i]];
        mine.title = sitting_.who.empty() ? std::string(to_say("My order")) : sitting_.who; // said when shown
        const debrief::Inputs& careful = sitting_.drill->careful;
        job_ = std::make_unique<SideJob>(inputs_of(careful, careful.scenario, std::move(mine)), sitting_.seed);
    }

    // --- watching ---------------------------------------------------------------------------------------------------

    void begin_watching(Story story)
    {
        job_.reset();
        story_ = std::make_shared<const Story>(std::move(story));
        playback_.emplace(*story_);
        playback_->set_speed(watching_speed);
        if (state_.keeps_still) playback_->go_to(story_->end);
        else playback_->play();
    }

    void watch(Ui& ui, const Layout& layout)
    {
        playback_->advance(ui.input().seconds);
        const Moment moment = moment_of(*story_, playback_->now(), !state_.keeps_still);
        Box plan_box = layout.plan;
        plan_box.high.y = layout.time.low.y - ui.px(6.0F);
        Box sheet = layout.sheet;
        sheet.low.y = layout.tabs.low.y;
        if (layout.is_wide) plan_panel(ui, plan_box, true, *story_, moment, state_);
        panel(ui, "nearest", sheet, {.title = say("The nearest order that keeps every rule"), .padding = 14.0F}, [&] { nearest(ui); });
        time_bar(ui, layout.time, layout.is_roomy, *story_, *playback_);
        if (ui.shortcut(Key::space)) playback_->play_or_pause();
        while (ui.shortcut(Key::right)) playback_->step_by(30.0_s);
        while (ui.shortcut(Key::left)) playback_->step_by(Time{-30.0});
    }

    void nearest(Ui& ui)
    {
        const rules::MarkingSheet& sheet = story_->report.sheet;
        if (button(ui, "to-debrief", say("To the debrief"), {.emphasis = Emphasis::primary})) return shell_.go_to(debrief_screen(shell_, story_, sitting_.drill->careful));
        ui.beside(8.0F);
        if (button(ui, "again", say("Change the order"))) return again();
        ui.gap(6.0F);
        if (sheet.fewest_moves == 0) words(ui, say("Every order holds as you have it."));
        else words(ui, text::say_number("{} card has to move. It is marked where it belongs.", "{} cards have to move. They are marked where they belong.", static_cast<unsigned long>(sheet.fewest_moves)));
        aside(ui, say("Rules of order only; the debrief has the others."));
        for (const rules::SheetStep& step : sheet.legal_order) nearest_line(ui, step);
    }

    void nearest_line(Ui& ui, const rules::SheetStep& step)
    {
        const Theme& t = ui.theme();
        Canvas canvas = ui.canvas();
        const debrief::StepLine* line = step.entry >= 0 ? &story_->report.steps[static_cast<std::size_t>(step.entry)] : nullptr;
        const std::string title = line ? std::string(say(line->title)) : step.missing.said();
        const std::string number = line ? std::to_string(line->number) : std::string("+");
        const std::string detail = line ? story_->words[static_cast<std::size_t>(step.entry)].detail.said() : std::string(say("to be put in"));
        const std::string_view mark = step.is_moved ? (line ? say("moves here") : say("put in here")) : std::string_view();
        const float left = ui.px(44.0F);
        const float width = ui.width_left() - left - ui.px(8.0F);
        const float title_height = canvas.measure_wrapped(width, title, TextStyle::body).y;
        const float detail_height = detail.empty() ? 0.0F : canvas.measure_wrapped(width, detail, TextStyle::small).y;
        const float mark_height = mark.empty() ? 0.0F : ui.px(28.0F);
        const Box box = ui.place({ui.width_left(), title_height + detail_height + mark_height + ui.px(8.0F)});
        if (!ui.is_in_view(box)) return;
        if (step.is_moved) {
            canvas.fill_box(box, t.caution_tint, ui.px(4.0F));
            canvas.frame_box(box, t.caution, ui.px(1.2F), ui.px(4.0F));
        }
        canvas.text_in({box.low, {box.low.x + ui.px(34.0F), box.low.y + ui.px(30.0F)}}, number, TextStyle::small, t.muted, Align::right);
        Point at{box.low.x + left, box.low.y + ui.px(4.0F)};
        at.y += canvas.text_wrapped(at, width, title, TextStyle::body, t.ink);
        if (!detail.empty()) at.y += canvas.text_wrapped(at, width, detail, TextStyle::small, t.muted);
        if (!mark.empty()) draw_mark(canvas, ui, at + Point{0.0F, ui.px(2.0F)}, Standing::caution, mark);
    }

    Shell& shell_;
    Sitting sitting_;
    std::vector<job::Phase> phases_;
    std::size_t part_ = 0;             ///< in phases_; their count: the whole day
    std::vector<std::size_t> order_;   ///< cards of the plan in the person's order
    std::optional<std::size_t> in_hand_;
    CardDrag drag_;
    std::unique_ptr<SideJob> job_;
    std::shared_ptr<const Story> story_;
    std::optional<Playback> playback_;
    ScreenState state_;
};

}

std::unique_ptr<Screen> order_screen(Shell& shell, Sitting sitting) { return std::make_unique<OrderScreen>(shell, std::move(sitting)); }

}
