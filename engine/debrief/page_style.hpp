#pragma once

#include <string>

namespace flapdoor::debrief {

/// The look of a debrief on top of the style that every page carries: a drafting sheet with ink lines, a title block and
/// one accent.
std::string page_style();

}
