#include "places.hpp"
#include "quiz_verbs.hpp"
#include "verbs.hpp"

#include "core/insist.hpp"
#include "text/language.hpp"

#include <CLI/CLI.hpp>

#include <cstdio>
#include <exception>

using namespace flapdoor;

int main(int argc, char** argv)
{
    CLI::App app{"Flapdoor rehearses lead-safe interior renovation: carries a work plan out in a simulated room, marks the order of the\n"
                 "steps against a rule book and shows where the dust went. Training model, not a clearance prediction."};
    app.require_subcommand(1);
    app.set_version_flag("--version", FLAPDOOR_VERSION);
    app.footer("Examples:\n"
               "  flapdoor list                                     the shipped drills and their plans\n"
               "  flapdoor run back-bedroom good careless           two plans of one drill, side by side\n"
               "  flapdoor run back-bedroom my-plan.toml --out out  debrief page, picture and run file into out/\n"
               "  flapdoor study back-bedroom good careless --out out --seeds 1-200\n"
               "                                                    the same plans with 200 seeds: medians and bands\n"
               "  flapdoor run back-bedroom good --book federal --book our-firm\n"
               "  flapdoor check my-plan.toml --scenario back-bedroom\n"
               "  flapdoor check federal our-firm                   what a layer does to the book below it\n"
               "  flapdoor window                                   choose a drill and play it\n"
               "  flapdoor window back-bedroom careless             watch a run\n"
               "  flapdoor quiz short --seed 7                      sit a paper; with --print out, on paper\n"
               "  flapdoor quiz-practice me.toml --field-day 2026-12-06\n"
               "                                                    what is due today; quiz-stats judges a group's answers\n"
               "  flapdoor replay out/back-bedroom-good.run         the same ledger and marks?\n"
               "Exit codes: 0 done, 2 wrong use, 3 a file has problems (told on stderr), 4 a replay differs, 5 a fault of the program,\n"
               "130 stopped by Ctrl-C.");

    std::string language;
    app.add_option("--language", language, "language of what is told: en or es (default: as LANGUAGE, LC_ALL, LC_MESSAGES or LANG say)")->check(CLI::IsMember({"en", "es"}));

    command::RunChoice choice;
    CLI::App* run = app.add_subcommand("run", "Carry one or two work plans out, mark them and debrief");
    run->add_option("scenario", choice.scenario, "a scenario file, its folder, or the name of a shipped drill")->required();
    run->add_option("plans", choice.plans, "one or two work plans: files, or names in the scenario's folder")->required()->expected(1, 2);
    run->add_option("--book", choice.books, "rule book to mark against: a file or a shipped name; given again, a book that lies on it")->allow_extra_args(false)->capture_default_str();
    run->add_option("--seed", choice.seed, "luck of the run; the same seed gives the same run, bit for bit")->capture_default_str();
    run->add_option("--threads", choice.threads, "threads for the airborne dust and for the runs behind the bands; changes no result")->check(CLI::Range(1, 64));
    run->add_option("--bands", choice.bands, "light runs with other seeds behind the bands; 0: none, every level is then a single run's")->check(CLI::Range(0, 1000))->capture_default_str();
    run->add_flag("--what-if", choice.asks_what_if, "work out what each mistake did: repair it alone, carry the job out again with the same luck, and tell the difference");
    run->add_option("--what-if-runs", choice.what_if_runs, "light pairs of runs with other seeds behind its ranges and near misses; 0: none")->check(CLI::Range(0, 1000))->capture_default_str();
    run->add_option("--reference", choice.reference, "plan that keeps the rules, from which missing cards and right settings are taken: a file, or a name in the scenario's folder")->capture_default_str();
    run->add_option("--sheet", choice.sheet, "pages that --out writes")->check(CLI::IsMember({"trainee", "instructor", "both"}))->capture_default_str();
    run->add_option("--out", choice.out, "folder for the debrief pages, the pictures and the run file");
    run->add_option("--width", choice.width, "columns of the printed sheet (default: the terminal's)")->check(CLI::Range(60, 400));
    run->add_flag("--work", choice.shows_work, "print parcel-steps, time and the run's hash");

    command::StudyChoice studied;
    CLI::App* study = app.add_subcommand("study", "Carry plans out with many seeds: medians and bands, what the result hangs on. Carries on where it was stopped");
    study->add_option("scenario", studied.scenario, "a scenario file, its folder, or the name of a shipped drill")->required();
    study->add_option("plans", studied.plans, "work plans: files, or names in the scenario's folder; all get the same seeds")->required()->expected(1, 26);
    study->add_option("--out", studied.out, "folder for the table (one line a run) and the picture of bands")->required();
    study->add_option("--seeds", studied.seeds, "seeds such as 1-200 or 1-50,101-150")->capture_default_str();
    study->add_option("--part", studied.part, "only this part of the seeds, such as 2/8, for several machines or evenings")->capture_default_str();
    study->add_option("--detail", studied.detail, "share of the usual number of dust parcels, 0.01 to 1")->check(CLI::Range(0.01, 1.0))->capture_default_str();
    study->add_option("--threads", studied.threads, "runs at a time; changes no result (default: as many as the machine has)")->check(CLI::Range(1, 64));
    study->add_option("--book", studied.books, "rule book to mark against: a file or a shipped name; given again, a book that lies on it")->allow_extra_args(false)->capture_default_str();
    study->add_flag("--faults", studied.asks_faults, "carry each plan out with each of its faults repaired too: which fault does harm, and which is harmless by luck");
    study->add_option("--reference", studied.reference, "with --faults, the plan that keeps the rules, from which missing cards and right settings are taken")->capture_default_str();
    study->add_option("--width", studied.width, "columns of the printed sheet (default: the terminal's)")->check(CLI::Range(60, 400));

    command::PoolChoice pooled;
    CLI::App* pool = app.add_subcommand("pool", "Put the parts of a study together");
    pool->add_option("files", pooled.files, "tables written by `flapdoor study`")->required();
    pool->add_option("--out", pooled.out, "folder for the whole table and its picture")->required();
    pool->add_option("--width", pooled.width, "columns of the printed sheet (default: the terminal's)")->check(CLI::Range(60, 400));

    std::vector<std::string> files;
    std::string scenario;
    CLI::App* check = app.add_subcommand("check", "Check scenarios, work plans, rule books, question banks and run files; every problem with its place");
    check->add_option("files", files, "files to check, or names of shipped rule books and question banks; a book that lies on another one comes after it")->required();
    check->add_option("--scenario", scenario, "scenario of the plans (default: scenario.toml beside each); of rule books: which rules can never apply in it");

    command::QuizChoice quizzed;
    CLI::App* quiz = app.add_subcommand("quiz", "Sit a paper of questions, or print it with answer sheet and key. Goes on where it was stopped");
    quiz->add_option("blueprint", quizzed.blueprint, "how the paper is drawn: a file, or the name of a shipped one, such as short or practice")->required();
    quiz->add_option("--seed", quizzed.seed, "the paper: the same seed gives the same questions and figures")->check(CLI::Range(std::uint64_t{1}, std::uint64_t{1'000'000'000}))->capture_default_str();
    quiz->add_option("--person", quizzed.person, "a name or number of your own choosing, kept with the answers");
    quiz->add_option("--save", quizzed.save, "file that keeps the answers (default: quiz-BLUEPRINT-SEED.toml here)");
    quiz->add_option("--print", quizzed.print, "write paper, answer sheet and key as pages into this folder instead");
    quiz->add_flag("--practice", quizzed.is_practice, "feedback after each answer");
    quiz->add_flag("--untimed", quizzed.is_untimed, "without the paper's time limit");
#ifdef FLAPDOOR_HAS_WINDOW
    quiz->add_flag("--window", quizzed.is_in_window, "ask in the window");
#endif
    quiz->add_option("--width", quizzed.width, "columns of the text (default: the terminal's)")->check(CLI::Range(60, 400));

    const command::QuizVerbs around_quiz(app);

    std::string run_file;
    unsigned threads = 1;
    CLI::App* replay = app.add_subcommand("replay", "Carry a kept run out again and compare it card by card");
    replay->add_option("file", run_file, "a run file written by `flapdoor run --out`")->required();
    replay->add_option("--threads", threads, "threads for the airborne dust")->check(CLI::Range(1, 64))->capture_default_str();

#ifdef FLAPDOOR_HAS_WINDOW
    command::WindowChoice shown;
    CLI::App* window = app.add_subcommand("window", "Play drills; with a scenario and a plan, watch a run: plan, dust, crew, faults as they happen");
    window->add_option("scenario", shown.scenario, "a scenario file, its folder, or the name of a shipped drill");
    window->add_option("plan", shown.plan, "a work plan: a file, or a name in the scenario's folder");
    window->add_option("--book", shown.books, "rule book to mark against: a file or a shipped name; given again, a book that lies on it")->allow_extra_args(false)->capture_default_str();
    window->add_option("--seed", shown.seed, "luck of the run")->capture_default_str();
    window->add_option("--picture", shown.picture, "write a picture of the window to this PNG file instead; needs no display");
    window->add_option("--screen", shown.screen, "which screen the picture shows, before anybody pressed anything")->check(CLI::IsMember(command::screen_names()));
    window->add_option("--text", shown.text_scale, "text size of the picture, 1 to 2")->check(CLI::Range(1.0, 2.0))->capture_default_str();
    window->add_flag("--frames", shown.measures_frames, "measure how long frames of several scenes take, and print it");
    window->add_option("--at", shown.at, "site time of the picture, e.g. 14:30 (default: the end)");
    window->add_option("--size", [&](const std::vector<std::string>& size) {
        return CLI::detail::lexical_cast(size[0], shown.width) && CLI::detail::lexical_cast(size[1], shown.height);
    }, "width and height of the picture")->expected(2)->check(CLI::Range(640, 4000));
#endif
    app.add_subcommand("list", "List the shipped drills and their plans");
    std::string step;
    CLI::App* cards = app.add_subcommand("cards", "List the step cards, or explain one");
    cards->add_option("step", step, "kind of step, e.g. hang-flap");

    try {
        app.parse(argc, argv);
    }
    catch (const CLI::ParseError& e) {
        const int code = app.exit(e);
        return code == 0 ? command::fine : command::bad_use;
    }
    text::speak(text::language_asked(language), command::catalog_folder());
    try {
        if (run->parsed()) return command::run(choice);
        if (study->parsed()) return command::study(studied);
        if (pool->parsed()) return command::pool(pooled);
        if (quiz->parsed()) return command::sit_quiz(quizzed);
        if (const int code = around_quiz.run(); code >= 0) return code;
        if (check->parsed()) return command::check_files(files, scenario);
        if (replay->parsed()) return command::replay(run_file, threads);
#ifdef FLAPDOOR_HAS_WINDOW
        if (window->parsed()) return command::window(shown);
#endif
        if (cards->parsed()) return command::list_cards(step);
        return command::list_drills();
    }
    catch (const BrokenPromise& e) {
        std::fprintf(stderr, "flapdoor: a promise of the program did not hold, and the run was stopped: %s\n", e.what());
    }
    catch (const std::exception& e) {
        std::fprintf(stderr, "flapdoor: %s\n", e.what());
    }
    return command::our_bug;
}
