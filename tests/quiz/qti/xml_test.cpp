#include "quiz/qti/xml.hpp"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <string>

namespace flapdoor::quiz {

namespace {

/// What is wrong with a text, the first of it.
std::string told(const std::string& text)
{
    const auto root = parse_xml(text, "a.xml");
    return root ? std::string() : describe(root.error().front());
}

std::string nested(int depth)
{
    std::string text;
    for (int i = 0; i < depth; ++i) text += "<a>";
    for (int i = 0; i < depth; ++i) text += "</a>";
    return text;
}

constexpr const char* item = R"(<?xml version="1.0" encoding="UTF-8"?>
<!-- a comment -->
<q:item xmlns:q="urn:x" identifier="q-1" title='Six &amp; "seven"'>
  <q:body>6 &lt; 7 <b>bold</b> caf&#233;<![CDATA[ <raw> & ]]></q:body>
  <q:empty/>
</q:item>
)";

}

TEST_CASE("elements come with their place, attributes and content in order")
{
    const auto root = parse_xml(item, "a.xml");
    REQUIRE(root);
    CHECK(root->name == "item");
    CHECK(root->where == Place{"a.xml", 3, 1});
    CHECK(root->attribute("identifier") == "q-1");
    CHECK(root->attribute("title") == "Six & \"seven\"");
    CHECK_FALSE(root->attribute("none"));
    const XmlElement* body = root->child("body");
    REQUIRE(body);
    CHECK(body->where == Place{"a.xml", 4, 3});
    CHECK(std::get<std::string>(body->content[0]) == "6 < 7 ");
    CHECK(std::get<XmlElement>(body->content[1]).name == "b");
    CHECK(std::get<std::string>(body->content[2]) == " caf\u00e9");
    CHECK(std::get<std::string>(body->content[3]) == " <raw> & ");
    CHECK(root->children().size() == 2);
    CHECK(root->child("empty")->where == Place{"a.xml", 5, 3});
}

TEST_CASE("columns count letters, and the mark of UTF-8 is no text")
{
    const auto root = parse_xml("\xEF\xBB\xBF<a>\u00e9\u00e9<b/></a>", "a.xml");
    REQUIRE(root);
    CHECK(root->child("b")->where == Place{"a.xml", 1, 6});
}

TEST_CASE("a DOCTYPE is refused where it stands, with whatever it holds")
{
    CHECK(told("<?xml version=\"1.0\"?>\n<!DOCTYPE a [<!ENTITY b \"c\">]>\n<a>&b;</a>").rfind("a.xml:2:1: expected a file without DOCTYPE", 0) == 0);
    CHECK(told("<!DOCTYPE a SYSTEM \"file:///etc/passwd\"><a/>").rfind("a.xml:1:1: expected a file without DOCTYPE", 0) == 0);
    CHECK(told("<!ENTITY x SYSTEM \"http://example.org/x\"><a>&x;</a>").rfind("a.xml:1:1", 0) == 0);
    CHECK(told("<a><!DOCTYPE b></a>").rfind("a.xml:1:4", 0) == 0);
    CHECK(told("<!doctype a><a/>").rfind("a.xml:1:1", 0) == 0);
    std::string bomb = "<!DOCTYPE l [<!ENTITY l0 \"lol\">";
    for (int i = 1; i < 10; ++i) {
        bomb += "<!ENTITY l" + std::to_string(i) + " \"";
        for (int k = 0; k < 10; ++k) bomb += "&l" + std::to_string(i - 1) + ";";
        bomb += "\">";
    }
    CHECK(told(bomb + "]><l>&l9;</l>").rfind("a.xml:1:1: expected a file without DOCTYPE", 0) == 0);
}

TEST_CASE("only the entities of XML itself are known")
{
    CHECK(told("<a>x\n&nbsp;</a>").rfind("a.xml:2:1: expected `&amp;`", 0) == 0);
    CHECK(told("<a b=\"&xxe;\"/>").rfind("a.xml:1:7", 0) == 0);
    CHECK(told("<a>& b</a>").rfind("a.xml:1:4", 0) == 0);
    CHECK(told("<a>&#0;</a>").rfind("a.xml:1:4", 0) == 0);
    CHECK(told("<a>&#xFFFFFFFFF;</a>").rfind("a.xml:1:4", 0) == 0);
    CHECK(told("<a>&#xD800;</a>").rfind("a.xml:1:4", 0) == 0);
    CHECK(told("<a>&#x41;&#66;&quot;&apos;</a>").empty());
    const auto both = parse_xml("<a>&one; &two;</a>", "a.xml");
    REQUIRE_FALSE(both);
    CHECK(both.error().size() == 2);
}

TEST_CASE("what is too deep, too much or too large is refused before it is built")
{
    CHECK(told(nested(deepest_element)).empty());
    CHECK(told(nested(deepest_element + 1)).rfind("a.xml:1:193: expected elements at most 64 deep", 0) == 0);
    CHECK(told(nested(1'000'000)).rfind("a.xml:1:193", 0) == 0);
    std::string many = "<a>";
    for (std::size_t i = 0; i < most_elements; ++i) many += "<b/>";
    CHECK(told(many + "</a>").find("at most 50000 elements") != std::string::npos);
    std::string wide = "<a";
    for (int i = 0; i < 65; ++i) wide += " b" + std::to_string(i) + "=''";
    CHECK(told(wide + "/>").find("at most 64 attributes") != std::string::npos);
    CHECK(told("<a>" + std::string(9 * 1024 * 1024, 'x') + "</a>").find("at most 8388608 bytes") != std::string::npos);
}

TEST_CASE("other encodings and control characters are refused")
{
    CHECK(told(std::string("\xFF\xFE<\0a\0", 6)).find("UTF-8") != std::string::npos);
    CHECK(told(std::string("<\0a\0/\0>\0", 8)).find("UTF-8") != std::string::npos);
    CHECK(told("<?xml version='1.0' encoding='ISO-8859-1'?><a/>").find("iso-8859-1") != std::string::npos);
    CHECK(told("<a>\xE9</a>").rfind("a.xml:1:4", 0) == 0);
    CHECK(told("<a>\x01</a>").rfind("a.xml:1:4", 0) == 0);
    CHECK(told(std::string("<abc>\0</abc>", 12)).rfind("a.xml:1:6", 0) == 0);
}

TEST_CASE("what is not well-formed is told where it breaks")
{
    CHECK(told("").find("expected an element") != std::string::npos);
    CHECK(told("text").rfind("a.xml:1:1: expected one element", 0) == 0);
    CHECK(told("<a/><b/>").rfind("a.xml:1:5", 0) == 0);
    CHECK(told("<a/>text").rfind("a.xml:1:5", 0) == 0);
    CHECK(told("<a>\n<b>\n</a>").rfind("a.xml:3:1: expected `</b>`", 0) == 0);
    CHECK(told("<a>\n<b>").rfind("a.xml:2:4: expected `</b>`, opened in line 2", 0) == 0);
    CHECK(told("</a>").rfind("a.xml:1:1: expected no end tag", 0) == 0);
    CHECK(told("<a b></a>").rfind("a.xml:1:5: expected `=`", 0) == 0);
    CHECK(told("<a b=c></a>").rfind("a.xml:1:6", 0) == 0);
    CHECK(told("<a b='c></a>").rfind("a.xml:1:4", 0) == 0);
    CHECK(told("<a b='<'/>").rfind("a.xml:1:7", 0) == 0);
    CHECK(told("<a b='1' b='2'/>").rfind("a.xml:1:10: expected each attribute once", 0) == 0);
    CHECK(told("<a b='1'c='2'/>").rfind("a.xml:1:9", 0) == 0);
    CHECK(told("< a/>").rfind("a.xml:1:1", 0) == 0);
    CHECK(told("<1/>").rfind("a.xml:1:1", 0) == 0);
    CHECK(told("<a><!-- </a>").find("`-->`") != std::string::npos);
    CHECK(told("<a><![CDATA[ </a>").find("`]]>`") != std::string::npos);
    CHECK(told("<?xml version='1.0'").find("`?>`") != std::string::npos);
    CHECK(told("<a").rfind("a.xml:1:1", 0) == 0);
    CHECK(told("<a></a ").rfind("a.xml:1:8", 0) == 0);
}

TEST_CASE("whatever is flipped or cut off, there is an element or a problem with its place", "[property][fuzz]")
{
    const std::string whole = item;
    for (std::size_t size = 0; size < whole.size(); ++size) {
        const auto root = parse_xml(whole.substr(0, size), "a.xml");
        if (size + 1 < whole.size()) REQUIRE_FALSE(root);
        else REQUIRE(root);     // only the last line end is missing
    }
    CHECK(rc::check([&] {
        std::string text = whole;
        const auto flips = *rc::gen::inRange(1, 9);
        for (int i = 0; i < flips; ++i) text[*rc::gen::inRange<std::size_t>(0, text.size())] = static_cast<char>(*rc::gen::inRange(-128, 128));
        const auto root = parse_xml(text, "a.xml");
        if (!root)
            for (const Problem& problem : root.error()) RC_ASSERT(problem.where.line >= 1);
    }));
    CHECK(rc::check([](const std::vector<std::uint8_t>& bytes) { RC_ASSERT(parse_xml(std::string(bytes.begin(), bytes.end()), "a.xml").has_value() == false); }));
    CHECK(rc::check([] {
        // Pieces of markup in any order.
        const auto pieces = *rc::gen::container<std::vector<std::string>>(rc::gen::elementOf(std::vector<std::string>{
            "<a>", "</a>", "<b c='d'>", "</b>", "<e/>", "text", "&amp;", "&", "<!--", "-->", "<![CDATA[", "]]>", "<?x", "?>", "'", "\"", "=", "<", ">", "/", " ", "\n", "\xC3\xA9"}));
        std::string text = "<a>";
        for (const std::string& piece : pieces) text += piece;
        const auto root = parse_xml(text + "</a>", "a.xml");
        RC_ASSERT(root.has_value() || !root.error().empty());
    }));
}

}
