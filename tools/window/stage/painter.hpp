#pragma once

#include <memory>

namespace sf {
class RenderTarget;
}

namespace flapdoor::window {

class Ui;

/// Puts a frame on an open window. Keeps the pictures on the graphics card, so it is made after the window and dies
/// before it; without a display it cannot be used at all.
class Painter {
public:
    Painter();
    ~Painter();
    Painter(const Painter&) = delete;
    Painter& operator=(const Painter&) = delete;

    /// The paper first, then the frame.
    void paint(const Ui& ui, sf::RenderTarget& target);

private:
    struct Textures;
    std::unique_ptr<Textures> textures_;
};

}
