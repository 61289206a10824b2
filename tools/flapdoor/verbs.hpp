#pragma once

#include <cstdint>
#include <string>
#include <vector>

// What the command can do, one file each.
namespace flapdoor::command {

struct RunChoice {
    std::string scenario;
    std::vector<std::string> plans;     ///< one, or two to be set side by side
    std::string book = "federal";
    std::uint64_t seed = 1;
    unsigned threads = 1;
    std::string out;                    ///< folder for page, pictures and run file; empty: print only
    bool shows_work = false;            ///< parcel steps and where the time went
    int width = 0;                      ///< of the terminal; 0: ask it
};
int run(const RunChoice& choice);

struct WindowChoice {
    std::string scenario, plan;
    std::string book = "federal";
    std::uint64_t seed = 1;
    std::string picture;                ///< file for a picture of the window; empty: open it
    std::string at;                     ///< site time of the picture, "14:30"; empty: the end
    int width = 1440, height = 900;     ///< of the picture
};
/// Built only with the window.
int window(const WindowChoice& choice);

int check_files(const std::vector<std::string>& files, const std::string& scenario);
int replay(const std::string& file, unsigned threads);
int list_drills();
int list_cards(const std::string& step);

}
