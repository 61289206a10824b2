#include "window/hands_on/flap_films.hpp"

#include <chrono>

namespace flapdoor::window {

namespace {

constexpr Pressure draft = 1.0_Pa;

FlapStudy study(const mechanics::FlapDoor& door, mechanics::Heading heading)
{
    return {mechanics::film_swing(door, heading), mechanics::leak_area(door, mechanics::leans(door), draft)};
}

}

void FlapFilms::start(const Key& key)
{
    under_way_ = key;
    job_ = std::async(std::launch::async, [key] { return study(key.first, key.second); });
}

void FlapFilms::take()
{
    studies_.insert_or_assign(*under_way_, job_.get());
    under_way_.reset();
}

const FlapStudy* FlapFilms::find(const mechanics::FlapDoor& door, mechanics::Heading heading)
{
    const Key key{door, heading};
    if (job_.valid() && job_.wait_for(std::chrono::seconds(0)) == std::future_status::ready) take();
    if (const auto found = studies_.find(key); found != studies_.end()) return &found->second;
    if (!job_.valid())
        start(key);
    else if (under_way_ != key)
        wanted_ = key;
    return nullptr;
}

void FlapFilms::wait()
{
    while (job_.valid()) {
        take();
        if (wanted_ && studies_.count(*wanted_) == 0) start(*wanted_);
        wanted_.reset();
    }
}

}
