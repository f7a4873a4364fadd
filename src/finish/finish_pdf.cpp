#include "finish/finish_pdf.h"

// qpdf 11 asks to be told that its old pointers are not used.
#define POINTERHOLDER_TRANSITION 4
#include <qpdf/Pl_String.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFWriter.hh>

namespace dyeleaf {

namespace {

// No dates: the same records must make the same bytes on another day.
QPDFObjectHandle information(const PdfDetails& details) {
    QPDFObjectHandle info = QPDFObjectHandle::newDictionary();
    if (!details.title.empty()) info.replaceKey("/Title", QPDFObjectHandle::newUnicodeString(details.title));
    if (!details.author.empty()) info.replaceKey("/Author", QPDFObjectHandle::newUnicodeString(details.author));
    info.replaceKey("/Producer", QPDFObjectHandle::newUnicodeString("dyeleaf"));
    return info;
}

// Viewers offer to shrink a page to the printer's margins; a label must come out in its true size
// (ISO 32000-1, 12.2).
QPDFObjectHandle viewer_preferences() {
    QPDFObjectHandle preferences = QPDFObjectHandle::newDictionary();
    preferences.replaceKey("/PrintScaling", QPDFObjectHandle::newName("/None"));
    preferences.replaceKey("/DisplayDocTitle", QPDFObjectHandle::newBool(true));
    return preferences;
}

} // namespace

std::string finish_pdf(const std::string& pdf, const PdfDetails& details) {
    QPDF document;
    document.setSuppressWarnings(true); // Cairo names a picture anew each time a page shows it; writing mends that
    document.processMemoryFile("the painted PDF", pdf.data(), pdf.size());
    document.getTrailer().replaceKey("/Info", document.makeIndirectObject(information(details)));
    QPDFObjectHandle catalog = document.getRoot();
    catalog.replaceKey("/ViewerPreferences", viewer_preferences());
    if (!details.language.empty()) catalog.replaceKey("/Lang", QPDFObjectHandle::newUnicodeString(details.language));

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
