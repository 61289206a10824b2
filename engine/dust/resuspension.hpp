#pragma once

#include "dust/mixed_zone.hpp"
#include "dust/size_class.hpp"
#include "dust/surface_kind.hpp"

namespace flapdoor::dust {

/// The area under one footfall, 0.02 to 0.03 m2.
inline constexpr Area footprint{0.02};

/// Share of the dust in a footprint that one step makes airborne: 0 to 1. Grows with size to 20 um; from 80 um on dust is
/// only kicked sideways.
/// Anchors (abstracts): 1e-7 to 1e-4 over 0.4-10 um, carpet above hard floor from 3 um (Tian et al. 2014); 1.4e-4 /h for
/// PM10 with one walker on carpet (Qian et al. 2008). Beyond 10 um judgment. Band: a tenth to ten times.
double raised_per_step(SizeClass size, SurfaceKind floor);

/// Thick fresh dust comes off far more easily; on carpet it does not. Factor on raised_per_step, hard floors only.
inline constexpr Band fresh_dust_factor{10, 3, 30};

/// A misted surface, until it has dried (judgment).
inline constexpr Band misted_factor{0.1, 0.03, 0.3};
inline constexpr Band misted_minutes{15, 5, 30};

/// What of the dust from 80 um on a step kicks aside on a hard floor, and how far (judgment).
inline constexpr double kicked_share = 0.1;
inline constexpr Length kicked_distance{0.1};

/// Steps over a whole floor as a rate: share per step x steps x footprint/floor.
Rate resuspension_rate(double per_step, Rate steps, Area floor);

/// Share of the collected dust that a vacuum blows out again, classes up to 10 um.
enum class VacuumKind : std::uint8_t { hepa_sealed, hepa_leaking, ordinary };
Band exhaust_penetration(VacuumKind kind);

/// What one pass of a dry broom does to the dust of a class: pushed to the pile, and into the air (judgment).
struct Swept {
    double to_pile;
    double to_air;
};
Swept dry_sweeping(SizeClass size);

/// Taking up sheeting: shares of what lies on it (judgment, no data found; a band of ten either way).
enum class SheetHandling : std::uint8_t { misted_folded_inward, dry_folded_inward, dry_balled_up };
struct SheetLoss {
    double to_air;     ///< of the classes up to 40 um
    double to_floor;   ///< of all classes
};
SheetLoss sheet_removal(SheetHandling handling);

/// Dust below 5 um that household chores put in the air, kg/s at a loading of 0.1 g/m2 (Ferro et al., abstract: 0.1 to
/// 1.4 mg/min). Grows with the loading, at most a hundredfold.
inline constexpr Band chores_mg_per_min{0.37, 0.1, 1.4};
MassRate chores_source(double mg_per_min, Loading fine_dust);

/// The same as a share of the fine dust of the area that is worked over, up to a loading of 10 g/m2: 0.0037 per min/m2.
/// @return  0 to 1, for the classes below 5 um
double raised_by_chore(Exposure exposure);

/// Does a chore raise dust of that size?
constexpr bool is_raised_by_chore(SizeClass size) { return size <= SizeClass::um_2_5; }

}
