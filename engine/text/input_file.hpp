#pragma once

#include "core/result.hpp"

#include <string>

namespace flapdoor::text {

/// All bytes of an ordinary file. Missing, a folder, a device or pipe, unreadable, larger than `most_bytes` of
/// document.hpp: a problem each. Never waits on a pipe.
Result<std::string> read_file(const std::string& path);

}
