#include "small_bank.hpp"

#include "quiz/lettered.hpp"
#include "quiz/making/generator.hpp"
#include "quiz/making/posing.hpp"
#include "text/writing.hpp"

#include <map>
#include <set>

namespace flapdoor::quiz {

namespace {

const std::vector<std::string> drills{"back-bedroom", "daycare-classroom", "kitchen-soffit"};

bool needs_run(const Question& question) { return std::get<Generated>(question.kind).by.text == "main-way-out"; }

std::string whole_text(const Question& question) { return text::write_toml(question) + in_english(question.text) + in_english(question.why) + key_text(question); }

/// Every wrong option, figure or place marks as wrong and has something to say.
void check_wrong_ones(const Question& question)
{
    const auto is_wrong = [&](const Response& response) {
        const Mark mark = quiz::mark(question, response);
        CHECK_FALSE(mark.is_right);
        CHECK_FALSE(mark.misconceptions.empty());
        CHECK_FALSE(mark.told.empty());
    };
    if (const auto* one = std::get_if<ChooseOne>(&question.kind)) {
        for (const Option& option : one->options)
            if (!option.is_right) is_wrong(Chosen{{option.id.text}});
    }
    if (const auto* number = std::get_if<Number>(&question.kind)) {
        for (const WrongFigure& wrong : number->wrong) is_wrong(Typed{wrong.figure.text});
    }
    if (const auto* several = std::get_if<ChooseSeveral>(&question.kind)) {
        for (const Option& option : several->options)
            if (!option.is_right) is_wrong(Chosen{{option.id.text}});
    }
    if (const auto* place = std::get_if<PointAtPlan>(&question.kind)) {
        for (const Region& region : place->regions) {
            const plan::Point middle = region.place.center();
            const Mark mark = quiz::mark(question, Pointed{{}, middle.x, middle.y});
            CHECK(mark.is_right == region.is_right);
            if (!region.is_right) is_wrong(Pointed{region.id.text, {}, {}});
        }
    }
    if (const auto* spot = std::get_if<SpotFault>(&question.kind)) {
        for (const Option& option : spot->moments)
            if (!option.is_right) is_wrong(Chosen{{option.id.text}});
    }
}

}

TEST_CASE("there are at least fifteen generators, and the shipped bank uses each")
{
    CHECK(generators().size() >= 15);
    std::set<std::string> used;
    for (const Question& question : shipped_bank("generated").questions) used.insert(std::get<Generated>(question.kind).by.text);
    for (const Generator& generator : generators()) {
        INFO(generator.name);
        CHECK(used.contains(std::string(generator.name)));
    }
}

TEST_CASE("of every generated question the key is right, the wrong ones wrong and unlike, and no blank is left", "[property]")
{
    for (const Question& source : shipped_bank("generated").questions) {
        if (needs_run(source)) continue;
        for (std::uint64_t seed = 1; seed <= 40; ++seed) {
            INFO(source.id.text << ", seed " << seed);
            const auto posed = pose(source, workshop(), drills, seed);
            REQUIRE(posed.has_value());
            CHECK_FALSE(std::holds_alternative<Generated>(posed->kind));
            CHECK(mark(*posed, right_response(*posed)).is_right);
            CHECK(mark(*posed, right_response(*posed)).share == rules::Fraction{1, 1});
            check_wrong_ones(*posed);
            std::set<std::string> texts;
            for (const Lettered& one : lettered(*posed)) {
                CHECK(texts.insert(in_english(one.text)).second);
                CHECK(in_english(one.text).find('{') == std::string::npos);
            }
            for (const Phrase* text : {&posed->text, &posed->why}) {
                CHECK(in_english(*text).find('{') == std::string::npos);
                Phrase spanish = *text;
                spanish.en = text->es;
                CHECK(in_english(spanish).find('{') == std::string::npos);
            }
        }
    }
}

TEST_CASE("the same seed gives the same question", "[property]")
{
    Workshop again(scenario_folder);
    for (const Question& source : shipped_bank("generated").questions) {
        if (needs_run(source)) continue;
        for (const std::uint64_t seed : {3, 11}) {
            INFO(source.id.text << ", seed " << seed);
            const auto a = pose(source, workshop(), drills, seed), b = pose(source, again, drills, seed);
            REQUIRE(a.has_value());
            REQUIRE(b.has_value());
            CHECK(whole_text(*a) == whole_text(*b));
        }
    }
}

TEST_CASE("another drill gives other figures")
{
    int differing = 0, compared = 0;
    for (const Question& source : shipped_bank("generated").questions) {
        if (needs_run(source)) continue;
        const auto a = pose(source, workshop(), {"back-bedroom"}, 5), b = pose(source, workshop(), {"kitchen-soffit"}, 5);
        if (!a || !b) continue;
        ++compared;
        INFO(source.id.text);
        const bool differs = in_english(a->text) != in_english(b->text) || key_text(*a) != key_text(*b) || text::write_toml(*a) != text::write_toml(*b);
        CHECK(differs);
        differing += differs;
    }
    CHECK(compared >= 20);
    CHECK(differing == compared);
}

namespace {

/// The figure a generator makes for a drill with a seed, and the words of its blanks.
struct Figure1 {
    double si = 0.0;
    std::map<std::string, std::string> blanks;
};

Figure1 figure_of(const char* generator, const char* drill, std::uint64_t seed)
{
    const auto scenario = *workshop().find()(drill);
    const auto made = find_generator(generator)->make({*scenario, drill, workshop(), seed});
    INFO(generator << " in " << drill << ", seed " << seed);
    REQUIRE(made.has_value());
    Figure1 figure{std::get<MadeFigure>(made->answer).right.figure.si, {}};
    for (const auto& [name, phrase] : made->blanks) figure.blanks[name] = in_english(phrase);
    return figure;
}

double number_of(const std::string& text) { return std::stod(text); }

}

// 40 CFR 745.85(b)(1)(ii)(B), read in the 2015 edition: over 40 ft2, sections of less than 40 ft2. By hand: 10 ft x r.
TEST_CASE("cloths for a strip of the 10 ft wide bedroom, as counted by hand")
{
    const std::map<int, int> by_hand{{4, 1}, {5, 2}, {6, 2}, {7, 2}, {8, 3}, {9, 3}, {10, 3}, {11, 3}, {12, 4}, {13, 4}};
    std::set<int> seen;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        const auto scenario = *workshop().find()("back-bedroom");
        const auto made = find_generator("cloths-for-floor")->make({*scenario, "back-bedroom", workshop(), seed});
        if (!made) continue;
        CHECK(in_english(made->blanks.at("width")) == "10 ft");
        const int reach = static_cast<int>(number_of(in_english(made->blanks.at("reach"))));
        CHECK(std::get<MadeFigure>(made->answer).right.figure.si == by_hand.at(reach));
        seen.insert(reach);
    }
    CHECK(seen.size() >= 6);
}

// 40 CFR 745.85(a)(2)(i)(D): 6 ft. By hand from the plan of the bedroom, 10 x 13 ft, windows 3 ft wide in the west wall, one from
// 2 ft to 5 ft, one from 8 ft to 11 ft: along the wall 2 + 3 + 6 = 11 ft, and 6 + 3 + 2 = 11 ft; 6 ft into the room: 66 ft2.
TEST_CASE("sheeting below a window of the bedroom, as measured by hand")
{
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        CHECK(figure_of("sheeting-area", "back-bedroom", seed).si == Approx((66.0_ft2).si));
        CHECK(figure_of("sheeting-along-wall", "back-bedroom", seed).si == Approx((11.0_ft).si));
    }
}

// 29 CFR 1926.62(c)(2): 400 divided by the hours. Read.
TEST_CASE("the limit of a long shift is 400 divided by its hours")
{
    const std::map<std::string, double> by_hand{{"9 h", 44.444}, {"10 h", 40.0}, {"11 h", 36.364}, {"12 h", 33.333}};
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const Figure1 figure = figure_of("long-shift-limit", "kitchen-soffit", seed);
        CHECK(figure.si * 1e9 == Approx(by_hand.at(figure.blanks.at("shift"))).epsilon(1e-4));
    }
}

// 40 CFR 745.85(b)(1)(ii)(A)(3): an hour or dry, the longer.
TEST_CASE("the dry cloth waits for the later of the hour and dryness")
{
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Figure1 figure = figure_of("dry-wipe-time", "back-bedroom", seed);
        const double failed = sound(text::parse_si(figure.blanks.at("failed"), text::Kind::time)), drying = sound(text::parse_si(figure.blanks.at("drying"), text::Kind::time));
        CHECK(figure.si == Approx(failed + (drying > 3600.0 ? drying : 3600.0)));
    }
}

// Mass over area; 144 square inches to the square foot, by definition.
TEST_CASE("a wipe sample's loading, worked out apart")
{
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Figure1 figure = figure_of("wipe-loading", "daycare-classroom", seed);
        const double by_hand = number_of(figure.blanks.at("mass")) * 144.0 / (number_of(figure.blanks.at("wide")) * number_of(figure.blanks.at("deep")));
        CHECK(figure.si / (1.0_ugpft2).si == Approx(by_hand));
    }
}

// Eight-hour mean, 29 CFR 1926.62(c)(1): sum of concentration times hours over 8 h.
TEST_CASE("a time-weighted mean, worked out apart")
{
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Figure1 figure = figure_of("time-weighted-exposure", "back-bedroom", seed);
        const auto hours = [&](const char* blank) { return sound(text::parse_si(figure.blanks.at(blank), text::Kind::time)) / 3600.0; };
        const double by_hand = (number_of(figure.blanks.at("air-1")) * hours("time-1") + number_of(figure.blanks.at("air-2")) * hours("time-2")) / 8.0;
        CHECK(figure.si * 1e9 == Approx(by_hand));
    }
}

TEST_CASE("lead left after passes is a share of a share")
{
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Figure1 figure = figure_of("lead-left-after-passes", "back-bedroom", seed);
        double left = number_of(figure.blanks.at("before"));
        for (int pass = 0; pass < static_cast<int>(number_of(figure.blanks.at("passes"))); ++pass) left *= 1.0 - number_of(figure.blanks.at("share")) / 100.0;
        CHECK(figure.si / (1.0_ugpft2).si == Approx(left));
    }
}

// Stokes: the speed goes with the square of the diameter; 10 um at unit density in air of 20 C: 3.0 mm/s with slip (Hinds,
// Aerosol Technology, 2nd ed., table A11, from memory: 3.06e-3 m/s).
TEST_CASE("a 10 um grain falls the height of a room at about 3 mm/s")
{
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Figure1 figure = figure_of("settling-time", "back-bedroom", seed);
        if (figure.blanks.at("size") != "10 um") continue;
        const std::string height = figure.blanks.at("height").substr(0, figure.blanks.at("height").find(" ("));
        const double meters = sound(text::parse_si(height, text::Kind::length));
        CHECK(figure.si == Approx(meters / 3.06e-3).epsilon(0.06));
    }
}

TEST_CASE("a template that leaves a mistake without words, or names one that is none, is refused")
{
    const auto bank = read_bank(bank_with("kind = \"generated\"\nby = \"bags-needed\"\n[[question.wrong]]\nmisconception = \"half-ful\"\ntold = \"T\"\n"), "b.toml", shipped_scenarios());
    REQUIRE_FALSE(bank.has_value());
    CHECK(told(bank.error()).find("the nearest is \"half-full\"") != std::string::npos);
    CHECK(told(bank.error()).find("a `wrong` table for the misconception \"filled-to-the-brim\"") != std::string::npos);
    const auto none = read_bank(bank_with("kind = \"generated\"\nby = \"bags-neded\"\n"), "b.toml", shipped_scenarios());
    REQUIRE_FALSE(none.has_value());
    CHECK(told(none.error()).find("the nearest is \"bags-needed\"") != std::string::npos);
}

}
