#pragma once

#include "mechanics/flap_leak.hpp"
#include "mechanics/swing_film.hpp"

#include <future>
#include <map>
#include <optional>
#include <utility>

namespace flapdoor::window {

/// What the rigid-body section says of one flap door and one way through it.
struct FlapStudy {
    mechanics::SwingFilm film;
    Area leak{};        ///< hole under 1 Pa that blows into the room
};

/// Films of flap doors, each worked out once, beside the window: a tenth of a second each.
class FlapFilms {
public:
    /// The study, or null while it is being worked out. Of several asked for meanwhile the last one comes next.
    const FlapStudy* find(const mechanics::FlapDoor& door, mechanics::Heading heading);
    bool is_busy() const { return job_.valid(); }

    /// Waits until nothing is being worked out: for tests and pictures.
    void wait();

private:
    using Key = std::pair<mechanics::FlapDoor, mechanics::Heading>;

    void start(const Key& key);
    void take();

    std::map<Key, FlapStudy> studies_;
    std::optional<Key> under_way_;
    std::optional<Key> wanted_;
    std::future<FlapStudy> job_;
};

}
