#include "dust/bag.hpp"
#include "site/breathing.hpp"
#include "site/hands.hpp"

#include <algorithm>

namespace flapdoor::site {

namespace {

constexpr Length head_space = 0.3_m;    // height of the air over the content

}

Refusal why_not(const Site& site, const job::CloseBag& step, const Team& by)
{
    const Bag* bag = find_bag(site, step.bag);
    if (bag == nullptr) return to_say("there is no such bag yet");
    if (bag->is_out) return to_say("it is out already");
    if (bag->is_closed) return to_say("it is closed already");
    return must_be_inside(site, by);
}

Done carry_out(Site& site, const job::CloseBag& step, const Team& by)
{
    Bag& bag = *find_bag(site, step.bag);
    work_at(site, by, site.room().raster.rect().center(), job::CloseBag::takes);
    if (step.press != job::Press::none) {
        // What still hangs over the content comes out with the air: pressed hard, all of it.
        const double hangs = std::min(most_let_go, dust::head_space_share(bag.is_damp ? dust::Drop::gentle_misted : dust::Drop::gentle_dry) * site.uncertain.handling);
        const double out = step.press == job::Press::hard ? 1.0 : dust::pressed_out_share(bag.fill);
        for (const dust::SizeClass k : dust::all_classes()) {
            if (k > dust::SizeClass::um_10) continue;
            const double still = dust::still_hanging(site.deposition[k].floor, site.now - bag.filled, head_space);
            raise_near(site, by, bag.content.free(k), site.work_room, k, part(bag.content.load.free[k], hangs * out * still));
        }
    }
    bag.is_closed = step.closure != job::Closure::knot;   // a knot in thick plastic does not seal
    bag.is_gooseneck = step.closure == job::Closure::gooseneck && step.twist >= 8.0_in && bag.fill <= 2.0 / 3.0;
    set_state(site, "waste-contained", step.bag.name, bag.is_closed);
    measure(site, "fill", step.bag.name, job::MeasureKind::share, bag.fill);
    return {};
}

}
