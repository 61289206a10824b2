#pragma once

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::house {

/// A text of the project, by its path from the top folder.
struct SourceFile {
    std::string path;
    std::string text;

    bool is_header() const { return path.ends_with(".hpp"); }
    bool is_cpp() const { return is_header() || path.ends_with(".cpp"); }
    /// engine/dust/cloud.cpp -> dust; empty outside engine/.
    std::string room() const
    {
        constexpr std::string_view engine = "engine/";
        return path.starts_with(engine) ? path.substr(engine.size(), path.find('/', engine.size()) - engine.size()) : std::string();
    }
};

/// What a check found wrong: "path:line: what".
using Faults = std::vector<std::string>;

inline std::string read(const std::filesystem::path& file)
{
    std::ifstream stream(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
}

/// All text files of the named folders, in the order of their paths.
inline std::vector<SourceFile> source_files(const std::vector<std::string>& folders, const std::vector<std::string>& endings)
{
    const std::filesystem::path top = FLAPDOOR_SOURCE_DIR;
    std::vector<SourceFile> files;
    for (const std::string& folder : folders) {
        if (!std::filesystem::exists(top / folder)) continue;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(top / folder)) {
            const bool is_wanted =
                std::any_of(endings.begin(), endings.end(), [&](const std::string& ending) { return entry.path().string().ends_with(ending); });
            if (entry.is_regular_file() && is_wanted) files.push_back({std::filesystem::relative(entry.path(), top).generic_string(), read(entry.path())});
        }
    }
    std::sort(files.begin(), files.end(), [](const SourceFile& a, const SourceFile& b) { return a.path < b.path; });
    return files;
}

/// The same text with comments and the insides of literals blanked out; line breaks stay.
inline std::string code_of(std::string text)
{
    enum class In { code, line_comment, block_comment, string, character } in = In::code;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const char next = i + 1 < text.size() ? text[i + 1] : '\0';
        if (c == '\n') {
            if (in != In::block_comment) in = In::code;
            continue;
        }
        // An apostrophe between digits groups them: 20'000.
        const bool is_grouping = c == '\'' && i > 0 && std::isalnum(static_cast<unsigned char>(text[i - 1]));
        switch (in) {
            case In::code:
                if (c == '/' && next == '/') in = In::line_comment;
                else if (c == '/' && next == '*') in = In::block_comment;
                else if (c == '"') in = In::string;
                else if (c == '\'' && !is_grouping) in = In::character;
                if (in == In::line_comment || in == In::block_comment) text[i] = text[i + 1] = ' ';
                break;
            case In::line_comment: text[i] = ' '; break;
            case In::block_comment:
                text[i] = ' ';
                if (c == '*' && next == '/') {
                    text[++i] = ' ';
                    in = In::code;
                }
                break;
            case In::string:
            case In::character:
                if (c == (in == In::string ? '"' : '\'')) {
                    in = In::code;
                    break;
                }
                text[i] = ' ';
                if (c == '\\' && next != '\n' && next != '\0') text[++i] = ' ';
                break;
        }
    }
    return text;
}

inline std::vector<std::string> lines_of(const std::string& text)
{
    std::vector<std::string> lines;
    std::size_t begin = 0;
    while (begin < text.size()) {
        const std::size_t end = std::min(text.find('\n', begin), text.size());
        lines.push_back(text.substr(begin, end - begin));
        begin = end + 1;
    }
    return lines;
}

inline std::string place(const SourceFile& file, std::size_t line) { return file.path + ":" + std::to_string(line + 1) + ": "; }

}
