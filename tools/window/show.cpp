#include "window/show.hpp"

#include "window/base/clock.hpp"
#include "window/own_ui.hpp"
#include "window/stage/bridge.hpp"
#include "window/stage/painter.hpp"
#include "window/stage/ui.hpp"

#include <SFML/Graphics/RenderWindow.hpp>
#include <SFML/System/Sleep.hpp>
#include <SFML/Window/Clipboard.hpp>
#include <SFML/Window/Event.hpp>

#include <chrono>
#include <cstdio>

namespace flapdoor::window {

namespace {

constexpr unsigned first_width = 1440;
constexpr unsigned first_height = 900;
constexpr unsigned least_width = 1024;
constexpr unsigned least_height = 700;
constexpr double settling = 0.8; // s after the last event during which frames are drawn: a hint may still come up

/// The window with its one loop: events in, a frame out.
class Stage {
public:
    Stage(Shell& shell, Ui& ui) : shell_(shell), ui_(ui), window_(first_mode(), "Flapdoor"), bridge_(size())
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
    }

    int run()
    {
        double before = seconds_now();
        double last_event = before;
        while (window_.isOpen()) {
            if (take_events()) last_event = seconds_now();
            const double now = seconds_now();
            if (shell_.is_moving()) last_event = now;
            const bool is_calm = !shell_.is_moving() && !bridge_.has_held_events() && now - last_event > settling;
            if (is_calm) {
                before = now;
                sf::sleep(sf::milliseconds(12));
                continue;
            }
            frame(static_cast<float>(now - before));
            before = now;
            if (bridge_.wants_to_close() || shell_.wants_to_quit()) window_.close();
        }
        return 0;
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
        shell_.play(ui_);
        ui_.end_frame();
        painter_.paint(ui_, window_);
        window_.display();
    }

    Shell& shell_;
    Ui& ui_;
    sf::RenderWindow window_;
    Bridge bridge_;
    Painter painter_;
};

int open_window(Shell& shell)
{
    if (!has_display()) {
        std::fprintf(stderr, "flapdoor: there is no display to open a window on; `--picture FILE` paints without one\n");
        return cannot_show;
    }
    Result<std::unique_ptr<Ui>> ui = own_ui();
    if (!ui) return tell_problems(ui.error());
    return Stage(shell, **ui).run();
}

}

int show(Places places)
{
    Shell shell(std::move(places));
    shell.go_to(start_screen(shell));
    return open_window(shell);
}

int show_run(Places places, const debrief::Inputs& inputs, std::uint64_t seed, std::optional<debrief::Inputs> careful)
{
    Shell shell(std::move(places));
    shell.go_to(watch_screen(shell, inputs, seed, std::move(careful)));
    return open_window(shell);
}

int show_quiz(Places places, quiz::Paper paper, quiz::SittingResult sitting, std::filesystem::path file)
{
    Shell shell(std::move(places));
    shell.go_to(sitting_screen(shell, std::move(paper), std::move(sitting), std::move(file)));
    return open_window(shell);
}

}
