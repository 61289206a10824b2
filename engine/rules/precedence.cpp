#include "rules/precedence.hpp"

#include <algorithm>

namespace flapdoor::rules {

BitMatrix closure(const BitMatrix& before)
{
    BitMatrix all = before;
    for (int k = 0; k < all.size(); ++k)
        for (int a = 0; a < all.size(); ++a)
            if (all.at(a, k)) all.unite(a, k);
    return all;
}

std::vector<int> find_cycle(const BitMatrix& before)
{
    const BitMatrix all = closure(before);
    for (int start = 0; start < all.size(); ++start) {
        if (!all.at(start, start)) continue;
        // Walk only along nodes that lead back to the start: the walk closes within `size` steps.
        std::vector<int> path{start};
        for (;;) {
            int next = start;
            before.any_of(path.back(), [&](int b) {
                if (b != start && !all.at(b, start)) return false;
                next = b;
                return true;
            });
            const auto seen = std::find(path.begin(), path.end(), next);
            if (seen != path.end()) return {seen, path.end()};
            path.push_back(next);
        }
    }
    return {};
}

}
