#include "finish/finish_pdf.h"

#include "../paint/outside.h"
#include "paint/painter.h"

#include <catch2/catch.hpp>

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
