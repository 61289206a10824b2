#include "mechanics/flap_swing.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"
#include "mechanics/grid.hpp"
#include "mechanics/swing_film.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>

namespace flapdoor::mechanics {

namespace {

constexpr Density room_air{1.204};              // 20 C, 101.3 kPa
constexpr Area area_grid{1e-4};
constexpr double angle_grid = 1e-3;
constexpr Area closed_within{0.02};

// Judgment, no source: how people go through film, and what holds it.
constexpr Length shoulders = 0.46_m;
constexpr Length arms_length = 0.60_m;
constexpr Length run_up = 0.60_m;
constexpr Length folded_slack = 0.25_m;         // two folds of 2.5 in, each paying out twice its depth
constexpr Length taut_slack = 0.01_m;
constexpr Force tape_hold{20.0};                // at the slit's foot, on a hand's breadth of tape
constexpr Time peeling{0.1};                    // a shorter jerk does not peel it
constexpr Time longest = 20.0_s;
constexpr Time still_enough = 1.0_s;
constexpr double blown_away = 1.2;              // radians: beyond, a steady pressure turns the sheet over

struct Sheets {
    HangingSheet first;
    std::optional<HangingSheet> second;
};

Sheets sheets_of(const FlapDoor& door, Density air, bool folds_pay_out, int links)
{
    Sheets sheets;
    if (door.is_taped)
        sheets.first = slit_edges(door.slit_foot + door.slit_length, door.slit_length, door.width, door.film, folds_pay_out && door.has_folds ? folded_slack : taut_slack, air);
    else sheets.first = whole_sheet(door.height, door.height, door.width, door.film, {}, air);
    sheets.first.links = links;
    if (door.sheets >= 2) {
        sheets.second = whole_sheet(door.height, door.height - door.hem_height, door.width, door.film, door.dowel, air);
        sheets.second->links = links;
    }
    return sheets;
}

/// Hole between the edges of a slit whose leaves, each half the sheet wide, are pushed out of the plane.
Area parted(const std::vector<SectionPoint>& edge, Length sheet_width)
{
    const double leaf = 0.5 * sheet_width.si;
    const auto gap = [&](const SectionPoint& p) {
        const double out = std::min(std::fabs(p.x.si), leaf);
        return 2.0 * (leaf - std::sqrt(leaf * leaf - out * out));
    };
    double sum = 0.0;
    for (std::size_t i = 1; i < edge.size(); ++i) sum += 0.5 * (gap(edge[i - 1]) + gap(edge[i])) * std::fabs((edge[i - 1].height - edge[i].height).si);
    return {sum};
}

/// Below the hem and beside both edges of a sheet that swings away from the frame: W L sin + L^2 sin cos when it is straight.
Area swung_open(const std::vector<SectionPoint>& sheet, Length width)
{
    double sides = 0.0;
    for (std::size_t i = 1; i < sheet.size(); ++i)
        sides += std::fabs(sheet[i - 1].x.si + sheet[i].x.si) * 0.5 * std::fabs((sheet[i - 1].height - sheet[i].height).si);
    return {width.si * std::fabs(sheet.back().x.si) + 2.0 * sides};
}

double angle_from(const SectionPoint& top, const SectionPoint& point)
{
    const Length down = top.height - point.height;
    if (point.x == Length{}) return 0.0;
    if (down.si > 1e-6) return on_grid(steady::atan(point.x / down), angle_grid);
    return point.x < Length{} ? -0.5 * std::numbers::pi : 0.5 * std::numbers::pi;      // level, or blown up beyond
}

double chord_angle(const std::vector<SectionPoint>& sheet) { return angle_from(sheet.front(), sheet.back()); }

/// The slit edges are fastened at both ends: what tells is how far they stand out in the middle.
double edge_angle(const std::vector<SectionPoint>& edge)
{
    const auto out = std::max_element(edge.begin(), edge.end(), [](const SectionPoint& a, const SectionPoint& b) { return std::fabs(a.x.si) < std::fabs(b.x.si); });
    return angle_from(edge.front(), *out);
}

Area first_hole(const FlapDoor& door, const std::vector<SectionPoint>& shape)
{
    return on_grid(door.is_taped ? parted(shape, door.width) : swung_open(shape, door.width), area_grid) + slit_gap * door.slit_length;
}

/// Both sheets in a row, the part of the slit below a short second sheet beside it.
Area through_both(const FlapDoor& door, Area first, std::optional<Area> second)
{
    if (!second) return first;
    const double bare = uncovered_share(door);
    const Area covered = first * (1.0 - bare);
    const double a = covered.si;
    const double b = second->si;
    const Area in_a_row{a > 0.0 && b > 0.0 ? a * b / std::sqrt(a * a + b * b) : 0.0};
    return first * bare + std::max(in_a_row, slit_gap * door.slit_length * ((1.0 - bare) * sealed_share(door)));
}

/// The section during one passage.
class Passage {
public:
    Passage(const FlapDoor& door, Heading heading, Speed pace, SectionSteps steps, int links) : door_(door), section_(steps), step_(steps.step), way_(heading == Heading::into_room ? 1.0 : -1.0)
    {
        const Sheets sheets = sheets_of(door, room_air, true, links);
        first_ = section_.hang(sheets.first);
        if (sheets.second) second_ = section_.hang(*sheets.second);
        if (second_ && heading == Heading::into_room) section_.stop_at_frame(*second_);
        section_.let_pass({.start = run_up * -way_, .speed = pace * way_});
        section_.touch(first_, door.is_taped);
        if (second_) section_.touch(*second_, false);
    }

    void advance()
    {
        section_.advance();
        const Length gone = section_.passer_at().x * way_;
        const Length leaf = door_.width * 0.5;
        const Length half_gap = std::min(shoulders * 0.5, leaf);
        // The leaves stand open a shoulder's width when their edges are pushed out this far.
        const Length parting{std::sqrt((half_gap * (leaf * 2.0 - half_gap)).si)};
        if (touches_first_ && gone + Passer{}.depth * 0.5 >= (door_.is_taped ? parting : arms_length)) touches_first_ = false, section_.let_go(first_), let_go_ = section_.now();
        if (touches_second_ && gone >= arms_length) {
            touches_second_ = false;
            if (second_) section_.let_go(*second_), section_.stop_at_frame(*second_), let_go_ = section_.now();
        }
        pull_ += (section_.pull_at_foot(first_) - pull_) * std::min(1.0, step_ / peeling);
        if (pull_ > tape_hold) section_.free_foot(first_), has_torn_ = true;
    }

    Opening opening() const
    {
        const std::vector<SectionPoint> first = section_.shape(first_);
        std::optional<Area> second;
        double angle = door_.is_taped ? edge_angle(first) : chord_angle(first);
        if (second_) {
            const std::vector<SectionPoint> shape = section_.shape(*second_);
            angle = chord_angle(shape);
            second = on_grid(swung_open(shape, door_.width), area_grid);
        }
        return {angle, on_grid(through_both(door_, first_hole(door_, first), second), area_grid)};
    }

    SwingFrame frame() const
    {
        return {section_.shape(first_), second_ ? section_.shape(*second_) : std::vector<SectionPoint>{}, section_.passer_at().x, has_torn_};
    }

    bool is_through() const { return !touches_first_ && !touches_second_; }
    bool has_torn() const { return has_torn_; }
    Time now() const { return section_.now(); }
    Time let_go() const { return let_go_; }

private:
    FlapDoor door_;
    DoorwaySection section_;
    Time step_;
    double way_;
    std::size_t first_ = 0;
    std::optional<std::size_t> second_;
    bool touches_first_ = true, touches_second_ = true, has_torn_ = false;
    Force pull_{};
    Time let_go_{};
};

Time closing_after(const FlapSwing& passage, Time let_go)
{
    const Area rest = passage.openings.front().area;
    const auto first = static_cast<std::size_t>(let_go / swing_grid) + 1;
    const auto open_from = [&](std::size_t from) {
        OpenFor sum{};
        for (std::size_t i = from; i < passage.openings.size(); ++i) sum += std::max(Area{}, passage.openings[i].area - rest) * swing_grid;
        return sum;
    };
    const OpenFor all = open_from(first);
    std::size_t closed = first;
    while (closed < passage.openings.size() && open_from(closed) > all * 0.1) ++closed;
    return swing_grid * static_cast<double>(closed - first);
}

void check(const FlapDoor& door)
{
    insist(door.width >= 0.5_m && door.width <= 3.0_m && door.height >= 1.5_m && door.height <= 3.0_m, "a doorway that people walk through");
    insist(door.slit_length > Length{} && door.slit_foot + door.slit_length < door.height && door.hem_height < door.height, "slit and hem are within the doorway");
    insist(door.sheets == 1 || door.sheets == 2, "one sheet or two");
}

}

double uncovered_share(const FlapDoor& door)
{
    if (door.sheets < 2 || door.is_slit_through) return 1.0;
    return std::clamp((door.hem_height - door.slit_foot) / door.slit_length, 0.0, 1.0);
}

double sealed_share(const FlapDoor& door) { return door.dowel > Mass{} ? 0.3 : 1.0; }

namespace {

/// Plays a passage to its end.
/// @param look  sees the section whenever an opening is noted
template <class Look>
FlapSwing play(const FlapDoor& door, Heading heading, Speed pace, SectionSteps steps, int links, Look&& look)
{
    check(door);
    insist(pace >= 0.3_mps && pace <= 2.0_mps, "somebody walks");
    Passage passage(door, heading, pace, steps, links);
    FlapSwing result;
    result.openings.push_back(passage.opening());
    look(passage);
    const Area rest = result.openings.front().area;
    Time last_open{};
    const auto still_for = [&] { return passage.now() - std::max(last_open, passage.let_go()); };
    while (passage.now() < longest && !(passage.is_through() && still_for() >= still_enough)) {
        const Time next = swing_grid * static_cast<double>(result.openings.size());
        while (passage.now() < next - steps.step * 0.5) passage.advance();
        const Opening opening = passage.opening();
        result.openings.push_back(opening);
        look(passage);
        result.peak = std::max(result.peak, opening.area);
        result.open_for += std::max(Area{}, opening.area - rest) * swing_grid;
        if (opening.area > rest + closed_within) last_open = passage.now();
    }
    result.closing = closing_after(result, passage.let_go());
    result.has_torn_loose = passage.has_torn();
    return result;
}

}

FlapSwing swing(const FlapDoor& door, Heading heading, Speed pace, SectionSteps steps, int links)
{
    return play(door, heading, pace, steps, links, [](const Passage&) {});
}

SwingFilm film_swing(const FlapDoor& door, Heading heading, Speed pace)
{
    SwingFilm film;
    film.swing = play(door, heading, pace, {}, 12, [&](const Passage& passage) { film.frames.push_back(passage.frame()); });
    return film;
}

std::vector<Lean> leans(const FlapDoor& door, SectionSteps steps, int links)
{
    check(door);
    DoorwaySection section(steps);
    // At rest air has no say but by its pressure, and a draft does not pull folds out from under tape.
    const Sheets sheets = sheets_of(door, Density{}, false, links);
    const std::size_t first = section.hang(sheets.first);
    std::optional<std::size_t> second;
    if (sheets.second) second = section.hang(*sheets.second);
    section.brake(Rate{5.0});
    std::vector<Lean> found;
    for (const Pressure across : {0.0_Pa, 0.05_Pa, 0.1_Pa, 0.2_Pa, 0.4_Pa, 0.8_Pa, 1.6_Pa}) {
        section.press(first, across);
        if (second) section.press(*second, across);
        const Time from = section.now();
        constexpr Speed still{2e-3};
        constexpr Time long_enough = 3.0_s;
        do section.advance();
        while (section.now() - from < 0.3_s || (section.fastest() > still && section.now() - from < long_enough));
        Lean lean;
        lean.across = across;
        const std::vector<SectionPoint> edge = section.shape(first);
        lean.slit = first_hole(door, edge);
        const double first_angle = door.is_taped ? edge_angle(edge) : chord_angle(edge);
        lean.angle = first_angle;
        if (second) {
            const std::vector<SectionPoint> shape = section.shape(*second);
            lean.angle = chord_angle(shape);
            lean.beside_second = on_grid(swung_open(shape, door.width), area_grid);
        }
        if (std::max(lean.angle, first_angle) > blown_away) break;
        found.push_back(lean);
    }
    return found;
}

}
