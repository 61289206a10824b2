#include "dust/bag.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"

namespace flapdoor::dust {

namespace {

constexpr double room_to_twist = 2.0 / 3.0;

}

double head_space_share(Drop drop)
{
    switch (drop) {
        case Drop::gentle_misted: return 1e-5;
        case Drop::gentle_dry: return 1e-4;
        case Drop::thrown_dry: return 1e-3;
    }
    insist(false, "debris gets into a bag somehow");
    return 0.0;
}

double still_hanging(Speed settling, Time since_drop, Length height)
{
    insist(height.si > 0.0 && settling.si >= 0.0 && since_drop.si >= 0.0, "a head-space has a height");
    return steady::exp(-(settling * since_drop / height));
}

Volume pressed_out(double filled)
{
    insist(filled >= 0.0 && filled <= 1.0, "a bag is filled by a share");
    constexpr Volume usual{20e-3};
    return filled > room_to_twist ? usual * 2.0 : usual;
}

double pressed_out_share(double filled)
{
    const Volume head_space = bag_volume * (1.0 - filled);
    return head_space > pressed_out(filled) ? pressed_out(filled) / head_space : 1.0;
}

double let_out_per_move(Neck neck)
{
    switch (neck) {
        case Neck::open: return 1e-3;
        case Neck::taped: return 1e-4;
        case Neck::gooseneck: return 0.0;
    }
    insist(false, "a neck is shut somehow");
    return 0.0;
}

Volume swapped_per_move(Neck neck) { return untied_swap * (let_out_per_move(neck) / let_out_per_move(Neck::open)); }

double burst_probability(const BagLoad& load)
{
    insist(load.filled >= 0.0 && load.filled <= 1.0, "a bag is filled by a share");
    if (load.filled <= room_to_twist) return 0.01;
    return load.has_sharp_debris && !load.is_doubled ? 0.3 : 0.1;
}

}
