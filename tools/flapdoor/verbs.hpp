#pragma once

#include "places.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

// What the command can do, one file each.
namespace flapdoor::command {

struct RunChoice {
    std::string scenario;
    std::vector<std::string> plans;     ///< one, or two to be set side by side
    std::vector<std::string> books{"federal"};  ///< lowest first
    std::uint64_t seed = 1;
    unsigned threads = 0;               ///< 0: as many as the machine has for the study, one for the run itself
    std::size_t bands = 20;             ///< runs of the study behind the bands; 0: none
    bool asks_what_if = false;          ///< work out what each mistake did
    std::size_t what_if_runs = 20;      ///< light pairs of runs behind its ranges; 0: none
    std::string reference{usual_reference};    ///< plan from which missing cards and right settings are taken, as `plans` are named
    std::string sheet = "both";         ///< which pages are written: "trainee", "instructor" or "both"
    std::string out;                    ///< folder for page, pictures and run file; empty: print only
    bool shows_work = false;            ///< parcel steps and where the time went
    int width = 0;                      ///< of the terminal; 0: ask it
};
int run(const RunChoice& choice);

struct StudyChoice {
    std::string scenario;
    std::vector<std::string> plans;     ///< any number, all with the same seeds
    std::vector<std::string> books{"federal"};  ///< lowest first
    std::string seeds = "1-200";
    std::string part = "1/1";           ///< "2/8": the second of eight parts
    double detail = 0.125;              ///< share of the usual number of parcels
    unsigned threads = 0;               ///< 0: as many as the machine has
    bool asks_faults = false;           ///< also each plan with each of its faults repaired
    std::string reference{usual_reference};    ///< plan from which missing cards and right settings are taken, as `plans` are named
    std::string out;
    int width = 0;
};
/// Carries plans out with many seeds, carries on where a kept study stopped.
int study(const StudyChoice& choice);

struct PoolChoice {
    std::vector<std::string> files;
    std::string out;
    int width = 0;
};
/// Puts the parts of a study together.
int pool(const PoolChoice& choice);

struct WindowChoice {
    std::string scenario, plan;         ///< both empty: the first screen
    std::string screen;                 ///< of the picture; empty: the run's
    double text_scale = 1.0;            ///< of the picture
    bool measures_frames = false;       ///< print how long frames take instead
    std::vector<std::string> books{"federal"};  ///< lowest first
    std::uint64_t seed = 1;
    std::string picture;                ///< file for a picture of the window; empty: open it
    std::string at;                     ///< site time of the picture, "14:30"; empty: the end
    int width = 1440, height = 900;     ///< of the picture
};
/// Built only with the window.
int window(const WindowChoice& choice);
std::vector<std::string> screen_names();

struct QuizChoice {
    std::string blueprint;              ///< a file, or the name of a shipped one
    std::uint64_t seed = 1;             ///< of the paper
    std::string person = "-";           ///< a name or number of their own choosing
    std::string save;                   ///< file that keeps the answers; empty: named after paper and seed
    std::string print;                  ///< folder for paper, answer sheet and key; empty: ask on the terminal
    bool is_practice = false;           ///< feedback at once, whatever the blueprint says
    bool is_untimed = false;
    bool is_in_window = false;          ///< asked in the window; only where it is built
    int width = 0;
};
/// Draws a paper and asks it on the terminal, or prints it. Goes on where it was stopped.
int sit_quiz(const QuizChoice& choice);

/// Files, or names of shipped rule books. A book that lies on another one is laid on the one before it in the list.
int check_files(const std::vector<std::string>& files, const std::string& scenario);
int replay(const std::string& file, unsigned threads);
int list_drills();
int list_cards(const std::string& step);

}
