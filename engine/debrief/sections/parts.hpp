#pragma once

#include "debrief/level.hpp"
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
text::Element sources(const Report& report);        ///< which card let loose what got out and what was left
text::Element what_ifs(const Report& report);       ///< what each mistake did; for a report that has what-ifs
text::Element places(const Report& report);         ///< where it lies, with loadings
text::Element breathed(const Report& report);       ///< what the crew breathed
text::Element maps(const Report& report);
text::Element steps(const Report& report);          ///< timeline and table of steps
text::Element kept_rules(const Report& report);
text::Element model(const Report& report);          ///< how far the figures can be trusted
text::Element repeat(const Report& report);         ///< how the run can be carried out again
text::Element practise_list(const Report& report);  ///< what to practise next, the costliest first
text::Element caution_list();

/// The trainee's sheet, one page: result, what mattered most, where the dust went, what to practise next, a caution.
text::Element trainee_sheet(const Report& report);

/// An empty section under its heading.
text::Element titled(std::string_view title);

/// An element with text and perhaps a class.
text::Element piece(std::string_view tag, std::string_view text, std::string_view class_name = {});

/// A table with its caption and column heads; a column whose head begins with `>` is set to the right.
text::Element table(std::string_view caption, const std::vector<std::string_view>& heads);

/// A table whose last columns are those of a level.
/// @param of_level  heads of these columns, level_heads() or exposure_heads()
text::Element level_table(std::string_view caption, const std::vector<std::string_view>& heads, const std::vector<std::string>& of_level);

/// The cells of a level, its note in the last one.
void add_level(text::Element& row, const Report& report, const Level& level);

/// The same cells for what nobody has measured: possible, without a figure.
void add_unknown(text::Element& row, const Report& report);

}
