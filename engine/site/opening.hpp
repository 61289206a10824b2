#pragma once

#include "job/building.hpp"
#include "job/steps/hang_flap.hpp"
#include "mechanics/flap_door.hpp"

#include <optional>

namespace flapdoor::site {

/// How a flap door hangs in an opening.
struct FlapState {
    int sheets = 2;
    bool is_taped = true, has_folds = true, has_dowel = true;
    Length gap = 3.0_in;
    Length slit_length = mechanics::FlapDoor{}.slit_length, slit_foot = mechanics::FlapDoor{}.slit_foot;
    bool is_slit_through = false;   ///< cut through both sheets

    friend bool operator==(const FlapState&, const FlapState&) = default;
};

/// A door, window or register as it is at the moment.
struct OpeningState {
    job::Opening plan;
    std::size_t zone = 0;
    std::optional<std::size_t> leads_to;    ///< doors: the zone beyond
    bool is_open = false;
    bool is_covered = false;
    bool is_cover_taped = false;
    int seam_layers = 0;
    bool has_sign = false;
    std::optional<FlapState> flap;
};

/// What that card hangs.
FlapState flap_of(const job::HangFlap& step);

/// The flap door that hangs there, as mechanics knows it.
mechanics::FlapDoor hung_door(const FlapState& flap, const job::Opening& doorway);
mechanics::FlapDoor hung_door(const OpeningState& opening);

/// One hung with all care in a usual doorway: what typical passages are meant for.
inline constexpr mechanics::FlapDoor careful_door{};

}
