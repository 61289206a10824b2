#pragma once

#include "core/fields.hpp"
#include "core/id.hpp"
#include "core/picograms.hpp"
#include "core/quantity.hpp"
#include "text/field_types.hpp"
#include "text/leaf_reading.hpp"
#include "text/writing.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

/// Structs that the tests of the reader, the writer, the fingerprint and the format pages share.
namespace example {

using namespace flapdoor;

enum class Weight { light, medium, heavy };
using WorkerId = Id<struct WorkerKind>;

struct Corner {
    static constexpr bool is_written_as_list = true;
    Length x{}, y{};

    static void fields(auto& self, auto&& visit)
    {
        visit("x", self.x, required);
        visit("y", self.y, required);
    }
    friend bool operator==(const Corner&, const Corner&) = default;
};

/// Written as `3 of 5`.
struct Score {
    std::int64_t points = 0, most = 0;

    static void from_node(const text::Node& node, Score& score, Problems& problems)
    {
        const auto* words = std::get_if<std::string>(&node.value);
        const std::size_t of = words ? words->find(" of ") : std::string::npos;
        if (of == std::string::npos) return text::refuse(node, {}, "a score such as \"3 of 5\"", problems);
        score.points = std::atoll(words->substr(0, of).c_str());
        score.most = std::atoll(words->substr(of + 4).c_str());
    }
    static text::Node to_node(const Score& score) { return text::leaf_node(std::to_string(score.points) + " of " + std::to_string(score.most)); }

    static void fields(auto& self, auto&& visit)
    {
        visit("points", self.points);
        visit("most", self.most);
    }
    friend bool operator==(const Score&, const Score&) = default;
};

struct Sheet {
    std::string title;
    Length width = 10.0_ft;
    int layers = 1;
    friend bool operator==(const Sheet&, const Sheet&) = default;

    static void fields(auto& self, auto&& visit)
    {
        visit("title", self.title, required, About{"what it is called"});
        visit("width", self.width, Range{1.0_ft, 20.0_ft}, About{"short side"});
        visit("layers", self.layers, Range{1, 4});
    }
};

struct Everything {
    bool is_dry = false;
    int count = 2;
    std::uint64_t seed = 7;
    double share = 0.5;
    std::string note = "none";
    WorkerId worker;
    Weight weight = Weight::medium;
    Length reach = 6.0_ft;
    Time wait = 20.0_min;
    Loading loading = 40.0_ugpft2;
    Temperature air = celsius(20.0);
    Picograms dust{1500};
    Corner corner;
    Score score;
    Sheet sheet;
    std::vector<WorkerId> by;
    std::vector<Length> steps;
    std::vector<Sheet> spares;
    std::optional<AirFlow> flow;
    std::vector<std::vector<int>> grid;
    friend bool operator==(const Everything&, const Everything&) = default;

    static void fields(auto& self, auto&& visit)
    {
        visit("is-dry", self.is_dry);
        visit("count", self.count, Range{0, 100});
        visit("seed", self.seed);
        visit("share", self.share, Range{0.0, 1.0}, About{"part of the whole"});
        visit("note", self.note);
        visit("worker", self.worker);
        visit("weight", self.weight);
        visit("reach", self.reach, Range{0.0_ft, 100.0_ft});
        visit("wait", self.wait);
        visit("loading", self.loading);
        visit("air", self.air);
        visit("dust", self.dust, Range{Picograms{0}, Picograms{1'000'000'000}});
        visit("corner", self.corner);
        visit("score", self.score);
        visit("sheet", self.sheet);
        visit("by", self.by);
        visit("steps", self.steps, Range{1.0_in, 3.0_ft});
        visit("spare", self.spares);
        visit("flow", self.flow, Range{10.0_m3ph, 2000.0_m3ph});
        visit("grid", self.grid, Range{0, 9});
    }
};

struct LayFloorSheet {
    static constexpr std::string_view name = "lay-floor-sheet";
    Length reach = 6.0_ft;
    friend bool operator==(const LayFloorSheet&, const LayFloorSheet&) = default;
    static void fields(auto& self, auto&& visit) { visit("reach", self.reach, Range{1.0_ft, 20.0_ft}); }
};

struct TapeSeam {
    static constexpr std::string_view name = "tape-seam";
    int layers = 1;
    friend bool operator==(const TapeSeam&, const TapeSeam&) = default;
    static void fields(auto& self, auto&& visit) { visit("layers", self.layers, required, Range{1, 4}); }
};

struct Rest {
    static constexpr std::string_view name = "rest";
    friend bool operator==(const Rest&, const Rest&) = default;
    static void fields(auto&, auto&&) {}
};

using Step = std::variant<LayFloorSheet, TapeSeam, Rest>;

/// A flat variant with an envelope around it.
struct Card {
    Step step;
    std::vector<WorkerId> by;
    std::string label;
    friend bool operator==(const Card&, const Card&) = default;

    static void fields(auto& self, auto&& visit)
    {
        visit("do", self.step, required);
        visit("by", self.by, required);
        visit("label", self.label);
    }
};

struct Plan {
    std::vector<Card> cards;
    std::vector<Step> warm_up;
    friend bool operator==(const Plan&, const Plan&) = default;

    static void fields(auto& self, auto&& visit)
    {
        visit("card", self.cards);
        visit("warm-up", self.warm_up, text::ChosenBy{"kind"});
    }
};

}

namespace flapdoor::inline core {
template <>
struct Words<example::Weight> {
    static constexpr std::array<std::string_view, 3> words{"light", "medium", "heavy"};
};
}
