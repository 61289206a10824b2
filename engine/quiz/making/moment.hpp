#pragma once

#include "quiz/making/workshop.hpp"
#include "quiz/phrase.hpp"

#include <string>
#include <vector>

/// Cards of a played run as questions speak of them.
namespace flapdoor::quiz {

/// The card's title and the thing it is about: "Cover a register (Return register)".
Phrase card_phrase(const job::LogEntry& entry, const job::Scenario& scenario);

/// A fault of a played run that one card brought about.
struct CardFault {
    int entry = 0;                  ///< in the log
    const rules::SheetRule* rule = nullptr;
};

/// Faults that a card brought about, consequences left out, in the order of the log.
std::vector<CardFault> card_faults(const Played& played);

}
