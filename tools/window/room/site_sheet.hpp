#pragma once

#include "window/stage/ui.hpp"

#include "site/site.hpp"

namespace flapdoor::window {

/// How the site stands in words: clock, crew, bags, what was taken along and where it is.
void site_sheet(Ui& ui, const Box& box, const site::Site& site);

}
