#include "verbs.hpp"

#include "places.hpp"

#include "debrief/main_job.hpp"
#include "text/language.hpp"

#include <fmt/format.h>

namespace flapdoor::command {

using text::say;
using text::say_number;
using text::say_with;

int replay(const std::string& path, unsigned threads)
{
    const Result<drill::RunFile> file = drill::load_run(path);
    if (!file) {
        tell(file.error());
        return bad_file;
    }
    const Result<debrief::Check> again = debrief::check(*file, threads);
    if (!again) {
        tell(again.error());
        return bad_file;
    }
    const auto& entries = again->job.run.site.log.entries;
    fmt::print("{}\n", say_number("{} card carried out again, seed {}.", "{} cards carried out again, seed {}.", entries.size(), file->seed));
    if (again->is_same()) {
        fmt::print("{}\n", say_with("Same site after every card, same ledger, same marks: {} of {} points.", rules::points_text(rules::whole_points(again->job.sheet.wanted) - again->job.sheet.lost),
                   again->job.sheet.wanted));
        return fine;
    }
    if (again->first_difference) {
        const auto card = static_cast<std::size_t>(*again->first_difference);
        fmt::print("{}\n", card < entries.size() ? say_with("The first card after which the site differs: {} ({}).", card + 1, entries[card].step)
                                              : say_with("The first card after which the site differs: {}, which the file does not have.", card + 1));
    }
    if (!again->has_same_ledger) fmt::print("{}\n", say("The ledger differs from what the file claims."));
    if (!again->has_same_marks) fmt::print("{}\n", say("The marks differ from what the file claims."));
    return differs;
}

}
