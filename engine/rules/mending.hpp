#pragma once

#include "rules/condition.hpp"

namespace flapdoor::rules {

/// A fault found in a log that may go on: could a later card still set it right? Told only when it is sure that none can.
/// @param end  of the log so far, time of day
bool can_be_mended(const Condition& condition, const Fault& fault, Time end);

}
