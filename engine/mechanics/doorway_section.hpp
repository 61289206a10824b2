#pragma once

#include "mechanics/hanging_sheet.hpp"

#include <cstddef>
#include <memory>
#include <vector>

namespace flapdoor::mechanics {

/// A place in a vertical section through a doorway: the frame stands at x = 0, the floor lies at height 0.
struct SectionPoint {
    Length x{}, height{};
    friend constexpr auto operator<=>(SectionPoint, SectionPoint) = default;
};

/// Somebody who walks through, upright: a trunk with a head, from the knees up (legs step over).
struct Passer {
    Length depth = 0.28_m;          ///< chest to back
    Length shoulder_height = 1.45_m;
    Length height = 1.72_m;
    Length start{};                 ///< x of the middle of the body
    Speed speed{};                  ///< along x, either way
};

/// How finely time and the solver are cut. What finer cuts change is in tests/mechanics/flap_swing_test.cpp.
struct SectionSteps {
    Time step{1.0 / 240.0};
    int solver_rounds = 10;
};

/// Sheets hanging in a doorway, seen in vertical section and moved by a rigid-body solver: each sheet is a chain of
/// links joined by hinges without stiffness, weighted by its film and dowel, pushed by pressure, braked by air and by
/// whoever walks through. Positions come back on a grid of 0.01 mm.
class DoorwaySection {
public:
    explicit DoorwaySection(SectionSteps steps = {});
    ~DoorwaySection();
    DoorwaySection(DoorwaySection&&) noexcept;
    DoorwaySection& operator=(DoorwaySection&&) noexcept;

    /// Hangs one more sheet, straight down.
    /// @return  its number, from 0
    std::size_t hang(const HangingSheet& sheet);

    /// A sheet held straight at an angle, then let go: for swings.
    /// @param radians  from the vertical toward +x
    std::size_t hang_tilted(const HangingSheet& sheet, double radians);

    /// Pressure difference across a sheet from now on; positive pushes toward +x.
    void press(std::size_t sheet, Pressure difference);

    /// Slows every motion at this rate: for finding where a sheet comes to rest.
    void brake(Rate rate);

    /// Film cannot go to x < 0 from now on: another sheet or the frame is there. What is beyond comes back first.
    void stop_at_frame(std::size_t sheet);

    /// Puts somebody into the section; one at a time.
    void let_pass(const Passer& passer);
    SectionPoint passer_at() const;

    /// The passer touches the sheet, or has let go of it. Until told otherwise nobody touches anything.
    /// @param only_chest  pushes with the chest alone, as through a slit; otherwise with all of the body
    void touch(std::size_t sheet, bool only_chest);
    void let_go(std::size_t sheet);

    void advance();
    Time now() const;

    /// Ends and hinges of a sheet from its upper edge to its hem.
    std::vector<SectionPoint> shape(std::size_t sheet) const;
    Speed fastest() const;

    /// What the held foot of a sheet pulls with at the moment; 0 for a free one or while its slack lasts.
    Force pull_at_foot(std::size_t sheet) const;
    void free_foot(std::size_t sheet);

    /// About the sheet's upper edge, summed over what the solver moves.
    Inertia inertia(std::size_t sheet) const;

    /// The weights' moment about the upper edge if the sheet stood level.
    Torque weight_moment(std::size_t sheet) const;

private:
    struct World;
    std::unique_ptr<World> world_;
};

}
