#include "quiz/sitting.hpp"

#include "core/hash.hpp"
#include "text/atomic_file.hpp"
#include "text/reading.hpp"
#include "text/writing.hpp"

#include <filesystem>

namespace flapdoor::quiz {

Answered answered(const PaperItem& item, Response response, Time took)
{
    Mark mark = quiz::mark(item.question, response);
    return {item.item, item.seed, std::move(response), {mark.share.numerator, mark.share.denominator}, mark.of, mark.is_right, std::move(mark.misconceptions), took};
}

SittingResult begin_sitting(const Paper& paper, std::string person, std::string begun)
{
    SittingResult sitting;
    sitting.blueprint = paper.blueprint;
    sitting.seed = paper.seed;
    sitting.paper = to_hex(fingerprint(paper));
    sitting.person = std::move(person);
    sitting.begun = std::move(begun);
    sitting.feedback = paper.feedback;
    return sitting;
}

Result<SittingResult> kept_or_begun(const Paper& paper, const std::string& path, std::string person, std::string now)
{
    std::error_code error;
    if (!std::filesystem::exists(path, error)) return begin_sitting(paper, std::move(person), std::move(now));
    Result<SittingResult> kept = load_sitting(path);
    if (!kept) return kept;
    const std::string wanted = to_hex(fingerprint(paper));
    if (kept->paper == wanted && kept->answers.size() <= paper.items.size()) return kept;
    Problem problem;
    problem.where.file = path;
    problem.expected = "a sitting of this paper, " + wanted;
    problem.found = "one of paper " + kept->paper + ": banks, drills or seed have changed; name another file";
    return failed(std::move(problem));
}

Result<SittingResult> read_sitting(std::string_view text, const std::string& file_name) { return text::read_document<SittingResult>(text, file_name); }

Result<SittingResult> load_sitting(const std::string& path) { return text::load<SittingResult>(path); }

Result<void> save_sitting(const SittingResult& sitting, const std::string& path) { return text::save_atomically(path, text::write_toml(sitting)); }

Points points_of(const SittingResult& sitting)
{
    Points points;
    for (const Answered& answer : sitting.answers) {
        points.reached += static_cast<double>(answer.share.part) / static_cast<double>(answer.share.whole) * answer.of;
        points.of += answer.of;
    }
    return points;
}

}
