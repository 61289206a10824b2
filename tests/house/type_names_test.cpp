#include "type_names.hpp"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace flapdoor::house;

namespace {

std::string joined(const Faults& faults)
{
    std::string all;
    for (const std::string& fault : faults) all += fault + "\n";
    return all;
}

std::vector<SourceFile> sources(std::vector<std::string> folders) { return source_files(std::move(folders), {".cpp", ".hpp"}); }

std::size_t faults_of(const std::string& a, const std::string& b) { return twice_defined({{"a.cpp", a}, {"b.cpp", b}}).size(); }

}

TEST_CASE("no two files of the program define a type of one name")
{
    const std::vector<SourceFile> program = sources({"engine", "tools/flapdoor", "tools/window"});
    std::size_t types = 0;
    for (const SourceFile& file : program) types += defined_types(file).size();
    CHECK(types > 500); // so that the check below did not pass because it saw none
    CHECK(joined(twice_defined(program)) == "");
    CHECK(joined(twice_defined(sources({"engine", "tools/bench"}))) == "");
}

TEST_CASE("no two files of a test program, or of it and what it tests, define a type of one name")
{
    const std::filesystem::path tests = std::filesystem::path(FLAPDOOR_SOURCE_DIR) / "tests";
    std::size_t programs = 0;
    for (const auto& entry : std::filesystem::directory_iterator(tests)) {
        if (!entry.is_directory()) continue;
        const std::string folder = "tests/" + entry.path().filename().string();
        const std::vector<SourceFile> program = sources({"engine", "tools/window", folder});
        INFO(folder);
        CHECK(joined(twice_defined(program)) == "");
        ++programs;
    }
    CHECK(programs > 10);
}

TEST_CASE("two types of one name are found, however they are written, and what only looks like it is not")
{
    CHECK(faults_of("namespace w { struct Draft { int a; }; }", "namespace w { class Draft final : public B { double a; }; }") == 1);
    CHECK(faults_of("namespace a::b { enum class E : int { x }; }", "namespace a { namespace b {\nenum class E { y };\n} }") == 1);
    CHECK(faults_of("namespace f::inline core { struct X {}; }", "namespace f::core { struct X {}; }") == 1);
    CHECK(faults_of("template <class T> struct Box { T t; };", "template <class U>\nclass Box { U u; };") == 1);
    CHECK(faults_of("struct A::Work { int a; };", "struct A::Work { long a; };") == 1);
    CHECK(faults_of("template <> struct Words<A> { };", "template <> struct Words< A > { };") == 1);

    CHECK(faults_of("namespace w { namespace { struct Draft { int a; }; } }", "namespace w { struct Draft { int a; }; }") == 0);
    CHECK(faults_of("namespace v { struct Draft { int a; }; }", "namespace w { struct Draft { int a; }; }") == 0);
    CHECK(faults_of("struct Draft;", "struct Draft { int a; };") == 0);
    CHECK(faults_of("void f() { struct Draft { int a; }; }", "void g() { struct Draft { int a; }; }") == 0);
    CHECK(faults_of("struct A { struct In { }; };", "struct B { struct In { }; };") == 0);
    CHECK(faults_of("template <> struct Words<A> { };", "template <> struct Words<B> { };") == 0);
    CHECK(faults_of("// struct Draft { };\n#define D struct Draft { }\nconst char* s = \"struct Draft {\";", "struct Draft { int a; };") == 0);
    CHECK(faults_of("struct Draft make() { return {}; }", "struct Draft { int a; };") == 0);
}
