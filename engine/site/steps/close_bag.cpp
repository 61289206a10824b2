#include "dust/bag.hpp"
#include "site/hands.hpp"
#include "site/passing_time.hpp"

namespace flapdoor::site {

Refusal why_not(const Site& site, const job::CloseBag& step, const Team& by)
{
    const Bag* bag = find_bag(site, step.bag);
    if (bag == nullptr) return "there is no such bag yet";
    if (bag->is_out) return "it is out already";
    if (bag->is_closed) return "it is closed already";
    return must_be_inside(site, by);
}

Done carry_out(Site& site, const job::CloseBag& step, const Team& by)
{
    Bag& bag = *find_bag(site, step.bag);
    work_at(site, by, site.room().raster.rect().center(), job::CloseBag::takes);
    if (step.press != job::Press::none) {
        // The head-space cloud comes out with the air: fine dust only, more when pressed hard.
        const double out = dust::head_space_share(dust::Drop::gentle_dry) * (step.press == job::Press::hard ? 3.0 : 1.0) * (bag.fill > 2.0 / 3.0 ? 2.0 : 1.0);
        for (const dust::SizeClass k : dust::all_classes())
            if (k <= dust::SizeClass::um_10) raise_into_air(site, bag.content.free(k), site.work_room, k, part(bag.content.load.free[k], out));
    }
    bag.is_closed = step.closure != job::Closure::knot;   // a knot in thick plastic does not seal
    bag.is_gooseneck = step.closure == job::Closure::gooseneck && step.twist >= 8.0_in && bag.fill <= 2.0 / 3.0;
    set_state(site, "waste-contained", step.bag.name, bag.is_closed);
    measure(site, "fill", step.bag.name, job::MeasureKind::share, bag.fill);
    return {};
}

}
