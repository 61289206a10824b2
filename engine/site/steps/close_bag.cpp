#include "site/bagging.hpp"
#include "site/breathing.hpp"
#include "site/cleaning.hpp"
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
    if (step.press == job::Press::by_vacuum && step.vacuum.name.empty()) return to_say("no vacuum is named to draw the air out");
    const bool draws = step.press == job::Press::by_vacuum;
    return first_of({must_be_inside(site, by),
                     draws ? must_have(site, step.vacuum, {job::SupplyKindOf::hepa_vacuum, job::SupplyKindOf::shop_vacuum}, to_say("to draw the air out")) : std::nullopt});
}

Done carry_out(Site& site, const job::CloseBag& step, const Team& by)
{
    Bag& bag = *find_bag(site, step.bag);
    work_at(site, by, site.room().raster.rect().center(), job::CloseBag::takes);
    const BagClosing closing = closing_of(step, bag.fill);
    if (step.press != job::Press::none) {
        // What still hangs over the content comes out with the air.
        const double hangs = std::min(most_let_go, dust::head_space_share(bag.is_damp ? dust::Drop::gentle_misted : dust::Drop::gentle_dry) * site.uncertain.handling);
        for (const dust::SizeClass k : dust::all_classes()) {
            if (k > dust::SizeClass::um_10) continue;
            const double still = dust::still_hanging(site.deposition[k].floor, site.now - bag.filled, head_space);
            const Amount content = bag.content.load.free[k];
            const Amount drawn = part(content, hangs * closing.drawn_off * still);
            const Amount blown = part(drawn, through_vacuum(site, step.vacuum, k));
            raise_near(site, by, bag.content.free(k), site.work_room, k, part(content, hangs * closing.pressed_out * still) + blown);
            site.ledger.move(bag.content.free(k), site.vacuum.free(k), k, drawn - blown);
        }
    }
    bag.is_closed = closing.neck != dust::Neck::open;
    bag.is_gooseneck = closing.neck == dust::Neck::gooseneck;
    set_state(site, "waste-contained", step.bag.name, bag.is_closed);
    measure(site, "fill", step.bag.name, job::MeasureKind::share, bag.fill);
    return {};
}

}
