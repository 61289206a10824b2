#pragma once

#include "core/quantity.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace flapdoor::site {

enum class ItemKind { sill, counter, floor };

/// Where one sill, counter section or floor section stands in the cloth check (40 CFR 745.85(b)(1)(ii)).
enum class ItemState { first_wipe_due, reclean_due, second_wipe_due, waiting, passed };

struct Item {
    ItemKind kind = ItemKind::floor;
    std::string name;                   ///< sill or counter id, "floor 2"
    std::size_t surface = 0;
    std::vector<std::size_t> patches;
    ItemState state = ItemState::first_wipe_due;
    bool is_vacuumed_again = false, is_wiped_again = false;
    Time second_fail{};                 ///< end of the second darker wipe
    Time wet_until{};
};

/// The whole check of a job.
struct Verification {
    bool is_inspected = false;          ///< the last visual inspection found nothing, and nothing was disturbed since
    bool saw_dust = false;              ///< the last one found something
    std::vector<Item> items;            ///< made when the inspection passes
    int wet_cloths = 0, dry_cloths = 0;
    bool has_passed = false;
};

}
