// No word is cut off and no two controls lie on each other, on every screen, at every text size, in both languages.
#include "played_shell.hpp"

#include <catch2/catch.hpp>

#include <functional>

using namespace flapdoor;
using namespace flapdoor::window;

namespace {

struct Named {
    const char* name;
    std::function<std::unique_ptr<Screen>(Shell&, const Sitting&)> make;
};

const std::vector<Named>& screens()
{
    static const std::vector<Named> all{
        {"start", [](Shell& shell, const Sitting&) { return start_screen(shell); }},
        {"brief", [](Shell& shell, const Sitting& sitting) { return brief_screen(shell, sitting); }},
        {"room", [](Shell& shell, const Sitting& sitting) { return room_screen(shell, sitting, sitting.drill->careful.scenario); }},
        {"order", [](Shell& shell, const Sitting& sitting) { return order_screen(shell, sitting); }},
        {"spot", [](Shell& shell, const Sitting& sitting) { return spot_screen(shell, sitting); }},
    };
    return all;
}

struct Speaking {
    explicit Speaking(text::Language language) { text::speak(language, FLAPDOOR_CATALOGS); }
    ~Speaking() { text::speak(text::Language::english); }
};

std::string joined(const std::vector<std::string>& words)
{
    std::string all;
    for (const std::string& word : words) all += '"' + word + "\" ";
    return all;
}

bool is_control(const Spot& spot) { return spot.role == Role::button || spot.role == Role::toggle || spot.role == Role::choice || spot.role == Role::slider; }

}

TEST_CASE("every screen shows its words whole at every text size in both languages")
{
    const Places places{FLAPDOOR_SOURCE_DIR "/scenarios", std::filesystem::temp_directory_path() / "flapdoor-fit-own", "federal"};
    const auto drill = read_drills(places.scenarios, places.book).find("back-bedroom");
    REQUIRE(drill);
    for (const text::Language language : {text::Language::english, text::Language::spanish}) {
        const Speaking speaking(language);
        for (const float scale : {1.0F, 1.5F, 2.0F})
            for (const Point size : {Point{1440.0F, 900.0F}, Point{1024.0F, 700.0F}})
                for (const Named& screen : screens()) {
                    PlayedShell played(places, scale, size);
                    played.go_to(screen.make(played.shell, {drill, Mode::step_by_step, 1, {}}));
                    INFO(screen.name << " at " << scale << ", " << size.x << " x " << size.y << ", " << text::code_of(language));
                    INFO(joined(played.stage.ui->cut_words()));
                    CHECK(played.stage.ui->cut_words().empty());
                    for (const Spot& spot : played.stage.ui->spots()) {
                        if (!is_control(spot)) continue;
                        INFO(spot.name);
                        CHECK(spot.box.low.x >= 0.0F);
                        CHECK(spot.box.high.x <= size.x + 0.5F);
                    }
                }
    }
}

TEST_CASE("every card of the deck can be taken up, and its form shows its words whole")
{
    const Places places{FLAPDOOR_SOURCE_DIR "/scenarios", std::filesystem::temp_directory_path() / "flapdoor-fit-own", "federal"};
    const auto drill = read_drills(places.scenarios, places.book).find("back-bedroom");
    REQUIRE(drill);
    PlayedShell played(places, 1.5F);
    played.go_to(room_screen(played.shell, {drill, Mode::step_by_step, 1, {}}, drill->careful.scenario));
    for (const StepKind& kind : step_kinds()) {
        INFO(kind.name);
        played.room()->take_up(proposed(played.room()->attempt().site(), kind, {job::PersonId{"rosa"}}));
        played.settle();
        INFO(joined(played.stage.ui->cut_words()));
        CHECK(played.stage.ui->cut_words().empty());
        CHECK(played.find("do-it") != nullptr);
    }
}
