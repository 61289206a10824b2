#include "records/csv.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <string>
#include <vector>

namespace flapdoor::records {

namespace {

std::string line(const std::vector<CsvCell>& cells) { return csv_line(cells); }

/// The cells of one line as a reader by RFC 4180 finds them; the rules written down a second time.
std::vector<std::string> cells_of(const std::string& text)
{
    std::vector<std::string> cells{""};
    std::size_t i = 0;
    while (i < text.size()) {
        if (text[i] == '"' && cells.back().empty()) {
            for (++i; i < text.size(); ++i) {
                if (text[i] == '"' && i + 1 < text.size() && text[i + 1] == '"') ++i;
                else if (text[i] == '"') break;
                cells.back() += text[i];
            }
            ++i;    // behind the closing quote
        }
        if (text.compare(i, 2, "\r\n") == 0 && i + 2 == text.size()) return cells;
        if (i < text.size() && text[i] == ',') cells.emplace_back(), ++i;
        else if (i < text.size()) cells.back() += text[i++];
    }
    return {"no line end"};
}

}

TEST_CASE("plain cells stand between commas and the line ends with CR LF")
{
    CHECK(line({{"Rosa"}, {"back bedroom"}, {"92", true}}) == "Rosa,back bedroom,92\r\n");
    CHECK(line({{""}, {""}}) == ",\r\n");
    CHECK(line({}) == "\r\n");
    CHECK(line({{"Pe\xC3\xB1""a"}}) == "Pe\xC3\xB1""a\r\n");
}

TEST_CASE("a cell with a comma, a quote or a line end is quoted, and its quotes doubled")
{
    CHECK(line({{"door, flap"}}) == "\"door, flap\"\r\n");
    CHECK(line({{"the \"good\" plan"}}) == "\"the \"\"good\"\" plan\"\r\n");
    CHECK(line({{"one\r\ntwo"}, {"x"}}) == "\"one\r\ntwo\",x\r\n");
    CHECK(line({{"one\ntwo"}}) == "\"one\ntwo\"\r\n");
    CHECK(line({{"\""}}) == "\"\"\"\"\r\n");
}

TEST_CASE("a text that a spreadsheet would run as a formula is made a text, a number is not")
{
    for (const char* text : {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1"}) CHECK(line({{text}}) == "'" + std::string(text) + "\r\n");
    CHECK(line({{"\r=1"}}) == "\"'\r=1\"\r\n");
    CHECK(line({{"\n=1"}}) == "\"'\n=1\"\r\n");
    CHECK(line({{"=HYPERLINK(\"x\",\"y\")"}}) == "\"'=HYPERLINK(\"\"x\"\",\"\"y\"\")\"\r\n");
    CHECK(line({{"-1.5", true}, {"+2", true}}) == "-1.5,+2\r\n");
    CHECK(line({{"a=1"}, {"1-2"}}) == "a=1,1-2\r\n");
}

TEST_CASE("what is written is what a reader finds, whatever the texts are", "[property]")
{
    CHECK(rc::check([] {
        const auto texts = *rc::gen::suchThat(rc::gen::container<std::vector<std::string>>(rc::gen::container<std::string>(rc::gen::element('a', 'B', ' ', ',', '"', '\r', '\n', '=', '-', '\''))),
                                              [](const auto& all) { return !all.empty(); });
        std::vector<CsvCell> cells;
        std::vector<std::string> expected;
        for (const std::string& text : texts) {
            cells.push_back({text});
            const bool is_guarded = !text.empty() && std::string("=-\r\n").find(text.front()) != std::string::npos;
            expected.push_back((is_guarded ? "'" : "") + text);
        }
        RC_ASSERT(cells_of(line(cells)) == expected);
    }));
}

}
