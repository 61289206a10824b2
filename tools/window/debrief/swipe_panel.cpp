#include "window/debrief/swipe_panel.hpp"

#include "window/drawing/legend.hpp"
#include "window/run/phrases.hpp"
#include "window/run/plan_part.hpp"
#include "window/run/site_plan.hpp"
#include "window/widgets/choice.hpp"
#include "window/widgets/handle.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include "text/language.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

using text::say;

constexpr double key_step = 0.05;
void draw_side(Ui& ui, const Box& window, const Box& part, const PaperView& view, const Story& story, const Moment& moment, const PlanLook& look, DustPictures& dust)
{
    Board board{ui.canvas(), view, ui};
    const auto clip = board.canvas.clipped_to(part);
    static const std::vector<PictureId> none;
    const std::vector<PictureId>& pictures = look.view == ViewKind::airborne ? none : dust.of(ui.pictures(), story, moment.frame, look.view, grain_color);
    board.canvas.fill_box(part, ui.theme().sheet);
    draw_site(board, story, moment, {window, look.view, look.shows_points}, pictures);
}

}

std::vector<FloorMoment> floor_moments(const Story& story)
{
    std::vector<FloorMoment> moments{{"as-found", std::string(say("As found")), story.start}};
    if (const auto cleaning = debrief::start_of_cleaning(story.log)) moments.push_back({"before-cleaning", std::string(say("Before the cleaning")), *cleaning});
    moments.push_back({"at-the-end", std::string(say("At the end")), story.end});
    return moments;
}

/// One row for each side, at its own end of the head; one above the other where they do not fit beside each other.
void SwipePanel::choice(Ui& ui, const Story& story, const Box& head)
{
    const std::vector<FloorMoment> moments = floor_moments(story);
    std::vector<Option> options;
    float width = 0.0F;
    for (const FloorMoment& moment : moments) {
        options.push_back({moment.name, moment.title});
        width += ui.canvas().measure(moment.title, TextStyle::body).x + ui.px(28.0F);
    }
    for (std::size_t side = 0; side < 2; ++side) {
        chosen_[side] = std::min(chosen_[side], moments.size() - 1);
        const bool is_beside = 2.0F * width + ui.px(30.0F) <= head.width();
        if (side == 0) ui.go_to(head.low);
        else ui.go_to(is_beside ? Point{head.high.x - width, head.low.y} : Point{head.low.x, head.low.y + ui.px(42.0F)});
        choice_row(ui, side == 0 ? "swipe/left" : "swipe/right", options, chosen_[side]);
    }
}

void SwipePanel::play(Ui& ui, const Box& box, const Story& story, ViewKind view, bool keeps_still)
{
    panel(ui, "swipe", box, {.can_scroll = false, .padding = 0.0F}, [&] {
        Box rest = box;
        const bool is_broad = box.width() >= ui.px(700.0F);
        Box head = cut_top(rest, ui.px(is_broad ? 50.0F : 92.0F));
        choice(ui, story, {{head.low.x + ui.px(8.0F), head.low.y + ui.px(4.0F)}, {head.high.x - ui.px(8.0F), head.high.y}});
        // The legend stands beside a broad plan and below a narrow one.
        Box legend = is_broad ? cut_right(rest, ui.px(236.0F)) : cut_bottom(rest, ui.px(86.0F));
        const std::vector<FloorMoment> moments = floor_moments(story);
        const PaperView scale = comfortable_view(near_part(story.inputs.scenario), whole_plan(story.inputs.scenario), rest, ui.px(10.0F));
        const float x = rest.low.x + rest.width() * static_cast<float>(divider_);
        const std::array<Box, 2> parts{Box{rest.low, {x, rest.high.y}}, Box{{x, rest.low.y}, rest.high}};
        for (std::size_t side = 0; side < 2; ++side) {
            if (parts[side].width() < 1.0F) continue;
            const Moment moment = moment_of(story, moments[chosen_[side]].at, false);
            draw_side(ui, rest, parts[side], scale, story, moment, {rest, view, !keeps_still}, dust_[side]);
        }
        Canvas canvas = ui.canvas();
        canvas.line({x, rest.low.y}, {x, rest.high.y}, ui.theme().sheet, ui.px(6.0F));
        canvas.line({x, rest.low.y}, {x, rest.high.y}, ui.theme().ink, ui.px(2.4F));
        const auto name = [&](std::size_t side) {
            const std::string& title = moments[chosen_[side]].title;
            const float half = canvas.measure(title, TextStyle::small).x * 0.5F + ui.px(20.0F);
            const float at = side == 0 ? std::max(rest.low.x + half, x - half) : std::min(rest.high.x - half, x + half);
            if (parts[side].width() > ui.px(30.0F)) draw_label(canvas, ui, {at, rest.low.y + ui.px(18.0F)}, title);
        };
        name(0);
        name(1);
        const HandleMove move = handle(ui, "swipe/divider", {x, rest.low.y + rest.height() * 0.62F},
                                       {.label = say("Divider between before and after"), .way = HandleWay::sideways, .hint = say("Drag, or arrow left and right")});
        if (move.touch.is_held) divider_ = static_cast<double>((ui.input().mouse.x - rest.low.x) / rest.width());
        divider_ = std::clamp(divider_ + key_step * move.right, 0.0, 1.0);
        canvas.line(legend.low, is_broad ? Point{legend.low.x, legend.high.y} : Point{legend.high.x, legend.low.y}, ui.theme().ink, ui.px(1.0F));
        draw_legend(ui.canvas(), ui, legend.low + Point{ui.px(12.0F), ui.px(8.0F)}, std::min(legend.width() - ui.px(24.0F), ui.px(420.0F)), floor_scale, dust_ramp,
                    {say("Lead lying there"), loading_unit, say(model_caution)});
        canvas.frame_box(box, ui.theme().ink, ui.px(1.2F), ui.px(2.0F));
    });
}

}
