#pragma once

#include "source_file.hpp"

#include <map>
#include <regex>
#include <set>

namespace flapdoor::house {

/// Faults for every line of the code, comments and literals apart, in which a pattern is found.
inline Faults lines_with(const SourceFile& file, const std::regex& pattern, std::string_view why)
{
    Faults faults;
    const std::vector<std::string> lines = lines_of(code_of(file.text));
    for (std::size_t i = 0; i < lines.size(); ++i) {
        std::smatch match;
        if (std::regex_search(lines[i], match, pattern)) faults.push_back(place(file, i) + match.str() + ": " + std::string(why));
    }
    return faults;
}

inline Faults& operator+=(Faults& all, const Faults& more)
{
    all.insert(all.end(), more.begin(), more.end());
    return all;
}

/// Rooms whose results must be the same bits everywhere.
inline bool is_model_room(const std::string& room)
{
    static const std::set<std::string> rooms{"plan", "mechanics", "air", "dust", "site", "drill"};
    return rooms.contains(room);
}

/// Model rooms: no function whose last bits the C library chooses, no random number but the counter-based ones, nothing whose
/// order of iteration the library chooses.
inline Faults steadiness_faults(const SourceFile& file)
{
    if (!is_model_room(file.room())) return {};
    static const std::string names = "(exp|exp2|expm1|log|log2|log10|log1p|pow|sin|cos|tan|asin|acos|atan|atan2|sinh|cosh|tanh|asinh|acosh|atanh|"
                                     "cbrt|hypot|erf|erfc|tgamma|lgamma|fma)[fl]?";
    static const std::regex library("(\\bstd\\s*::\\s*" + names + "|(^|[^\\w:.>])(::\\s*)?" + names + ")\\s*\\(");
    static const std::regex chance(R"(\b(random_device|mt19937\w*|minstd_rand\w*|ranlux\w*|default_random_engine|s?rand|drand48|\w+_distribution)\b|<random>)");
    static const std::regex order(R"(\bunordered_\w+|<unordered_\w+>|\bstd\s*::\s*(reduce|transform_reduce|execution)\b)");
    Faults faults = lines_with(file, library, "differs between C libraries; use flapdoor::steady");
    faults += lines_with(file, chance, "random numbers come from core/philox.hpp");
    faults += lines_with(file, order, "no fixed order");
    return faults;
}

/// Threads only where disjoint outputs are owned: the parcel kernel, studies over seeds, and a drill in play, which hands each
/// finished site over whole. The language spoken is the one thing that all threads share. No room asks for the time of day
/// but records, which dates what it keeps. core touches no disk.
inline Faults purity_faults(const SourceFile& file)
{
    static const std::set<std::string> threaded{"dust", "debrief"};
    static const std::regex threads(R"(\bstd\s*::\s*(jthread|thread|async|mutex|atomic\w*|condition_variable|future|promise)\b|<(thread|mutex|atomic|future|condition_variable|shared_mutex)>)");
    static const std::regex clock(R"(\b(system_clock|steady_clock|high_resolution_clock|utc_clock|gettimeofday|clock_gettime|localtime\w*|gmtime\w*)\b|\bstd\s*::\s*(time|clock)\s*\(|<ctime>)");
    static const std::regex disk(R"(\b(ifstream|ofstream|fstream|filesystem|fopen)\b|<(fstream|filesystem|iostream|cstdio|unistd\.h)>)");
    Faults faults;
    const std::string room = file.room();
    if (room.empty()) return faults;
    const bool is_threaded = threaded.contains(room) || file.path == "engine/text/language.cpp" || file.path.rfind("engine/drill/attempt.", 0) == 0;
    if (!is_threaded) faults += lines_with(file, threads, "this room starts no threads");
    if (room != "records") faults += lines_with(file, clock, "this room has no clock");
    if (room == "core") faults += lines_with(file, disk, "core touches no disk");
    return faults;
}

/// Headers show the standard library and tl::expected only; a third-party header stays in the .cpp files of the room that
/// wraps it.
inline Faults third_party_faults(const SourceFile& file)
{
    static const std::set<std::string> standard{
        "algorithm", "array", "bit", "bitset", "cassert", "cctype", "cerrno", "cfloat", "charconv", "chrono", "climits", "cmath", "compare", "complex",
        "concepts", "condition_variable", "csignal", "cstddef", "cstdint", "cstdio", "cstdlib", "cstring", "ctime", "deque", "exception", "filesystem",
        "forward_list", "fstream", "functional", "future", "initializer_list", "iomanip", "ios", "iosfwd", "iostream", "istream", "iterator", "limits",
        "list", "locale", "map", "memory", "memory_resource", "mutex", "atomic", "new", "numbers", "numeric", "optional", "ostream", "queue", "random",
        "ranges", "ratio", "regex", "set", "shared_mutex", "source_location", "span", "sstream", "stack", "stdexcept", "streambuf", "string",
        "string_view", "system_error", "thread", "tuple", "type_traits", "typeindex", "typeinfo", "unordered_map", "unordered_set", "utility",
        "valarray", "variant", "vector", "version"};
    // First part of the include, and the rooms whose .cpp files may have it; an empty set means any.
    static const std::map<std::string, std::set<std::string>> wrapped{
        {"fmt", {}}, {"tl", {}}, {"xxhash.h", {"core"}}, {"toml++", {"text"}}, {"cereal", {"drill"}}, {"box2d", {"mechanics"}},
        {"Eigen", {"air", "site"}}, {"soci", {"records"}}, {"nlohmann", {"records"}}, {"pugixml.hpp", {"records", "quiz"}}, {"sodium.h", {"records"}},
        {"libintl.h", {"text"}}, {"clocale", {"text"}}, {"immintrin.h", {"dust"}}, {"sys", {"text", "records"}}, {"unistd.h", {"text", "records"}}, {"fcntl.h", {"text", "records"}}};
    static const std::regex include(R"(^\s*#\s*include\s*<([^>]+)>)");
    Faults faults;
    if (file.room().empty()) return faults;
    const std::vector<std::string> lines = lines_of(file.text);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        std::smatch match;
        if (!std::regex_search(lines[i], match, include)) continue;
        const std::string header = match[1];
        if (standard.contains(header) || header == "tl/expected.hpp") continue;
        const auto home = wrapped.find(header.substr(0, header.find('/')));
        if (file.is_header()) faults.push_back(place(file, i) + "<" + header + "> shows in a header");
        else if (home == wrapped.end()) faults.push_back(place(file, i) + "<" + header + "> is wrapped by no room");
        else if (!home->second.empty() && !home->second.contains(file.room())) faults.push_back(place(file, i) + "<" + header + "> belongs to another room");
    }
    return faults;
}

/// Headers begin with `#pragma once` and open no namespace for whoever includes them.
inline Faults header_faults(const SourceFile& file)
{
    Faults faults;
    if (!file.is_header()) return faults;
    if (!file.text.starts_with("#pragma once\n")) faults.push_back(file.path + ":1: a header begins with #pragma once");
    static const std::regex opened(R"(^using\s+namespace\b)");
    faults += lines_with(file, opened, "opens a namespace for whoever includes it");
    return faults;
}

/// @param most  lines a source file may have
inline Faults length_faults(const SourceFile& file, std::size_t most = 500)
{
    const std::size_t lines = lines_of(file.text).size();
    if (!file.is_cpp() || lines <= most) return {};
    return {file.path + ": " + std::to_string(lines) + " lines: which two things is it?"};
}

/// Words that no file of the project holds: places of one machine, notes of things left undone. Ann of the examples has a home.
inline Faults forbidden_words(const SourceFile& file)
{
    // Put together here, so that this file does not hold them itself.
    static const std::vector<std::string> words{std::string("../") + "shared", std::string("/wo") + "rk/", std::string("/ho") + "me/", std::string("/ro") + "ot/",
                                                std::string("C:") + "\\", std::string("TO") + "DO", std::string("FIX") + "ME"};
    Faults faults;
    const std::vector<std::string> lines = lines_of(file.text);
    static const std::regex of_ann("/ho(me)/ann/");
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const std::string line = std::regex_replace(lines[i], of_ann, "");
        for (const std::string& word : words)
            if (line.find(word) != std::string::npos) faults.push_back(place(file, i) + word);
    }
    return faults;
}

}
