#include "finish/finish_pdf.h"

#include "../paint/outside.h"
#include "paint/painter.h"

#include <catch2/catch.hpp>

#include <memory>
#include <stdexcept>

using namespace dyeleaf;

namespace {

std::string painted() {
    PdfPainter painter;
    painter.page({{mm(60), mm(90)}, {FillPath{rect_path({{mm(5), mm(5)}, {mm(20), mm(20)}}), {0.2, 0.3, 0.6}}}});
    return painter.finish();
}

const PdfDetails details{"Skein tags – Ölmühle", "Quillmoor Yarn Works", "de"};

} // namespace

TEST_CASE("a finished PDF has title, studio and language, and no date", "[finish]") {
    const auto file = outside::written("finished.pdf", finish_pdf(painted(), details));
    const std::string info = outside::output("pdfinfo -enc UTF-8 " + file.string());
    CHECK(info.find("Title:           Skein tags – Ölmühle\n") != std::string::npos);
    CHECK(info.find("Author:          Quillmoor Yarn Works\n") != std::string::npos);
    CHECK(info.find("Producer:        dyeleaf\n") != std::string::npos);
    CHECK(info.find("Date") == std::string::npos);
    CHECK(info.find("PDF version:     1.6\n") != std::string::npos);
    CHECK(info.find("170.079 x 255.118 pts") != std::string::npos);

    const std::string objects = outside::output("qpdf --qdf --object-streams=disable " + file.string() + " -");
    CHECK(objects.find("/Lang (de)") != std::string::npos);
    CHECK(objects.find("/PrintScaling /None") != std::string::npos); // no shrinking to the printer's margins
    CHECK(objects.find("/DisplayDocTitle true") != std::string::npos);
}

TEST_CASE("a finished PDF is sound", "[finish]") {
    const auto file = outside::written("sound.pdf", finish_pdf(painted(), details));
    CHECK(outside::output("qpdf --check " + file.string()).find("No syntax or stream encoding errors") !=
          std::string::npos);
}

TEST_CASE("finishing twice gives the same bytes, and other contents another id", "[finish]") {
    const std::string first = finish_pdf(painted(), details);
    CHECK(finish_pdf(painted(), details) == first);
    CHECK(finish_pdf(painted(), {"Jar labels", "Quillmoor Yarn Works", "de"}) != first);
}

TEST_CASE("details that are not known are left out", "[finish]") {
    const auto file = outside::written("bare.pdf", finish_pdf(painted(), {}));
    const std::string info = outside::output("pdfinfo " + file.string());
    CHECK(info.find("Title") == std::string::npos);
    CHECK(info.find("Author") == std::string::npos);
}

TEST_CASE("each page has its boxes, its label and an entry in the outline", "[finish]") {
    PdfDetails with_pages = details;
    with_pages.pages = {{{{mm(10), mm(20)}, {mm(40), mm(50)}}, mm(3), "1 Vorderseite", "26-117:1", {}}};
    const auto file = outside::written("boxes.pdf", finish_pdf(painted(), with_pages));
    // 60 × 90 mm: in points from the lower left corner, 1 mm = 2.8346 pt.
    const std::string boxes = outside::output("pdfinfo -box " + file.string());
    CHECK(boxes.find("TrimBox:            28.35    56.69   141.73   198.43\n") != std::string::npos);
    CHECK(boxes.find("BleedBox:           19.84    48.19   150.24   206.93\n") != std::string::npos);
    const std::string objects = outside::output("qpdf --qdf --object-streams=disable " + file.string() + " -");
    CHECK(objects.find("/P (1 Vorderseite)") != std::string::npos);
    CHECK(objects.find("/Title (26-117:1)") != std::string::npos);
    CHECK(objects.find("/Artifact BMC") != std::string::npos); // the square is nobody's words
}

TEST_CASE("pages that were not described, and parts that were not painted, are refused", "[finish]") {
    PdfDetails wrong = details;
    wrong.pages.resize(2);
    CHECK_THROWS_AS(finish_pdf(painted(), wrong), std::runtime_error);
    wrong.pages.resize(1);
    wrong.pages[0].tagged = {{"26-117:1", {{Tag::Role::figure, "Sloe", {}, {}}}}};
    CHECK_THROWS_AS(finish_pdf(painted(), wrong), std::runtime_error);
}

TEST_CASE("what is painted in parts can be read in parts", "[finish]") {
    PdfPainter painter;
    const Rect square{{mm(5), mm(5)}, {mm(20), mm(20)}};
    auto label = std::make_shared<DisplayList>();
    label->items = {BeginTag{{Tag::Role::figure, "Sloe at 2 %", {}, square}}, FillPath{rect_path(square), {}}, EndTag{},
                    BeginTag{{Tag::Role::paragraph, "More", "https://quillmoor.example", square}}, EndTag{}};
    TaggedPage tagged =
        painter.page({{mm(60), mm(90)}, {Group{label, Transform::move({mm(1), mm(2)}), std::nullopt, true}}});
    REQUIRE(tagged.size() == 1);
    REQUIRE(tagged[0].parts.size() == 2);
    CHECK(near(tagged[0].parts[1].place.left(), mm(6)));
    CHECK(near(tagged[0].parts[1].place.top(), mm(7)));
    tagged[0].title = "Sloe";
    PdfDetails with_pages = details;
    with_pages.pages = {{{{}, {mm(60), mm(90)}}, {}, "1", "", tagged}};
    const auto file = outside::written("parts.pdf", finish_pdf(painter.finish(), with_pages));
    const std::string tree = outside::output("pdfinfo -struct " + file.string());
    CHECK(tree.find("Document\n  Sect \"Sloe\"\n    Figure") != std::string::npos);
    CHECK(outside::output("pdfinfo -url " + file.string()).find("https://quillmoor.example") != std::string::npos);
}
