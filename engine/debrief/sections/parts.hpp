#pragma once

#include "debrief/report.hpp"
#include "text/markup.hpp"

#include <string_view>

/// The sections of the page, one file each, and the small parts they share. Each looks at the report and nothing else.
namespace flapdoor::debrief::sections {

text::Element heading(const Report& report);        ///< title and title block
text::Element result(const Report& report);         ///< passed or not, and the score
text::Element marks(const Report& report);          ///< wanted and lost
text::Element faults(const Report& report);         ///< each broken rule explained
text::Element pathways(const Report& report);       ///< how lead got out
text::Element places(const Report& report);         ///< where it lies, with loadings
text::Element maps(const Report& report);
text::Element steps(const Report& report);          ///< timeline and table of steps
text::Element kept_rules(const Report& report);
text::Element repeat(const Report& report);         ///< how the run can be carried out again
text::Element caution_list();

/// An empty section under its heading.
text::Element titled(std::string_view title);

/// An element with text and perhaps a class.
text::Element piece(std::string_view tag, std::string_view text, std::string_view class_name = {});

/// A table with its caption and column heads; a column whose head begins with `>` is set to the right.
text::Element table(std::string_view caption, const std::vector<std::string_view>& heads);

/// A loading with the note that belongs to it.
text::Element loading_cell(Loading loading);

}
