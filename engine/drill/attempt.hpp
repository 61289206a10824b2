#pragma once

#include "drill/film.hpp"
#include "drill/run.hpp"

#include <atomic>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <thread>
#include <vector>

namespace flapdoor::drill {

/// A run in which the cards are decided one by one while it is carried out. One thread owns it and asks it; the card in play
/// is carried out in a thread of its own on a copy of the site, so that nobody waits: `take_news` brings what came of it.
/// Same scenario, cards and seed give the same site as `carry_out`, bit for bit, whatever was taken back in between.
class Attempt {
public:
    /// Takes over a thread that was told to stop and sets the flag as the last thing it does.
    using Leave = std::function<void(std::thread, std::shared_ptr<const std::atomic<bool>>)>;

    /// @param every  shortest site time between pictures
    /// @param leave  gets the threads that are still at work when the attempt goes, so that it never waits; without it, it waits for them, one tick at most
    Attempt(job::Scenario scenario, std::uint64_t seed, Time every = 30.0_s, Leave leave = {});
    ~Attempt();     ///< gives the card in play up
    Attempt(const Attempt&) = delete;
    Attempt& operator=(const Attempt&) = delete;

    // How it stands. While a card is in play: as it stood before.
    const site::Site& site() const { return *standing_; }
    std::shared_ptr<const site::Site> shared_site() const { return standing_; }     ///< for other threads; it never changes
    const std::vector<job::Card>& cards() const { return cards_; }     ///< decided so far, refused ones too
    const std::vector<StepHash>& hashes() const { return hashes_; }    ///< one a card
    const Film& film() const { return film_; }      ///< with the pictures of the card in play, as far as they have come
    std::uint64_t editions() const { return editions_; }    ///< how often something was taken back, so that pictures differ

    /// Why the card cannot be carried out on the site as it stands; nothing when it can.
    std::optional<text::Sentence> why_not(const job::Card& card) const { return drill::why_not(site(), card); }

    // Deciding.
    void play(std::vector<job::Card> cards);    ///< one after the other; insists that none is in play and that there is one
    const job::Scenario& scenario() const { return scenario_; }
    bool is_busy() const { return work_ != nullptr; }
    const job::Card* in_play() const;           ///< null when none is
    std::size_t waiting() const;                ///< cards after the one in play

    /// Brings in what has come since: pictures, finished cards. Call once a frame; never waits.
    struct News {
        bool has_pictures = false;
        std::size_t cards_done = 0;
        bool is_over = false;       ///< none is in play any more
    };
    News take_news();

    /// Gives up the card in play and those after it; the site stands as before them. Cards that are done stay done.
    void give_up();

    /// Back to the site as it stood before the last card. It may take as long as carrying out the cards before it: then
    /// they are in play again. Insists that there is one and that none is in play.
    void step_back();

    /// The cards done so far as a plan of that title.
    job::WorkPlan plan(std::string title) const { return {job::WorkPlan::format_version, scenario_.id, std::move(title), cards_}; }

    /// What has been carried out, as a run. Insists that no card is in play.
    Run run(std::string title) const;

private:
    struct Work;
    struct Standing {
        std::shared_ptr<const site::Site> site;     ///< after that many cards; null when it was let go to save memory
        std::size_t frames = 0;                     ///< of the film
    };

    struct Worker {
        std::thread thread;
        std::shared_ptr<std::atomic<bool>> is_over = std::make_shared<std::atomic<bool>>(false);
    };

    void begin_work(std::vector<job::Card> cards);
    void finish_card(std::shared_ptr<const site::Site> site, StepHash hash, std::vector<Frame> frames);
    void thin_out();

    job::Scenario scenario_;
    std::uint64_t seed_;
    Time every_;
    std::shared_ptr<const site::Site> standing_;
    std::vector<Standing> before_;      ///< [card] how the site stood before it
    std::vector<job::Card> cards_;
    std::vector<StepHash> hashes_;
    Film film_;
    std::size_t frames_kept_ = 0;       ///< of finished cards; those after them belong to the card in play
    std::uint64_t editions_ = 0;
    std::shared_ptr<Work> work_;
    std::vector<Worker> leaving_;       ///< that were told to stop, or are about to end
    Worker worker_;                     ///< of the work
    Leave leave_;
};

}
