#include "window/room/live_story.hpp"

#include "text/writing.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

/// A card that is still being carried out, as far as its pictures have come.
job::LogEntry entry_of(const job::Card& card, int index, Time start, Time reached)
{
    job::LogEntry entry;
    entry.card = index;
    entry.label = card.label;
    entry.by = card.by;
    entry.start = start;
    entry.end = std::max(start, reached);
    std::visit([&](const auto& step) {
        entry.step = step.name;
        for (text::ShownField& field : text::describe_fields(step)) entry.with.push_back({std::move(field.key), std::move(field.value)});
    }, card.step);
    return entry;
}

}

LiveStory::LiveStory(debrief::Inputs inputs, const drill::Attempt& attempt, bool tells_faults)
    : story_(std::make_shared<Story>()), tells_faults_(tells_faults)
{
    story_->start = inputs.scenario.start;
    story_->report.scenario = inputs.scenario;
    story_->report.seed = attempt.site().seed;
    story_->inputs = std::move(inputs);
    story_->hides_faults = !tells_faults;
    story_->film.zones = attempt.film().zones;
    story_->film.rasters = attempt.film().rasters;
    story_->film.work_room = attempt.film().work_room;
    follow(attempt);
}

void LiveStory::add_card_in_play(const drill::Attempt& attempt)
{
    const job::Card* card = attempt.in_play();
    if (card == nullptr) return;
    story_->inputs.plan.cards.push_back(*card);
    story_->log.entries.push_back(entry_of(*card, static_cast<int>(attempt.cards().size()), attempt.site().now, story_->end));
}

std::vector<debrief::FaultLine> LiveStory::follow(const drill::Attempt& attempt)
{
    Story& story = *story_;
    const bool is_taken_back = attempt.editions() != edition_;
    if (is_taken_back) story.film.frames.clear(), ++story.edition;
    edition_ = attempt.editions();
    const auto& frames = attempt.film().frames;
    for (std::size_t i = story.film.frames.size(); i < frames.size(); ++i) story.film.frames.push_back(frames[i]);
    story.end = std::max(story.film.frames.back().at, story.start);

    story.log = attempt.site().log;
    story.inputs.plan.cards = attempt.cards();
    std::vector<debrief::FaultLine> news;
    const std::size_t cards = attempt.cards().size();
    if (tells_faults_ && (cards != cards_judged_ || is_taken_back)) {
        auto faults = debrief::faults_so_far(story.inputs.book, story.inputs.scenario, story.log);
        if (!is_taken_back)
            for (const debrief::FaultLine& fault : faults)
                if (debrief::find_fault(story.report.faults, fault.rule.rule) == nullptr) news.push_back(fault);
        story.report.faults = std::move(faults);
        cards_judged_ = cards;
    }
    add_card_in_play(attempt);
    refresh(story);
    return news;
}

}
