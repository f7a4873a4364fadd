#include "cli/options.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

using Words = std::vector<std::string>;

std::variant<Command, Answer, Misuse> read(const Words& words) {
    return read_command_line(words, "1.2.3");
}

Render read_render(Words options) {
    Words words = {"render", "hang-tag", "my-studio", "-o", "tags.pdf"};
    words.insert(words.end(), options.begin(), options.end());
    return std::get<Render>(std::get<Command>(read(words)));
}

// The first line of the complaint.
std::string complaint(const Words& words) {
    const auto result = read(words);
    const auto* misuse = std::get_if<Misuse>(&result);
    return misuse == nullptr ? std::string{} : misuse->text.substr(0, misuse->text.find('\n'));
}

} // namespace

TEST_CASE("each command takes its folder", "[cli]") {
    CHECK(std::get<NewFolder>(std::get<Command>(read({"new", "a"}))).folder == "a");
    CHECK(std::get<CheckFolder>(std::get<Command>(read({"check", "a"}))).folder.home == "a");
    CHECK(std::get<ListFolder>(std::get<Command>(read({"list", "a b"}))).folder.home == "a b");
    CHECK_FALSE(std::get<ShowLayouts>(std::get<Command>(read({"layouts"}))).folder);
    CHECK(std::get<ShowStocks>(std::get<Command>(read({"stocks", "a"}))).folder->home == "a");
}

TEST_CASE("every command that reads a studio can be let into other folders", "[cli]") {
    const auto check = read({"check", "a", "--also-read", "photos", "--also-read", "more photos"});
    const std::vector<std::filesystem::path> both = {"photos", "more photos"};
    CHECK(std::get<CheckFolder>(std::get<Command>(check)).folder.also == both);
    const auto render = read({"render", "dye-card", "a", "-o", "b.pdf", "--also-read", "photos"});
    CHECK(std::get<Render>(std::get<Command>(render)).folder.also.size() == 1);
    CHECK(std::get<ShowLayouts>(std::get<Command>(read({"layouts", "--also-read", "photos", "a"}))).folder->home ==
          "a");
    CHECK_THAT(complaint({"new", "a", "--also-read", "photos"}), Catch::Contains("no option “--also-read”"));
    CHECK_THAT(complaint({"check", "a", "--also-read"}), Catch::Contains("needs something after it"));
}

TEST_CASE("check and lot take a day for today", "[cli]") {
    const auto lot = std::get<NextLot>(std::get<Command>(read({"lot", "a", "--date", "2026-11-02"})));
    CHECK(lot.folder.home == "a");
    CHECK(lot.date == Date{2026, 11, 2});
    CHECK_FALSE(std::get<NextLot>(std::get<Command>(read({"lot", "a"}))).date);
    CHECK(std::get<CheckFolder>(std::get<Command>(read({"check", "a", "--date", "2026-11-02"}))).date);
    CHECK(complaint({"check", "a", "--date", "2026-11"}) ==
          "dyeleaf: --date takes a day as year-month-day, such as 2026-11-02, not “2026-11”");
    CHECK(complaint({"lot"}) == "dyeleaf: lot needs the name of a folder: dyeleaf lot my-studio");
}

TEST_CASE("facts takes a folder and an id", "[cli]") {
    const auto facts = std::get<ShowFacts>(std::get<Command>(read({"facts", "a", "26-117:3", "--date", "2026-11-02"})));
    CHECK(facts.folder.home == "a");
    CHECK(facts.id == "26-117:3");
    CHECK(facts.date == Date{2026, 11, 2});
    CHECK(complaint({"facts", "a"}) ==
          "dyeleaf: facts needs your folder and the id of a record: dyeleaf facts my-studio sloe");
    CHECK(complaint({"facts", "a", "b", "--date", "2026"}) ==
          "dyeleaf: --date takes a day as year-month-day, such as 2026-11-02, not “2026”");
}

TEST_CASE("render has defaults", "[cli]") {
    const Render render = read_render({});
    CHECK(render.layout == "hang-tag");
    CHECK(render.folder.home == "my-studio");
    CHECK(render.output == "tags.pdf");
    CHECK(render.format == Format::pdf);
    CHECK(render.only.empty());
    CHECK(render.copies == 1);
    CHECK(render.copies_of.empty());
    CHECK(render.used.empty());
    CHECK_FALSE(render.piles);
    CHECK_FALSE(render.backs);
    CHECK_FALSE(render.changed);
    CHECK_FALSE(render.remember);
    CHECK_FALSE(render.stock);
    CHECK_FALSE(render.date);
    CHECK(render.dpi == 300);
    CHECK_FALSE(render.ink.mono);
    CHECK_FALSE(render.ink.sparing);
    CHECK(read_render({"--mono"}).ink.mono);
    CHECK(read_render({"--save-ink"}).ink.sparing);
}

TEST_CASE("render takes its options", "[cli]") {
    const Render render = read_render({"--only", "26-117", "--only", "26-118:2-4", "--copies", "3", "--skip", "5",
                                       "--stock", "letter-card", "--date", "2026-11-02", "--dpi", "600"});
    CHECK(render.only == Words{"26-117", "26-118:2-4"});
    CHECK(render.copies == 3);
    CHECK(render.used == std::set<int>{1, 2, 3, 4, 5});
    CHECK(render.stock == "letter-card");
    CHECK(render.date == Date{2026, 11, 2});
    CHECK(render.dpi == 600);
}

TEST_CASE("cells that are used up are listed, skipped, or both", "[cli]") {
    CHECK(read_render({"--used", "1-4,7,12"}).used == std::set<int>{1, 2, 3, 4, 7, 12});
    CHECK(read_render({"--used", "7", "--skip", "2"}).used == std::set<int>{1, 2, 7});
    CHECK(complaint({"render", "a", "b", "-o", "x.pdf", "--used", "4-1"}) ==
          "dyeleaf: --used takes the cells that are used up, counted row by row from 1, such as 1-4,7,12, not “4-1”");
}

TEST_CASE("a printer is named, or one to be measured", "[cli]") {
    const Render render = read_render({"--printer", "workroom", "--tray", "rear"});
    CHECK(render.printer.printer == "workroom");
    CHECK(render.printer.tray == "rear");
    CHECK_FALSE(read_render({}).printer.named());
    const auto command = read({"measure", "-o", "measure.pdf", "--paper", "Letter", "--backs", "by-hand"});
    const auto& measure = std::get<MeasurePrinter>(std::get<Command>(command));
    CHECK_FALSE(measure.folder);
    CHECK(measure.paper == "Letter");
    CHECK(measure.backs == Backs::by_hand);
    CHECK_FALSE(measure.corrected);
    CHECK(read_render({"--printer", "None"}).printer.is_none());
    CHECK(complaint({"measure", "-o", "x.pdf", "--printer", "none"}) ==
          "dyeleaf: --printer none means no printer, so none can be called that: --printer workroom");
}

TEST_CASE("copies are of all labels, or of some", "[cli]") {
    const Render render = read_render({"--copies", "2", "--copies", "sloe=4", "--copies", "26-117:3=1"});
    CHECK(render.copies == 2);
    REQUIRE(render.copies_of.size() == 2);
    CHECK(render.copies_of[0].selector == "sloe");
    CHECK(render.copies_of[0].count == 4);
    CHECK(render.copies_of[1].selector == "26-117:3");
    const auto with = [](const std::string& value) {
        return complaint({"render", "a", "b", "-o", "x.pdf", "--copies", value, "--copies", "3"});
    };
    CHECK(with("2") == "dyeleaf: --copies can be given only once without an id; for one label write --copies "
                       "sloe-shaker=4");
    CHECK(with("sloe=many") == "dyeleaf: --copies takes a whole number from 1 to 1000, not “many”");
    CHECK(with("sloe=") == "dyeleaf: --copies takes a whole number from 1 to 1000, not “”");
    CHECK(with("=2") == "dyeleaf: --copies needs an id before the =: --copies sloe-shaker=2");
}

TEST_CASE("backs are turned one way or another", "[cli]") {
    CHECK(read_render({"--backs", "long-edge"}).backs == Backs::long_edge);
    CHECK(read_render({"--backs", "Short edge"}).backs == Backs::short_edge);
    CHECK(read_render({"--backs", "by-hand"}).backs == Backs::by_hand);
    CHECK(read_render({"--backs", "by-hand-reversed"}).backs == Backs::by_hand_reversed);
    CHECK(complaint({"render", "a", "b", "-o", "x.pdf", "--backs", "top"}) ==
          "dyeleaf: --backs takes long-edge, short-edge, by-hand or by-hand-reversed, not “top”");
}

TEST_CASE("proof takes what render takes, and no file to write", "[cli]") {
    const auto proof = std::get<ShowProof>(
        std::get<Command>(read({"proof", "hang-tag", "my-studio", "--used", "2", "--piles", "--changed", "--mono"})));
    CHECK(proof.sheets.layout == "hang-tag");
    CHECK(proof.sheets.folder.home == "my-studio");
    CHECK(proof.sheets.used == std::set<int>{2});
    CHECK(proof.sheets.piles);
    CHECK(proof.sheets.changed);
    CHECK(proof.sheets.ink.mono);
    CHECK(complaint({"proof", "hang-tag"}) ==
          "dyeleaf: proof needs the name of a layout and your folder: dyeleaf proof hang-tag my-studio");
    CHECK_THAT(complaint({"proof", "a", "b", "-o", "x.pdf"}), Catch::Contains("there is no option “-o” for proof"));
    CHECK_THAT(complaint({"proof", "a", "b", "--remember"}), Catch::Contains("there is no option “--remember”"));
}

TEST_CASE("--only takes one word, so that it may stand before the layout", "[cli]") {
    const auto result = read({"render", "--only", "sloe", "dye-card", "my-studio", "-o", "x.pdf"});
    const Render& render = std::get<Render>(std::get<Command>(result));
    CHECK(render.only == Words{"sloe"});
    CHECK(render.layout == "dye-card");
}

TEST_CASE("the file's ending says its format, in any case of letters", "[cli]") {
    const auto format = [](const std::string& file) {
        return std::get<Render>(std::get<Command>(read({"render", "a", "b", "-o", file}))).format;
    };
    CHECK(format("x.pdf") == Format::pdf);
    CHECK(format("x.PNG") == Format::png);
    CHECK(format("my.cards.svg") == Format::svg);
}

TEST_CASE("what is missing or wrong is said with what to type", "[cli]") {
    CHECK(complaint({"rendr"}) == "dyeleaf: there is no command “rendr”; did you mean “render”?");
    CHECK(complaint({"--loud"}) == "dyeleaf: there is no option “--loud”");
    CHECK(complaint({"check"}) == "dyeleaf: check needs the name of a folder: dyeleaf check my-studio");
    CHECK(complaint({"check", "my", "studio"}) ==
          "dyeleaf: “studio” is one word too many; a name with spaces in it goes in quotation marks: \"my studio\"");
    CHECK_THAT(complaint({"render", "a"}), Catch::Contains("dyeleaf render hang-tag my-studio -o tags.pdf"));
    CHECK(complaint({"render", "a", "b"}) == "dyeleaf: render needs the file to write: -o tags.pdf");
    CHECK_THAT(complaint({"render", "a", "b", "-o", "x.doc"}), Catch::Contains("ends in .pdf, .png or .svg"));
    CHECK(complaint({"render", "a", "b", "-o", "x.pdf", "--stok=z"}) ==
          "dyeleaf: there is no option “--stok=z” for render; did you mean “--stock”?");
    CHECK(complaint({"render", "a", "b", "-o"}) == "dyeleaf: --output needs something after it");
    CHECK(complaint({"render", "a", "b", "-o", "x.pdf", "-o", "y.pdf"}) == "dyeleaf: --output can be given only once");
}

TEST_CASE("numbers out of their range are refused with the range", "[cli]") {
    const auto with = [](const std::string& option, const std::string& value) {
        return complaint({"render", "a", "b", "-o", "x.pdf", option, value});
    };
    CHECK(with("--copies", "0") == "dyeleaf: --copies takes a whole number from 1 to 1000, not “0”");
    CHECK(with("--copies", "1001") != "");
    CHECK(with("--copies", "two") != "");
    CHECK(with("--copies", "1000") == "");
    CHECK(with("--skip", "-1") == "dyeleaf: --skip takes a whole number from 0 to 999, not “-1”");
    CHECK(with("--skip", "1000") != "");
    CHECK(with("--dpi", "29") == "dyeleaf: --dpi takes a whole number from 30 to 1200, not “29”");
    CHECK(with("--dpi", "1200") == "");
    CHECK(with("--date", "2026-11") ==
          "dyeleaf: --date takes a day as year-month-day, such as 2026-11-02, not “2026-11”");
    CHECK(with("--date", "2026-02-30") != "");
}

TEST_CASE("help and version are answers", "[cli]") {
    CHECK(std::get<Answer>(read({"--version"})).text == "dyeleaf 1.2.3\n");
    CHECK_THAT(std::get<Answer>(read({"--help"})).text, Catch::Contains("dyeleaf check my-studio"));
    CHECK_THAT(std::get<Answer>(read({"render", "--help"})).text, Catch::Contains("--copies"));
}

TEST_CASE("nothing typed is answered with the help, as a misuse", "[cli]") {
    CHECK_THAT(std::get<Misuse>(read({})).text, Catch::Contains("Examples:"));
}
