#pragma once

#include "window/class_room/vote_sheet.hpp"
#include "window/debrief/reference_run.hpp"
#include "window/run/dust_pictures.hpp"
#include "window/run/playback.hpp"
#include "window/run/view_kind.hpp"

#include <memory>
#include <optional>
#include <utility>

namespace flapdoor::window {

/// A run played to a class, large. Freeze and ask what may come next or where the dust will go, count votes, reveal, play on.
class ClassRoom {
public:
    /// @param careful  the careful plan of the same drill, for what may come next; carried out beside the window
    ClassRoom(std::shared_ptr<const Story> played, debrief::Inputs careful, std::uint64_t seed);

    void play(Ui& ui, const Box& box, bool keeps_still);

    /// Takes the question away that is asked. False when none is.
    bool drop_question() { return std::exchange(question_, std::nullopt).has_value(); }

    Playback& playback() { return playback_; }
    const std::optional<ClassQuestion>& question() const { return question_; }
    ReferenceRun& careful() { return careful_; }
    bool wants_debrief() const { return wants_debrief_; }    ///< asked for when the run is over
    bool is_moving() const { return playback_.is_playing() || careful_.is_under_way(); }

private:
    void plan(Ui& ui, const Box& box, bool keeps_still);
    void ask(Ui& ui, const Box& box);
    void bar(Ui& ui, const Box& box);
    void take_keys(Ui& ui);
    void ask_next();
    void ask_where();

    std::shared_ptr<const Story> played_;
    ReferenceRun careful_;
    Playback playback_;
    std::optional<ClassQuestion> question_;
    VoteSheet sheet_;
    DustPictures dust_;
    ViewKind view_ = ViewKind::there;
    bool wants_debrief_ = false;
    bool wants_next_ = false;   ///< asked before the careful run was there
};

}
