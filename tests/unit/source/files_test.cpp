// Files and folders.
#include "source/files.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <sys/stat.h>

using namespace dyeleaf;

namespace {

// A folder of its own for each test, gone afterwards.
class Folder {
  public:
    Folder() : path_(std::filesystem::temp_directory_path() / "dyeleaf-files-test" / "studio") {
        std::filesystem::remove_all(path_.parent_path());
        std::filesystem::create_directories(path_);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { std::filesystem::remove_all(path_.parent_path()); }

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    void write(const std::string& name, const std::string& text) const { std::ofstream{path_ / name} << text; }

  private:
    std::filesystem::path path_;
};

std::vector<std::string> names(const std::vector<std::shared_ptr<const SourceFile>>& files) {
    std::vector<std::string> result;
    for (const auto& file : files)
        result.push_back(file->name);
    return result;
}

} // namespace

TEST_CASE("a folder gives its YAML files by name and leaves the rest alone", "[source]") {
    const Folder folder;
    for (const char* name : {"lots.yaml", "bases.yml", "Dyes.yaml", ".hidden.yaml", "notes.txt", "dyes.yaml~"})
        folder.write(name, "a: b\n");
    std::filesystem::create_directory(folder.path() / "layouts");
    std::ofstream{folder.path() / "layouts" / "card.yaml"} << "layout: card\n";
    Diagnostics diagnostics;
    const std::vector<std::string> expected = {"studio/Dyes.yaml", "studio/bases.yml", "studio/lots.yaml"};
    CHECK(names(read_folder(folder.path(), diagnostics)) == expected);
    CHECK(names(read_folder(folder.path() / "", diagnostics)) == expected); // as a shell completes it
    CHECK(diagnostics.sorted().empty());
}

TEST_CASE("a file with a second ending is told that it is not read", "[source]") {
    const Folder folder;
    for (const char* name :
         {"dyes.yaml", "yarn.yaml.txt", "Lots.YML.docx", "notes.txt", "dyes.yaml.bak", ".a.yaml.txt"})
        folder.write(name, "a: b\n");
    Diagnostics diagnostics;
    CHECK(names(read_folder(folder.path(), diagnostics)) == std::vector<std::string>{"studio/dyes.yaml"});
    const auto all = diagnostics.sorted();
    REQUIRE(all.size() == 2);
    CHECK(diagnostics.errors() == 0);
    CHECK(all[0].spot.file->name == "studio/Lots.YML.docx");
    CHECK(all[0].message == "“Lots.YML.docx” is not read");
    CHECK(all[0].help == "save it as plain text, with the name Lots.YML");
    CHECK(all[1].spot.file->name == "studio/yarn.yaml.txt");
    CHECK(all[1].message == "“yarn.yaml.txt” is not read");
    CHECK(all[1].help == "rename it yarn.yaml");
}

TEST_CASE("a folder that is none, or holds nothing, is an error", "[source]") {
    const Folder folder;
    Diagnostics diagnostics;
    CHECK(read_folder(folder.path(), diagnostics).empty());
    folder.write("a.yaml", "a: b\n");
    CHECK(read_folder(folder.path() / "a.yaml", diagnostics).empty());
    CHECK(read_folder(folder.path() / "nowhere", diagnostics).empty());
    CHECK(diagnostics.errors() == 3);
}

TEST_CASE("only plain files of a sane size are read, and nothing is waited for", "[source]") {
    const Folder folder;
    folder.write("small.yaml", "12345");
    const std::filesystem::path pipe = folder.path() / "pipe.yaml";
    REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
    Diagnostics diagnostics;
    const auto file = read_file(folder.path() / "small.yaml", "small.yaml", 5, diagnostics);
    REQUIRE(file);
    CHECK(file->text == "12345");
    CHECK(diagnostics.sorted().empty());
    CHECK_FALSE(read_file(folder.path() / "small.yaml", "small.yaml", 4, diagnostics));
    CHECK_FALSE(read_file(pipe, "pipe.yaml", 100, diagnostics));
    CHECK_FALSE(read_file("/dev/zero", "zero.yaml", 100, diagnostics));
    CHECK_FALSE(read_file(folder.path(), "folder.yaml", 100, diagnostics));
    CHECK_FALSE(read_file(folder.path() / "none.yaml", "none.yaml", 100, diagnostics));
    CHECK(diagnostics.errors() == 5);
}
