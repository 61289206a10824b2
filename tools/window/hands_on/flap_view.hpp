#pragma once

#include "window/hands_on/flap_films.hpp"
#include "window/stage/ui.hpp"

#include <string_view>

namespace flapdoor::window {

struct FlapViewLook {
    mechanics::FlapDoor door;       ///< as it hangs
    bool can_pass = true;           ///< false: no slit; nobody walks
    bool keeps_still = false;       ///< reduced motion: moved by hand on the time line, never by itself
    bool offers_variants = false;   ///< buttons that show the door with one fault
};

/// A flap door in section while somebody walks through, sheets as the rigid-body solver moves them, and how far it stands
/// open meanwhile, beside one hung as taught.
class FlapView {
public:
    void play(Ui& ui, const Box& box, const FlapViewLook& look);
    /// The section and its controls alone, for a strip.
    void play_strip(Ui& ui, const Box& box, const FlapViewLook& look);
    /// Width that a strip of that height asks for, pixels.
    static float strip_width(const Ui& ui, float height);

    void walk();                                ///< from the start
    void set_heading(mechanics::Heading heading);
    bool is_moving() const { return is_walking_ || films_.is_busy(); }
    Time now() const { return now_; }
    void go_to(Time time) { now_ = time, is_walking_ = false; }
    FlapFilms& films() { return films_; }

private:
    const FlapStudy* go_on(Ui& ui, const mechanics::FlapDoor& door, const FlapViewLook& look);
    void controls(Ui& ui, std::string_view name, const FlapViewLook& look, const FlapStudy* study);

    FlapFilms films_;
    mechanics::Heading heading_ = mechanics::Heading::into_room;
    std::size_t variant_ = 0;
    Time now_{};
    bool is_walking_ = false;
};

/// Area below and beside the sheets in square feet, for people.
std::string opening_text(Area area);

}
