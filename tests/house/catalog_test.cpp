#include "catalog.hpp"

#include <catch2/catch.hpp>

using namespace flapdoor::house;

namespace {

std::size_t faults_in(const std::string& text) { return catalog_faults({"es.po", "msgid \"\"\nmsgstr \"\"\n\"Language: es\\n\"\n\n" + text}).size(); }

}

TEST_CASE("every sentence of a catalog has its translation, with the same blanks and edges")
{
    const std::vector<SourceFile> catalogs = source_files({"assets/translations"}, {".po"});
    REQUIRE_FALSE(catalogs.empty());
    for (const SourceFile& catalog : catalogs) {
        CHECK(catalog_entries(catalog.text).size() > 500);  // so that the check below did not pass because it looked at nothing
        std::string all;
        for (const std::string& fault : catalog_faults(catalog)) all += fault + "\n";
        CHECK(all == "");
    }
}

TEST_CASE("a sentence without its translation, or with one that cannot be filled in, is found")
{
    CHECK(faults_in("msgid \"{} of {}\"\nmsgstr \"{} de {}\"\n") == 0);
    CHECK(faults_in("msgid \"{0} of {1}\"\nmsgstr \"{1}: {0}\"\n") == 0);
    CHECK(faults_in("msgid \"\"\n\"a long \"\n\"one\"\nmsgstr \"\"\n\"una \"\n\"larga\"\n") == 0);
    CHECK(faults_in("msgid \"{} card\"\nmsgid_plural \"{} cards\"\nmsgstr[0] \"{} tarjeta\"\nmsgstr[1] \"{} tarjetas\"\n") == 0);
    CHECK(faults_in("msgctxt \"share\"\nmsgid \"most\"\nmsgstr \"casi todo\"\n\nmsgid \"most\"\nmsgstr \"como mucho\"\n") == 0);
    CHECK(faults_in("msgid \"most\"\nmsgstr \"\"\n") == 1);
    CHECK(faults_in("msgid \"most\"\nmsgstr \"casi todo\"\n\nmsgid \"most\"\nmsgstr \"como mucho\"\n") == 1);
    CHECK(faults_in("#, fuzzy\nmsgid \"most\"\nmsgstr \"casi todo\"\n") == 1);
    CHECK(faults_in("msgid \"{} of {}\"\nmsgstr \"{} de\"\n") == 1);
    CHECK(faults_in("msgid \"{0}: {1}\"\nmsgstr \"{0}: {0}\"\n") == 1);
    CHECK(faults_in("msgid \" times\"\nmsgstr \"veces\"\n") == 1);
    CHECK(faults_in("msgid \">Area\"\nmsgstr \"Area\"\n") == 1);
    CHECK(faults_in("msgid \"{} card\"\nmsgid_plural \"{} cards\"\nmsgstr[0] \"{} tarjeta\"\n") == 1);
}
