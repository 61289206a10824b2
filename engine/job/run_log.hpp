#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "text/sentence.hpp"

#include <string>
#include <vector>

namespace flapdoor::job {

/// What kind of number a measure is, so that it can be shown with its unit. Values are SI.
enum class MeasureKind { number, truth, length, area, time, loading, mass, share };

/// Something measured on the site while a card was carried out, e.g. the reach of the floor sheeting.
///
/// Names in use (object in parentheses):
///   reach (component)        length  how far the sheeting really extends beyond the component, shortest side: when it is
///                                    laid, of every component; when paint is worked on, of that one
///   debris-beyond (component) truth  chips on the work room's bare floor, beyond the sheeting, when the card ended
///   cleaned-margin           length  strip cleaned beyond the work area: to the nearest cell of floor that was not cleaned
///   fill (bag)               share   how full a bag is
///   result (sill, counter, section)  number  0 pass, 1 darker than the card, 2 the wipe does not count
///   cloth-area (section)     area    area wiped with one cloth
///   bare-floor               area    uncarpeted floor of the work area, all sections together
///   sections                 number  sections into which the floor was divided
///   dust-seen                truth   the inspection found dust, debris or residue
///   places-seen              number  at how many places
///   way-out-free             truth   people can leave through the entrance
///   containment-whole        truth   at the check before the work
///   waited (item)            time    since that item's second darker cloth
///   is-dry (item)            truth   at the time of a dry wipe
///   soles-cleaned, clothes-cleaned (person)  truth, on leaving the work area since the last dirty step inside
///   skin-cleaned (bag)       truth   a bag's outside was vacuumed before it left
///   sealed (bag)             truth   a bag was closed before it left
///   wet-cloths, dry-cloths   number  used so far in the verification
///   stepped-on-cleaned (person)  number  footsteps back onto cells that are clean for good: while cleaning from the door on,
///                                    or while inspecting without shoe covers
///   visible-release          truth   dust seen outside a shroud
struct Measure {
    std::string name;
    std::string object;     ///< what it was measured on; empty when there is only one
    MeasureKind kind = MeasureKind::number;
    double value = 0.0;     ///< SI; truth is 0 or 1
};

/// A parameter of the card as it stands in a plan file: name and canonical text.
struct Parameter {
    std::string name;
    std::string value;
    friend bool operator==(const Parameter&, const Parameter&) = default;
};

enum class Outcome { done, not_needed, refused };

/// One card, carried out or not.
struct LogEntry {
    int card = 0;               ///< position in the plan, from 0
    std::string step;           ///< kind of step, e.g. "lay-floor-sheet"
    std::string label;          ///< the card's own id in the plan, may be empty
    std::vector<PersonId> by;
    std::vector<Parameter> with;
    Outcome outcome = Outcome::done;
    text::Sentence reason;      ///< why it was refused or not needed; or what befell who did it
    Time start{}, end{};        ///< time of day, seconds since midnight
    std::vector<Measure> measured;
};

/// A state of the site beginning or ending to hold.
///
/// Names in use (object in parentheses):
///   signs-up (opening), certified-on-site, certified-reachable (on site or by telephone), hvac-running, window-closed (window), register-closed (register),
///   register-covered (register), door-closed (door), door-covered (door), flap-hung (door), flap-taped (door), tack-pad-down,
///   objects-safe (object: out, or covered and sealed), floor-covered, containment-whole, waste-contained (bag),
///   paint-disturbed (from first dust on), inspection-passed, verified (item), passed, occupants-in
struct StateChange {
    Time at{};
    std::string state;
    std::string object;
    bool holds = true;
};

/// All that judging gets to see of a run: what was done, when, by whom, and what was measured. Entries and state
/// changes stand in the order in which they happened.
struct RunLog {
    std::vector<LogEntry> entries;
    std::vector<StateChange> states;
};

/// Does the state hold at that time? A change at exactly `at` counts. Before its first change a state does not hold.
bool holds(const RunLog& log, const std::string& state, const std::string& object, Time at);

/// The measure of that name and object in an entry, or null. An empty object matches any.
const Measure* find_measure(const LogEntry& entry, const std::string& name, const std::string& object = {});

/// The text of a parameter, or empty when the card does not have it.
std::string parameter(const LogEntry& entry, const std::string& name);

}

namespace flapdoor::inline core {
template <> struct Words<job::Outcome> { static constexpr std::array<std::string_view, 3> words{"done", "not-needed", "refused"}; };
}
