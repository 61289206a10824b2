#pragma once

#include "window/hands_on/plan_tools.hpp"
#include "window/room/by_hand.hpp"
#include "window/room/card_form.hpp"
#include "window/room/deck.hpp"
#include "window/room/keeping.hpp"
#include "window/room/live_story.hpp"
#include "window/run/playback.hpp"
#include "window/run/screen_state.hpp"
#include "window/shell/beside.hpp"

#include <future>

namespace flapdoor::window {

/// The drill room: the site as it stands, the deck of cards, and the card that is being filled in. What is decided is
/// carried out beside the window and played as it comes.
class RoomScreen final : public Screen {
public:
    RoomScreen(Shell& shell, Sitting sitting, job::Scenario taken, std::optional<drill::Resumed> resumed = {});
    ~RoomScreen() override;

    void play(Ui& ui) override;
    bool is_moving() const override;
    std::vector<KeyLine> keys() const override;

    // For what works on the card in hand, and for tests.
    const drill::Attempt& attempt() const { return attempt_; }
    Draft* draft() { return draft_ ? &*draft_ : nullptr; }
    void take_up(job::Card card); ///< as the draft
    void put_down();              ///< no draft any more, and none that would follow it
    void take_by_hand();          ///< the draft in its close-up; nothing when it has none
    void do_it();                 ///< carries the draft out; nothing when it cannot be
    Playback& playback() { return playback_; }

private:
    enum class Tab : int { plan, section, cards, done, site };

    void take_news();
    void advance(float seconds);
    void side(Ui& ui, const Layout& layout, const Moment& moment);
    void tabs(Ui& ui, const Layout& layout);
    void cards(Ui& ui, const Box& box);
    void draft_sheet(Ui& ui, const Box& box);
    void draft_head(Ui& ui);
    void close_up(Ui& ui, const Box& box);
    void tools_on_plan(Ui& ui, const Box& window, const PaperView& view);
    void take_up_next();
    float fault_slip(Ui& ui, const Box& box);
    void foot(Ui& ui, const Box& box);
    void asks_to_finish(Ui& ui);
    void take_keys(Ui& ui);
    void step_back();
    void keep();
    void finish();
    void leave();
    void deal();
    bool is_busy() const { return attempt_.is_busy() || finishing_.valid(); }
    bool can_step_back() const;

    Shell& shell_;
    Sitting sitting_;
    drill::Attempt attempt_;
    LiveStory live_;
    Playback playback_;
    ScreenState state_;
    Tab tab_ = Tab::cards;
    std::string filter_;
    std::optional<Draft> draft_;
    PlanTools tools_;                       ///< of the draft, on the plan
    std::optional<ByHand> by_hand_;         ///< the draft in a close-up
    std::vector<job::Step> next_up_;        ///< what the close-up says comes after the draft: taken up when it is done
    bool is_taken_on_plan_ = false;         ///< Enter on a tool: carried out at the end of the frame
    std::vector<DeckCard> deck_;
    std::unique_ptr<Beside<std::vector<DeckCard>>> dealing_; ///< the deck for the site as it stands now; null when none is under way
    bool is_deck_stale_ = true;
    std::vector<job::PersonId> team_;       ///< who did the last card
    std::vector<debrief::FaultLine> news_;  ///< faults that have just happened
    std::string notice_;                    ///< something to be told once, e.g. that the drill could not be kept
    std::string expected_state_;            ///< of a drill gone on with, until it is reached
    bool is_paused_ = false;                ///< by the person
    bool asks_to_finish_ = false;
    std::future<Result<void>> keeping_;
    std::future<Story> finishing_;
};

}
