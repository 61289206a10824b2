#include "places.hpp"
#include "verbs.hpp"

#include "core/insist.hpp"

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
               "  flapdoor check my-plan.toml --scenario back-bedroom\n"
               "  flapdoor window back-bedroom careless             watch a run\n"
               "  flapdoor replay out/back-bedroom-good.run         the same ledger and marks?\n"
               "Exit codes: 0 done, 2 wrong use, 3 a file has problems (told on stderr), 4 a replay differs, 5 a fault of the program.");

    command::RunChoice choice;
    CLI::App* run = app.add_subcommand("run", "Carry one or two work plans out, mark them and debrief");
    run->add_option("scenario", choice.scenario, "a scenario file, its folder, or the name of a shipped drill")->required();
    run->add_option("plans", choice.plans, "one or two work plans: files, or names in the scenario's folder")->required()->expected(1, 2);
    run->add_option("--book", choice.book, "rule book to mark against: a file or a shipped name")->capture_default_str();
    run->add_option("--seed", choice.seed, "luck of the run; the same seed gives the same run, bit for bit")->capture_default_str();
    run->add_option("--threads", choice.threads, "threads for the airborne dust; changes no result")->check(CLI::Range(1, 64))->capture_default_str();
    run->add_option("--out", choice.out, "folder for the debrief page, the picture and the run file");
    run->add_option("--width", choice.width, "columns of the printed sheet (default: the terminal's)")->check(CLI::Range(60, 400));
    run->add_flag("--work", choice.shows_work, "print parcel-steps, time and the run's hash");

    std::vector<std::string> files;
    std::string scenario;
    CLI::App* check = app.add_subcommand("check", "Check scenarios, work plans, rule books and run files; every problem with its place");
    check->add_option("files", files, "files to check")->required();
    check->add_option("--scenario", scenario, "scenario of the plans (default: scenario.toml beside each)");

    std::string run_file;
    unsigned threads = 1;
    CLI::App* replay = app.add_subcommand("replay", "Carry a kept run out again and compare it card by card");
    replay->add_option("file", run_file, "a run file written by `flapdoor run --out`")->required();
    replay->add_option("--threads", threads, "threads for the airborne dust")->check(CLI::Range(1, 64))->capture_default_str();

#ifdef FLAPDOOR_HAS_WINDOW
    command::WindowChoice shown;
    CLI::App* window = app.add_subcommand("window", "Watch a run: plan, dust, crew, faults as they happen");
    window->add_option("scenario", shown.scenario, "a scenario file, its folder, or the name of a shipped drill")->required();
    window->add_option("plan", shown.plan, "a work plan: a file, or a name in the scenario's folder")->required();
    window->add_option("--book", shown.book, "rule book to mark against: a file or a shipped name")->capture_default_str();
    window->add_option("--seed", shown.seed, "luck of the run")->capture_default_str();
    window->add_option("--picture", shown.picture, "write a picture of the window to this PNG file instead; needs no display");
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
    try {
        if (run->parsed()) return command::run(choice);
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
