#include "records/now.hpp"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include <ctime>

namespace flapdoor::records {

std::string now_utc() { return fmt::format("{:%Y-%m-%dT%H:%M:%SZ}", fmt::gmtime(std::time(nullptr))); }

std::string today_here() { return fmt::format("{:%Y-%m-%d}", fmt::localtime(std::time(nullptr))); }

}
