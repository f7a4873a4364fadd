#include "finish/write_file.h"

#include "../paint/outside.h"

#include <catch2/catch.hpp>

#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>

using namespace dyeleaf;
namespace fs = std::filesystem;

namespace {

fs::path fresh_folder() {
    const fs::path folder = fs::temp_directory_path() / "dyeleaf-write-test";
    fs::remove_all(folder);
    fs::create_directories(folder);
    return folder;
}

std::vector<std::string> names_in(const fs::path& folder) {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator{folder})
        names.push_back(entry.path().filename().string());
    std::ranges::sort(names);
    return names;
}

// Files of this process may not grow beyond `bytes` while this lives.
class SizeLimit {
  public:
    explicit SizeLimit(rlim_t bytes) {
        getrlimit(RLIMIT_FSIZE, &before_);
        handler_ = std::signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{bytes, before_.rlim_max};
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    SizeLimit(const SizeLimit&) = delete;
    SizeLimit& operator=(const SizeLimit&) = delete;
    ~SizeLimit() {
        setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, handler_);
    }

  private:
    rlimit before_{};
    void (*handler_)(int) = nullptr;
};

// The number of a process that has ended.
std::string dead_process() {
    const pid_t child = fork();
    if (child == 0) _exit(0);
    waitpid(child, nullptr, 0);
    return std::to_string(child);
}

std::string refusal(const fs::path& target) {
    Diagnostics diagnostics;
    CHECK_FALSE(write_file(target, "new", diagnostics));
    REQUIRE(diagnostics.errors() == 1);
    const Diagnostic problem = diagnostics.sorted().front();
    CHECK(problem.message.find(target.string()) != std::string::npos);
    CHECK_FALSE(problem.help.empty());
    return problem.message;
}

} // namespace

TEST_CASE("a file is written whole, and nothing else is left", "[finish]") {
    const fs::path folder = fresh_folder();
    Diagnostics diagnostics;
    const std::string bytes("a\0b\n", 4);
    CHECK(write_file(folder / "tags.pdf", bytes, diagnostics));
    CHECK(outside::contents(folder / "tags.pdf") == bytes);
    CHECK(write_file(folder / "tags.pdf", "second", diagnostics));
    CHECK(outside::contents(folder / "tags.pdf") == "second");
    CHECK(names_in(folder) == std::vector<std::string>{"tags.pdf"});
    CHECK(diagnostics.errors() + diagnostics.warnings() == 0);
}

TEST_CASE("many files can be on their way at once", "[finish]") {
    const fs::path folder = fresh_folder();
    rlimit before{};
    getrlimit(RLIMIT_NOFILE, &before);
    const rlimit few{32, before.rlim_max};
    setrlimit(RLIMIT_NOFILE, &few);
    std::vector<PendingFile> files;
    for (int i = 0; i < 100; ++i) {
        PendingFile& file = files.emplace_back(folder / (std::to_string(i) + ".png"));
        file.write("page");
        file.complete();
    }
    Diagnostics diagnostics;
    for (PendingFile& file : files)
        CHECK(file.put_in_place(diagnostics));
    setrlimit(RLIMIT_NOFILE, &before);
    CHECK(diagnostics.errors() == 0);
    CHECK(names_in(folder).size() == 100);
}

TEST_CASE("a write that fails midway leaves the old file whole", "[finish]") {
    const fs::path folder = fresh_folder();
    Diagnostics diagnostics;
    REQUIRE(write_file(folder / "tags.pdf", "old", diagnostics));
    {
        const SizeLimit limit{10'000};
        CHECK_FALSE(write_file(folder / "tags.pdf", std::string(100'000, 'x'), diagnostics));
    }
    CHECK(diagnostics.errors() == 1);
    CHECK(outside::contents(folder / "tags.pdf") == "old");
    CHECK(names_in(folder) == std::vector<std::string>{"tags.pdf"});
}

TEST_CASE("places where no file can stand are errors in plain words", "[finish]") {
    const fs::path folder = fresh_folder();
    outside::written("plain-file", "");
    fs::create_directory(folder / "cards.pdf");
    CHECK_THAT(refusal(folder / "cards.pdf"), Catch::Contains("a folder of this name"));
    CHECK_THAT(refusal(folder / "none" / "cards.pdf"), Catch::Contains("there is no folder"));
    CHECK_THAT(refusal(fs::temp_directory_path() / "dyeleaf-test-plain-file" / "cards.pdf"),
               Catch::Contains("is a file, not a folder"));
    CHECK_THAT(refusal(folder / std::string(300, 'n')), Catch::Contains("too long"));
    CHECK_THAT(refusal(folder / ""), Catch::Contains("a folder is not a file"));
    CHECK(names_in(folder) == std::vector<std::string>{"cards.pdf"});
}

TEST_CASE("a device is not replaced by a file", "[finish]") {
    CHECK_THAT(refusal("/dev/null"), Catch::Contains("not an ordinary file"));
    CHECK(fs::is_character_file("/dev/null"));
}

TEST_CASE("a folder without the right to write is an error", "[finish]") {
    if (geteuid() == 0) return; // root may write anywhere
    const fs::path folder = fresh_folder();
    fs::permissions(folder, fs::perms::owner_read | fs::perms::owner_exec);
    CHECK_THAT(refusal(folder / "cards.pdf"), Catch::Contains("may not write"));
    fs::permissions(folder, fs::perms::owner_all);
}

TEST_CASE("what a run that was cut short left behind goes, what a running one writes stays", "[finish]") {
    const fs::path folder = fresh_folder();
    const auto touch = [&](const std::string& name) { std::ofstream{folder / name} << "half"; };
    const std::string dead = dead_process();
    touch(".tags.pdf.dyeleaf-tmp-" + dead);
    touch(".cards.pdf.dyeleaf-tmp-" + dead);
    touch(".tags.pdf.dyeleaf-tmp-1"); // the first process always runs
    touch(".tags.pdf.dyeleaf-tmp-notes");
    Diagnostics diagnostics;
    REQUIRE(write_file(folder / "tags.pdf", "new", diagnostics));
    CHECK(names_in(folder) == std::vector<std::string>{".cards.pdf.dyeleaf-tmp-" + dead, ".tags.pdf.dyeleaf-tmp-1",
                                                       ".tags.pdf.dyeleaf-tmp-notes", "tags.pdf"});
}

TEST_CASE("a symbolic link stays one, and rights stay as they were", "[finish]") {
    const fs::path folder = fresh_folder();
    Diagnostics diagnostics;
    REQUIRE(write_file(folder / "real.pdf", "old", diagnostics));
    fs::permissions(folder / "real.pdf", fs::perms::owner_read | fs::perms::owner_write);
    fs::create_symlink("real.pdf", folder / "link.pdf");
    REQUIRE(write_file(folder / "link.pdf", "new", diagnostics));
    CHECK(fs::is_symlink(folder / "link.pdf"));
    CHECK(outside::contents(folder / "real.pdf") == "new");
    CHECK(fs::status(folder / "real.pdf").permissions() == (fs::perms::owner_read | fs::perms::owner_write));
}
