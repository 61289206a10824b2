#include "dust/flight_log.hpp"

#include "core/hash.hpp"
#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::dust {

namespace {

/// How many of the youngest parcels are tried to find the spell in which the other run had the same ones.
constexpr std::size_t tries = 16;

/// The parcels of a cloud at some places, as a cloud of their own.
Cloud picked(const Cloud& cloud, const std::vector<std::size_t>& places)
{
    Cloud few;
    for (const std::size_t i : places) {
        few.add(cloud.x[i], cloud.y[i], cloud.z[i], cloud.size[i], cloud.number[i], cloud.amount[i]);
        few.steps.back() = cloud.steps[i];
        few.age.back() = cloud.age[i];
        few.fate.back() = cloud.fate[i];
    }
    return few;
}

void put_back(Cloud& cloud, const std::vector<std::size_t>& places, const Cloud& few)
{
    for (std::size_t j = 0; j < places.size(); ++j) {
        const std::size_t i = places[j];
        cloud.x[i] = few.x[j];
        cloud.y[i] = few.y[j];
        cloud.z[i] = few.z[j];
        cloud.steps[i] = few.steps[j];
        cloud.age[i] = few.age[j];
        cloud.fate[i] = few.fate[j];
    }
}

}

std::uint64_t fingerprint(const StepTable& table)
{
    Fingerprint print;
    for (const SizeClass k : all_classes()) {
        const Motion& m = table.motions[k];
        print.add(m.steps);
        for (const float value : {m.dt, m.spread, m.fall, m.wall_stick}) print.add(value);
        print.add(table.first[k]);
    }
    for (const CellStep& cell : table.cells)
        for (const float value : {cell.east, cell.east_gain, cell.north, cell.north_gain, cell.top, cell.leaving, cell.free}) print.add(value);
    for (const float value : {table.width, table.depth, table.ceiling, table.columns_per_meter, table.rows_per_meter, table.most_leaving}) print.add(value);
    for (const int value : {table.columns, table.rows}) print.add(value);
    print.add(table.is_still);
    return print.value();
}

void FlightLog::note(std::uint64_t table_print, const Cloud& before, const Cloud& after)
{
    insist(before.number == after.number, "a spell is noted before the cloud is swept");
    if (before.count() == 0) return;
    Spell spell{table_print, {}};
    spell.flights.reserve(before.count());
    for (std::size_t i = 0; i < before.count(); ++i)
        spell.flights.push_back({before.number[i], before.x[i], before.y[i], before.z[i], before.steps[i], after.x[i], after.y[i], after.z[i], after.steps[i],
                                 before.size[i], after.fate[i]});
    for (std::size_t back = 0; back < std::min(tries, before.count()); ++back) {
        const Flight& young = spell.flights[spell.flights.size() - 1 - back];   // still in the order of the cloud
        by_last_[{young.number, young.step}].push_back(static_cast<std::uint32_t>(spells_.size()));
    }
    std::sort(spell.flights.begin(), spell.flights.end(), [](const Flight& a, const Flight& b) { return a.number < b.number; });
    spells_.push_back(std::move(spell));
}

std::size_t FlightLog::bytes() const
{
    std::size_t sum = 0;
    for (const Spell& spell : spells_) sum += spell.flights.capacity() * sizeof(Flight) + tries * 64;
    return sum;
}

const FlightLog::Spell* FlightLog::find(const Cloud& cloud, std::uint64_t table_print) const
{
    for (std::size_t back = 0; back < std::min(tries, cloud.count()); ++back) {
        const std::size_t i = cloud.count() - 1 - back;
        const auto found = by_last_.find({cloud.number[i], cloud.steps[i]});
        if (found == by_last_.end()) continue;
        for (const std::uint32_t at : found->second)
            if (spells_[at].table_print == table_print) return &spells_[at];
    }
    return nullptr;
}

std::uint64_t advance_known(Cloud& cloud, const StepTable& table, std::uint64_t table_print, std::uint64_t seed, unsigned threads, const FlightLog& known)
{
    const FlightLog::Spell* spell = known.find(cloud, table_print);
    if (spell == nullptr) return advance(cloud, table, seed, threads);
    std::vector<std::size_t> unknown;
    auto there = spell->flights.begin();
    for (std::size_t i = 0; i < cloud.count(); ++i) {
        // A card's parcels stand in the order of their numbers in both, so the next one is mostly the one looked for.
        if (there == spell->flights.end() || there->number != cloud.number[i])
            there = std::lower_bound(spell->flights.begin(), spell->flights.end(), cloud.number[i], [](const FlightLog::Flight& flight, std::uint64_t number) { return flight.number < number; });
        const bool is_same = there != spell->flights.end() && there->number == cloud.number[i] && there->step == cloud.steps[i] && there->x == cloud.x[i] && there->y == cloud.y[i]
                             && there->z == cloud.z[i] && there->size == cloud.size[i] && cloud.fate[i] == Fate::airborne;
        if (!is_same) {
            unknown.push_back(i);
            continue;
        }
        const Motion& m = table.motions[cloud.size[i]];
        cloud.x[i] = there->to_x;
        cloud.y[i] = there->to_y;
        cloud.z[i] = there->to_z;
        cloud.steps[i] = there->to_step;
        cloud.age[i] += m.dt * static_cast<float>(m.steps);
        cloud.fate[i] = there->fate;
        ++there;
    }
    if (unknown.empty()) return 0;
    Cloud few = picked(cloud, unknown);
    const std::uint64_t made = advance(few, table, seed, threads);
    put_back(cloud, unknown, few);
    return made;
}

}
