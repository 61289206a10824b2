#include "mechanics/doorway_section.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"
#include "mechanics/grid.hpp"

#include <box2d/box2d.h>

#include <algorithm>
#include <cmath>

namespace flapdoor::mechanics {

namespace {

constexpr Length position_grid{1e-5};
constexpr Length half_thickness = 2.0_mm;       // of a link where a body meets it
constexpr Length knee_height = 0.5_m;
constexpr Length chest_height = 1.25_m;
constexpr double film_on_cloth = 0.3;           // friction; judgment
constexpr int drag_samples = 16;                // along a sheet, whatever the number of links

float single(double value) { return static_cast<float>(value); }

/// Collision bits: each sheet has its own, whoever passes has the rest.
constexpr uint16 bit_of(std::size_t sheet) { return static_cast<uint16>(1U << (sheet + 1)); }

struct Link {
    b2Body* body = nullptr;     ///< origin in the middle, upper end at +y
    double half = 0.0;          ///< m
    double film = 0.0;          ///< kg with weight
    bool is_before_stop = false;    ///< has been on the free side since the stop is there
};

struct Chain {
    HangingSheet sheet;
    Pressure pressure{};
    bool is_stopped = false;
    std::vector<Link> links;
    b2Joint* foot = nullptr;
};

b2MassData mass_of(double film_and_air, double dowel, double length)
{
    // The dowel sits at the lower end; the moment of inertia is about the link's own origin.
    const double mass = film_and_air + dowel;
    b2MassData data;
    data.mass = single(mass);
    data.center = {0.0F, single(-0.5 * length * dowel / mass)};
    data.I = single(film_and_air * length * length / 12.0 + dowel * length * length * 0.25);
    return data;
}

}

struct DoorwaySection::World {
    SectionSteps steps;
    b2World world{b2Vec2{0.0F, 0.0F}};          // weights are forces of ours: the air that moves along has none
    b2Body* wall = nullptr;
    b2Body* passer = nullptr;
    b2Fixture* chest = nullptr;
    std::vector<b2Fixture*> body_parts;
    std::vector<Chain> chains;
    Rate brake{};
    std::int64_t steps_done = 0;

    explicit World(SectionSteps s) : steps(s)
    {
        world.SetAllowSleeping(false);
        const b2BodyDef still;
        wall = world.CreateBody(&still);
    }

    Chain& chain(std::size_t sheet)
    {
        insist(sheet < chains.size(), "a sheet that hangs in the section");
        return chains[sheet];
    }

    b2Body* add_link(const Chain& chain, std::size_t number, b2Vec2 upper, b2Vec2 down, double length, bool is_last)
    {
        b2BodyDef def;
        def.type = b2_dynamicBody;
        def.position = upper + single(0.5 * length) * down;
        def.angle = b2Atan2(down.x, -down.y);
        b2Body* body = world.CreateBody(&def);
        b2PolygonShape strip;
        strip.SetAsBox(single(half_thickness.si), single(0.5 * length));
        b2FixtureDef fixture;
        fixture.shape = &strip;
        fixture.friction = single(film_on_cloth);
        fixture.filter.categoryBits = bit_of(number);
        fixture.filter.maskBits = 1;            // the passer, when the passer's own mask agrees
        body->CreateFixture(&fixture);
        const HangingSheet& sheet = chain.sheet;
        const b2MassData mass = mass_of((sheet.film + sheet.air).si * length, is_last ? sheet.dowel.si : 0.0, length);
        body->SetMassData(&mass);
        return body;
    }

    void join(b2Body* above, b2Body* below, b2Vec2 where)
    {
        b2RevoluteJointDef hinge;
        hinge.Initialize(above, below, where);
        hinge.collideConnected = false;
        world.CreateJoint(&hinge);
    }

    std::size_t hang(const HangingSheet& sheet, double radians)
    {
        insist(sheet.length.si > 0.0 && sheet.film.si > 0.0 && sheet.links >= 1 && sheet.dowel.si >= 0.0, "a sheet has a length and a weight");
        insist(chains.size() < 8, "a doorway holds a few sheets");
        Chain chain;
        chain.sheet = sheet;
        const double length = sheet.length.si / sheet.links;
        const b2Vec2 down{single(steady::sin(radians)), single(-steady::cos(radians))};
        const b2Vec2 top{0.0F, single(sheet.top.si)};
        b2Body* above = wall;
        for (int i = 0; i < sheet.links; ++i) {
            const b2Vec2 upper = top + single(length * i) * down;
            b2Body* body = add_link(chain, chains.size(), upper, down, length, i + 1 == sheet.links);
            join(above, body, upper);
            chain.links.push_back({body, 0.5 * length, sheet.film.si * length});
            above = body;
        }
        if (sheet.foot_slack) {
            b2DistanceJointDef fold;            // a rope: nothing until the folds are pulled out
            const b2Vec2 foot = top + single(sheet.length.si) * down;
            fold.Initialize(wall, above, foot, foot);
            fold.minLength = 0.0F;
            fold.maxLength = single(std::max(sheet.foot_slack->si, 0.001));
            chain.foot = world.CreateJoint(&fold);
        }
        chains.push_back(std::move(chain));
        return chains.size() - 1;
    }

    /// Weight, pressure and drag for the step to come.
    void push(const Chain& chain)
    {
        const HangingSheet& sheet = chain.sheet;
        for (std::size_t i = 0; i < chain.links.size(); ++i) {
            const Link& link = chain.links[i];
            b2Body& body = *link.body;
            const double length = 2.0 * link.half;
            body.ApplyForce({0.0F, single(-link.film * gravity.si)}, body.GetWorldPoint({0.0F, 0.0F}), true);
            if (i + 1 == chain.links.size() && sheet.dowel.si > 0.0)
                body.ApplyForce({0.0F, single(-sheet.dowel.si * gravity.si)}, body.GetWorldPoint({0.0F, single(-link.half)}), true);
            const b2Vec2 across = body.GetWorldVector({1.0F, 0.0F});
            if (chain.pressure.si != 0.0)
                body.ApplyForce(single(chain.pressure.si * sheet.pressed_width.si * length) * across, body.GetWorldPoint({0.0F, 0.0F}), true);
            if (sheet.drag.si > 0.0) drag(body, sheet, link.half, static_cast<int>(chain.links.size()));
        }
    }

    static void drag(b2Body& body, const HangingSheet& sheet, double half, int links)
    {
        const int pieces = std::max(1, drag_samples / links);
        const double piece = 2.0 * half / pieces;
        const b2Vec2 across = body.GetWorldVector({1.0F, 0.0F});
        for (int p = 0; p < pieces; ++p) {
            const b2Vec2 at = body.GetWorldPoint({0.0F, single(half - (p + 0.5) * piece)});
            const double speed = static_cast<double>(b2Dot(body.GetLinearVelocityFromWorldPoint(at), across));
            body.ApplyForce(single(-sheet.drag.si * piece * std::fabs(speed) * speed) * across, at, true);
        }
    }

    /// Film that falls on film stays there: no bounce. Links beyond the stop when it came must come back by themselves first.
    void hold_back(Chain& chain)
    {
        if (!chain.is_stopped) return;
        constexpr float come_back = 4.0F;       // 1/s
        for (Link& link : chain.links) {
            const b2Vec2 at = link.body->GetPosition();
            if (at.x >= 0.0F) link.is_before_stop = true;
            if (at.x >= 0.0F || !link.is_before_stop) continue;
            b2Vec2 speed = link.body->GetLinearVelocity();
            speed.x = std::max(speed.x, -at.x * come_back);
            link.body->SetLinearVelocity(speed);
        }
    }

    void set_mask(b2Fixture* part, uint16 bits, bool is_on)
    {
        b2Filter filter = part->GetFilterData();
        filter.maskBits = static_cast<uint16>(is_on ? filter.maskBits | bits : filter.maskBits & ~bits);
        part->SetFilterData(filter);
    }
};

DoorwaySection::DoorwaySection(SectionSteps steps) : world_(std::make_unique<World>(steps)) {}
DoorwaySection::~DoorwaySection() = default;
DoorwaySection::DoorwaySection(DoorwaySection&&) noexcept = default;
DoorwaySection& DoorwaySection::operator=(DoorwaySection&&) noexcept = default;

std::size_t DoorwaySection::hang(const HangingSheet& sheet) { return world_->hang(sheet, 0.0); }
std::size_t DoorwaySection::hang_tilted(const HangingSheet& sheet, double radians) { return world_->hang(sheet, radians); }
void DoorwaySection::press(std::size_t sheet, Pressure difference) { world_->chain(sheet).pressure = difference; }
void DoorwaySection::stop_at_frame(std::size_t sheet) { world_->chain(sheet).is_stopped = true; }

void DoorwaySection::brake(Rate rate)
{
    for (const Chain& chain : world_->chains)
        for (const Link& link : chain.links) {
            link.body->SetLinearDamping(single(rate.si));
            link.body->SetAngularDamping(single(rate.si));
        }
}

void DoorwaySection::let_pass(const Passer& passer)
{
    insist(world_->passer == nullptr, "one at a time");
    b2BodyDef def;
    def.type = b2_kinematicBody;
    def.position = {single(passer.start.si), 0.0F};
    def.linearVelocity = {single(passer.speed.si), 0.0F};
    b2Body* body = world_->passer = world_->world.CreateBody(&def);
    const double half = 0.5 * passer.depth.si;
    b2FixtureDef part;
    part.friction = single(film_on_cloth);
    part.filter.categoryBits = 1;
    part.filter.maskBits = 0;
    const auto add = [&](const b2Shape& shape) {
        part.shape = &shape;
        return body->CreateFixture(&part);
    };
    b2PolygonShape trunk;
    const double middle = 0.5 * (passer.shoulder_height + knee_height).si;
    trunk.SetAsBox(single(half), single(passer.shoulder_height.si - middle), {0.0F, single(middle)}, 0.0F);
    b2CircleShape head;
    head.m_radius = single(0.5 * (passer.height - passer.shoulder_height).si);
    head.m_p = {0.0F, single(passer.height.si) - head.m_radius};
    b2CircleShape chest;
    chest.m_radius = single(half);
    chest.m_p = {0.0F, single(chest_height.si)};
    world_->body_parts = {add(trunk), add(head)};
    world_->chest = add(chest);
}

SectionPoint DoorwaySection::passer_at() const
{
    insist(world_->passer != nullptr, "somebody passes");
    return {on_grid(Length{static_cast<double>(world_->passer->GetPosition().x)}, position_grid), {}};
}

void DoorwaySection::touch(std::size_t sheet, bool only_chest)
{
    insist(world_->passer != nullptr && sheet < world_->chains.size(), "somebody passes a sheet");
    if (only_chest) world_->set_mask(world_->chest, bit_of(sheet), true);
    else
        for (b2Fixture* part : world_->body_parts) world_->set_mask(part, bit_of(sheet), true);
}

void DoorwaySection::let_go(std::size_t sheet)
{
    insist(world_->passer != nullptr && sheet < world_->chains.size(), "somebody passes a sheet");
    world_->set_mask(world_->chest, bit_of(sheet), false);
    for (b2Fixture* part : world_->body_parts) world_->set_mask(part, bit_of(sheet), false);
}

void DoorwaySection::advance()
{
    for (Chain& chain : world_->chains) {
        world_->push(chain);
        world_->hold_back(chain);
    }
    world_->world.Step(single(world_->steps.step.si), world_->steps.solver_rounds, world_->steps.solver_rounds / 2);
    ++world_->steps_done;
}

Time DoorwaySection::now() const { return world_->steps.step * static_cast<double>(world_->steps_done); }

std::vector<SectionPoint> DoorwaySection::shape(std::size_t sheet) const
{
    const Chain& chain = world_->chain(sheet);
    const auto point = [](b2Vec2 at) {
        return SectionPoint{on_grid(Length{static_cast<double>(at.x)}, position_grid), on_grid(Length{static_cast<double>(at.y)}, position_grid)};
    };
    std::vector<SectionPoint> points{{Length{}, chain.sheet.top}};
    for (const Link& link : chain.links) points.push_back(point(link.body->GetWorldPoint({0.0F, single(-link.half)})));
    return points;
}

Speed DoorwaySection::fastest() const
{
    double most = 0.0;
    for (const Chain& chain : world_->chains)
        for (const Link& link : chain.links) most = std::max(most, static_cast<double>(link.body->GetLinearVelocity().Length()));
    return {on_grid(most, 1e-5)};
}

Force DoorwaySection::pull_at_foot(std::size_t sheet) const
{
    const Chain& chain = world_->chain(sheet);
    if (chain.foot == nullptr) return {};
    return {on_grid(static_cast<double>(chain.foot->GetReactionForce(single(1.0 / world_->steps.step.si)).Length()), 1e-3)};
}

void DoorwaySection::free_foot(std::size_t sheet)
{
    Chain& chain = world_->chain(sheet);
    if (chain.foot == nullptr) return;
    world_->world.DestroyJoint(chain.foot);
    chain.foot = nullptr;
}

Inertia DoorwaySection::inertia(std::size_t sheet) const
{
    const Chain& chain = world_->chain(sheet);
    const b2Vec2 top{0.0F, single(chain.sheet.top.si)};
    double sum = 0.0;
    for (const Link& link : chain.links) {
        const double arm = static_cast<double>((link.body->GetWorldCenter() - top).LengthSquared());
        b2MassData data;
        link.body->GetMassData(&data);
        const double center = static_cast<double>(data.center.LengthSquared());
        sum += static_cast<double>(data.I) - static_cast<double>(data.mass) * center + static_cast<double>(data.mass) * arm;
    }
    return {on_grid(sum, 1e-6)};
}

Torque DoorwaySection::weight_moment(std::size_t sheet) const
{
    const Chain& chain = world_->chain(sheet);
    double sum = chain.sheet.dowel.si * chain.sheet.length.si;
    double arm = 0.0;
    for (const Link& link : chain.links) {
        sum += link.film * (arm + link.half);
        arm += 2.0 * link.half;
    }
    return {sum * gravity.si};
}

}
