#include "quiz/practice/practice_file.hpp"

#include "practices.hpp"
#include "text/atomic_file.hpp"
#include "text/input_file.hpp"
#include "text/writing.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <filesystem>
#include <string>

namespace flapdoor::quiz {

namespace {

std::string file_named(const std::string& name) { return (std::filesystem::temp_directory_path() / ("flapdoor-practice-" + name)).string(); }

}

TEST_CASE("what is saved is what is loaded", "[property]")
{
    const std::string path = file_named("round.toml");
    CHECK(rc::check([&] {
        Practice practice = toward(*rc::gen::inRange(0, 20));
        if (*rc::gen::arbitrary<bool>()) practice.field_day.reset();
        practice.each = *rc::gen::inRange(1, 21);
        const auto count = *rc::gen::inRange(0, 12);
        for (int i = 0; i < count; ++i) {
            add(practice, static_cast<Topic>(*rc::gen::inRange(0, 14)), i / 3, *rc::gen::arbitrary<bool>());
            practice.attempts.back().is_critical = *rc::gen::arbitrary<bool>();
            practice.attempts.back().guess = *rc::gen::inRange(0, 50) / 100.0;
            practice.attempts.back().item = "bank/question-" + std::to_string(i);
        }
        RC_ASSERT(save_practice(practice, path).has_value());
        const auto loaded = load_practice(path);
        RC_ASSERT(loaded.has_value());
        RC_ASSERT(*loaded == practice);
    }));
    std::filesystem::remove(path);
}

TEST_CASE("a damaged file is told place by place and kept as it is")
{
    const std::string path = file_named("damaged.toml");
    const std::string damaged = "format = 1\nbegun = \"2026-11-31\"\nfield-day = 7\n\n[[attempt]]\nday = \"2026-11-29\"\ntopic = \"clening\"\nitem = \"a/b\"\nright = true\n";
    REQUIRE(text::save_atomically(path, damaged));
    const auto loaded = load_practice(path);
    REQUIRE_FALSE(loaded);
    REQUIRE(loaded.error().size() == 3);
    CHECK(describe(loaded.error()[0]) == path + ":2:9: expected a date such as \"2026-12-06\", found \"2026-11-31\"");
    CHECK(loaded.error()[1].where.line == 3);
    CHECK(loaded.error()[2].where.line == 7);
    CHECK(loaded.error()[2].expected.find("cleaning") != std::string::npos);
    CHECK(*text::read_file(path) == damaged);
    std::filesystem::remove(path);
}

TEST_CASE("days that run backwards are told")
{
    const auto read = read_practice("format = 1\nbegun = \"2026-11-29\"\nfield-day = \"2026-11-28\"\n"
                                    "[[attempt]]\nday = \"2026-12-02\"\ntopic = \"dust\"\nitem = \"a/b\"\nright = true\n"
                                    "[[attempt]]\nday = \"2026-12-01\"\ntopic = \"dust\"\nitem = \"a/b\"\nright = true\n", "mine.toml");
    REQUIRE_FALSE(read);
    REQUIRE(read.error().size() == 2);
    CHECK(describe(read.error()[0]) == "mine.toml:3:13: expected a day not before the first, 2026-11-29, found 2026-11-28");
    CHECK(describe(read.error()[1]) == "mine.toml:10:7: expected a day not before 2026-12-02, found 2026-12-01");
}

TEST_CASE("a file cut off anywhere is read or told, never worse")
{
    Practice practice = toward(7);
    for (int i = 0; i < 4; ++i) add(practice, Topic::dust, i, i != 2);
    const std::string whole = text::write_toml(practice);
    for (std::size_t size = 0; size <= whole.size(); ++size) {
        const auto read = read_practice(whole.substr(0, size), "cut.toml");
        if (!read) CHECK_FALSE(read.error().empty());
    }
}

}
