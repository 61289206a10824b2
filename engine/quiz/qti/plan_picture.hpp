#pragma once

#include "job/scenario.hpp"
#include "plan/rect.hpp"

#include <string>

namespace flapdoor::quiz {

/// The plan of a scenario as a picture that stands alone: zones with their names, openings, furniture. North is up.
struct PlanPicture {
    int width = 0, height = 0;          ///< px
    double left = 0.0, top = 0.0;       ///< m: the plan's coordinates of the upper left corner
    double per_meter = 1.0;             ///< px
    std::string svg;

    int x_of(Length x) const;           ///< px from the left, inside the picture
    int y_of(Length y) const;           ///< px from the top, inside the picture
};

PlanPicture plan_picture(const job::Scenario& scenario);

}
