#pragma once

#include "debrief/main_job.hpp"
#include "debrief/report.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace flapdoor::window {

/// One way in which a rule was broken, at the moment at which it happened.
struct Happening {
    Time at{};
    std::size_t fault = 0; ///< in Report::faults
    int card = -1;         ///< entry of the log it is shown at, -1 when the whole run is meant
    text::Sentence what;   ///< one sentence
};

/// What a card adds to its title, and who carries it out.
struct CardWords {
    text::Sentence detail; ///< "machine sand, casing of the south window"; may be empty. Kept, so that it is said in the language then spoken
    std::string crew;      ///< "Rosa, Lee"
};

/// A run as the window plays it: the job, its debrief, and when each fault happens. Nothing in it changes while it plays.
struct Story {
    debrief::Inputs inputs;
    drill::Film film;
    debrief::Report report;
    job::RunLog log;
    std::vector<CardWords> words;            ///< [entry of the log]
    std::vector<Happening> happenings;       ///< by time, then in the order of the sheet
    std::vector<std::vector<double>> facing; ///< [frame][person] radians, 0 to the east, counterclockwise
    Time start{}, end{};                     ///< time of day
    bool hides_faults = false;               ///< nothing on the screen speaks of faults
    std::uint64_t edition = 0;               ///< pictures made of another one are no good

    Time length() const { return end - start; }
    /// The card under way, or the last one that began; 0 before the first.
    std::size_t card_at(Time time) const;
    /// How many happenings lie at or before a time.
    std::size_t happened_by(Time time) const;
    /// How many rules have been broken by then, each counted once.
    std::size_t broken_by(Time time) const;
    /// Time at which a fault first shows; the end when it never happened at any one time.
    Time first_time(std::size_t fault) const;
};

/// Insists that the job was filmed.
Story tell(debrief::Inputs inputs, debrief::Job job);

/// Works out again what follows from film, log and faults: words, happenings, where people look, the lines of the steps.
void refresh(Story& story);

/// "Rosa" of "Rosa, certified renovator".
std::string short_name(const std::string& title);

}
