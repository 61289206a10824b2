#pragma once

#include "source_file.hpp"

#include <map>
#include <regex>
#include <set>
#include <sstream>

namespace flapdoor::house {

/// Which room may include which: the flapdoor_room() list of CMakeLists.txt, as the linker reads it.
using RoomList = std::map<std::string, std::set<std::string>>;

/// Words in capitals tell what the words after them mean: flapdoor_room(air USES plan LINKS some::library).
inline bool is_keyword(const std::string& word)
{
    return std::all_of(word.begin(), word.end(), [](char c) { return c == '_' || (c >= 'A' && c <= 'Z'); });
}

/// Each room with itself and all it uses, directly or through a room below.
inline RoomList room_list(const std::string& cmake)
{
    RoomList uses;
    std::vector<std::string> order;
    static const std::regex call(R"(\bflapdoor_room\(([^)]*)\))");
    for (std::sregex_iterator it(cmake.begin(), cmake.end(), call), end; it != end; ++it) {
        std::istringstream words((*it)[1].str());
        std::string room;
        words >> room;
        if (room.empty()) continue;
        uses[room].insert(room);
        order.push_back(room);
        bool is_used_room = false;
        for (std::string word; words >> word;) {
            if (is_keyword(word)) is_used_room = word == "USES";
            else if (is_used_room) uses[room].insert(word);
        }
    }
    // A room is listed after the rooms that it uses, so one pass in order reaches all that lie below.
    for (const std::string& room : order) {
        const std::set<std::string> direct = uses[room];
        for (const std::string& below : direct)
            if (below != room && uses.contains(below)) uses[room].insert(uses[below].begin(), uses[below].end());
    }
    return uses;
}

/// Rooms named in USES that are not listed above the room that uses them.
inline Faults list_faults(const std::string& cmake)
{
    Faults faults;
    std::set<std::string> listed;
    static const std::regex call(R"(\bflapdoor_room\(\s*(\w+)([^)]*)\))");
    for (std::sregex_iterator it(cmake.begin(), cmake.end(), call), end; it != end; ++it) {
        std::istringstream words((*it)[2].str());
        bool is_used_room = false;
        for (std::string word; words >> word;) {
            if (is_keyword(word)) is_used_room = word == "USES";
            else if (is_used_room && !listed.contains(word)) faults.push_back((*it)[1].str() + " uses " + word + ", which is not listed above it");
        }
        listed.insert((*it)[1].str());
    }
    return faults;
}

/// Includes of rooms that the list does not allow.
inline Faults include_faults(const SourceFile& file, const RoomList& rooms)
{
    Faults faults;
    const auto allowed = rooms.find(file.room());
    if (allowed == rooms.end()) return {file.path + ": the room is not in the list of CMakeLists.txt"};
    static const std::regex include(R"(^\s*#\s*include\s*"([^"]+)\")");
    const std::vector<std::string> lines = lines_of(file.text);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        std::smatch match;
        if (!std::regex_search(lines[i], match, include)) continue;
        const std::string path = match[1];
        const std::string room = path.substr(0, path.find('/'));
        if (path.find('/') == std::string::npos || !rooms.contains(room)) faults.push_back(place(file, i) + path + " names no room");
        else if (!allowed->second.contains(room)) faults.push_back(place(file, i) + file.room() + " may not include " + path);
    }
    return faults;
}

}
