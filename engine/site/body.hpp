#pragma once

#include "dust/exposure.hpp"
#include "dust/ledger.hpp"
#include "dust/load.hpp"
#include "job/contents.hpp"
#include "plan/rect.hpp"

#include <array>
#include <string>

namespace flapdoor::site {

/// Anything that carries dust about and has no place of its own on the raster: soles, clothes, tools, a bag, the vacuum.
struct Body {
    dust::AccountId account = 0;
    dust::Load load;

    dust::Holding free(dust::SizeClass k) { return {load.free[k], account}; }
};

/// One shoe. Both of a person are booked in one account.
struct Shoe {
    Body sole;
    int clean_steps = 0;            ///< its steps since it was last in dust
};

/// One member of the crew.
struct Worker {
    job::PersonId id;
    std::string title;
    job::Role role = job::Role::trained_worker;
    std::array<Shoe, 2> shoes;
    std::size_t next_shoe = 0;      ///< that comes down
    Body clothes;
    bool is_inside = false;         ///< in the work area
    bool is_on_site = true, is_reachable = true;    ///< reachable: at hand or by telephone
    bool is_trained = false;        ///< trained for this job, or certified
    std::size_t zone = 0;
    plan::Point at;
    bool has_respirator = false, has_coverall = false, has_covers = false, has_gloves = false;
    bool has_clean_soles = true;    ///< since the last step on a dirty surface inside
    bool has_clean_clothes = true;
    dust::Dose breathed_dust{};     ///< inhalable, outside any respirator; see site/breathing
    dust::Dose breathed_lead{};
};

/// A waste bag or a wrapped bundle.
struct Bag {
    job::BagId id;
    Body content, skin;
    double fill = 0.0;              ///< share of its volume
    Time filled{};                  ///< when the last of it went in
    bool is_damp = false;           ///< with misted debris
    bool is_heavy_duty = true;
    bool is_closed = false;
    bool is_gooseneck = false;
    bool is_skin_clean = false;
    bool is_out = false;
    bool holds_sheeting = false;
};

}
