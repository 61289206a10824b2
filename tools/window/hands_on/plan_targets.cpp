#include "window/hands_on/plan_targets.hpp"

#include "window/drawing/legend.hpp"
#include "window/run/moment.hpp"
#include "window/run/openings.hpp"
#include "window/run/plan_part.hpp"
#include "window/stage/icon.hpp"
#include "window/widgets/words.hpp"

#include "site/place.hpp"
#include "text/language.hpp"

#include <algorithm>
#include <functional>
#include <type_traits>

namespace flapdoor::window {

namespace {

struct Target {
    std::string id;
    std::string title;
    PaperBox box;
};

/// Calls `use` with every field of the step that holds such an id.
template <class Id, class Use>
void each_field(job::Step& step, Use&& use)
{
    std::visit(
        [&](auto& s) {
            std::decay_t<decltype(s)>::fields(s, [&](std::string_view, auto& value, auto&&...) {
                if constexpr (std::is_same_v<std::decay_t<decltype(value)>, Id>) use(value);
            });
        },
        step);
}

template <class Id>
bool names_a(const job::Step& step)
{
    bool does = false;
    job::Step copy = step;
    each_field<Id>(copy, [&](Id&) { does = true; });
    return does;
}

std::string_view name_of(const job::Step& step)
{
    return std::visit([](const auto& s) { return std::decay_t<decltype(s)>::name; }, step);
}

bool can_name(const job::Step& step, const job::Opening& opening)
{
    const std::string_view name = name_of(step);
    const auto has = [&](std::string_view word) { return name.find(word) != std::string_view::npos; };
    if (has("register")) return job::is_register(opening.kind);
    if (has("window")) return opening.kind == job::OpeningKindOf::window;
    if (has("seam")) return true;
    return opening.kind == job::OpeningKindOf::door;
}

std::vector<Target> openings_for(const PlanGround& ground, const job::Step& step)
{
    std::vector<Target> targets;
    for (const job::Opening& o : ground.scenario.openings)
        if (can_name(step, o)) targets.push_back({o.id.name, o.title, strip_along(plan_opening(ground.scenario, o), -wall_thickness, wall_thickness + 0.22)});
    return targets;
}

std::vector<Target> objects_of(const PlanGround& ground)
{
    std::vector<Target> targets;
    for (std::size_t i = 0; i < ground.scenario.objects.size(); ++i) {
        const bool is_there = i >= ground.is_object_there.size() || ground.is_object_there[i] != 0;
        if (is_there) targets.push_back({ground.scenario.objects[i].id.name, ground.scenario.objects[i].title, footprint_of(ground.scenario.objects[i])});
    }
    return targets;
}

std::vector<Target> components_of(const PlanGround& ground)
{
    std::vector<Target> targets;
    for (const job::Component& c : ground.scenario.components)
        targets.push_back({c.id.name, c.title, grown(paper(site::footprint(ground.scenario, c)), 0.14)});
    return targets;
}

std::vector<Target> sills_of(const PlanGround& ground)
{
    std::vector<Target> targets;
    for (const job::Sill& s : ground.scenario.sills) targets.push_back({s.id.name, s.title, grown(paper(site::footprint(ground.scenario, s)), 0.06)});
    return targets;
}

std::vector<Target> counters_of(const PlanGround& ground)
{
    std::vector<Target> targets;
    for (const job::Counter& c : ground.scenario.counters) targets.push_back({c.id.name, c.title, paper(plan::Rect{c.west, c.south, c.width, c.depth})});
    return targets;
}

/// At least as large as a finger, about the same middle.
Box touchable(const Ui& ui, const Box& box)
{
    const float least = ui.px(34.0F);
    return box_around(box.center(), {std::max(box.width(), least), std::max(box.height(), least)});
}

bool play_target(Ui& ui, const Box& window, Board& board, const Target& target, std::string_view kind, std::size_t place, bool is_named)
{
    const Theme& t = ui.theme();
    const Box box = touchable(ui, board.view.at(target.box));
    if (!window.contains(box.center())) return false;
    const Point before = ui.cursor();
    ui.go_to(box.low);
    const Touch touch = ui.touch({.name = "plan/" + std::string(kind) + "/" + std::to_string(place) + "/" + target.id,
                                  .role = Role::choice,
                                  .label = target.title,
                                  .size = box.size(),
                                  .is_on = is_named,
                                  .ring_rounding = 4.0F});
    ui.go_to(before);
    const float width = ui.px(is_named ? 3.0F : 1.8F);
    board.canvas.frame_box(box, t.sheet, width + ui.px(2.0F), ui.px(5.0F));
    board.canvas.frame_box(box, is_named || touch.is_hovered ? t.accent : t.ink, width, ui.px(5.0F));
    if (is_named) {
        const Point at{box.high.x, box.low.y};
        board.canvas.fill_circle(at, ui.px(9.0F), t.accent);
        draw_icon(board.canvas, Icon::check, at, ui.px(12.0F), t.on_accent, t.accent);
    }
    if (touch.is_hovered || touch.has_focus) {
        Canvas over = ui.overlay();
        const std::vector<std::string> lines{std::string(is_named ? text::say("named on the card") : text::say("click or Enter: name it on the card"))};
        if (touch.is_hovered) draw_slip(over, ui, ui.input().mouse, target.title, lines);
        else draw_slip(over, ui, box.center(), target.title, lines);
    }
    return touch.is_clicked;
}

template <class Id>
void play_kind(Ui& ui, const Box& window, Board& board, std::string_view kind, const std::vector<Target>& targets, job::Step& step, PlanEdit& edit)
{
    std::size_t place = 0;
    each_field<Id>(step, [&](Id& named) {
        for (const Target& target : targets) {
            const bool is_named = named.name == target.id;
            if (!play_target(ui, window, board, target, kind, place, is_named)) continue;
            if (is_named) edit.is_taken = true;
            else named = Id{target.id}, edit.has_changed = true;
        }
        ++place;
    });
}

}

bool has_targets(const job::Step& step)
{
    return names_a<job::OpeningId>(step) || names_a<job::ObjectId>(step) || names_a<job::ComponentId>(step) || names_a<job::SillId>(step) ||
           names_a<job::CounterId>(step);
}

PlanEdit play_targets(Ui& ui, const Box& window, Board& board, const PlanGround& ground, job::Step& step)
{
    PlanEdit edit;
    play_kind<job::OpeningId>(ui, window, board, "opening", openings_for(ground, step), step, edit);
    play_kind<job::ObjectId>(ui, window, board, "object", objects_of(ground), step, edit);
    play_kind<job::ComponentId>(ui, window, board, "part", components_of(ground), step, edit);
    play_kind<job::SillId>(ui, window, board, "sill", sills_of(ground), step, edit);
    play_kind<job::CounterId>(ui, window, board, "counter", counters_of(ground), step, edit);
    return edit;
}

}
