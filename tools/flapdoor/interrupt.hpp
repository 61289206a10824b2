#pragma once

namespace flapdoor::command {

/// From now on the first Ctrl-C (or a request to end) is noted instead of ending the program; the second ends it.
void note_interrupts();

/// Was there one?
bool is_interrupted();

}
