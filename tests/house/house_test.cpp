#include "code_rules.hpp"
#include "room_list.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor::house;

// Two tests for each rule: the project keeps it, and the check sees a sample that does not. A check that cannot fail is none.

namespace {

std::string cmake_list() { return read(std::filesystem::path(FLAPDOOR_SOURCE_DIR) / "CMakeLists.txt"); }

const std::vector<SourceFile>& engine()
{
    static const std::vector<SourceFile> files = source_files({"engine"}, {".cpp", ".hpp"});
    return files;
}

/// All faults of a rule in the engine, one a line.
std::string in_engine(const auto& rule)
{
    std::string all;
    for (const SourceFile& file : engine())
        for (const std::string& fault : rule(file)) all += fault + "\n";
    return all;
}

SourceFile sample(std::string path, std::string text) { return {std::move(path), std::move(text)}; }

std::size_t faults_of(const auto& rule, std::string path, std::string text) { return rule(sample(std::move(path), std::move(text))).size(); }

constexpr auto house_list = "flapdoor_room(core LINKS tl::expected)\nflapdoor_room(text USES core)\nflapdoor_room(plan USES core)\n"
                            "flapdoor_room(air USES plan)\nflapdoor_room(dust USES air PRIVATE_LINKS Threads::Threads)\nflapdoor_room(job USES plan text)\n";

}

TEST_CASE("the rooms are found")
{
    // So that no check below passes because it looked at nothing.
    CHECK(engine().size() > 100);
    const RoomList rooms = room_list(cmake_list());
    CHECK(rooms.size() == 13);
    CHECK(rooms.at("dust") == std::set<std::string>{"core", "plan", "mechanics", "air", "dust"});
    CHECK(rooms.at("site").contains("text"));
    CHECK_FALSE(rooms.at("rules").contains("dust"));
}

TEST_CASE("every room is listed below the rooms that use it")
{
    CHECK(list_faults(cmake_list()).empty());
    CHECK(list_faults("flapdoor_room(plan)\nflapdoor_room(air USES plan LINKS some::library)\nflapdoor_room(dust USES air BATCHED)").empty());
    CHECK(list_faults("flapdoor_room(air USES plan)\nflapdoor_room(plan)").size() == 1);
    CHECK(list_faults("flapdoor_room(a USES b)\nflapdoor_room(b USES a)").size() == 1);
}

TEST_CASE("rooms include only themselves and what lies below them")
{
    const RoomList rooms = room_list(cmake_list());
    CHECK(in_engine([&](const SourceFile& file) { return include_faults(file, rooms); }) == "");
}

TEST_CASE("an include against the list is seen")
{
    const RoomList rooms = room_list(house_list);
    const auto faults = [&](std::string path, std::string text) { return include_faults(sample(std::move(path), std::move(text)), rooms); };
    CHECK(faults("engine/dust/a.cpp", "#include \"dust/a.hpp\"\n#include \"air/b.hpp\"\n#include \"core/c.hpp\"\n#include <map>\n").empty());
    CHECK(faults("engine/air/a.cpp", "#include \"core/c.hpp\"\n#include \"dust/a.hpp\"\n") == Faults{"engine/air/a.cpp:2: air may not include dust/a.hpp"});
    CHECK(faults("engine/dust/a.cpp", "#  include \"text/a.hpp\"\n").size() == 1);
    CHECK(faults("engine/dust/a.cpp", "#include \"a.hpp\"\n").size() == 1);
    CHECK(faults("engine/dust/a.cpp", "#include \"../text/a.hpp\"\n").size() == 1);
    CHECK(faults("engine/attic/a.cpp", "").size() == 1);
}

TEST_CASE("the model uses steady functions, counter-based luck and ordered containers")
{
    CHECK(in_engine(steadiness_faults) == "");
}

TEST_CASE("an unsteady function, foreign luck and an unordered container are seen")
{
    const auto count = [](std::string line) { return faults_of(steadiness_faults, "engine/dust/a.cpp", std::move(line)); };
    for (const std::string name : {"exp", "log", "pow", "sin", "cos", "tan", "atan", "atan2", "log10", "fma", "hypot", "expf"}) {
        INFO(name);
        CHECK(count("x = std::" + name + "(y);") == 1);
        CHECK(count("x = " + name + "(y);") == 1);
        CHECK(count("x = ::" + name + " (y);") == 1);
        CHECK(count("return 2.0*" + name + "(y);") == 1);
    }
    CHECK(count("x = steady::exp(y) + std::sqrt(z) + run.log(4) + writer->log(5) + expect(1);") == 0);
    CHECK(count("// std::exp(x) would differ\nauto t = \"std::exp(x)\";") == 0);
    CHECK(count("std::normal_distribution<double> d;") == 1);
    CHECK(count("std::random_device r;") == 1);
    CHECK(count("std::mt19937_64 r;") == 1);
    CHECK(count("#include <random>") == 1);
    CHECK(count("std::unordered_map<int, int> m;") == 1);
    CHECK(count("#include <unordered_set>") == 1);
    CHECK(count("/* one */ std::unordered_set<int> s; /* two */") == 1);
    CHECK(faults_of(steadiness_faults, "engine/text/a.cpp", "x = std::log10(y);") == 0);
}

TEST_CASE("threads and clocks stay in the rooms that may have them, and core touches no disk")
{
    CHECK(in_engine(purity_faults) == "");
}

TEST_CASE("a thread, a clock and a file in the wrong room are seen")
{
    CHECK(faults_of(purity_faults, "engine/site/a.cpp", "std::thread t;") == 1);
    CHECK(faults_of(purity_faults, "engine/site/a.cpp", "#include <mutex>") == 1);
    CHECK(faults_of(purity_faults, "engine/rules/a.cpp", "std::atomic_int n;") == 1);
    CHECK(faults_of(purity_faults, "engine/dust/a.cpp", "std::thread t;") == 0);
    CHECK(faults_of(purity_faults, "engine/dust/a.cpp", "auto t = std::chrono::steady_clock::now();") == 1);
    CHECK(faults_of(purity_faults, "engine/drill/a.cpp", "auto t = std::time(nullptr);") == 1);
    CHECK(faults_of(purity_faults, "engine/records/a.cpp", "auto t = std::chrono::system_clock::now();") == 0);
    CHECK(faults_of(purity_faults, "engine/core/a.cpp", "std::ifstream f;") == 1);
    CHECK(faults_of(purity_faults, "engine/core/a.cpp", "#include <filesystem>") == 1);
}

TEST_CASE("third-party headers stay in the sources of the room that wraps them")
{
    CHECK(in_engine(third_party_faults) == "");
}

TEST_CASE("a third-party header in a header or in another room is seen")
{
    CHECK(faults_of(third_party_faults, "engine/text/a.hpp", "#include <fmt/format.h>") == 1);
    CHECK(faults_of(third_party_faults, "engine/core/a.hpp", "#include <tl/expected.hpp>\n#include <vector>") == 0);
    CHECK(faults_of(third_party_faults, "engine/text/a.cpp", "#include <toml++/toml.h>") == 0);
    CHECK(faults_of(third_party_faults, "engine/job/a.cpp", "#include <toml++/toml.h>") == 1);
    CHECK(faults_of(third_party_faults, "engine/dust/a.cpp", "#include <box2d/box2d.h>") == 1);
    CHECK(faults_of(third_party_faults, "engine/dust/a.cpp", "#include <boost/any.hpp>") == 1);
}

TEST_CASE("headers begin with pragma once and open no namespace")
{
    CHECK(in_engine(header_faults) == "");
    CHECK(faults_of(header_faults, "engine/dust/a.hpp", "#pragma once\nnamespace flapdoor::dust {\n}\n") == 0);
    CHECK(faults_of(header_faults, "engine/dust/a.hpp", "#include <map>\n") == 1);
    CHECK(faults_of(header_faults, "engine/dust/a.hpp", "#pragma once\nusing namespace std;\n") == 1);
    CHECK(faults_of(header_faults, "engine/dust/a.cpp", "using namespace flapdoor;\n") == 0);
}

TEST_CASE("no source file is longer than 500 lines")
{
    std::string all;
    for (const SourceFile& file : source_files({"engine", "tools", "tests"}, {".cpp", ".hpp"}))
        for (const std::string& fault : length_faults(file)) all += fault + "\n";
    CHECK(all == "");
    std::string text;
    for (int i = 0; i < 500; ++i) text += "x\n";
    CHECK(faults_of([](const SourceFile& f) { return length_faults(f); }, "engine/dust/a.cpp", text) == 0);
    CHECK(faults_of([](const SourceFile& f) { return length_faults(f); }, "engine/dust/a.cpp", text + "x") == 1);
}

TEST_CASE("no file names a place of one machine or leaves a note of work undone")
{
    const std::vector<std::string> endings{".cpp", ".hpp", ".txt", ".cmake", ".json", ".toml", ".md", ".sh", ".sql", ".po", ".svg"};
    std::vector<SourceFile> files = source_files({"engine", "tools", "tests", "docs", "scenarios", "assets"}, endings);
    for (const char* name : {"CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md"})
        files.push_back({name, read(std::filesystem::path(FLAPDOOR_SOURCE_DIR) / name)});
    std::string all;
    for (const SourceFile& file : files)
        for (const std::string& fault : forbidden_words(file)) all += fault + "\n";
    CHECK(all == "");
    CHECK(faults_of(forbidden_words, "docs/a.md", "see " + std::string("/ho") + "me/somebody/notes") == 1);
    CHECK(faults_of(forbidden_words, "docs/a.md", "see " + std::string("../sh") + "ared/notes\nmore\n" + std::string("TO") + "DO: the rest") == 2);
    CHECK(faults_of(forbidden_words, "docs/a.md", "homework at home, workers, /ho" + std::string("me/ann/a.toml")) == 0);
}

TEST_CASE("comments and literals are not code")
{
    CHECK(code_of("a // b\nc") == "a     \nc");
    CHECK(code_of("a /* b\nc */ d") == "a     \n     d");
    CHECK(code_of("f(\"x \\\" y\") + 'z'") == "f(\"      \") + ' '");
    CHECK(code_of("20'000 + g('\\'') // h") == "20'000 + g('  ')     ");
}
