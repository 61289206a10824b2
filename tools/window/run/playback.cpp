#include "window/run/playback.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

constexpr Time just_apart = 0.5_s; // moments closer than this are one for jumping

}

void Playback::set_speed(std::size_t speed) { speed_ = std::min(speed, playing_speeds.size() - 1); }

void Playback::play_or_pause()
{
    if (!is_playing_ && is_at_end()) now_ = story_->start;
    is_playing_ = !is_playing_;
}

void Playback::advance(float seconds)
{
    if (!is_playing_) return;
    go_to(now_ + Time{static_cast<double>(seconds) * playing_speeds[speed_]});
    if (is_at_end()) is_playing_ = false;
}

void Playback::go_to(Time time) { now_ = std::clamp(time, story_->start, story_->end); }

void Playback::to_card(int by)
{
    Time best = by > 0 ? story_->end : story_->start;
    for (const job::LogEntry& card : story_->log.entries) {
        if (by > 0 && card.start > now_ + just_apart) best = std::min(best, card.start);
        if (by < 0 && card.start < now_ - just_apart) best = std::max(best, card.start);
    }
    go_to(best);
}

void Playback::to_fault(int by)
{
    const Happening* found = nullptr;
    for (const Happening& happening : story_->happenings) {
        if (by > 0 && happening.at > now_ + just_apart && found == nullptr) found = &happening;
        if (by < 0 && happening.at < now_ - just_apart) found = &happening;
    }
    if (found != nullptr) go_to(found->at);
}

}
