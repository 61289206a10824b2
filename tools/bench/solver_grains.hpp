#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>

class b2World;

namespace flapdoor::bench {

/// Grains of dust as bodies of a rigid-body solver, in the plan of the furnished room: discs of 12 mm that meet walls and
/// furniture and not each other, pushed about by counter-based luck before every step. What the parcel kernel is spared.
class SolverGrains {
public:
    explicit SolverGrains(std::size_t grains);
    ~SolverGrains();

    /// One step of 0.1 s. @return  grain-steps made
    std::uint64_t step();
    /// Of where all grains are.
    std::uint64_t fingerprint() const;

private:
    std::unique_ptr<b2World> world_;
    std::uint32_t steps_ = 0;
};

}
