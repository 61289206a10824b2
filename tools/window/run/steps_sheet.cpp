#include "window/run/sheets.hpp"

#include "window/run/fault_sign.hpp"
#include "window/stage/icon.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "debrief/wording.hpp"
#include "rules/telling.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::window {

namespace {

enum class Stand : int { to_come, under_way, over };

/// Everything one card says at a moment.
struct StepFace {
    const debrief::StepLine& line;
    const CardWords& words;
    Stand stand;
    std::vector<const Happening*> happened; ///< at this card, up to now
    std::string outcome;                    ///< for cards that were not carried out
};

StepFace face_of(const Story& story, const Moment& moment, std::size_t card)
{
    const debrief::StepLine& line = story.report.steps[card];
    StepFace face{line, story.words[card], Stand::over, {}, {}};
    if (line.start > moment.at)
        face.stand = Stand::to_come;
    else if (card == moment.card)
        face.stand = Stand::under_way;
    if (face.stand == Stand::to_come) return face;
    if (line.outcome == job::Outcome::refused) face.outcome = text::say_with("Could not be done: {}", line.reason.said());
    if (line.outcome == job::Outcome::not_needed) face.outcome = text::say_with("Not needed: {}", line.reason.said());
    if (line.outcome == job::Outcome::done && !line.reason.empty()) face.outcome = line.reason.said();
    const std::size_t count = story.happened_by(moment.at);
    for (std::size_t i = 0; i < count; ++i)
        if (story.happenings[i].card == static_cast<int>(card)) face.happened.push_back(&story.happenings[i]);
    return face;
}

std::string faults_in_short(const Story& story, const StepFace& face)
{
    std::vector<int> numbers;
    for (const Happening* happening : face.happened) numbers.push_back(story.report.faults[happening->fault].number);
    std::sort(numbers.begin(), numbers.end());
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
    std::string list;
    for (std::size_t i = 0; i < numbers.size() && i < 8; ++i) list += fmt::format("{}{}", i > 0 ? ", " : "", numbers[i]);
    return text::say_with(numbers.size() == 1 ? text::to_say("Fault {}") : numbers.size() > 8 ? text::to_say("Faults {} and more") : text::to_say("Faults {}"), list);
}

struct Measures {
    float text_x, width;
    float title, detail, outcome, faults;
    float height() const { return title + detail + outcome + faults; }
};

std::string detail_of(const StepFace& face)
{
    const std::string crew = face.words.crew;
    return face.words.detail.empty() ? crew : fmt::format("{} \xC2\xB7 {}", crew, face.words.detail.said());
}

Measures measured(const Ui& ui, const Canvas& canvas, const StepFace& face, float width)
{
    Measures m{};
    m.text_x = ui.px(86.0F);
    m.width = std::max(width - m.text_x - ui.px(12.0F), ui.px(80.0F));
    m.title = canvas.measure_wrapped(m.width, text::say(face.line.title), TextStyle::strong).y + ui.px(10.0F);
    m.detail = canvas.measure_wrapped(m.width, detail_of(face), TextStyle::small).y + ui.px(2.0F);
    m.outcome =
        face.outcome.empty() ? 0.0F : canvas.measure_wrapped(m.width - ui.px(22.0F), face.outcome, TextStyle::small).y + ui.px(4.0F);
    m.faults = face.happened.empty() ? 0.0F : ui.px(30.0F);
    return m;
}

/// A knot on the line of time: ring to come, large dot under way, dot done, cross and dash for what was not done.
void draw_knot(Ui& ui, Canvas& canvas, Point at, const StepFace& face)
{
    const Theme& t = ui.theme();
    canvas.fill_circle(at, ui.px(9.5F), t.sheet);
    if (face.stand == Stand::to_come) return canvas.ring(at, ui.px(5.0F), t.line, ui.px(1.6F));
    if (face.line.outcome == job::Outcome::refused) return draw_icon(canvas, Icon::cross, at, ui.px(17.0F), t.caution, t.sheet);
    if (face.line.outcome == job::Outcome::not_needed) return draw_icon(canvas, Icon::minus, at, ui.px(15.0F), t.muted, t.sheet);
    if (face.stand == Stand::under_way) {
        canvas.fill_circle(at, ui.px(8.5F), t.accent);
        return draw_icon(canvas, Icon::play, at + Point{ui.px(0.6F), 0.0F}, ui.px(10.0F), t.on_accent, t.accent);
    }
    canvas.fill_circle(at, ui.px(5.0F), t.ink);
}

Box draw_step(Ui& ui, const Story& story, const StepFace& face, Playback& playback)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const float width = ui.width_left();
    const Measures m = measured(ui, canvas, face, width);
    const Touch touch = ui.touch({.name = fmt::format("card-{}", face.line.number),
                                  .role = Role::card,
                                  .label = std::string(text::say(face.line.title)),
                                  .value = face.outcome,
                                  .size = {width, m.height() + ui.px(10.0F)},
                                  .is_on = face.stand == Stand::under_way,
                                  .ring_rounding = 4.0F});
    const Box box = touch.box;
    const bool is_now = face.stand == Stand::under_way;
    if (touch.is_clicked) playback.go_to(face.line.start);
    if (!ui.is_in_view(box)) return box;
    const Box card_box{{box.low.x + m.text_x - ui.px(12.0F), box.low.y}, box.high};
    if (is_now) {
        canvas.fill_box(card_box, t.accent_tint, ui.px(4.0F));
        canvas.frame_box(card_box, t.accent, ui.px(1.6F), ui.px(4.0F));
    }
    else if (touch.is_hovered) {
        canvas.fill_box(card_box, t.field, ui.px(4.0F));
    }
    const float knot_y = box.low.y + ui.px(18.0F);
    const float rail = box.low.x + ui.px(58.0F);
    canvas.line({rail, box.low.y - ui.px(8.0F)}, {rail, box.high.y}, face.stand == Stand::to_come ? t.hairline : t.ink, ui.px(1.6F));
    draw_knot(ui, canvas, {rail, knot_y}, face);
    canvas.text_in({{box.low.x, knot_y - ui.px(10.0F)}, {box.low.x + ui.px(42.0F), knot_y + ui.px(10.0F)}},
                   text::show_clock(face.line.start), TextStyle::small, is_now ? t.accent : t.muted, Align::right);
    Point at{box.low.x + m.text_x, box.low.y + ui.px(7.0F)};
    canvas.text_wrapped(at, m.width, text::say(face.line.title), TextStyle::strong, face.stand == Stand::to_come ? t.muted : t.ink);
    at.y += m.title - ui.px(9.0F);
    canvas.text_wrapped(at, m.width, detail_of(face), TextStyle::small, t.muted);
    at.y += m.detail;
    if (!face.outcome.empty()) {
        draw_icon(canvas, face.line.outcome == job::Outcome::refused ? Icon::caution : Icon::info, at + Point{ui.px(7.0F), ui.px(11.0F)},
                  ui.px(14.0F), t.caution, t.sheet);
        canvas.text_wrapped(at + Point{ui.px(22.0F), ui.px(2.0F)}, m.width - ui.px(22.0F), face.outcome, TextStyle::small, t.caution);
        at.y += m.outcome;
    }
    if (!face.happened.empty()) draw_mark(canvas, ui, at + Point{0.0F, ui.px(4.0F)}, Standing::caution, faults_in_short(story, face));
    return box;
}

constexpr std::size_t most_told = 6; // faults told in full below a card; the faults sheet has them all

/// Faults of a card, each once: critical ones first, then those that cost marks.
std::vector<std::size_t> faults_of(const Story& story, const StepFace& face)
{
    std::vector<std::size_t> faults;
    for (const Happening* happening : face.happened) faults.push_back(happening->fault);
    std::sort(faults.begin(), faults.end());
    faults.erase(std::unique(faults.begin(), faults.end()), faults.end());
    const auto rank = [&](std::size_t fault) {
        const debrief::FaultLine& line = story.report.faults[fault];
        return (line.rule.is_critical ? 0 : 2) + (line.is_weighed() ? 0 : 1);
    };
    std::stable_sort(faults.begin(), faults.end(), [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
    return faults;
}

void draw_fault_slip(Ui& ui, const debrief::FaultLine& fault)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const float left = ui.px(86.0F);
    const float width = ui.width_left() - left - ui.px(40.0F);
    const std::string says = debrief::as_sentence(std::string(text::say(fault.rule.says))) + ".";
    const float says_height = canvas.measure_wrapped(width, says, TextStyle::small).y;
    const float reason_height = canvas.measure_wrapped(width, text::say(fault.rule.reason), TextStyle::small).y;
    const float cite_height = fault.rule.cite.empty() ? 0.0F : canvas.measure_wrapped(width, rules::cited(fault.rule.cite), TextStyle::small).y;
    const Box box = ui.place({ui.width_left(), says_height + reason_height + cite_height + ui.px(14.0F)});
    if (!ui.is_in_view(box)) return;
    const float rail = box.low.x + ui.px(58.0F);
    canvas.line({rail, box.low.y - ui.px(8.0F)}, {rail, box.high.y}, t.ink, ui.px(1.6F));
    const Box slip{{box.low.x + left - ui.px(12.0F), box.low.y}, box.high};
    canvas.fill_box(slip, t.caution_tint, ui.px(4.0F));
    canvas.frame_box(slip, t.caution, ui.px(1.0F), ui.px(4.0F));
    draw_fault_sign(canvas, ui, {slip.low.x + ui.px(20.0F), slip.low.y + ui.px(20.0F)}, ui.px(11.0F), fault);
    Point at{slip.low.x + ui.px(42.0F), slip.low.y + ui.px(7.0F)};
    canvas.text_wrapped(at, width, says, TextStyle::small, t.ink);
    at.y += says_height;
    canvas.text_wrapped(at, width, text::say(fault.rule.reason), TextStyle::small, t.muted);
    at.y += reason_height;
    canvas.text_wrapped(at, width, rules::cited(fault.rule.cite), TextStyle::small, t.caution);
}

/// Below the card under way: each fault that happened at it, with its reason and where it is written.
void draw_faults_of_card(Ui& ui, const Story& story, const StepFace& face)
{
    const std::vector<std::size_t> faults = faults_of(story, face);
    for (std::size_t i = 0; i < std::min(faults.size(), most_told); ++i) draw_fault_slip(ui, story.report.faults[faults[i]]);
    if (faults.size() <= most_told) return;
    const Box box = ui.place({ui.width_left(), ui.px(24.0F)});
    ui.canvas().text_in({{box.low.x + ui.px(86.0F), box.low.y}, box.high},
                        text::say_with("{} more on the faults sheet", faults.size() - most_told), TextStyle::small, ui.theme().muted);
}

void draw_phase(Ui& ui, job::Phase phase)
{
    Canvas canvas = ui.canvas();
    const Box box = ui.place({ui.width_left(), ui.px(30.0F)});
    const std::string_view title = debrief::title_of(phase);
    canvas.text_in({{box.low.x, box.low.y + ui.px(6.0F)}, box.high}, title, TextStyle::small, ui.theme().accent);
    const float x = box.low.x + canvas.measure(title, TextStyle::small).x + ui.px(10.0F);
    canvas.line({x, box.low.y + ui.px(18.0F)}, {box.high.x, box.low.y + ui.px(18.0F)}, ui.theme().accent, ui.px(1.0F));
}

}

void steps_sheet(Ui& ui, const Box& box, const Story& story, const Moment& moment, ScreenState& state, Playback& playback)
{
    panel(ui, "steps", box, {.padding = 12.0F}, [&] {
        for (std::size_t card = 0; card < story.report.steps.size(); ++card) {
            const job::Phase phase = story.report.steps[card].phase;
            if (card == 0 || story.report.steps[card - 1].phase != phase) draw_phase(ui, phase);
            const StepFace face = face_of(story, moment, card);
            const Box drawn = draw_step(ui, story, face, playback);
            if (face.stand == Stand::under_way) draw_faults_of_card(ui, story, face);
            if (face.stand == Stand::under_way && state.card_in_sight != card) {
                ui.scroll_to(drawn);
                state.card_in_sight = card;
            }
        }
    });
}

}
