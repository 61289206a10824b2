#include "window/stage/painter.hpp"

#include "window/stage/imgui_words.hpp"
#include "window/stage/ui.hpp"

#include <SFML/Graphics/RenderTarget.hpp>
#include <SFML/Graphics/Texture.hpp>
#include <SFML/Graphics/Vertex.hpp>
#include <SFML/Graphics/View.hpp>

#include <cmath>
#include <map>

namespace flapdoor::window {

struct Painter::Textures {
    struct Held {
        std::unique_ptr<sf::Texture> texture;
        std::uint64_t revision = 0;
    };
    std::map<PictureId, Held> held;
    std::vector<sf::Vertex> corners;

    const sf::Texture* texture_of(PictureId id, const PictureShelf& shelf)
    {
        const PictureShelf::Entry* entry = shelf.find(id);
        if (entry == nullptr) return nullptr;
        Held& here = held[id];
        if (here.texture != nullptr && here.revision == entry->revision) return here.texture.get();
        const Picture& picture = entry->picture;
        const auto width = static_cast<unsigned>(picture.width);
        const auto height = static_cast<unsigned>(picture.height);
        if (here.texture == nullptr || here.texture->getSize() != sf::Vector2u(width, height)) {
            here.texture = std::make_unique<sf::Texture>();
            if (!here.texture->create(width, height)) {
                held.erase(id);
                return nullptr;
            }
            here.texture->setSmooth(true);
        }
        here.texture->update(reinterpret_cast<const sf::Uint8*>(picture.pixels.data()));
        here.revision = entry->revision;
        return here.texture.get();
    }

    void forget_what_left(const PictureShelf& shelf)
    {
        for (auto it = held.begin(); it != held.end();) it = shelf.find(it->first) == nullptr ? held.erase(it) : std::next(it);
    }
};

namespace {

/// The library cannot cut at a rectangle, so a view of just that rectangle is laid on just that part of the target.
bool look_at(sf::RenderTarget& target, const ImVec4& clip)
{
    const sf::Vector2f whole(target.getSize());
    const float x0 = std::max(std::floor(clip.x), 0.0F);
    const float y0 = std::max(std::floor(clip.y), 0.0F);
    const float x1 = std::min(std::ceil(clip.z), whole.x);
    const float y1 = std::min(std::ceil(clip.w), whole.y);
    if (x1 <= x0 || y1 <= y0) return false;
    sf::View view(sf::FloatRect(x0, y0, x1 - x0, y1 - y0));
    view.setViewport({x0 / whole.x, y0 / whole.y, (x1 - x0) / whole.x, (y1 - y0) / whole.y});
    target.setView(view);
    return true;
}

}

Painter::Painter() : textures_(std::make_unique<Textures>()) {}
Painter::~Painter() = default;

void Painter::paint(const Ui& ui, sf::RenderTarget& target)
{
    textures_->forget_what_left(ui.pictures());
    const sf::View before = target.getView();
    const ImDrawData& frame = ui.drawn();
    for (int l = 0; l < frame.CmdListsCount; ++l) {
        const ImDrawList& list = *frame.CmdLists[l];
        for (const ImDrawCmd& command : list.CmdBuffer) {
            const sf::Texture* texture = textures_->texture_of(picture_id(command.TextureId), ui.pictures());
            if (texture == nullptr || command.ElemCount == 0 || !look_at(target, command.ClipRect)) continue;
            const sf::Vector2f size(texture->getSize());
            auto& corners = textures_->corners;
            corners.clear();
            corners.reserve(command.ElemCount);
            for (unsigned i = 0; i < command.ElemCount; ++i) {
                const auto index = list.IdxBuffer[static_cast<int>(command.IdxOffset + i)];
                const ImDrawVert& v = list.VtxBuffer[static_cast<int>(command.VtxOffset + index)];
                const ImU32 c = v.col;
                corners.emplace_back(sf::Vector2f(v.pos.x, v.pos.y),
                                     sf::Color(static_cast<sf::Uint8>(c >> IM_COL32_R_SHIFT), static_cast<sf::Uint8>(c >> IM_COL32_G_SHIFT),
                                               static_cast<sf::Uint8>(c >> IM_COL32_B_SHIFT),
                                               static_cast<sf::Uint8>(c >> IM_COL32_A_SHIFT)),
                                     sf::Vector2f(v.uv.x * size.x, v.uv.y * size.y));
            }
            target.draw(corners.data(), corners.size(), sf::Triangles, sf::RenderStates(texture));
        }
    }
    target.setView(before);
}

}
