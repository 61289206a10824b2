#pragma once

#include "core/result.hpp"

#include <string>
#include <string_view>

namespace flapdoor::text {

/// Replaces a file as a whole: written beside it, synced, renamed over it, folder synced. After a crash or a full disk
/// there is either the old file or the new one, never half of one. Keeps the permissions of the file it replaces and
/// follows a symbolic link. A path in no folder, without permission, without room, or that is a folder: a problem, and
/// nothing has changed.
Result<void> save_atomically(const std::string& path, std::string_view bytes);

}
