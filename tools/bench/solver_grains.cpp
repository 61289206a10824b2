#include "solver_grains.hpp"

#include "core/hash.hpp"
#include "core/philox.hpp"
#include "scenes.hpp"

#include <box2d/box2d.h>

#include <cmath>

namespace flapdoor::bench {

namespace {

constexpr float radius = 0.006F;
constexpr std::uint16_t of_grains = 2, of_walls = 1;

void add_walls(b2World& world, const FurnishedRoom& furnished)
{
    const plan::Raster& raster = furnished.room.raster;
    const b2BodyDef still;
    b2Body& walls = *world.CreateBody(&still);
    const auto add = [&](float x, float y, float half_width, float half_depth) {
        b2PolygonShape box;
        box.SetAsBox(half_width, half_depth, {x, y}, 0.0F);
        b2FixtureDef fixture;
        fixture.shape = &box;
        fixture.filter.categoryBits = of_walls;
        walls.CreateFixture(&fixture);
    };
    const float width = furnished.room.width();
    const float depth = furnished.room.depth();
    add(-0.5F, 0.5F * depth, 0.5F, depth);
    add(width + 0.5F, 0.5F * depth, 0.5F, depth);
    add(0.5F * width, -0.5F, width, 0.5F);
    add(0.5F * width, depth + 0.5F, width, 0.5F);
    for (std::size_t cell = 0; cell < raster.size(); ++cell) {
        if (furnished.room.free_height(cell) > 0.0F) continue;
        const plan::Point at = raster.center(cell);
        add(static_cast<float>(at.x.si), static_cast<float>(at.y.si), static_cast<float>(raster.cell_width().si * 0.5), static_cast<float>(raster.cell_depth().si * 0.5));
    }
}

}

SolverGrains::SolverGrains(std::size_t grains) : world_(std::make_unique<b2World>(b2Vec2(0.0F, 0.0F)))
{
    const FurnishedRoom furnished(Length{0.1});
    add_walls(*world_, furnished);
    const Luck luck{seed, Stream::emission};
    b2CircleShape disc;
    disc.m_radius = radius;
    b2FixtureDef fixture;
    fixture.shape = &disc;
    fixture.density = 1.0F;
    fixture.restitution = 1.0F;
    fixture.filter.categoryBits = of_grains;
    fixture.filter.maskBits = of_walls;
    std::size_t placed = 0;
    for (std::uint64_t tried = 0; placed < grains; ++tried) {
        const double x = luck.uniform(tried, 0) * static_cast<double>(furnished.room.width());
        const double y = luck.uniform(tried, 1) * static_cast<double>(furnished.room.depth());
        if (furnished.room.free_height(furnished.room.raster.cell_at({Length{x}, Length{y}})) <= 0.0F) continue;
        b2BodyDef grain;
        grain.type = b2_dynamicBody;
        grain.position.Set(static_cast<float>(x), static_cast<float>(y));
        grain.allowSleep = false;
        world_->CreateBody(&grain)->CreateFixture(&fixture);
        ++placed;
    }
}

SolverGrains::~SolverGrains() = default;

std::uint64_t SolverGrains::step()
{
    constexpr float dt = 0.1F;
    constexpr double eddies = 0.005;    // m2/s
    const auto push = static_cast<float>(std::sqrt(2.0 * eddies / static_cast<double>(dt)));
    const Luck luck{seed, Stream::transport};
    std::uint64_t grain = 0;
    for (b2Body* body = world_->GetBodyList(); body != nullptr; body = body->GetNext()) {
        if (body->GetType() != b2_dynamicBody) continue;
        const Draw draw = luck.draw(grain++, steps_);
        const auto pushed = [&](std::uint32_t word) { return push * static_cast<float>(3.4641016 * (unit(word) - 0.5)); };   // variance 1
        body->SetLinearVelocity({pushed(draw[0]), pushed(draw[1])});
    }
    world_->Step(dt, 8, 3);
    ++steps_;
    return grain;
}

std::uint64_t SolverGrains::fingerprint() const
{
    Fingerprint print;
    for (const b2Body* body = world_->GetBodyList(); body != nullptr; body = body->GetNext()) {
        print.add(body->GetPosition().x);
        print.add(body->GetPosition().y);
    }
    return print.value();
}

}
