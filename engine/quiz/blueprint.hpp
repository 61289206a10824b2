#pragma once

#include "core/result.hpp"
#include "quiz/making/workshop.hpp"
#include "quiz/paper.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// So many questions of a topic, a level, or both; of any where neither is named.
struct BlueprintPart {
    std::optional<Topic> topic;
    std::optional<Level> level;
    int questions = 1;

    static void fields(auto& self, auto&& visit)
    {
        visit("topic", self.topic, About{"left out: any"});
        visit("level", self.level, About{"left out: any"});
        visit("questions", self.questions, required, Range{1, 100});
    }
};

/// How papers are drawn.
struct Blueprint {
    static constexpr int format_version = 1;

    int format = format_version;
    std::string id;
    Phrase title;
    std::vector<rules::Marked> banks;       ///< names of files beside the blueprint, or of shipped banks
    std::vector<rules::Marked> drills;      ///< whose figures generated questions take; none: all
    Feedback feedback = Feedback::after;
    std::optional<Time> limit;
    std::vector<BlueprintPart> parts;

    static void fields(auto& self, auto&& visit)
    {
        visit("format", self.format, required, Range{1, format_version});
        visit("id", self.id, required, About{"name of the blueprint"});
        visit("title", self.title, required, About{"stands on the paper"});
        visit("banks", self.banks, required, About{"banks beside it or shipped ones, by their file names without .toml"});
        visit("drills", self.drills, About{"whose figures generated questions take; left out: all drills"});
        visit("feedback", self.feedback, About{"at-once for practice, after for a sitting"});
        visit("limit", self.limit, Range{1.0_min, 10.0_h}, About{"time for the whole paper; left out: as long as it takes"});
        visit("part", self.parts, required, About{"how many questions of what"});
    }
};

Result<Blueprint> read_blueprint(std::string_view text, const std::string& file_name);

/// A blueprint and its banks from disk, checked; every problem of all of them.
struct BlueprintFiles {
    Blueprint blueprint;
    std::vector<Bank> banks;
};
Result<BlueprintFiles> load_blueprint(const std::string& path, const FindScenario& find);

/// Draws a paper: for each part so many of the fitting questions that are not on it yet, then all in an order of the seed; of templates of one generator one at most.
/// A question that cannot be posed (no drill has what it needs, outcomes too close) is passed over for the next.
/// @return  problems when a part finds too few questions
Result<Paper> draw_paper(const BlueprintFiles& files, Workshop& workshop, std::uint64_t seed);

}
