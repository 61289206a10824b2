#include "dust/clothing.hpp"
#include "dust/soles.hpp"
#include "site/hands.hpp"

namespace flapdoor::site {

Refusal why_not(const Site&, const job::TakeOffGear&, const Team&) { return std::nullopt; }

Done carry_out(Site& site, const job::TakeOffGear& step, const Team& by)
{
    spend(site, job::TakeOffGear::takes);
    for (const job::PersonId& id : by) {
        Worker& who = worker(site, id);
        // Rolled inward and left in a bag, a coverall keeps what it carries; shaken off outside it sheds like clothes.
        if (who.has_coverall && step.place == job::GearPlace::inside && who.is_inside) {
            pour(site, who.clothes, site.store, dust::kept_in_coverall.typical);
            who.has_clean_clothes = true;
        }
        if (who.has_covers && step.place == job::GearPlace::inside && who.is_inside) {
            for (Shoe& shoe : who.shoes) pour(site, shoe.sole, site.store, 1.0 - dust::left_under_shoe_cover.typical);
            who.has_clean_soles = true;
        }
        who.has_respirator = who.has_coverall = who.has_covers = who.has_gloves = false;
    }
    return {};
}

}
