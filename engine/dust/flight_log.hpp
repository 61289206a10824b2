#pragma once

#include "dust/step_table.hpp"

#include <cstddef>
#include <cstdint>
#include <map>
#include <utility>
#include <vector>

namespace flapdoor::dust {

/// What became of each parcel of a run in each spell. Parcels do not act on each other, so another run of the same seed in which a
/// parcel flies through the same air at the same step need not carry it again.
class FlightLog {
public:
    /// Notes a spell. @param before, after  the same parcels in the same order, before anything is swept
    void note(std::uint64_t table_print, const Cloud& before, const Cloud& after);

    /// About how much memory it takes, bytes.
    std::size_t bytes() const;

private:
    friend std::uint64_t advance_known(Cloud&, const StepTable&, std::uint64_t, std::uint64_t, unsigned, const FlightLog&);

    struct Flight {
        std::uint64_t number;
        float x, y, z;                      ///< before
        std::uint32_t step;                 ///< before
        float to_x, to_y, to_z;
        std::uint32_t to_step;
        SizeClass size;
        Fate fate;
    };
    struct Spell {
        std::uint64_t table_print;
        std::vector<Flight> flights;        ///< by number
    };

    const Spell* find(const Cloud& cloud, std::uint64_t table_print) const;

    std::vector<Spell> spells_;
    std::map<std::pair<std::uint64_t, std::uint32_t>, std::vector<std::uint32_t>> by_last_;  ///< number and step of a young parcel: the spells it was in
};

/// Tells step tables apart: equal tables in, equal value out.
std::uint64_t fingerprint(const StepTable& table);

/// `advance`, to the bit, but for what the log knows already: that is looked up.
/// @param known  of a run with the same seed
/// @return       parcel-steps really made
std::uint64_t advance_known(Cloud& cloud, const StepTable& table, std::uint64_t table_print, std::uint64_t seed, unsigned threads, const FlightLog& known);

}
