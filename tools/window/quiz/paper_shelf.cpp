#include "window/quiz/paper_shelf.hpp"

#include "records/now.hpp"
#include "text/input_file.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace flapdoor::window {

namespace fs = std::filesystem;

namespace {

std::vector<fs::path> toml_files(const fs::path& folder)
{
    std::vector<fs::path> files;
    std::error_code unreadable;
    for (const fs::directory_entry& entry : fs::directory_iterator(folder, unreadable))
        if (entry.path().extension() == ".toml") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    return files;
}

Result<quiz::Blueprint> blueprint_in(const fs::path& file)
{
    const Result<std::string> text = text::read_file(file.string());
    if (!text) return failed(text.error());
    return quiz::read_blueprint(*text, file.string());
}

}

int questions_of(const quiz::Blueprint& blueprint)
{
    int count = 0;
    for (const quiz::BlueprintPart& part : blueprint.parts) count += part.questions;
    return count;
}

std::vector<ShelvedPaper> read_papers(const Places& places)
{
    std::vector<ShelvedPaper> papers;
    for (const fs::path& file : toml_files(places.scenarios / "papers")) papers.push_back({file, blueprint_in(file)});
    std::stable_sort(papers.begin(), papers.end(), [](const ShelvedPaper& a, const ShelvedPaper& b) {
        const auto size = [](const ShelvedPaper& paper) { return paper.blueprint ? questions_of(*paper.blueprint) : 1'000'000; };
        return size(a) < size(b);
    });
    return papers;
}

std::vector<LeftSitting> left_sittings(const Places& places)
{
    std::vector<std::pair<fs::file_time_type, fs::path>> files;
    std::error_code unreadable;
    for (const fs::path& file : toml_files(places.own / "sittings")) files.emplace_back(fs::last_write_time(file, unreadable), file);
    std::sort(files.rbegin(), files.rend());
    std::vector<LeftSitting> left;
    for (const auto& [time, file] : files) {
        Result<quiz::SittingResult> sitting = quiz::load_sitting(file.string());
        if (!sitting || !sitting->is_finished) left.push_back({file, std::move(sitting)});
    }
    return left;
}

fs::path sitting_file(const Places& places, const std::string& blueprint, std::uint64_t seed, quiz::Feedback feedback)
{
    std::string name = blueprint;
    std::replace(name.begin(), name.end(), '/', '-');
    return places.own / "sittings" / fmt::format("{}-{}-{}.toml", name, seed, feedback == quiz::Feedback::at_once ? "practice" : "sitting");
}

std::uint64_t fresh_seed(const Places& places, const std::string& blueprint, quiz::Feedback feedback)
{
    std::error_code unreadable;
    std::uint64_t seed = 1;
    while (fs::exists(sitting_file(places, blueprint, seed, feedback), unreadable)) ++seed;
    return seed;
}

Result<DrawnPaper> drawn(const Places& places, const PaperOrder& order)
{
    quiz::Workshop workshop(places.scenarios.string());
    const auto files = quiz::load_blueprint(order.blueprint.string(), workshop.find());
    if (!files) return failed(files.error());
    Result<quiz::Paper> paper = quiz::draw_paper(*files, workshop, order.seed);
    if (!paper) return failed(paper.error());
    paper->feedback = order.feedback;
    if (order.feedback == quiz::Feedback::at_once) paper->limit.reset();
    std::error_code told_by_the_save;
    fs::create_directories(order.keep.parent_path(), told_by_the_save);
    Result<quiz::SittingResult> sitting = quiz::kept_or_begun(*paper, order.keep.string(), order.person, records::now_utc());
    if (!sitting) return failed(sitting.error());
    return DrawnPaper{std::move(*paper), std::move(*sitting), order.keep};
}

}
