#include "text/input_file.hpp"

#include "text/document.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <string_view>
#include <system_error>

namespace flapdoor::text {
namespace {

struct OpenFile {
    int handle;
    explicit OpenFile(int h) : handle(h) {}
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    ~OpenFile()
    {
        if (handle >= 0) ::close(handle);
    }
};

std::string why_unread(int code)
{
    if (code == ENOENT) return "no such file";
    if (code == EACCES) return "no permission to read it";
    return std::generic_category().message(code);
}

}

Result<std::string> read_file(const std::string& path)
{
    const auto refuse = [&](std::string found) { return failed({Place{path}, "a file that can be read", std::move(found)}); };
    const auto too_large = [&] { return failed({Place{path}, fmt::format("a file of at most {} bytes", most_bytes), "a larger one"}); };

    // Without O_NONBLOCK, opening a pipe would wait for its other end.
    const OpenFile file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    if (file.handle < 0) return refuse(why_unread(errno));

    struct stat about{};
    if (::fstat(file.handle, &about) != 0) return refuse(why_unread(errno));
    if (S_ISDIR(about.st_mode)) return refuse("a folder");
    if (!S_ISREG(about.st_mode)) return refuse("a device or pipe");
    if (about.st_size > static_cast<off_t>(most_bytes)) return too_large();

    std::string bytes;
    std::array<char, 65536> piece{};
    while (true) {
        const ssize_t count = ::read(file.handle, piece.data(), piece.size());
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return refuse(why_unread(errno));
        if (count == 0) return bytes;
        bytes.append(piece.data(), static_cast<std::size_t>(count));
        if (bytes.size() > most_bytes) return too_large();
    }
}

}
