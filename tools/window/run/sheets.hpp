#pragma once

#include "window/run/screen_state.hpp"
#include "window/stage/ui.hpp"

namespace flapdoor::window {

/// The sheets beside the plan. Each fills a panel that scrolls.

/// The plan's cards by phase along a line of time; the one under way is kept in sight. Pressing a card goes to its start.
void steps_sheet(Ui& ui, const Box& box, const Story& story, const Moment& moment, ScreenState& state, Playback& playback);

/// Rules broken up to now, the latest first. What comes later is only counted. Pressing one shows where and when it happened;
/// pressing it again shows the next time.
void faults_sheet(Ui& ui, const Box& box, const Story& story, const Moment& moment, ScreenState& state, Playback& playback);

/// The marking sheet of the whole run.
void marks_sheet(Ui& ui, const Box& box, const Story& story);

/// Where the dust went: outside over time, pathways, what lies at the end.
void dust_sheet(Ui& ui, const Box& box, const Story& story, const Moment& moment);

}
