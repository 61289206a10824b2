#include "window/start/drill_card.hpp"

#include "window/run/plan_part.hpp"
#include "window/run/site_plan.hpp"
#include "window/stage/icon.hpp"
#include "window/widgets/words.hpp"

#include "text/language.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;

constexpr float pad = 14.0F;           // at 100 %
constexpr float cells_height = 34.0F;

/// "Two old windows are replaced." of a job told in several sentences.
std::string first_sentence(std::string_view job)
{
    const std::size_t end = job.find(". ");
    return std::string(end == std::string_view::npos ? job : job.substr(0, end + 1));
}

struct Words {
    std::string title, job, minutes, level;
};

Words words_of(const Drill& drill)
{
    const job::Scenario& scenario = drill.careful.scenario;
    Words words{std::string(say(scenario.title)), first_sentence(say(scenario.job)), {}, {}};
    if (scenario.minutes > 0) words.minutes = say_with("about {} min", scenario.minutes);
    switch (scenario.level) {
        case job::Level::first:
            words.level = say("to begin with");
            break;
        case job::Level::usual:
            words.level = say("usual");
            break;
        case job::Level::hard:
            words.level = say("hard");
            break;
    }
    return words;
}

float words_width(const Ui& ui, float width) { return width - 2.0F * ui.px(pad); }

/// One to three filled bars: difficulty without color.
void draw_level(Canvas& canvas, const Ui& ui, Point low, job::Level level)
{
    const Theme& t = ui.theme();
    for (int i = 0; i < 3; ++i) {
        const float height = ui.px(5.0F + 4.0F * static_cast<float>(i));
        const float x = low.x + ui.px(7.0F) * static_cast<float>(i);
        const Box bar{{x, low.y - height}, {x + ui.px(5.0F), low.y}};
        if (i <= static_cast<int>(level))
            canvas.fill_box(bar, t.ink);
        else
            canvas.frame_box(bar, t.line, 1.0F);
    }
}

/// The lowest strip of the title block: minutes, a line, difficulty.
void draw_cells(Ui& ui, Canvas& canvas, const Box& cells, const Words& words, job::Level level)
{
    const Theme& t = ui.theme();
    canvas.line(cells.low, {cells.high.x, cells.low.y}, t.ink, ui.px(1.0F));
    Box left = cells;
    if (!words.minutes.empty()) {
        left = {cells.low, {cells.center().x, cells.high.y}};
        canvas.text_in({left.low + Point{ui.px(pad), 0.0F}, left.high}, words.minutes, TextStyle::small, t.ink);
        canvas.line({left.high.x, cells.low.y}, {left.high.x, cells.high.y}, t.ink, ui.px(1.0F));
        left = {{cells.center().x, cells.low.y}, cells.high};
    }
    draw_level(canvas, ui, {left.low.x + ui.px(pad), cells.center().y + ui.px(7.0F)}, level);
    canvas.text_in({left.low + Point{ui.px(pad + 30.0F), 0.0F}, left.high}, words.level, TextStyle::small, t.ink);
}

}

float drill_words_height(Ui& ui, float width, const Drill& drill)
{
    const Canvas canvas = ui.canvas();
    const Words words = words_of(drill);
    return canvas.measure_wrapped(words_width(ui, width), words.title, TextStyle::strong).y +
           canvas.measure_wrapped(words_width(ui, width), words.job, TextStyle::small).y + ui.px(cells_height + 26.0F);
}

Touch drill_card(Ui& ui, const Box& box, float picture_height, const Drill& drill, bool is_chosen)
{
    const Theme& t = ui.theme();
    const job::Scenario& scenario = drill.careful.scenario;
    const Words words = words_of(drill);
    ui.go_to(box.low);
    const Touch touch = ui.touch({.name = "drill/" + drill.id,
                                  .role = Role::card,
                                  .label = words.title,
                                  .value = words.job,
                                  .size = box.size(),
                                  .is_on = is_chosen,
                                  .ring_rounding = 3.0F});
    if (!ui.is_in_view(box)) return touch;
    Canvas canvas = ui.canvas();
    canvas.fill_box(box.moved({0.0F, ui.px(2.0F)}), faded(t.ink, 0.07), ui.px(3.0F));
    canvas.fill_box(box, is_chosen ? t.accent_tint : t.sheet, ui.px(3.0F));
    Box rest = box;
    const Box picture = cut_top(rest, picture_height);
    {
        Board board{canvas, comfortable_view(near_part(scenario, 0.35), whole_plan(scenario), picture, ui.px(10.0F)), ui};
        const auto clip = board.canvas.clipped_to(picture.inset(1.0F));
        canvas.fill_box(picture, t.sheet);
        draw_site_in_small(board, scenario);
    }
    canvas.line({rest.low.x, rest.low.y}, {rest.high.x, rest.low.y}, t.ink, ui.px(1.0F));
    const Box cells = cut_bottom(rest, ui.px(cells_height));
    Point at{box.low.x + ui.px(pad), rest.low.y + ui.px(10.0F)};
    at.y += canvas.text_wrapped(at, words_width(ui, box.width()), words.title, TextStyle::strong, t.ink) + ui.px(2.0F);
    canvas.text_wrapped(at, words_width(ui, box.width()), words.job, TextStyle::small, t.muted);
    draw_cells(ui, canvas, cells, words, scenario.level);
    const bool stands_out = is_chosen || touch.is_hovered;
    canvas.frame_box(box, is_chosen ? t.accent : t.ink, ui.px(stands_out ? 2.4F : 1.2F), ui.px(3.0F));
    if (is_chosen) {
        const Point corner{box.high.x - ui.px(20.0F), box.low.y + ui.px(20.0F)};
        canvas.fill_circle(corner, ui.px(12.0F), t.accent);
        draw_icon(canvas, Icon::check, corner, ui.px(14.0F), t.on_accent, t.accent);
    }
    return touch;
}

float draw_broken_drill(Ui& ui, Point low, float width, const BrokenDrill& drill)
{
    Canvas canvas = ui.canvas();
    const Theme& t = ui.theme();
    const std::string head = say_with("The drill \"{}\" does not read:", drill.folder);
    float height = canvas.measure_wrapped(width - 2.0F * ui.px(pad), head, TextStyle::strong).y + ui.px(20.0F);
    for (const Problem& problem : drill.problems) height += canvas.measure_wrapped(width - 2.0F * ui.px(pad), describe(problem), TextStyle::small).y;
    const Box box = box_at(low, {width, height});
    canvas.fill_box(box, t.caution_tint, ui.px(3.0F));
    canvas.frame_box(box, t.caution, ui.px(1.2F), ui.px(3.0F));
    Point at = low + Point{ui.px(pad), ui.px(10.0F)};
    at.y += canvas.text_wrapped(at, width - 2.0F * ui.px(pad), head, TextStyle::strong, t.ink);
    for (const Problem& problem : drill.problems)
        at.y += canvas.text_wrapped(at, width - 2.0F * ui.px(pad), describe(problem), TextStyle::small, t.ink);
    ui.note({"broken/" + drill.folder, Role::text, head, {}, box});
    return height;
}

}
