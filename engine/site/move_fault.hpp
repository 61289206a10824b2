#pragma once

#include <string>

namespace flapdoor::site {

/// What a move of the hands, or one that was left out, did wrong: one sentence each, English.
struct MoveFault {
    std::string what;
    std::string why;
};

}
