#pragma once

#include "source_file.hpp"

#include <algorithm>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace flapdoor::house {

/// A type with a body, by its full name, that other files of a program can see: none in an unnamed namespace or in a function.
struct DefinedType {
    std::string name;   ///< "flapdoor::window::Beside", a specialization with its arguments
    std::string file;
    std::size_t line = 0;
};

namespace type_names {

inline std::string without_directives(const std::string& code)
{
    std::string out;
    bool goes_on = false;   // a directive that ends with a backslash has another line
    for (const std::string& line : lines_of(code)) {
        const std::size_t first = line.find_first_not_of(" \t");
        const bool is_directive = goes_on || (first != std::string::npos && line[first] == '#');
        goes_on = is_directive && line.ends_with('\\');
        out += (is_directive ? std::string() : line) + "\n";
    }
    return out;
}

inline std::string squeezed(const std::string& text)
{
    std::string out;
    for (const char c : text)
        if (c != ' ' && c != '\n' && c != '\t') out += c;
    return out;
}

/// What a brace opens, told by the words before it.
struct Scope {
    enum class Kind { space, unnamed_space, type, other } kind = Kind::other;
    std::string name;
};

inline Scope scope_after(const std::string& head)
{
    static const std::regex space(R"((?:^|\s)namespace(?:\s+([\w:\s]+?))?\s*$)");
    static const std::regex type(R"((?:^|\s)(?:struct|class|union|enum\s+class|enum\s+struct|enum)\s+(?:\[\[[^\]]*\]\]\s*)?(?:alignas\s*\([^)]*\)\s*)?([A-Za-z_][\w:]*(?:\s*<[^{};]*>)?)\s*(?:final\s*)?(?::[^:][^{]*)?$)");
    std::smatch match;
    if (head.find("namespace") != std::string::npos && std::regex_search(head, match, space)) {
        static const std::regex is_inline(R"(\binline\s+)");
        const std::string name = squeezed(std::regex_replace(match[1].str(), is_inline, ""));
        return {name.empty() ? Scope::Kind::unnamed_space : Scope::Kind::space, name};
    }
    const bool may_be_type = head.find("struct") != std::string::npos || head.find("class") != std::string::npos || head.find("union") != std::string::npos || head.find("enum") != std::string::npos;
    if (may_be_type && std::regex_search(head, match, type)) return {Scope::Kind::type, squeezed(match[1].str())};
    return {};
}

}

/// The types that a file defines for all of its program.
inline std::vector<DefinedType> defined_types(const SourceFile& file)
{
    using type_names::Scope;
    const std::string code = type_names::without_directives(code_of(file.text));
    std::vector<DefinedType> types;
    std::vector<Scope> scopes;
    std::string head;
    std::size_t line = 1;
    for (const char c : code) {
        if (c == '\n') ++line;
        if (c == '{') {
            const bool is_seen = std::all_of(scopes.begin(), scopes.end(), [](const Scope& scope) { return scope.kind == Scope::Kind::space || scope.kind == Scope::Kind::type; });
            scopes.push_back(is_seen ? type_names::scope_after(head) : Scope{});
            if (is_seen && scopes.back().kind == Scope::Kind::type) {
                std::string name;
                for (const Scope& scope : scopes) name += (name.empty() ? "" : "::") + scope.name;
                types.push_back({name, file.path, line});
            }
            head.clear();
        }
        else if (c == '}') {
            if (!scopes.empty()) scopes.pop_back();
            head.clear();
        }
        else if (c == ';') head.clear();
        else head += c;
    }
    return types;
}

/// Types of one name that two files of a program define: the linker keeps one of them, and the other's users read it wrongly.
inline Faults twice_defined(const std::vector<SourceFile>& program)
{
    std::map<std::string, std::vector<DefinedType>> by_name;
    for (const SourceFile& file : program)
        if (file.is_cpp())
            for (DefinedType& type : defined_types(file)) by_name[type.name].push_back(std::move(type));
    Faults faults;
    for (const auto& [name, places] : by_name) {
        std::set<std::string> files;
        for (const DefinedType& place : places) files.insert(place.file);
        if (files.size() < 2) continue;
        std::string fault = name + " is defined in";
        for (const DefinedType& place : places) fault += " " + place.file + ":" + std::to_string(place.line);
        faults.push_back(std::move(fault));
    }
    return faults;
}

}
