#include "window/hands_on/plan_tools.hpp"

#include "window/drawing/dimension.hpp"
#include "window/hands_on/bag_picture.hpp"
#include "window/hands_on/close_up.hpp"
#include "window/hands_on/plan_targets.hpp"
#include "window/run/cells.hpp"
#include "window/run/moment.hpp"
#include "window/run/openings.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/handle.hpp"
#include "window/widgets/words.hpp"

#include "plan/walking.hpp"
#include "site/cleaning.hpp"
#include "site/place.hpp"
#include "text/language.hpp"
#include "text/show.hpp"

#include <algorithm>
#include <cmath>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;

constexpr double half_foot = 0.1524;    // m: one arrow key
constexpr double most_reach = 40.0 * meters_per_foot;
constexpr double point_spacing = 0.30;  // m between points of a drawn way
constexpr Length shown_cell{0.1};

const job::Zone& work_room(const job::Scenario& scenario)
{
    for (const job::Zone& zone : scenario.zones)
        if (zone.role == job::ZoneRole::work_room) return zone;
    return scenario.zones.front();
}

double snapped(double value) { return std::round(value / half_foot) * half_foot; }

// --- sheeting -------------------------------------------------------------------------------------------------------------

/// A worked part, and the way from it into the room.
struct Edge {
    std::string id;
    PaperPoint from;    ///< middle of the part on its wall
    PaperPoint way;     ///< unit vector
    double room = 0.0;  ///< how far the floor goes that way, m
};

std::vector<Edge> edges_of(const job::Scenario& scenario)
{
    std::vector<Edge> edges;
    const job::Zone& zone = work_room(scenario);
    const PaperBox floor = paper(site::footprint(zone));
    for (const job::Component& component : scenario.components) {
        if (component.zone != zone.id) continue;
        const PaperPoint at = paper(site::footprint(scenario, component)).center();
        // Into the room: away from the nearest wall.
        const double west = at.x - floor.low.x, east = floor.high.x - at.x, south = at.y - floor.low.y, north = floor.high.y - at.y;
        const double least = std::min({west, east, south, north});
        if (least == west) edges.push_back({component.id.name, at, {1.0, 0.0}, east});
        else if (least == east) edges.push_back({component.id.name, at, {-1.0, 0.0}, west});
        else if (least == south) edges.push_back({component.id.name, at, {0.0, 1.0}, north});
        else edges.push_back({component.id.name, at, {0.0, -1.0}, south});
    }
    // Parts of one window lie on each other: one handle is enough.
    std::vector<Edge> apart;
    for (const Edge& edge : edges)
        if (std::none_of(apart.begin(), apart.end(), [&](const Edge& a) { return distance(a.from, edge.from) < 0.4; })) apart.push_back(edge);
    return apart;
}

void draw_reach(Board& board, const job::Scenario& scenario, Length reach)
{
    const job::Zone& zone = work_room(scenario);
    const plan::Raster raster(site::footprint(zone), shown_cell);
    std::vector<std::uint8_t> marked(raster.size(), 0);
    for (const job::Component& component : scenario.components) {
        if (component.zone != zone.id) continue;
        for (const std::size_t cell : raster.cells_within(site::footprint(scenario, component), reach)) marked[cell] = 1;
    }
    draw_sheeted_cells(board, raster, marked);
}

PlanEdit play_sheet(Ui& ui, Board& board, const PlanGround& ground, job::LayFloorSheet& sheet)
{
    PlanEdit edit;
    draw_reach(board, ground.scenario, sheet.reach);
    const double before = sheet.reach.si;
    for (const Edge& edge : edges_of(ground.scenario)) {
        const double shown = std::min(sheet.reach.si, edge.room);
        const PaperPoint end = edge.from + edge.way * shown;
        if (shown > 0.25) draw_dimension(board, edge.from, end, 0.18);
        const bool is_upright = std::abs(edge.way.y) > 0.5;
        const std::string told = say_with("reach {}", text::show_short(sheet.reach));
        const float words = board.canvas.measure(told, TextStyle::small).x;
        ui.note({"plan/reach-told/" + edge.id, Role::text, told, {}, box_around(board.at(end) + Point{words * 0.5F + ui.px(26.0F), 0.0F}, {words + ui.px(16.0F), ui.px(24.0F)})});
        const HandleMove move = handle(ui, "plan/reach/" + edge.id, board.at(end),
                                       {.label = say("Edge of the sheeting"),
                                        .value = told,
                                        .way = is_upright ? HandleWay::upright : HandleWay::sideways,
                                        .hint = say("Drag, or arrow keys: half a foot; Enter takes it")});
        double reach = sheet.reach.si;
        if (move.touch.is_held) {
            const PaperPoint off = board.view.paper(ui.input().mouse) - edge.from;
            reach = snapped(off.x * edge.way.x + off.y * edge.way.y);
        }
        const int keys = is_upright ? move.up * (edge.way.y > 0.0 ? 1 : -1) : move.right * (edge.way.x > 0.0 ? 1 : -1);
        if (keys != 0) reach = snapped(reach) + half_foot * keys;
        sheet.reach = Length{std::clamp(reach, 0.0, most_reach)};
        if (move.touch.has_focus && ui.take_key(Key::enter)) edit.is_taken = true;
    }
    edit.has_changed = sheet.reach.si != before;
    return edit;
}

// --- bag ------------------------------------------------------------------------------------------------------------------

PlanEdit play_fill(Ui& ui, const Box& window, double& fill)
{
    PlanEdit edit;
    const Point size{ui.px(190.0F), ui.px(210.0F)};
    const Box sheet = box_at({window.low.x + ui.px(14.0F), window.high.y - size.y - ui.px(14.0F)}, size);
    Canvas canvas = ui.canvas();
    canvas.fill_box(sheet, ui.theme().sheet, ui.px(4.0F));
    canvas.frame_box(sheet, ui.theme().ink, ui.px(1.2F), ui.px(4.0F));
    ui.note({"plan/fill-sheet", Role::text, std::string(say("How full the bag is")), {}, sheet});
    const Box field = sheet.inset(ui.px(6.0F));
    const site::BagInHand bag{fill, {}, {}};
    draw_bag_in_hand(canvas, ui, field, bag, site::handled(bag, false));
    const BagDrawing parts = bag_drawing(ui, field, fill);
    const HandleMove move = handle(ui, "plan/fill", {parts.body.high.x, parts.fill_y},
                                   {.label = say("How full the bag is"), .value = text::show_percent(fill), .way = HandleWay::upright, .hint = say("Drag, or arrow up and down; Enter takes it")});
    double wanted = fill;
    if (move.touch.is_held) wanted = static_cast<double>((parts.body.high.y - ui.input().mouse.y) / parts.body.height());
    if (move.touch.is_held || move.up != 0) wanted = std::clamp(std::round(wanted / fill_step) * fill_step + fill_step * move.up, fill_step, 1.0);
    edit.has_changed = wanted != fill;
    fill = wanted;
    if (move.touch.has_focus && ui.take_key(Key::enter)) edit.is_taken = true;
    return edit;
}

// --- cleaning way ---------------------------------------------------------------------------------------------------------

PaperPoint place_of(const job::Waypoint& w) { return {w.east.si, w.north.si}; }
job::Waypoint waypoint(PaperPoint p) { return {Length{p.x}, Length{p.y}}; }

std::vector<bool> blocked_cells(const plan::Raster& raster, const PlanGround& ground)
{
    std::vector<bool> is_blocked(raster.size(), false);
    for (std::size_t i = 0; i < ground.scenario.objects.size(); ++i) {
        const bool is_there = i >= ground.is_object_there.size() || ground.is_object_there[i] != 0;
        const job::Object& o = ground.scenario.objects[i];
        if (is_there)
            for (const std::size_t cell : raster.cells_in({o.west, o.south, o.width, o.depth})) is_blocked[cell] = true;
    }
    return is_blocked;
}

void draw_route(Board& board, const PlanGround& ground, const job::Route& route)
{
    const Theme& t = board.theme();
    const plan::Raster raster(site::footprint(work_room(ground.scenario)), shown_cell);
    std::vector<std::uint8_t> marked(raster.size(), 0);
    for (const std::size_t cell : site::cells_along(raster, blocked_cells(raster, ground), route)) marked[cell] = 1;
    const PaperBox floor = paper(raster.rect());
    const double w = raster.cell_width().si, d = raster.cell_depth().si;
    for (std::size_t row = 0; row < raster.rows(); ++row) // what the way cleans, in runs along a row
        for (std::size_t column = 0; column < raster.columns(); ++column) {
            const std::size_t first = column;
            while (column < raster.columns() && marked[row * raster.columns() + column] != 0) ++column;
            if (column == first) continue;
            const PaperBox run{{floor.low.x + static_cast<double>(first) * w, floor.low.y + static_cast<double>(row) * d},
                               {floor.low.x + static_cast<double>(column) * w, floor.low.y + static_cast<double>(row + 1) * d}};
            board.canvas.fill_box(board.view.at(run), faded(t.accent, 0.16));
        }
    std::vector<Point> line;
    for (const job::Waypoint& p : route) line.push_back(board.at(place_of(p)));
    if (line.size() > 1) {
        board.canvas.polyline(line, t.sheet, board.px(5.0F));
        board.canvas.polyline(line, t.accent, board.px(2.4F));
    }
    for (std::size_t i = 4; i < line.size(); i += 6) { // which way it goes
        const Point way = line[i] - line[i - 1];
        const float length = std::hypot(way.x, way.y);
        if (length < board.px(6.0F)) continue;
        const Point dir = way * (1.0F / length);
        const Point side{-dir.y, dir.x};
        const Point middle = (line[i] + line[i - 1]) * 0.5F;
        const Point head[3] = {middle + dir * board.px(6.0F), middle - dir * board.px(4.0F) + side * board.px(5.0F), middle - dir * board.px(4.0F) - side * board.px(5.0F)};
        board.canvas.fill_convex(head, t.accent);
    }
    if (line.empty()) return;
    board.canvas.fill_circle(line.front(), board.px(5.0F), t.sheet);
    board.canvas.ring(line.front(), board.px(5.0F), t.accent, board.px(2.2F));
    board.canvas.fill_box(box_around(line.back(), {board.px(9.0F), board.px(9.0F)}), t.accent, board.px(2.0F));
}

bool is_on_floor(const PlanGround& ground, PaperPoint p) { return paper(site::footprint(work_room(ground.scenario))).contains(p); }

/// Share of the free floor that the way comes over.
double covered_share(const PlanGround& ground, const job::Route& route)
{
    const plan::Raster raster(site::footprint(work_room(ground.scenario)), shown_cell);
    const std::vector<bool> blocked = blocked_cells(raster, ground);
    const auto free = static_cast<double>(std::count(blocked.begin(), blocked.end(), false));
    return free > 0.0 ? static_cast<double>(site::cells_along(raster, blocked, route).size()) / free : 0.0;
}

job::Route* route_of(job::Step& step)
{
    if (auto* mop = std::get_if<job::MopFloor>(&step)) return &mop->route;
    auto* vacuum = std::get_if<job::VacuumSurfaces>(&step);
    const bool has_floor = vacuum != nullptr && (vacuum->target == job::Target::floor || vacuum->target == job::Target::everything);
    return has_floor ? &vacuum->route : nullptr;
}

}

job::Route suggested_route(const PlanGround& ground)
{
    const job::Zone& room = work_room(ground.scenario);
    const plan::Raster raster(site::footprint(room), site::head_width);
    const job::Opening* door = way_in(ground.scenario);
    const job::Zone* zone = door != nullptr ? find_by_id(ground.scenario.zones, door->zone) : nullptr;
    const plan::Point exit = zone != nullptr ? site::middle(*zone, *door) : raster.rect().center();
    job::Route route;
    for (const std::size_t cell : plan::strips_toward(raster, blocked_cells(raster, ground), exit)) {
        const plan::Point p = raster.center(cell);
        const job::Waypoint here{p.x, p.y};
        const std::size_t n = route.size();
        // A straight run keeps its ends only.
        const auto is_level = [&](auto of) { return std::abs((of(route[n - 1]) - of(route[n - 2])).si) < 1e-9 && std::abs((of(here) - of(route[n - 1])).si) < 1e-9; };
        const bool goes_on = n >= 2 && (is_level([](const job::Waypoint& w) { return w.east; }) || is_level([](const job::Waypoint& w) { return w.north; }));
        if (goes_on) route.back() = here;
        else route.push_back(here);
    }
    return route;
}

PlanEdit PlanTools::play_route(Ui& ui, const Box& window, Board& board, const PlanGround& ground, job::Route& route)
{
    PlanEdit edit;
    const std::size_t before = route.size();
    draw_route(board, ground, route);
    const Point kept = ui.cursor();
    // A pen for mouse and keyboard: it lies over the floor of the work room.
    const PaperBox floor = paper(site::footprint(work_room(ground.scenario)));
    const Box whole = board.view.at(floor);
    const Box seen{{std::max(whole.low.x, window.low.x), std::max(whole.low.y, window.low.y)}, {std::min(whole.high.x, window.high.x), std::min(whole.high.y, window.high.y)}};
    if (seen.width() > 8.0F && seen.height() > 8.0F) {
        ui.go_to(seen.low);
        const Touch touch = ui.touch({.name = "plan/route", .role = Role::drawing, .label = say("Cleaning way"), .value = text::show_percent(covered_share(ground, route)), .size = seen.size(), .is_pressed_by_keys = false, .lets_others_on_top = true});
        if (touch.is_held) {
            const PaperPoint at = board.view.paper(ui.input().mouse);
            if (!is_drawing_) route.clear();
            is_drawing_ = true;
            if (is_on_floor(ground, at) && (route.empty() || distance(place_of(route.back()), at) >= point_spacing)) route.push_back(waypoint(at));
        }
        else is_drawing_ = false;
        if (touch.has_focus) {
            if (!pen_) pen_ = route.empty() ? floor.center() : place_of(route.back());
            const auto move = [&](double x, double y) { pen_ = PaperPoint{std::clamp(pen_->x + x, floor.low.x + 0.05, floor.high.x - 0.05), std::clamp(pen_->y + y, floor.low.y + 0.05, floor.high.y - 0.05)}; };
            while (ui.take_key(Key::right)) move(half_foot, 0.0);
            while (ui.take_key(Key::left)) move(-half_foot, 0.0);
            while (ui.take_key(Key::up)) move(0.0, half_foot);
            while (ui.take_key(Key::down)) move(0.0, -half_foot);
            while (ui.take_key(Key::space)) route.push_back(waypoint(*pen_));
            while (ui.take_key(Key::backspace))
                if (!route.empty()) route.pop_back();
            if (ui.take_key(Key::enter)) edit.is_taken = true;
            const Point at = board.at(*pen_);
            for (const Point way : {Point{1.0F, 0.0F}, Point{0.0F, 1.0F}}) {
                board.canvas.line(at - way * ui.px(11.0F), at + way * ui.px(11.0F), ui.theme().sheet, ui.px(5.0F));
                board.canvas.line(at - way * ui.px(11.0F), at + way * ui.px(11.0F), ui.theme().ink, ui.px(2.0F));
            }
        }
        ui.hint(say("Drag to draw; with keys: arrows move the pen, Space sets a point, Backspace takes it back, Enter takes the way"));
    }
    const std::string told = route.empty() ? std::string(say("No way drawn: the room is cleaned in strips"))
                                           : say_with("The way comes over {} of the free floor", text::show_percent(covered_share(ground, route)));
    const float label = std::max(ui.canvas().measure(say("Take strips toward the door"), TextStyle::body).x + ui.px(32.0F), ui.canvas().measure(told, TextStyle::small).x);
    const Box sheet = box_at({window.low.x + ui.px(12.0F), window.high.y - ui.px(136.0F)}, {std::min(label + ui.px(24.0F), window.width() - ui.px(24.0F)), ui.px(124.0F)});
    ui.note({"plan/route-sheet", Role::text, told, {}, sheet});
    board.canvas.fill_box(sheet, ui.theme().sheet, ui.px(4.0F));
    board.canvas.frame_box(sheet, ui.theme().ink, ui.px(1.2F), ui.px(4.0F));
    board.canvas.text_wrapped(sheet.low + Point{ui.px(12.0F), ui.px(6.0F)}, sheet.width() - ui.px(20.0F), told, TextStyle::small, ui.theme().ink);
    ui.go_to(sheet.low + Point{ui.px(12.0F), ui.px(32.0F)});
    if (button(ui, "plan/route/suggest", say("Take strips toward the door"))) route = suggested_route(ground), edit.has_changed = true;
    ui.go_to(sheet.low + Point{ui.px(12.0F), ui.px(78.0F)});
    if (button(ui, "plan/route/clear", say("Wipe it away"), {.is_enabled = !route.empty()})) route.clear(), edit.has_changed = true;
    ui.go_to(kept);
    edit.has_changed = edit.has_changed || route.size() != before;
    return edit;
}

bool PlanTools::has_tools(const job::Step& step)
{
    job::Step copy = step;
    return std::holds_alternative<job::LayFloorSheet>(step) || std::holds_alternative<job::BagDebris>(step) || route_of(copy) != nullptr || has_targets(step);
}

std::string PlanTools::help_for(const job::Step& step)
{
    job::Step copy = step;
    if (std::holds_alternative<job::LayFloorSheet>(step)) return std::string(say("Drag the sheeting's edge on the plan; arrow keys move it by half a foot."));
    if (std::holds_alternative<job::BagDebris>(step)) return std::string(say("Drag the fill line of the bag beside the plan."));
    if (route_of(copy) != nullptr) return std::string(say("Draw the cleaning way on the floor, or take strips toward the door."));
    if (has_targets(step)) return std::string(say("Click on the plan what the card is about."));
    return {};
}

PlanEdit PlanTools::play(Ui& ui, const Box& window, const PaperView& view, const PlanGround& ground, job::Step& step)
{
    Board board{ui.canvas(), view, ui};
    const auto clip = board.canvas.clipped_to(window);
    if (auto* sheet = std::get_if<job::LayFloorSheet>(&step)) return play_sheet(ui, board, ground, *sheet);
    if (auto* bag = std::get_if<job::BagDebris>(&step)) return play_fill(ui, window, bag->fill);
    if (job::Route* route = route_of(step)) return play_route(ui, window, board, ground, *route);
    pen_.reset();
    return play_targets(ui, window, board, ground, step);
}

}
