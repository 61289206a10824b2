#include "rehearsal.hpp"

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>

using namespace flapdoor;
using namespace flapdoor::window;

TEST_CASE("all four styles show English, Spanish and the signs the window uses")
{
    const float scale = GENERATE(1.0F, 2.0F);
    Rehearsal r([](Ui&) {}, scale);
    const std::string_view all =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZ abcdefghijklmnopqrstuvwxyz 0123456789 .,;:!?'\"()[]{}<>/\\|@#$%&*+-=_~^`"
        "\u00C1\u00C9\u00CD\u00D1\u00D3\u00DA\u00DC\u00E1\u00E9\u00ED\u00F1\u00F3\u00FA\u00FC\u00BF\u00A1\u00AA\u00BA"
        "\u00B5\u00B2\u00B3\u00D7\u00B0\u00B1\u00B7\u2013\u2014\u2018\u2019\u201C\u201D\u2026\u2022"
        "\u2190\u2191\u2192\u2193\u2212\u2264\u2265\u20AC";
    for (const TextStyle style : {TextStyle::small, TextStyle::body, TextStyle::strong, TextStyle::title})
        CHECK(r.ui->fonts().missing(all, style).empty());
}

TEST_CASE("all four styles show every letter of the Spanish catalog")
{
    Rehearsal r([](Ui&) {});
    std::ifstream stream(FLAPDOOR_SOURCE_DIR "/assets/translations/es.po");
    std::string line;
    int lines = 0;
    std::vector<char32_t> missing;
    for (; std::getline(stream, line); ++lines)
        if (!line.starts_with('#'))
            for (const TextStyle style : {TextStyle::small, TextStyle::body, TextStyle::strong, TextStyle::title})
                for (const char32_t letter : r.ui->fonts().missing(line, style)) missing.push_back(letter);
    CHECK(lines > 1000);
    CHECK(missing.empty());
}

TEST_CASE("a character that is not baked is reported, also beyond sixteen bits")
{
    Rehearsal r([](Ui&) {});
    CHECK(r.ui->fonts().missing("a\u2713b") == std::vector<char32_t>{0x2713});
    CHECK(r.ui->fonts().missing("\U0001F600") == std::vector<char32_t>{0x1F600});
}

TEST_CASE("a missing font names every place that was looked at")
{
    const auto found = find_fonts({"/nowhere/one", "/nowhere/two"});
    REQUIRE_FALSE(found);
    CHECK(found.error()[0].found.find("/nowhere/one") != std::string::npos);
    CHECK(found.error()[0].found.find("/nowhere/two") != std::string::npos);
}

TEST_CASE("a file that is no font is refused in words")
{
    const std::filesystem::path folder = std::filesystem::temp_directory_path() / "flapdoor-fonts-test";
    std::filesystem::create_directories(folder);
    const std::filesystem::path fake = folder / "fake.otf";
    std::ofstream(fake) << std::string(5000, 'x');
    const auto opened = Ui::open({fake, folder / "absent.otf"}, drafting_theme());
    REQUIRE_FALSE(opened);
    CHECK(opened.error().size() == 2);
    CHECK(opened.error()[0].where.file == fake.string());

    std::ofstream(fake) << "OTTO" << std::string(5000, '\0'); // begins like a font, is none
    CHECK_FALSE(Ui::open({fake, fake}, drafting_theme()));
    std::filesystem::remove_all(folder);
}

TEST_CASE("assets lie beside the program, above it, or where it is installed")
{
    const auto folders = asset_folders("/opt/flapdoor/bin/flapdoor", "/last");
    const auto has = [&](const char* folder) {
        return std::find(folders.begin(), folders.end(), std::filesystem::path(folder)) != folders.end();
    };
    CHECK(folders.front() == "/opt/flapdoor/bin/assets");
    CHECK(has("/opt/flapdoor/share/flapdoor/assets"));
    CHECK(has("/opt/flapdoor/assets"));
    CHECK(folders.back() == "/last");
    CHECK(asset_folders({}).empty());
}

TEST_CASE("text is set larger, not stretched, when the scale grows")
{
    Rehearsal r([](Ui& ui) { ui.canvas().text({10.0F, 10.0F}, "Sheeting", TextStyle::body, ui.theme().ink); });
    r.ui->begin_frame(r.input);
    const Point one = r.ui->canvas().measure("Sheeting", TextStyle::body);
    r.ui->end_frame();
    r.ui->set_text_scale(2.0F);
    r.ui->begin_frame(r.input);
    const Point two = r.ui->canvas().measure("Sheeting", TextStyle::body);
    r.ui->end_frame();
    CHECK(two.x == Approx(2.0F * one.x).epsilon(0.04));
    CHECK(two.y == 2.0F * one.y);
}
