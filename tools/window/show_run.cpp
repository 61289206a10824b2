#include "window/show_run.hpp"

#include "window/run/run_screen.hpp"
#include "window/run/waiting_screen.hpp"
#include "window/stage/bridge.hpp"
#include "window/stage/painter.hpp"

#include <SFML/Graphics/RenderWindow.hpp>
#include <SFML/System/Sleep.hpp>
#include <SFML/Window/Clipboard.hpp>
#include <SFML/Window/Event.hpp>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <future>
#include <optional>

namespace flapdoor::window {

namespace {

constexpr int cannot_show = 3;
constexpr unsigned first_width = 1440;
constexpr unsigned first_height = 900;
constexpr unsigned least_width = 1024;
constexpr unsigned least_height = 700;
constexpr double settling = 0.8; // s after the last event during which frames are drawn: a hint may still come up

double seconds_now() { return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count(); }

Result<FontFiles> fonts_of_the_program() { return find_fonts(asset_folders(program_file(), FLAPDOOR_SOURCE_DIR "/assets")); }

int tell_problems(const Problems& problems)
{
    for (const Problem& problem : problems) std::fprintf(stderr, "flapdoor: %s\n", describe(problem).c_str());
    return cannot_show;
}

/// The library ends the program when it finds no display, so this is asked before.
bool has_display()
{
    const char* display = std::getenv("DISPLAY");
    return display != nullptr && *display != '\0';
}

/// The window with its one loop: events in, a frame out, the job beside it in a thread of its own.
class Stage {
public:
    Stage(const debrief::Inputs& inputs, std::uint64_t seed, Ui& ui)
        : inputs_(inputs), seed_(seed), ui_(ui), window_(first_mode(), "Flapdoor"), bridge_(size())
    {
        const sf::VideoMode desk = sf::VideoMode::getDesktopMode(); // nobody else may place it
        window_.setPosition(
            {static_cast<int>(desk.width - window_.getSize().x) / 2, static_cast<int>(desk.height - window_.getSize().y) / 2});
        window_.setFramerateLimit(60);
        ui_.use_clipboard(
            [] {
                const auto bytes = sf::Clipboard::getString().toUtf8();
                return std::string(bytes.begin(), bytes.end());
            },
            [](const std::string& text) { sf::Clipboard::setString(sf::String::fromUtf8(text.begin(), text.end())); });
        job_ = std::async(std::launch::async, [&inputs, seed] { return tell(inputs, debrief::carry_through(inputs, seed, true)); });
    }

    int run()
    {
        double before = seconds_now();
        double last_event = before;
        while (window_.isOpen()) {
            if (take_events()) last_event = seconds_now();
            if (job_.valid() && job_.wait_for(std::chrono::seconds(0)) == std::future_status::ready) {
                screen_.emplace(std::make_shared<const Story>(job_.get()));
                screen_->state().keeps_still = waiting_.keeps_still;
                last_event = seconds_now();
            }
            const double now = seconds_now();
            const bool is_calm = screen_ && !screen_->is_moving() && !bridge_.has_held_events() && now - last_event > settling;
            if (is_calm) {
                before = now;
                sf::sleep(sf::milliseconds(12));
                continue;
            }
            frame(static_cast<float>(now - before));
            before = now;
            const bool wants_to_quit = bridge_.wants_to_close() || waiting_.wants_to_quit || (screen_ && screen_->wants_to_quit());
            if (wants_to_quit) window_.close();
        }
        return 0; // leaving waits for the job, two seconds at most, with the window already gone
    }

private:
    static sf::VideoMode first_mode()
    {
        const sf::VideoMode desk = sf::VideoMode::getDesktopMode();
        return {std::min(first_width, desk.width), std::min(first_height, desk.height)};
    }

    Point size() const { return {static_cast<float>(window_.getSize().x), static_cast<float>(window_.getSize().y)}; }

    bool take_events()
    {
        bool is_any = false;
        sf::Event event{};
        while (window_.pollEvent(event)) {
            is_any = true;
            if (event.type == sf::Event::Resized) take_size(event.size.width, event.size.height);
            bridge_.feed(event);
        }
        return is_any;
    }

    void take_size(unsigned width, unsigned height)
    {
        if (width < least_width || height < least_height) window_.setSize({std::max(width, least_width), std::max(height, least_height)});
    }

    void frame(float seconds)
    {
        ui_.begin_frame(bridge_.next_frame(seconds));
        if (screen_)
            screen_->play(ui_);
        else
            waiting_screen(ui_, inputs_, seed_, seconds_now() - began_, waiting_);
        ui_.end_frame();
        painter_.paint(ui_, window_);
        window_.display();
    }

    const debrief::Inputs& inputs_;
    std::uint64_t seed_;
    Ui& ui_;
    sf::RenderWindow window_;
    Bridge bridge_;
    Painter painter_;
    std::future<Story> job_;
    ScreenState waiting_;
    std::optional<RunScreen> screen_;
    double began_ = seconds_now();
};

}

int show_run(const debrief::Inputs& inputs, std::uint64_t seed)
{
    const Result<FontFiles> fonts = fonts_of_the_program();
    if (!fonts) return tell_problems(fonts.error());
    if (!has_display()) {
        std::fprintf(stderr, "flapdoor: there is no display to open a window on; `--picture FILE` paints without one\n");
        return cannot_show;
    }
    Result<std::unique_ptr<Ui>> ui = Ui::open(*fonts, drafting_theme());
    if (!ui) return tell_problems(ui.error());
    return Stage(inputs, seed, **ui).run();
}

}
