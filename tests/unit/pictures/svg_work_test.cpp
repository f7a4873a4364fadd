#include "pictures/read_picture.h"
#include "pictures/svg_work.h"

#include "paint/outside.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

std::string complaint(const std::string& inside) {
    const auto file = outside::written("work.svg", "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'>" +
                                                       inside + "</svg>");
    const auto picture = read_picture(file.string());
    const auto* fault = std::get_if<PictureFault>(&picture);
    return fault == nullptr ? "sound" : fault->message.substr(0, fault->message.find(','));
}

// Part after part, each of which asks for the next `times`.
std::string tree(const std::string& before, const std::string& link, const std::string& after, int depth, int times) {
    std::string text;
    for (int level = 0; level < depth; ++level) {
        text += before + std::to_string(level) + "'>";
        for (int i = 0; i < times; ++i)
            text += link + std::to_string(level + 1) + ")'/>";
        text += after;
    }
    return text + link + "0)'/>";
}

const std::string over_and_over = "draws its parts over and over";

} // namespace

TEST_CASE("a drawing that draws its parts over and over is none", "[pictures]") {
    CHECK(complaint(tree("<mask id='m", "<rect mask='url(#m", "</mask>", 12, 8)) == over_and_over);
    CHECK(complaint(tree("<pattern id='m", "<rect fill='url(#m", "</pattern>", 12, 8)) == over_and_over);
    CHECK(complaint(tree("<clipPath id='m", "<rect style='clip-path: url( \"#m", "</clipPath>", 3, 2)) == "sound");
    CHECK(complaint(tree("<mask id='m", "<rect mask='url(#m", "</mask>", 4, 3)) == "sound");
    std::string uses = "<g id='a0'><path d='M0 0'/></g>";
    for (int i = 1; i < 20; ++i) {
        const std::string before = "<use href='#a" + std::to_string(i - 1) + "'/>";
        uses += "<g id='a" + std::to_string(i) + "'>" + before + before + before + "</g>";
    }
    CHECK(complaint(uses) == over_and_over);
    CHECK(complaint("<g id='a'><use href='#a'/><use href='#b'/></g><g id='b'><use href='#a'/></g>") == "sound");
}

TEST_CASE("a drawing whose style sheet repeats its parts is none", "[pictures]") {
    std::string rules = "<style>";
    std::string masks;
    for (int i = 0; i < 12; ++i) {
        const std::string here = std::to_string(i);
        const std::string next = std::to_string(i + 1);
        rules += ".c" + next + ", #x {fill: red; mask: url(#m" + next + ")}";
        masks += "<mask id='m" + here + "'>";
        for (int n = 0; n < 8; ++n)
            masks += "<rect class='b c" + next + "'/>";
        masks += "</mask>";
    }
    CHECK(complaint(rules + "</style>" + masks) == over_and_over);
    CHECK(
        complaint(
            "<style>.s{fill:url(#g)} rect, path{stroke:url(#g)}</style><linearGradient id='g'><stop/></linearGradient>"
            "<rect class='s'/><path class='s'/>") == "sound");
}

TEST_CASE("references that lead on without end are not followed", "[pictures]") {
    std::string chain;
    for (int i = 0; i < 50'000; ++i)
        chain += "<g id='a" + std::to_string(i) + "'><use href='#a" + std::to_string(i + 1) + "'/></g>";
    CHECK(complaint(chain) == over_and_over);
}

TEST_CASE("what stands in for other text is not looked through", "[pictures]") {
    const auto file = outside::written("entity.svg", "<!DOCTYPE svg [<!ENTITY a '<text>hello</text>'>]><svg width='9' "
                                                     "height='9'>&a;</svg>");
    const auto picture = read_picture(file.string());
    REQUIRE(std::holds_alternative<PictureFault>(picture));
    CHECK_THAT(std::get<PictureFault>(picture).message, Catch::StartsWith("has an abbreviation in it"));
}
