#include "mechanics/floor_walk.hpp"

#include "core/insist.hpp"
#include "core/steady.hpp"
#include "mechanics/gravity.hpp"
#include "mechanics/grid.hpp"

#include <box2d/box2d.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <set>
#include <tuple>

namespace flapdoor::mechanics {

namespace {

// The solver is made for things of decimeters to meters; ten units to the meter make a chip large enough for it.
constexpr double units = 10.0;
constexpr Time time_step{1.0 / 120.0};
constexpr int solver_rounds = 6;

// Judgment: gait and friction.
constexpr Length stride = 0.7_m;
constexpr Length half_stance = 0.09_m;          // feet stand this far to either side of the way
constexpr Length half_sole = 0.14_m, half_sole_width = 0.045_m;
constexpr double skimming = 0.15;               // share of a swing, at either end, during which the sole is near the floor
constexpr double chip_friction = 0.5;
constexpr double bag_friction = 0.35;
constexpr Length counts_as_moved = 5.0_mm;
constexpr Length scrape_length = 5.0_cm;
constexpr Time settling = 2.0_s;                // after the last step

constexpr uint16 room_bit = 1, chip_bit = 2, bag_bit = 4, left_foot_bit = 8, right_foot_bit = 16;

b2Vec2 in_units(plan::Point p) { return {static_cast<float>(p.x.si * units), static_cast<float>(p.y.si * units)}; }
float in_units(Length l) { return static_cast<float>(l.si * units); }
plan::Point in_meters(b2Vec2 v)
{
    constexpr Length grid = 1.0_mm;
    return {on_grid(Length{static_cast<double>(v.x) / units}, grid), on_grid(Length{static_cast<double>(v.y) / units}, grid)};
}

/// A broken line, by the length gone along it.
class Way {
public:
    explicit Way(const std::vector<plan::Point>& points) : points_(points)
    {
        upto_.push_back({});
        for (std::size_t i = 1; i < points.size(); ++i) upto_.push_back(upto_.back() + plan::distance(points[i - 1], points[i]));
    }

    Length length() const { return upto_.back(); }

    plan::Point at(Length gone) const
    {
        if (gone <= Length{} || points_.size() == 1) return points_.front();
        if (gone >= length()) return points_.back();
        const auto next = static_cast<std::size_t>(std::upper_bound(upto_.begin(), upto_.end(), gone) - upto_.begin());
        const double share = (gone - upto_[next - 1]) / (upto_[next] - upto_[next - 1]);
        const plan::Point a = points_[next - 1];
        const plan::Point b = points_[next];
        return {a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share};
    }

    /// Unit vector of where it leads, smoothed over the corners of a raster.
    std::array<double, 2> heading(Length gone) const
    {
        constexpr Length about = 0.2_m;
        const plan::Point a = at(gone - about);
        const plan::Point b = at(gone + about);
        const double size = plan::distance(a, b).si;
        if (size < 1e-9) return {1.0, 0.0};
        return {(b.x - a.x).si / size, (b.y - a.y).si / size};
    }

private:
    std::vector<plan::Point> points_;
    std::vector<Length> upto_;
};

/// Angle of a unit vector, counted from the east.
double angle_of(const std::array<double, 2>& unit_vector)
{
    const auto [x, y] = unit_vector;
    // Half angle: exact everywhere but due west.
    if (x < -0.999999) return std::numbers::pi;
    return 2.0 * steady::atan(y / (1.0 + x));
}

struct Foot {
    b2Body* body = nullptr;
    b2Fixture* sole = nullptr;
    uint16 bit = 0;
    plan::Point from, to;
    double angle = 0.0;
    bool is_low = true;
};

struct SlidingChip {
    b2Body* body = nullptr;
    b2Fixture* edge = nullptr;
    plan::Point rests_at;
    bool is_moving = false;
};

class Walk {
public:
    Walk(const FloorScene& scene, const std::vector<plan::Point>& path, Speed pace) : way_(path), pace_(pace)
    {
        const b2BodyDef still;
        ground_ = world_.CreateBody(&still);
        for (const plan::Rect& rect : scene.obstacles) add_box(rect);
        add_walls(scene.floor);
        for (const LooseChip& chip : scene.chips) add_chip(chip);
        if (scene.bag) add_bag(*scene.bag);
        for (const std::size_t side : {std::size_t{0}, std::size_t{1}}) add_foot(side);
    }

    std::vector<FloorContact> go()
    {
        const Time step_time = stride / pace_;
        const auto steps = static_cast<std::size_t>(std::ceil(way_.length() / stride - 1e-9));
        for (std::size_t s = 1; s <= steps; ++s) {
            const Length before = stride * static_cast<double>(s - 1);
            const Length length = std::min(way_.length() - before, stride);
            swing_foot(s % 2, before, before + length, step_time * (length / stride));
        }
        for (const Time end = now_ + settling; now_ < end && is_anything_sliding();) advance(way_.length());
        for (std::size_t i = 0; i < chips_.size(); ++i) note_chip(i, true);
        note_scrape(Length{1e-3});
        std::stable_sort(contacts_.begin(), contacts_.end(), [](const FloorContact& a, const FloorContact& b) {
            return std::tie(a.at, a.kind, a.thing) < std::tie(b.at, b.kind, b.thing);
        });
        return std::move(contacts_);
    }

private:
    void add_box(const plan::Rect& rect)
    {
        if (rect.width <= Length{} || rect.depth <= Length{}) {
            obstacles_.push_back(nullptr);
            return;
        }
        b2PolygonShape box;
        box.SetAsBox(in_units(rect.width * 0.5), in_units(rect.depth * 0.5), in_units(rect.center()), 0.0F);
        add_obstacle(box);
    }

    void add_walls(const plan::Rect& floor)
    {
        const plan::Point southwest{floor.west, floor.south};
        const plan::Point southeast{floor.east(), floor.south};
        const plan::Point northeast{floor.east(), floor.north()};
        const plan::Point northwest{floor.west, floor.north()};
        for (const auto& [a, b] : {std::pair{southwest, southeast}, std::pair{southeast, northeast}, std::pair{northeast, northwest}, std::pair{northwest, southwest}}) {
            b2EdgeShape wall;
            wall.SetTwoSided(in_units(a), in_units(b));
            add_obstacle(wall);
        }
    }

    void add_obstacle(const b2Shape& shape)
    {
        b2FixtureDef def;
        def.shape = &shape;
        def.friction = 0.3F;
        def.restitution = 0.1F;
        def.filter.categoryBits = room_bit;
        def.filter.maskBits = chip_bit | bag_bit;
        obstacles_.push_back(ground_->CreateFixture(&def));
    }

    /// Dry friction with the floor: the largest force and moment that it holds against.
    void rub(b2Body* body, double coefficient, Length lever)
    {
        b2FrictionJointDef def;
        def.Initialize(ground_, body, body->GetPosition());
        def.collideConnected = true;
        def.maxForce = static_cast<float>(coefficient * gravity.si * units) * body->GetMass();
        def.maxTorque = def.maxForce * in_units(lever);
        world_.CreateJoint(&def);
    }

    void add_chip(const LooseChip& chip)
    {
        b2BodyDef def;
        def.type = b2_dynamicBody;
        def.position = in_units(chip.at);
        b2Body* body = world_.CreateBody(&def);
        b2CircleShape disc;
        disc.m_radius = in_units(chip.radius);
        b2FixtureDef fixture;
        fixture.shape = &disc;
        fixture.density = 1.0F;         // how heavy it is cancels out
        fixture.friction = 0.2F;
        fixture.filter.categoryBits = chip_bit;
        fixture.filter.maskBits = room_bit | left_foot_bit | right_foot_bit;
        b2Fixture* edge = body->CreateFixture(&fixture);
        rub(body, chip_friction, chip.radius * 0.5);
        chips_.push_back({body, edge, chip.at, false});
    }

    void add_bag(const DraggedBag& bag)
    {
        b2BodyDef def;
        def.type = b2_dynamicBody;
        def.position = in_units(bag.at);
        bag_ = world_.CreateBody(&def);
        b2CircleShape round;            // a full bag is round seen from above
        round.m_radius = in_units(bag.width * 0.5);
        b2FixtureDef fixture;
        fixture.shape = &round;
        fixture.density = static_cast<float>(bag.mass.si) / (b2_pi * round.m_radius * round.m_radius);
        fixture.friction = 0.2F;
        fixture.filter.categoryBits = bag_bit;
        fixture.filter.maskBits = room_bit;
        bag_->CreateFixture(&fixture);
        rub(bag_, bag_friction, bag.width * 0.33);
        scraped_to_ = in_meters(bag_->GetPosition());

        b2BodyDef hand;
        hand.type = b2_kinematicBody;
        hand.position = in_units(way_.at({}));
        hand_ = world_.CreateBody(&hand);
        b2DistanceJointDef neck;        // a rope: slack until it is stretched
        neck.bodyA = hand_;
        neck.bodyB = bag_;
        neck.minLength = 0.0F;
        neck.maxLength = std::max(in_units(bag.reach), (hand.position - def.position).Length());
        neck.length = neck.maxLength;
        world_.CreateJoint(&neck);
    }

    void add_foot(std::size_t side)
    {
        Foot& foot = feet_[side];
        foot.bit = side == 0 ? left_foot_bit : right_foot_bit;
        foot.to = foot.from = stand(side, {});
        foot.angle = angle_of(way_.heading({}));
        b2BodyDef def;
        def.type = b2_kinematicBody;
        def.position = in_units(foot.to);
        def.angle = static_cast<float>(foot.angle);
        foot.body = world_.CreateBody(&def);
        b2PolygonShape sole;
        sole.SetAsBox(in_units(half_sole), in_units(half_sole_width));
        b2FixtureDef fixture;
        fixture.shape = &sole;
        fixture.friction = 0.4F;
        fixture.filter.categoryBits = foot.bit;
        fixture.filter.maskBits = chip_bit;
        foot.sole = foot.body->CreateFixture(&fixture);
        tread_on_chips(foot);
    }

    plan::Point stand(std::size_t side, Length gone) const
    {
        const plan::Point middle = way_.at(gone);
        const auto [x, y] = way_.heading(gone);
        const Length aside = side == 0 ? half_stance : -half_stance;
        return {middle.x - aside * y, middle.y + aside * x};
    }

    /// Chips under a sole that comes down are held there until it lifts off: foot and chip do not see each other.
    void tread_on_chips(const Foot& foot)
    {
        for (SlidingChip& chip : chips_) {
            if (!foot.sole->TestPoint(chip.body->GetPosition())) continue;
            chip.body->SetLinearVelocity({0.0F, 0.0F});
            see(chip, foot.bit, false);
        }
    }

    static void see(SlidingChip& chip, uint16 bit, bool does)
    {
        b2Filter filter = chip.edge->GetFilterData();
        const auto mask = static_cast<uint16>(does ? filter.maskBits | bit : filter.maskBits & ~bit);
        if (mask == filter.maskBits) return;
        filter.maskBits = mask;
        chip.edge->SetFilterData(filter);
    }

    void set_low(Foot& foot, bool is_low)
    {
        if (foot.is_low == is_low) return;
        foot.is_low = is_low;
        b2Filter filter = foot.sole->GetFilterData();
        filter.maskBits = is_low ? chip_bit : uint16{0};
        foot.sole->SetFilterData(filter);
        if (is_low) tread_on_chips(foot);
        else
            for (SlidingChip& chip : chips_) see(chip, foot.bit, true);
    }

    void swing_foot(std::size_t side, Length from, Length to, Time time)
    {
        Foot& foot = feet_[side];
        foot.from = foot.to;
        foot.to = stand(side, to);
        const double angle = angle_of(way_.heading(to));
        const auto ticks = static_cast<std::size_t>(std::max(1.0, std::ceil(time / time_step - 1e-9)));
        for (std::size_t t = 0; t < ticks; ++t) {
            const auto smooth = [&](std::size_t tick) {
                const double u = static_cast<double>(tick) / static_cast<double>(ticks);
                return u * u * (3.0 - 2.0 * u);
            };
            const double u = (static_cast<double>(t) + 0.5) / static_cast<double>(ticks);
            set_low(foot, u < skimming || u > 1.0 - skimming);
            if (!foot.is_low) foot.body->SetTransform(foot.body->GetPosition(), static_cast<float>(angle));   // turns in the air
            const double share = smooth(t + 1);
            const plan::Point next{foot.from.x + (foot.to.x - foot.from.x) * share, foot.from.y + (foot.to.y - foot.from.y) * share};
            foot.body->SetLinearVelocity(static_cast<float>(1.0 / time_step.si) * (in_units(next) - foot.body->GetPosition()));
            advance(from + (to - from) * ((static_cast<double>(t) + 1.0) / static_cast<double>(ticks)));
        }
        foot.body->SetLinearVelocity({0.0F, 0.0F});
        foot.body->SetTransform(in_units(foot.to), static_cast<float>(angle));
        foot.angle = angle;
        const plan::Point place = in_meters(in_units(foot.to));
        contacts_.push_back({on_grid(now_, 1e-3), FloorContactKind::foot_down, side, place, place});
    }

    static Time on_grid(Time time, double grid) { return {mechanics::on_grid(time.si, grid)}; }

    void advance(Length gone)
    {
        if (hand_ != nullptr) hand_->SetLinearVelocity(static_cast<float>(1.0 / time_step.si) * (in_units(way_.at(gone)) - hand_->GetPosition()));
        world_.Step(static_cast<float>(time_step.si), solver_rounds, solver_rounds / 2);
        now_ += time_step;
        for (std::size_t i = 0; i < chips_.size(); ++i) note_chip(i, false);
        note_scrape(scrape_length);
        note_bumps();
    }

    bool is_anything_sliding() const
    {
        constexpr float still = 0.01F * static_cast<float>(units);
        const auto slides = [&](const b2Body* body) { return body->GetLinearVelocity().Length() > still; };
        return (bag_ != nullptr && slides(bag_)) || std::any_of(chips_.begin(), chips_.end(), [&](const SlidingChip& chip) { return slides(chip.body); });
    }

    void note_chip(std::size_t number, bool is_end)
    {
        SlidingChip& chip = chips_[number];
        constexpr float still = 0.01F * static_cast<float>(units);
        const bool slides = chip.body->GetLinearVelocity().Length() > still;
        if (slides && !is_end) {
            chip.is_moving = true;
            return;
        }
        if (!chip.is_moving) return;
        chip.is_moving = false;
        const plan::Point at = in_meters(chip.body->GetPosition());
        if (plan::distance(chip.rests_at, at) < counts_as_moved) return;
        contacts_.push_back({on_grid(now_, 1e-3), FloorContactKind::chip_kicked, number, in_meters(in_units(chip.rests_at)), at});
        chip.rests_at = at;
    }

    void note_scrape(Length least)
    {
        if (bag_ == nullptr) return;
        const plan::Point at = in_meters(bag_->GetPosition());
        if (plan::distance(scraped_to_, at) < least) return;
        contacts_.push_back({on_grid(now_, 1e-3), FloorContactKind::bag_scraped, 0, scraped_to_, at});
        scraped_to_ = at;
    }

    void note_bumps()
    {
        if (bag_ == nullptr) return;
        std::set<std::size_t> touched;
        for (const b2ContactEdge* edge = bag_->GetContactList(); edge != nullptr; edge = edge->next) {
            if (!edge->contact->IsTouching()) continue;
            const b2Fixture* other = edge->contact->GetFixtureA()->GetBody() == bag_ ? edge->contact->GetFixtureB() : edge->contact->GetFixtureA();
            touched.insert(static_cast<std::size_t>(std::find(obstacles_.begin(), obstacles_.end(), other) - obstacles_.begin()));
        }
        const plan::Point at = in_meters(bag_->GetPosition());
        for (const std::size_t obstacle : touched)
            if (!touching_.contains(obstacle)) contacts_.push_back({on_grid(now_, 1e-3), FloorContactKind::bag_bumped, obstacle, at, at});
        touching_ = std::move(touched);
    }

    b2World world_{b2Vec2{0.0F, 0.0F}};
    Way way_;
    Speed pace_;
    Time now_{};
    b2Body* ground_ = nullptr;
    b2Body* bag_ = nullptr;
    b2Body* hand_ = nullptr;
    std::array<Foot, 2> feet_;
    std::vector<SlidingChip> chips_;
    std::vector<const b2Fixture*> obstacles_;
    std::set<std::size_t> touching_;
    plan::Point scraped_to_;
    std::vector<FloorContact> contacts_;
};

}

std::vector<FloorContact> walk_over(const FloorScene& scene, const std::vector<plan::Point>& path, Speed pace)
{
    insist(!path.empty(), "a way has a start");
    insist(pace >= 0.3_mps && pace <= 2.0_mps, "somebody walks");
    insist(scene.floor.width > Length{} && scene.floor.depth > Length{}, "a floor has an area");
    return Walk(scene, path, pace).go();
}

}
