#include "verbs.hpp"

#include "places.hpp"

#include "debrief/main_job.hpp"

#include <fmt/format.h>

namespace flapdoor::command {

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
    fmt::print("{} cards carried out again, seed {}.\n", entries.size(), file->seed);
    if (again->is_same()) {
        fmt::print("Same site after every card, same ledger, same marks: {} of {} points.\n", rules::points_text(rules::whole_points(again->job.sheet.wanted) - again->job.sheet.lost),
                   again->job.sheet.wanted);
        return fine;
    }
    if (again->first_difference) {
        const auto card = static_cast<std::size_t>(*again->first_difference);
        fmt::print("The first card after which the site differs: {}{}.\n", card + 1, card < entries.size() ? " (" + entries[card].step + ")" : ", which the file does not have");
    }
    if (!again->has_same_ledger) fmt::print("The ledger differs from what the file claims.\n");
    if (!again->has_same_marks) fmt::print("The marks differ from what the file claims.\n");
    return differs;
}

}
