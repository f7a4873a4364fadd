#include "pdf/pdf_writer.h"

#include "../paint/outside.h"

#include <catch2/catch.hpp>

#include <memory>
#include <stdexcept>

using namespace dyeleaf;

namespace {

const Rect square{{mm(5), mm(5)}, {mm(20), mm(20)}};
const PdfDetails details{"Skein tags – Ölmühle", "Quillmoor Yarn Works", "de"};

DisplayList page(std::vector<DisplayItem> items = {FillPath{rect_path(square), {0.2, 0.3, 0.6}}}) {
    return {{mm(60), mm(90)}, std::move(items)};
}

PdfPage whole_page(TaggedPage tagged) {
    return {{{}, {mm(60), mm(90)}}, {}, "1", {}, std::move(tagged)};
}

template <class Describe>
std::string written(const std::vector<DisplayList>& pages, const PdfDetails& about, Describe describe) {
    std::string bytes;
    PdfWriter writer{[&](std::string_view more) { bytes += more; }};
    for (const DisplayList& list : pages)
        writer.page(list, describe);
    writer.finish(about);
    return bytes;
}

std::string written(const PdfDetails& about) {
    return written({page()}, about, whole_page);
}

// The file with nothing packed, as another program reads it.
std::string unpacked(const std::filesystem::path& file) {
    return outside::output("qpdf --qdf --object-streams=disable " + file.string() + " -");
}

} // namespace

TEST_CASE("a PDF has title, studio and language, and no date", "[pdf]") {
    const auto file = outside::written("finished.pdf", written(details));
    const std::string info = outside::output("pdfinfo -enc UTF-8 " + file.string());
    CHECK(info.find("Title:           Skein tags – Ölmühle\n") != std::string::npos);
    CHECK(info.find("Author:          Quillmoor Yarn Works\n") != std::string::npos);
    CHECK(info.find("Producer:        dyeleaf\n") != std::string::npos);
    CHECK(info.find("Date") == std::string::npos);
    CHECK(info.find("PDF version:     1.6\n") != std::string::npos);
    CHECK(info.find("170.079 x 255.118 pts") != std::string::npos);

    const std::string objects = unpacked(file);
    CHECK(objects.find("/Lang (de)") != std::string::npos);
    CHECK(objects.find("/PrintScaling /None") != std::string::npos); // no shrinking to the printer's margins
    CHECK(objects.find("/DisplayDocTitle true") != std::string::npos);
}

TEST_CASE("a PDF is sound, also one of many pages", "[pdf]") {
    for (const std::size_t count : {1U, 99U, 100U, 101U, 1'000U}) {
        const auto file =
            outside::written("sound.pdf", written(std::vector<DisplayList>(count, page()), details, whole_page));
        CHECK(outside::output("qpdf --check " + file.string()).find("No syntax or stream encoding errors") !=
              std::string::npos);
        CHECK(outside::output("qpdf --show-npages " + file.string()) == std::to_string(count) + "\n");
    }
}

TEST_CASE("writing twice gives the same bytes, and other contents another id", "[pdf]") {
    const std::string first = written(details);
    CHECK(written(details) == first);
    CHECK(written({"Jar labels", "Quillmoor Yarn Works", "de"}) != first);
}

TEST_CASE("bytes leave while pages come", "[pdf]") {
    std::size_t gone = 0;
    std::size_t most_at_once = 0;
    PdfWriter writer{[&](std::string_view more) {
        gone += more.size();
        most_at_once = std::max(most_at_once, more.size());
    }};
    for (int i = 0; i < 3'000; ++i) {
        std::vector<DisplayItem> dots;
        for (int k = 0; k < 20; ++k)
            dots.emplace_back(FillPath{circle_path({mm(i * 0.01), mm(k)}, mm(1)), {}});
        writer.page(page(std::move(dots)), whole_page);
    }
    const std::size_t before_the_end = gone;
    writer.finish(details);
    CHECK(before_the_end > gone / 2);
    CHECK(most_at_once < 200'000);
}

TEST_CASE("details that are not known are left out", "[pdf]") {
    const auto file = outside::written("bare.pdf", written(PdfDetails{}));
    const std::string info = outside::output("pdfinfo " + file.string());
    CHECK(info.find("Title") == std::string::npos);
    CHECK(info.find("Author") == std::string::npos);
}

TEST_CASE("each page has its boxes, its label and an entry in the outline", "[pdf]") {
    const auto describe = [](TaggedPage tagged) {
        return PdfPage{{{mm(10), mm(20)}, {mm(40), mm(50)}}, mm(3), "1 Vorderseite", "26-117:1", std::move(tagged)};
    };
    const auto file = outside::written("boxes.pdf", written({page(), page()}, details, describe));
    // 60 × 90 mm: in points from the lower left corner, 1 mm = 2.8346 pt.
    const std::string boxes = outside::output("pdfinfo -box " + file.string());
    CHECK(boxes.find("TrimBox:            28.35    56.69   141.73   198.43\n") != std::string::npos);
    CHECK(boxes.find("BleedBox:           19.84    48.19   150.24   206.93\n") != std::string::npos);
    const std::string objects = unpacked(file);
    CHECK(objects.find("/P (1 Vorderseite)") != std::string::npos);
    CHECK(objects.find("/Title (26-117:1)") != std::string::npos);
    CHECK(objects.find("/Count 2") != std::string::npos);
    CHECK(objects.find("/Artifact BMC") != std::string::npos); // the square is nobody's words
}

TEST_CASE("what is painted in parts can be read in parts", "[pdf]") {
    auto label = std::make_shared<DisplayList>();
    label->items = {BeginTag{{Tag::Role::figure, "Sloe at 2 %", {}, square}}, FillPath{rect_path(square), {}}, EndTag{},
                    BeginTag{{Tag::Role::paragraph, "More", "https://quillmoor.example", square}}, EndTag{}};
    const DisplayList sheet = page({Group{label, Transform::move({mm(1), mm(2)}), std::nullopt, true}});
    const auto describe = [](TaggedPage tagged) {
        REQUIRE(tagged.size() == 1);
        REQUIRE(tagged[0].parts.size() == 2);
        CHECK(near(tagged[0].parts[1].place.left(), mm(6)));
        CHECK(near(tagged[0].parts[1].place.top(), mm(7)));
        tagged[0].title = "Sloe";
        return whole_page(std::move(tagged));
    };
    const auto file = outside::written("parts.pdf", written({sheet}, details, describe));
    const std::string tree = outside::output("pdfinfo -struct " + file.string());
    CHECK(tree.find("Document\n  Sect \"Sloe\"\n    Figure") != std::string::npos);
    CHECK(outside::output("pdfinfo -url " + file.string()).find("https://quillmoor.example") != std::string::npos);
}

TEST_CASE("a page that no viewer can show is refused", "[pdf]") {
    PdfWriter writer{[](std::string_view) {}};
    CHECK_THROWS_AS(writer.page({{mm(60), inches(201)}, {}}, whole_page), std::runtime_error);
    CHECK_THROWS_AS(writer.page({{Length{}, mm(10)}, {}}, whole_page), std::runtime_error);
}
