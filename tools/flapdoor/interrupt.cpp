#include "interrupt.hpp"

#include <csignal>

namespace flapdoor::command {

namespace {

// A signal can speak to the program through nothing else.
volatile std::sig_atomic_t is_noted = 0;

void note(int signal)
{
    is_noted = 1;
    std::signal(signal, SIG_DFL);
}

}

void note_interrupts()
{
    std::signal(SIGINT, note);
    std::signal(SIGTERM, note);
}

bool is_interrupted() { return is_noted != 0; }

}
