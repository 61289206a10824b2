#include "drill/attempt.hpp"

#include "core/insist.hpp"

#include <algorithm>
#include <atomic>
#include <iterator>
#include <mutex>

namespace flapdoor::drill {

namespace {

constexpr std::size_t sites_kept = 12;      // a site is some megabytes; older ones are made again from the one before them
constexpr std::size_t site_kept_every = 10;

/// Leaves a card in play from within its ticks.
struct GivenUp {};

}

/// What the two threads share: cards in, pictures and sites out.
struct Attempt::Work {
    struct Done {
        std::shared_ptr<const site::Site> site;
        StepHash hash;
    };

    std::vector<job::Card> cards;
    std::atomic<bool> is_given_up{false};
    std::mutex door;                        // guards what follows
    std::vector<std::vector<Frame>> frames; // [card of this work] not yet fetched
    std::vector<Done> done;                 // not yet fetched
    std::exception_ptr broken;              // a promise of ours that did not hold
    bool is_over = false;
    std::size_t fetched = 0;                // cards; only the owner's thread reads it

    void carry_out(std::shared_ptr<const site::Site> from, int first_index, Time every);
};

void Attempt::Work::carry_out(std::shared_ptr<const site::Site> from, int first_index, Time every)
{
    Camera camera(every);
    for (std::size_t i = 0; i < cards.size(); ++i) {
        auto site = std::make_shared<site::Site>(*from);
        const auto hand_over = [&] {
            std::vector<Frame> news = camera.take_film().frames;
            if (news.empty()) return;
            const std::scoped_lock lock(door);
            std::move(news.begin(), news.end(), std::back_inserter(frames[i]));
        };
        site->watcher = [&](const site::Site& now) {
            if (is_given_up) throw GivenUp{};
            camera.watch(now);
            hand_over();
        };
        const StepHash hash = carry_out_card(*site, cards[i], first_index + static_cast<int>(i));
        site->watcher = {};
        camera.end_card(*site);
        hand_over();
        from = site;
        const std::scoped_lock lock(door);
        done.push_back({std::move(site), hash});
    }
}

Attempt::Attempt(job::Scenario scenario, std::uint64_t seed, Time every, Leave leave) : scenario_(std::move(scenario)), seed_(seed), every_(every), leave_(std::move(leave))
{
    RunOptions options;
    options.seed = seed_;
    standing_ = std::make_shared<const site::Site>(begin(scenario_, options));
    Camera camera(every_);
    camera.watch(*standing_);
    film_ = camera.take_film();
    frames_kept_ = film_.frames.size();
}

Attempt::~Attempt()
{
    if (work_) {
        work_->is_given_up = true;
        leaving_.push_back(std::move(worker_));
    }
    for (Worker& worker : leaving_) {
        if (leave_) leave_(std::move(worker.thread), worker.is_over);
        else worker.thread.join();
    }
}

const job::Card* Attempt::in_play() const { return work_ ? &work_->cards[std::min(work_->fetched, work_->cards.size() - 1)] : nullptr; }
std::size_t Attempt::waiting() const { return work_ ? work_->cards.size() - std::min(work_->fetched + 1, work_->cards.size()) : 0; }

void Attempt::play(std::vector<job::Card> cards)
{
    insist(!is_busy(), "one card is carried out at a time");
    insist(!cards.empty(), "there is a card to carry out");
    begin_work(std::move(cards));
}

void Attempt::begin_work(std::vector<job::Card> cards)
{
    auto work = std::make_shared<Work>();
    work->frames.resize(cards.size());
    work->cards = std::move(cards);
    work_ = work;
    worker_ = Worker{};
    worker_.thread = std::thread([work, from = standing_, first = static_cast<int>(cards_.size()), every = every_, is_over = worker_.is_over]() mutable {
        try {
            work->carry_out(std::move(from), first, every);
        }
        catch (const GivenUp&) {
        }
        catch (...) {
            const std::scoped_lock lock(work->door);
            work->broken = std::current_exception();
        }
        {
            const std::scoped_lock lock(work->door);
            work->is_over = true;
        }
        work.reset();
        *is_over = true;
    });
}

Attempt::News Attempt::take_news()
{
    std::erase_if(leaving_, [](Worker& worker) {
        if (!*worker.is_over) return false;
        worker.thread.join();
        return true;
    });
    News news;
    if (!work_) return news;
    std::vector<std::vector<Frame>> frames;
    std::vector<Work::Done> done;
    {
        const std::scoped_lock lock(work_->door);
        if (work_->broken) std::rethrow_exception(work_->broken);
        for (std::size_t i = work_->fetched; i < work_->frames.size(); ++i) frames.push_back(std::exchange(work_->frames[i], {}));
        done = std::exchange(work_->done, {});
        news.is_over = work_->is_over;
    }
    for (std::size_t i = 0; i < frames.size(); ++i) {
        news.has_pictures = news.has_pictures || !frames[i].empty();
        if (i < done.size()) finish_card(std::move(done[i].site), done[i].hash, std::move(frames[i]));
        else std::move(frames[i].begin(), frames[i].end(), std::back_inserter(film_.frames));
    }
    news.cards_done = done.size();
    news.is_over = news.is_over || work_->fetched == work_->cards.size();
    if (news.is_over) {
        leaving_.push_back(std::move(worker_));
        work_.reset();
    }
    return news;
}

void Attempt::finish_card(std::shared_ptr<const site::Site> site, StepHash hash, std::vector<Frame> frames)
{
    std::move(frames.begin(), frames.end(), std::back_inserter(film_.frames));
    before_.push_back({std::move(standing_), frames_kept_});
    cards_.push_back(work_->cards[work_->fetched]);
    hashes_.push_back(hash);
    standing_ = std::move(site);
    frames_kept_ = film_.frames.size();
    ++work_->fetched;
    thin_out();
}

void Attempt::thin_out()
{
    if (before_.size() <= sites_kept) return;
    const std::size_t old = before_.size() - sites_kept - 1;
    if (old % site_kept_every != 0) before_[old].site.reset();
}

void Attempt::give_up()
{
    if (!work_) return;
    work_->is_given_up = true;
    leaving_.push_back(std::move(worker_));
    work_.reset();
    film_.frames.resize(frames_kept_);
    ++editions_;
}

void Attempt::step_back()
{
    insist(!is_busy() && !cards_.empty(), "a card can be taken back when one is done and none is in play");
    std::size_t whole = cards_.size() - 1;      // the last site still kept that stands before the card
    while (!before_[whole].site) --whole;
    std::vector<job::Card> again(cards_.begin() + static_cast<std::ptrdiff_t>(whole), cards_.end() - 1);
    standing_ = before_[whole].site;
    frames_kept_ = before_[whole].frames;
    film_.frames.resize(frames_kept_);
    before_.resize(whole);
    cards_.resize(whole);
    hashes_.resize(whole);
    ++editions_;
    if (!again.empty()) begin_work(std::move(again));
}

Run Attempt::run(std::string title) const
{
    insist(!is_busy(), "a run is whole when no card is in play");
    return {plan(std::move(title)), *standing_, hashes_};
}

}
