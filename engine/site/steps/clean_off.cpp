#include "dust/clothing.hpp"
#include "dust/soles.hpp"
#include "site/breathing.hpp"
#include "site/hands.hpp"

namespace flapdoor::site {

namespace {

constexpr double vacuumed_soles = 0.8;   // what a nozzle takes off a sole; a wipe the same (judgment)

}

Refusal why_not(const Site& site, const job::CleanOff& step, const Team& by)
{
    const bool needs_vacuum = step.clothes == job::ClothesCare::vacuum || step.soles == job::SoleCare::vacuum;
    if (!needs_vacuum) return must_be_inside(site, by);
    return first_of({must_be_inside(site, by), must_have(site, step.vacuum, {job::SupplyKindOf::hepa_vacuum, job::SupplyKindOf::shop_vacuum}, to_say("to vacuum clothes and shoes"))});
}

Done carry_out(Site& site, const job::CleanOff& step, const Team& by)
{
    spend(site, job::CleanOff::takes * static_cast<double>(by.size()));
    for (const job::PersonId& id : by) {
        Worker& who = worker(site, id);
        switch (step.clothes) {
            case job::ClothesCare::vacuum:
                pour(site, who.clothes, site.vacuum, dust::clothing_vacuumed.typical, dust::Pathway::recovered);
                who.has_clean_clothes = true;
                break;
            case job::ClothesCare::brush:
            case job::ClothesCare::blow:   // what leaves the cloth hangs in the air
                for (const dust::SizeClass k : dust::all_classes())
                    raise_near(site, {id}, who.clothes.free(k), who.zone, k, part(who.clothes.load.free[k], 0.6));
                break;
            case job::ClothesCare::none: break;
        }
        switch (step.soles) {
            case job::SoleCare::vacuum:
            case job::SoleCare::wipe:
                for (Shoe& shoe : who.shoes) pour(site, shoe.sole, step.soles == job::SoleCare::vacuum ? site.vacuum : site.cloths, vacuumed_soles, dust::Pathway::recovered);
                who.has_clean_soles = true;
                break;
            case job::SoleCare::covers_off:
                if (!who.has_covers) break;
                for (Shoe& shoe : who.shoes) pour(site, shoe.sole, site.store, 1.0 - dust::left_under_shoe_cover.typical, dust::Pathway::recovered);
                who.has_covers = false;
                who.has_clean_soles = true;
                break;
            case job::SoleCare::none: break;
        }
    }
    return {};
}

}
