#include "text/atomic_file.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <system_error>

namespace flapdoor::text {
namespace {

namespace fs = std::filesystem;

std::string why_unwritten(int code)
{
    switch (code) {
        case ENOENT: return "no such folder";
        case ENOTDIR: return "a file where a folder should be";
        case EACCES:
        case EPERM: return "no permission to write there";
        case EROFS: return "a place that can only be read";
        case ENOSPC:
        case EDQUOT: return "no room left";
        case EFBIG: return "a larger file than is allowed here";
        case EISDIR: return "a folder of that name";
        default: return std::generic_category().message(code);
    }
}

/// The file being written. Gone again unless it was renamed over its target.
class Draft {
public:
    explicit Draft(const fs::path& target)
    {
        // O_EXCL: a draft left by somebody else, or laid as a trap, is never written into.
        for (int attempt = 0; attempt < 100 && handle_ < 0; ++attempt) {
            path_ = target.parent_path() / fmt::format(".{}.{}-{}.part", target.filename().string().substr(0, 200), ::getpid(), attempt);
            handle_ = ::open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
            if (handle_ < 0 && errno != EEXIST) break;
        }
        error_ = handle_ < 0 ? errno : 0;
    }
    Draft(const Draft&) = delete;
    Draft& operator=(const Draft&) = delete;
    ~Draft()
    {
        if (handle_ < 0) return;
        ::close(handle_);
        if (!is_in_place_) ::unlink(path_.c_str());
    }

    void write(std::string_view bytes)
    {
        while (error_ == 0 && !bytes.empty()) {
            const ssize_t count = ::write(handle_, bytes.data(), bytes.size());
            if (count > 0) bytes.remove_prefix(static_cast<std::size_t>(count));
            else if (count == 0) error_ = EIO;
            else if (errno != EINTR) error_ = errno;
        }
    }

    void keep_permissions_of(const fs::path& target)
    {
        struct stat about{};
        if (error_ == 0 && ::stat(target.c_str(), &about) == 0) note(::fchmod(handle_, about.st_mode & 07777));
    }

    void put_in_place_of(const fs::path& target)
    {
        if (error_ == 0) note(::fsync(handle_));
        if (error_ == 0) note(::rename(path_.c_str(), target.c_str()));
        is_in_place_ = error_ == 0;
    }

    int error() const { return error_; }

private:
    void note(int outcome)
    {
        if (outcome != 0) error_ = errno;
    }

    fs::path path_;
    int handle_ = -1;
    int error_ = 0;
    bool is_in_place_ = false;
};

/// Some file systems cannot sync a folder; the rename holds there all the same.
void sync_folder(const fs::path& folder)
{
    const int handle = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (handle < 0) return;
    ::fsync(handle);
    ::close(handle);
}

}

Result<void> save_atomically(const std::string& path, std::string_view bytes)
{
    const auto refuse = [&](int code) { return failed({Place{path}, "a file that can be saved", why_unwritten(code)}); };
    if (path.empty()) return failed({Place{}, "the name of a file to save to", "none"});

    std::error_code code;
    const fs::path target = fs::weakly_canonical(path, code);
    if (code) return refuse(code.value());
    if (fs::is_directory(target, code)) return refuse(EISDIR);
    if (path.back() == '/') return refuse(ENOENT);

    Draft draft(target);
    draft.write(bytes);
    draft.keep_permissions_of(target);
    draft.put_in_place_of(target);
    if (draft.error() != 0) return refuse(draft.error());

    sync_folder(target.parent_path());
    return {};
}

}
