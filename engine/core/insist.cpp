#include "core/insist.hpp"

#include <string>

namespace flapdoor::inline core {

void report_broken_promise(const char* why, const char* file, int line)
{
    throw BrokenPromise(std::string(file) + ":" + std::to_string(line) + ": " + why);
}

}
