#pragma once

#include "core/result.hpp"
#include "quiz/mark.hpp"
#include "quiz/paper.hpp"
#include "quiz/response.hpp"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// An exact share in a file, `[1, 2]`.
struct Share {
    static constexpr bool is_written_as_list = true;
    std::int64_t part = 0, whole = 1;

    static void fields(auto& self, auto&& visit)
    {
        visit("part", self.part, required, Range{0, 1'000'000'000});
        visit("whole", self.whole, required, Range{1, 1'000'000'000});
    }
};

/// One question answered, and what the answer was worth.
struct Answered {
    std::string item;                       ///< as PaperItem::item
    std::uint64_t seed = 0;                 ///< as PaperItem::seed
    Response response;
    Share share;                            ///< of its points
    int of = 1;                             ///< points
    bool is_right = false;
    std::vector<std::string> misconceptions;
    Time took{};

    static void fields(auto& self, auto&& visit)
    {
        visit("item", self.item, required, About{"bank and question"});
        visit("seed", self.seed, About{"of its figures and its shuffling"});
        visit("how", self.response, required, About{"form of the answer"});
        visit("share", self.share, About{"of the points"});
        visit("of", self.of, Range{1, 10}, About{"points the question is worth"});
        visit("right", self.is_right, About{"all of it"});
        visit("misconceptions", self.misconceptions, About{"names of those the answer shows"});
        visit("took", self.took, Range{0.0_s, 240.0_h}, About{"time on this question"});
    }
};

/// One person's answers to one paper, finished or not.
struct SittingResult {
    static constexpr int format_version = 1;

    int format = format_version;
    std::string blueprint;
    std::uint64_t seed = 1;                 ///< of the paper
    std::string paper;                      ///< its fingerprint
    std::string person;                     ///< a name or number of their own choosing
    std::string begun;                      ///< date and time, RFC 3339
    Feedback feedback = Feedback::after;
    bool is_finished = false;
    std::vector<Answered> answers;          ///< in the order of the paper

    static void fields(auto& self, auto&& visit)
    {
        visit("format", self.format, required, Range{1, format_version});
        visit("blueprint", self.blueprint, required);
        visit("seed", self.seed, required, About{"of the paper"});
        visit("paper", self.paper, required, About{"fingerprint of its questions"});
        visit("person", self.person, required, About{"a name or number of their own choosing"});
        visit("begun", self.begun, required, About{"date and time"});
        visit("feedback", self.feedback, About{"at once or after"});
        visit("finished", self.is_finished, About{"nothing is left to answer"});
        visit("answer", self.answers, About{"in the order of the paper"});
    }
};

/// The answer to one item, marked.
Answered answered(const PaperItem& item, Response response, Time took);

/// Begins a sitting of that paper.
SittingResult begin_sitting(const Paper& paper, std::string person, std::string begun);

/// What that file keeps of this paper, or a new beginning when there is no file; problems when it does not read or keeps a sitting of another paper.
/// @param now  date and time, RFC 3339: of a new beginning
Result<SittingResult> kept_or_begun(const Paper& paper, const std::string& path, std::string person, std::string now);

Result<SittingResult> read_sitting(std::string_view text, const std::string& file_name);
Result<SittingResult> load_sitting(const std::string& path);

/// Whole or not at all.
Result<void> save_sitting(const SittingResult& sitting, const std::string& path);

/// Points reached and points there are.
struct Points {
    double reached = 0.0;
    int of = 0;
};
Points points_of(const SittingResult& sitting);

}
