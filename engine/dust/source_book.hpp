#pragma once

#include "core/picograms.hpp"
#include "dust/size_class.hpp"

#include <cstddef>
#include <vector>

namespace flapdoor::dust {

/// Which card let the dust of each account loose: a second set of books beside the ledger's, for what the job made. An account
/// counts as well mixed, so what leaves it takes along of every source in proportion, in whole picograms that add up to what the
/// ledger moved.
class SourceBook {
public:
    /// More cards than these share the last source: the work of booking a move grows with the number of sources.
    static constexpr std::size_t most_sources = 24;

    /// One crossing of the containment, all sizes of dust together.
    struct Crossing {
        int source = 0;         ///< step whose card let it loose
        int step = 0;           ///< step in which it crossed
        std::size_t pathway = 0;
        Amount amount;          ///< net; below nothing where more came back
    };

    /// The step in progress. @param entry  its place in the run log
    void begin_step(int entry);

    void release(std::size_t to, SizeClass k, Amount amount);
    /// @param crosses  +1 outward by the pathway, -1 inward, 0 not at all
    void move(std::size_t from, std::size_t to, SizeClass k, Amount amount, int crosses, std::size_t pathway);
    void move_account(std::size_t account, int crosses, std::size_t pathway);

    /// Steps that let dust loose, each once, as they came.
    const std::vector<int>& sources() const { return sources_; }
    /// What an account holds of a source, all sizes together. @param source  by its place in sources()
    Amount held(std::size_t account, std::size_t source) const;
    Amount held(std::size_t account, std::size_t source, SizeClass k) const;
    /// By step, source and pathway; only what is not nothing.
    std::vector<Crossing> crossings() const;

private:
    std::vector<Amount>& row(std::size_t account, SizeClass k);
    void cross(std::size_t source, std::size_t pathway, Amount amount, int sign);

    int step_ = 0;
    std::vector<int> sources_;
    std::vector<PerClass<std::vector<Amount>>> held_;   ///< [account][class][source], as long as needed
    std::vector<Crossing> crossings_;                   ///< of earlier steps
    std::vector<Amount> crossed_now_;                   ///< [source][pathway] of the step in progress
};

}
