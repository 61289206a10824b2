#include "drill/unfinished.hpp"

#include "text/input_file.hpp"

#include <catch2/catch.hpp>

#include <unistd.h>

#include <filesystem>
#include <fstream>

using namespace flapdoor;
namespace fs = std::filesystem;

namespace {

drill::Unfinished sample()
{
    const std::string folder = FLAPDOOR_SOURCE_DIR "/tests/data/drills/one-window/";
    drill::Unfinished kept;
    kept.drill = "one-window";
    kept.who = "Zoë \"Z\"\n";
    kept.manner = drill::Manner::marked;
    kept.seed = "18446744073709551615";
    kept.state = "00ff";
    kept.scenario = text::read_file(folder + "scenario.toml").value();
    kept.plan = text::read_file(folder + "good.toml").value();
    return kept;
}

fs::path place() { return fs::temp_directory_path() / ("flapdoor-unfinished-" + std::to_string(getpid())) / "deep" / "one-window.toml"; }

}

TEST_CASE("a drill in progress is read back as it was kept")
{
    fs::remove_all(place().parent_path().parent_path());
    REQUIRE(drill::save_unfinished(sample(), place().string()));
    const auto read = drill::load_unfinished(place().string());
    REQUIRE(read);
    CHECK(read->kept.who == sample().who);
    CHECK(read->kept.manner == drill::Manner::marked);
    CHECK(read->seed == 18446744073709551615ULL);
    CHECK(read->plan.cards.size() == 8);
    CHECK(read->scenario.id == "one-window");
    fs::remove_all(place().parent_path().parent_path());
}

TEST_CASE("a damaged file of a drill in progress is told and stays as it is")
{
    REQUIRE(drill::save_unfinished(sample(), place().string()));
    const std::string whole = text::read_file(place().string()).value();
    for (const std::size_t length : {std::size_t{0}, std::size_t{10}, whole.size() / 2, whole.size() - 3}) {
        const std::string cut = whole.substr(0, length);
        std::ofstream(place(), std::ios::binary | std::ios::trunc) << cut;
        const auto read = drill::load_unfinished(place().string());
        REQUIRE_FALSE(read);
        CHECK_FALSE(read.error().empty());
        CHECK(text::read_file(place().string()).value() == cut);
    }
    drill::Unfinished odd = sample();
    odd.seed = "seven";
    REQUIRE(drill::save_unfinished(odd, place().string()));
    CHECK_FALSE(drill::load_unfinished(place().string()));
    fs::remove_all(place().parent_path().parent_path());
}
