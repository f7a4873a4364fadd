#include "finish/finish_pdf.h"

#include "finish/artifacts.h"
#include "finish/metadata.h"
#include "finish/navigation.h"
#include "finish/page_boxes.h"
#include "finish/picture_profiles.h"
#include "finish/qpdf_objects.h"
#include "finish/srgb_profile.h"
#include "finish/structure.h"

#include <qpdf/Pl_String.hh>
#include <qpdf/QPDFWriter.hh>

#include <stdexcept>

namespace dyeleaf {

namespace {

// Viewers offer to shrink a page to the printer's margins; a label must come out in its true size
// (ISO 32000-1, 12.2).
PdfObject viewer_preferences() {
    return PdfObject::newDictionary(
        {{"/PrintScaling", pdf_name("/None")}, {"/DisplayDocTitle", PdfObject::newBool(true)}});
}

// All colours are sRGB; the profile says so to whoever prints them (ISO 19005-2, 6.2.3 and 6.2.4.3).
void add_output_intent(QPDF& document) {
    PdfObject profile = document.newStream(srgb_profile());
    profile.getDict().replaceKey("/N", pdf_integer(3));
    const PdfObject intent =
        document.makeIndirectObject(PdfObject::newDictionary({{"/Type", pdf_name("/OutputIntent")},
                                                              {"/S", pdf_name("/GTS_PDFA1")},
                                                              {"/OutputConditionIdentifier", pdf_text("sRGB")},
                                                              {"/Info", pdf_text("sRGB, IEC 61966-2-1")},
                                                              {"/DestOutputProfile", profile}}));
    document.getRoot().replaceKey("/OutputIntents", PdfObject::newArray({intent}));
}

// Pictures are printed as they are, not smoothed (ISO 19005-2, 6.2.8).
void leave_pictures_sharp(QPDF& document) {
    for (PdfObject object : document.getAllObjects()) {
        if (object.isStream() && object.getDict().hasKey("/Interpolate")) object.getDict().removeKey("/Interpolate");
    }
}

void finish_pages(QPDF& document, const std::vector<PdfPage>& pages) {
    const std::vector<PdfObject> objects = document.getAllPages();
    if (objects.size() != pages.size()) throw std::runtime_error("its pages do not match their descriptions");
    std::vector<TaggedPage> tagged;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        set_page_boxes(objects[i], pages[i].trim, pages[i].bleed);
        mark_content(objects[i], pages[i].tagged);
        tagged.push_back(pages[i].tagged);
    }
    add_structure(document, objects, tagged);
    add_page_labels(document.getRoot(), pages);
    add_outline(document, pages, objects);
}

} // namespace

std::string finish_pdf(const std::string& pdf, const PdfDetails& details) {
    QPDF document;
    document.setSuppressWarnings(true); // Cairo names a picture anew each time a page shows it; writing mends that
    document.processMemoryFile("the painted PDF", pdf.data(), pdf.size());
    PdfObject catalog = document.getRoot();
    catalog.replaceKey("/ViewerPreferences", viewer_preferences());
    if (!details.language.empty()) catalog.replaceKey("/Lang", pdf_text(details.language));
    add_metadata(document, details);
    add_output_intent(document);
    leave_pictures_sharp(document);
    keep_picture_profiles(document);
    if (!details.pages.empty()) finish_pages(document, details.pages);

    QPDFWriter writer{document};
    std::string finished;
    Pl_String pipeline{"the finished PDF", nullptr, finished};
    writer.setOutputPipeline(&pipeline);
    writer.setMinimumPDFVersion("1.6"); // PrintScaling
    writer.setObjectStreamMode(qpdf_o_generate);
    writer.setCompressStreams(true);
    writer.setDeterministicID(true);
    writer.write();
    return finished;
}

} // namespace dyeleaf
