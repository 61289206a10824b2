#include "window/stage/painter.hpp"

#include "window/stage/imgui_words.hpp"
#include "window/stage/ui.hpp"

#include <SFML/Graphics/RenderTarget.hpp>
#include <SFML/Graphics/Texture.hpp>
#include <SFML/Graphics/Vertex.hpp>
#include <SFML/Graphics/View.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <vector>

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
void look_at(sf::RenderTarget& target, const sf::FloatRect& part)
{
    const sf::Vector2f whole(target.getSize());
    sf::View view(part);
    view.setViewport({part.left / whole.x, part.top / whole.y, part.width / whole.x, part.height / whole.y});
    target.setView(view);
}

/// The part of the target in which a command draws, in whole pixels; empty when there is none.
sf::FloatRect part_of(const sf::RenderTarget& target, const ImVec4& clip)
{
    const sf::Vector2f whole(target.getSize());
    const float x0 = std::max(std::floor(clip.x), 0.0F);
    const float y0 = std::max(std::floor(clip.y), 0.0F);
    const float x1 = std::min(std::ceil(clip.z), whole.x);
    const float y1 = std::min(std::ceil(clip.w), whole.y);
    return x1 > x0 && y1 > y0 ? sf::FloatRect(x0, y0, x1 - x0, y1 - y0) : sf::FloatRect();
}

/// What of a triangle lies in a part of the target.
enum class Share : int { none, some, all };
Share share_of(const std::array<ImVec2, 3>& triangle, const sf::FloatRect& part)
{
    const auto [left, right] = std::minmax({triangle[0].x, triangle[1].x, triangle[2].x});
    const auto [top, bottom] = std::minmax({triangle[0].y, triangle[1].y, triangle[2].y});
    const float far_x = part.left + part.width;
    const float far_y = part.top + part.height;
    if (right <= part.left || left >= far_x || bottom <= part.top || top >= far_y) return Share::none;
    return left >= part.left && right <= far_x && top >= part.top && bottom <= far_y ? Share::all : Share::some;
}

sf::Vertex vertex(const ImDrawVert& v, sf::Vector2f texture_size)
{
    const ImU32 c = v.col;
    return {sf::Vector2f(v.pos.x, v.pos.y),
            sf::Color(static_cast<sf::Uint8>(c >> IM_COL32_R_SHIFT), static_cast<sf::Uint8>(c >> IM_COL32_G_SHIFT),
                      static_cast<sf::Uint8>(c >> IM_COL32_B_SHIFT), static_cast<sf::Uint8>(c >> IM_COL32_A_SHIFT)),
            sf::Vector2f(v.uv.x * texture_size.x, v.uv.y * texture_size.y)};
}

/// Collects the triangles of a command that can be seen. @return true when one of them reaches beyond the part
bool collect(const ImDrawList& list, const ImDrawCmd& command, const sf::FloatRect& part, sf::Vector2f texture_size,
             std::vector<sf::Vertex>& corners)
{
    bool is_any_cut = false;
    corners.clear();
    corners.reserve(command.ElemCount);
    for (unsigned i = 0; i + 2 < command.ElemCount; i += 3) {
        std::array<const ImDrawVert*, 3> v{};
        for (unsigned k = 0; k < 3; ++k)
            v[k] = &list.VtxBuffer[static_cast<int>(command.VtxOffset + list.IdxBuffer[static_cast<int>(command.IdxOffset + i + k)])];
        const Share share = share_of({v[0]->pos, v[1]->pos, v[2]->pos}, part);
        if (share == Share::none) continue;
        is_any_cut = is_any_cut || share == Share::some;
        for (const ImDrawVert* corner : v) corners.push_back(vertex(*corner, texture_size));
    }
    return is_any_cut;
}

}

Painter::Painter() : textures_(std::make_unique<Textures>()) {}
Painter::~Painter() = default;

void Painter::paint(const Ui& ui, sf::RenderTarget& target)
{
    textures_->forget_what_left(ui.pictures());
    const Color paper = ui.theme().paper;
    target.clear({paper.r, paper.g, paper.b});
    const sf::View before = target.getView();
    const sf::FloatRect whole({0.0F, 0.0F}, sf::Vector2f(target.getSize()));
    const ImDrawData& frame = ui.drawn();
    for (int l = 0; l < frame.CmdListsCount; ++l) {
        const ImDrawList& list = *frame.CmdLists[l];
        for (const ImDrawCmd& command : list.CmdBuffer) {
            const sf::Texture* texture = textures_->texture_of(picture_id(command.TextureId), ui.pictures());
            const sf::FloatRect part = part_of(target, command.ClipRect);
            if (texture == nullptr || part.width <= 0.0F) continue;
            auto& corners = textures_->corners;
            const bool is_any_cut = collect(list, command, part, sf::Vector2f(texture->getSize()), corners);
            if (corners.empty()) continue;
            look_at(target, is_any_cut ? part : whole); // cutting is dear without a graphics card
            target.draw(corners.data(), corners.size(), sf::Triangles, sf::RenderStates(texture));
        }
    }
    target.setView(before);
}

}
