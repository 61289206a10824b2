#include "text/atomic_file.hpp"
#include "text/document.hpp"
#include "text/input_file.hpp"

#include <catch2/catch.hpp>

#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

using namespace flapdoor;
using text::read_file;
using text::save_atomically;
namespace fs = std::filesystem;

namespace {

/// A folder of its own for one test.
struct Folder {
    fs::path path;
    Folder()
    {
        std::string name = (fs::temp_directory_path() / "flapdoor-files-XXXXXX").string();
        REQUIRE(::mkdtemp(name.data()) != nullptr);
        path = name;
    }
    ~Folder()
    {
        std::error_code ignored;
        fs::remove_all(path, ignored);
    }
    std::string file(const std::string& name) const { return (path / name).string(); }
    auto count() const { return std::distance(fs::directory_iterator(path), fs::directory_iterator()); }
};

template <class T>
std::string problem(const Result<T>& result)
{
    REQUIRE_FALSE(result);
    return describe(result.error().front());
}

void put(const std::string& path, const std::string& bytes) { std::ofstream(path, std::ios::binary) << bytes; }

}

TEST_CASE("a file is read as it is")
{
    const Folder folder;
    const std::string bytes("a\0b\r\n\xFF", 6);
    put(folder.file("x"), bytes);
    CHECK(read_file(folder.file("x")) == bytes);
    put(folder.file("empty"), "");
    CHECK(read_file(folder.file("empty")) == std::string{});
}

TEST_CASE("a file that cannot be read says why")
{
    const Folder folder;
    CHECK(problem(read_file(folder.file("none"))) == folder.file("none") + ": expected a file that can be read, found no such file");
    CHECK(problem(read_file(folder.path.string())) == folder.path.string() + ": expected a file that can be read, found a folder");
    CHECK(problem(read_file("")) == "expected a file that can be read, found no such file");

    REQUIRE(::mkfifo(folder.file("pipe").c_str(), 0600) == 0);
    CHECK(problem(read_file(folder.file("pipe"))) == folder.file("pipe") + ": expected a file that can be read, found a device or pipe");

    put(folder.file("large"), std::string(text::most_bytes + 1, 'x'));
    CHECK(problem(read_file(folder.file("large"))) == folder.file("large") + ": expected a file of at most 8388608 bytes, found a larger one");
    put(folder.file("largest"), std::string(text::most_bytes, 'x'));
    CHECK(read_file(folder.file("largest")).has_value());

    // Looks like an ordinary file and fails on the first read, also for root.
    CHECK(problem(read_file("/proc/self/mem")).starts_with("/proc/self/mem: expected a file that can be read, found "));
}

TEST_CASE("saving makes a file or replaces it as a whole")
{
    const Folder folder;
    REQUIRE(save_atomically(folder.file("a"), "one"));
    CHECK(read_file(folder.file("a")) == std::string("one"));
    REQUIRE(save_atomically(folder.file("a"), std::string(200'000, 'x')));
    CHECK(read_file(folder.file("a")) == std::string(200'000, 'x'));
    REQUIRE(save_atomically(folder.file("a"), ""));
    CHECK(read_file(folder.file("a")) == std::string{});
    CHECK(folder.count() == 1);
}

TEST_CASE("saving keeps permissions and follows a link")
{
    const Folder folder;
    put(folder.file("real"), "old");
    REQUIRE(::chmod(folder.file("real").c_str(), 0640) == 0);
    fs::create_symlink("real", folder.file("link"));
    REQUIRE(save_atomically(folder.file("link"), "new"));
    CHECK(read_file(folder.file("real")) == std::string("new"));
    CHECK(fs::is_symlink(folder.file("link")));
    CHECK(fs::status(folder.file("real")).permissions() == static_cast<fs::perms>(0640));
}

TEST_CASE("a save that cannot be done says why and leaves nothing behind")
{
    const Folder folder;
    put(folder.file("file"), "old");
    const auto told = [](const std::string& path) { return problem(save_atomically(path, "new")); };
    CHECK(told(folder.file("none/a")) == folder.file("none/a") + ": expected a file that can be saved, found no such folder");
    CHECK(told(folder.path.string()) == folder.path.string() + ": expected a file that can be saved, found a folder of that name");
    CHECK(told(folder.file("file/a")) == folder.file("file/a") + ": expected a file that can be saved, found a file where a folder should be");
    CHECK(told("") == "expected the name of a file to save to, found none");
    CHECK(folder.count() == 1);
    CHECK(read_file(folder.file("file")) == std::string("old"));
}

TEST_CASE("a disk that takes no more leaves the old file whole")
{
    const Folder folder;
    put(folder.file("a"), "old");

    // A limit on the size of files stands in for a full disk: write() fails half way.
    const auto before = std::signal(SIGXFSZ, SIG_IGN);
    rlimit old_limit{};
    REQUIRE(::getrlimit(RLIMIT_FSIZE, &old_limit) == 0);
    const rlimit small{10'000, old_limit.rlim_max};
    REQUIRE(::setrlimit(RLIMIT_FSIZE, &small) == 0);
    const Result<void> saved = save_atomically(folder.file("a"), std::string(100'000, 'x'));
    ::setrlimit(RLIMIT_FSIZE, &old_limit);
    std::signal(SIGXFSZ, before);

    CHECK(problem(saved) == folder.file("a") + ": expected a file that can be saved, found a larger file than is allowed here");
    CHECK(read_file(folder.file("a")) == std::string("old"));
    CHECK(folder.count() == 1);
}
