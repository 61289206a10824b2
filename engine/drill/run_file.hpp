#pragma once

#include "core/result.hpp"
#include "drill/run.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace flapdoor::drill {

/// A text the run was made from, kept whole so that the file stands alone.
struct InputText {
    std::string name;           ///< file name as given, for messages
    std::string text;
    std::uint64_t hash = 0;     ///< fingerprint of the text
};

/// A run as kept on disk: its inputs, its seed and what came of it. Everything else follows by carrying it out again.
struct RunFile {
    static constexpr std::uint32_t format_version = 1;

    InputText scenario, plan, book;
    std::uint64_t seed = 1;
    std::vector<StepHash> hashes;       ///< after each card
    std::string claimed_marks;          ///< "wanted lost" as exact quarters, see debrief
    std::int64_t outside_lead = 0;      ///< pg, as claimed
    std::int64_t released_lead = 0;     ///< pg, as claimed
};

/// Writes it whole or not at all.
Result<void> save_run(const RunFile& file, const std::string& path);

/// Reads it back. A damaged, foreign or newer file is a problem in plain words; a lying count cannot make it allocate more
/// than the file is long.
Result<RunFile> load_run(const std::string& path);
Result<RunFile> parse_run(const std::string& bytes, const std::string& name);

InputText input_text(std::string name, std::string text);

/// What carrying a kept run out again shows.
struct Replay {
    Run run;
    std::optional<int> first_difference;    ///< card after which the site differs from the file's
};

/// Carries the kept plan out again on the kept scenario and seed. Problems when the kept texts do not read, or their
/// hashes do not fit them.
Result<Replay> replay(const RunFile& file, unsigned threads = 1);

}
