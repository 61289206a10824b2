#include "debrief/study_column.hpp"

#include "debrief/outcome.hpp"
#include "debrief/place_line.hpp"
#include "debrief/uncertainty.hpp"
#include "drill/run.hpp"
#include "site/breathing.hpp"
#include "text/significant.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace flapdoor::debrief {

namespace {

constexpr int digits = 6;
constexpr std::string_view per_area = "ug/ft2", mass_unit = "ug";

constexpr double micrograms(Picograms amount) { return static_cast<double>(amount.count) * 1e-6; }
constexpr double micrograms_per_area(Loading loading) { return loading / 1.0_ugpft2; }

/// Does the kind of column need a number to tell which one it is?
bool is_numbered(Measured what)
{
    switch (what) {
        case Measured::work_floor:
        case Measured::passage_floor:
        case Measured::other_floor:
        case Measured::sill:
        case Measured::counter:
        case Measured::top:
        case Measured::wall:
        case Measured::place:
        case Measured::way_out:
        case Measured::exposure:
        case Measured::parameter: return true;
        default: return false;
    }
}

Measured kind_of(const site::Site& site, const site::Surface& surface)
{
    switch (surface.role) {
        case site::SurfaceRole::sill: return Measured::sill;
        case site::SurfaceRole::counter: return Measured::counter;
        case site::SurfaceRole::object_top: return Measured::top;
        case site::SurfaceRole::wall: return Measured::wall;
        default: break;
    }
    if (surface.zone == site.work_room) return Measured::work_floor;
    return surface.zone == passage_of(site) ? Measured::passage_floor : Measured::other_floor;
}

/// A title as one cell of a file: on one line, without the brackets that hold the unit, and nothing that a spreadsheet would
/// take for a formula (the word in front of it sees to that).
std::string on_one_line(std::string title)
{
    for (char& c : title)
        if (static_cast<unsigned char>(c) < ' ' || c == '[' || c == ']') c = ' ';
    return title;
}

bool is_left_lying(const site::Surface& surface)
{
    const bool is_sheet = surface.role == site::SurfaceRole::sheeting || surface.role == site::SurfaceRole::runner || surface.role == site::SurfaceRole::object_cover;
    return is_sheet && surface.is_there;
}

std::optional<double> loading_on_left_sheeting(const site::Site& site)
{
    Picograms lead;
    Area area{};
    for (const site::Surface& surface : site.surfaces) {
        if (!is_left_lying(surface)) continue;
        for (const dust::Load& load : surface.patches) lead += dust::dust_only(load).lead;
        area += surface.area();
    }
    if (!(area > Area{})) return std::nullopt;
    return micrograms_per_area(mass(lead) / area);
}

/// What is needed more than once to fill a row.
struct Ending {
    const site::Site& site;
    const rules::MarkingSheet& sheet;
    std::vector<PlaceLine> places;
};

double points(rules::Quarters quarters) { return static_cast<double>(quarters.count) / 4.0; }

std::optional<double> value_of(const StudyColumn& column, const Ending& run)
{
    const site::Site& site = run.site;
    switch (column.what) {
        case Measured::work_floor:
        case Measured::passage_floor:
        case Measured::other_floor:
        case Measured::sill:
        case Measured::counter:
        case Measured::top:
        case Measured::wall: {
            const site::Surface& surface = site.surfaces.at(column.which);
            return surface.is_there ? std::optional(micrograms_per_area(site::lead_loading(surface))) : std::nullopt;
        }
        case Measured::left_sheeting: return loading_on_left_sheeting(site);
        case Measured::place: return micrograms(run.places.at(column.which).lead);
        case Measured::way_out: return micrograms(dust::total(site.ledger.crossed(static_cast<dust::Pathway>(column.which))).lead);
        case Measured::released: return micrograms(site.ledger.released().lead);
        case Measured::contained: return micrograms(site.ledger.on(dust::Side::contained).lead);
        case Measured::inside: return micrograms(site.ledger.on(dust::Side::inside).lead);
        case Measured::outside: return micrograms(site.ledger.on(dust::Side::outside).lead);
        case Measured::points_wanted: return static_cast<double>(run.sheet.wanted);
        case Measured::points_lost: return points(run.sheet.lost);
        case Measured::is_passed: return run.sheet.is_passed ? 1.0 : 0.0;
        case Measured::is_verified: return site.verification.has_passed ? 1.0 : 0.0;
        case Measured::wet_cloths: return site.verification.wet_cloths;
        case Measured::dry_cloths: return site.verification.dry_cloths;
        case Measured::took: return (site.now - site.scenario.start) / 60.0_s;
        case Measured::exposure: return site::exposure_of(site.crew.at(column.which)).lead.si * 1e9;
        case Measured::parameter: return site.uncertain.*uncertainties.at(column.which).member;
    }
    return std::nullopt;
}

}

std::string head_of(const StudyColumn& column)
{
    std::string head(word_of(column.what));
    if (is_numbered(column.what)) head += fmt::format(" {}: {}", column.which, column.title);
    if (!column.unit.empty()) head += fmt::format(" [{}]", column.unit);
    return head;
}

std::optional<StudyColumn> column_from(std::string_view head)
{
    StudyColumn column;
    if (head.ends_with(']')) {
        const std::size_t bracket = head.rfind(" [");
        if (bracket == std::string_view::npos) return std::nullopt;
        column.unit = head.substr(bracket + 2, head.size() - bracket - 3);
        head = head.substr(0, bracket);
    }
    const std::size_t space = head.find(' ');
    const auto what = from_word<Measured>(head.substr(0, space));
    if (!what || is_numbered(*what) == (space == std::string_view::npos)) return std::nullopt;
    column.what = *what;
    if (!is_numbered(*what)) return column;
    const std::string_view rest = head.substr(space + 1);
    const auto [end, error] = std::from_chars(rest.data(), rest.data() + rest.size(), column.which);
    const std::string_view title = rest.substr(static_cast<std::size_t>(end - rest.data()));
    if (error != std::errc{} || !title.starts_with(": ")) return std::nullopt;
    if (*what == Measured::way_out && (column.which == 0 || column.which >= dust::pathway_count)) return std::nullopt;
    if (*what == Measured::parameter && column.which >= uncertainties.size()) return std::nullopt;
    column.title = title.substr(2);
    return column;
}

std::vector<StudyColumn> study_columns(const job::Scenario& scenario)
{
    const site::Site site = drill::begin(scenario, {});
    std::vector<StudyColumn> columns;
    const auto add = [&](Measured what, std::size_t which, std::string title, std::string_view unit) {
        columns.push_back({what, which, on_one_line(std::move(title)), std::string(unit)});
    };
    for (std::size_t s = 0; s < site.surfaces.size(); ++s) add(kind_of(site, site.surfaces[s]), s, site.surfaces[s].name, per_area);
    std::stable_sort(columns.begin(), columns.end(), [](const StudyColumn& a, const StudyColumn& b) { return a.what < b.what; });
    add(Measured::left_sheeting, 0, {}, per_area);
    const std::vector<PlaceLine> places = place_lines(site);
    for (std::size_t i = 0; i < places.size(); ++i) add(Measured::place, i, places[i].title, mass_unit);
    for (std::size_t p = 1; p < dust::pathway_count; ++p) add(Measured::way_out, p, std::string(word_of(static_cast<dust::Pathway>(p))), mass_unit);
    for (const Measured what : {Measured::released, Measured::contained, Measured::inside, Measured::outside}) add(what, 0, {}, mass_unit);
    for (const Measured what : {Measured::points_wanted, Measured::points_lost, Measured::is_passed, Measured::is_verified, Measured::wet_cloths, Measured::dry_cloths})
        add(what, 0, {}, {});
    add(Measured::took, 0, {}, "min");
    for (std::size_t i = 0; i < site.crew.size(); ++i) add(Measured::exposure, i, site.crew[i].title, "ug/m3");
    for (std::size_t i = 0; i < uncertainties.size(); ++i) add(Measured::parameter, i, std::string(uncertainties[i].title), {});
    return columns;
}

std::vector<std::optional<double>> measured(const std::vector<StudyColumn>& columns, const site::Site& site, const rules::MarkingSheet& sheet)
{
    const Ending run{site, sheet, place_lines(site)};
    std::vector<std::optional<double>> values;
    for (const StudyColumn& column : columns) {
        values.push_back(value_of(column, run));
        if (values.back()) *values.back() = text::round_to_digits(*values.back(), digits);
    }
    return values;
}

}
