#include "pdf/metadata.h"

#include "pdf/syntax.h"

#include <fmt/format.h>

namespace dyeleaf {

namespace {

constexpr const char* producer = "dyeleaf";

std::string escaped(const std::string& text) {
    std::string result;
    for (const char c : text) {
        switch (c) {
        case '&': result += "&amp;"; break;
        case '<': result += "&lt;"; break;
        case '>': result += "&gt;"; break;
        default: result += c;
        }
    }
    return result;
}

} // namespace

std::string xmp_packet(const PdfDetails& details) {
    std::string xmp = "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
                      "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
                      "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
                      "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
                      " xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\">\n"
                      "<dc:format>application/pdf</dc:format>\n";
    if (!details.title.empty()) {
        xmp += fmt::format("<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">{}</rdf:li></rdf:Alt></dc:title>\n",
                           escaped(details.title));
    }
    if (!details.author.empty()) {
        xmp +=
            fmt::format("<dc:creator><rdf:Seq><rdf:li>{}</rdf:li></rdf:Seq></dc:creator>\n", escaped(details.author));
    }
    if (!details.language.empty()) {
        xmp += fmt::format("<dc:language><rdf:Bag><rdf:li>{}</rdf:li></rdf:Bag></dc:language>\n",
                           escaped(details.language));
    }
    xmp += fmt::format("<pdf:Producer>{}</pdf:Producer>\n<pdf:Trapped>False</pdf:Trapped>\n", producer);
    return xmp + "</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>\n";
}

std::string information_dictionary(const PdfDetails& details) {
    std::string text = "<<";
    if (!details.title.empty()) text += "/Title" + text_string(details.title);
    if (!details.author.empty()) text += "/Author" + text_string(details.author);
    return text + "/Producer" + text_string(producer) + "/Trapped/False>>";
}

} // namespace dyeleaf
