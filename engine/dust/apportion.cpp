#include "dust/apportion.hpp"

#include "core/insist.hpp"

namespace flapdoor::dust {

std::vector<Amount> apportion(Amount amount, std::span<const double> weights)
{
    double sum = 0.0;
    for (const double w : weights) {
        insist(w >= 0.0, "weights are not negative");
        sum += w;
    }
    insist(sum > 0.0, "somebody takes the amount");
    // Running totals are rounded, not the pieces: the pieces then add up by construction.
    std::vector<Amount> pieces(weights.size());
    Amount given;
    double so_far = 0.0;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        so_far += weights[i];
        const Amount up_to_here = i + 1 == weights.size() ? amount : part(amount, so_far / sum);
        pieces[i] = up_to_here - given;
        given = up_to_here;
    }
    return pieces;
}

}
