#include "records/now.hpp"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include <ctime>

namespace flapdoor::records {

std::string now_utc() { return fmt::format("{:%Y-%m-%dT%H:%M:%SZ}", fmt::gmtime(std::time(nullptr))); }

}
