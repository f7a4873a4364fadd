#include "pdf/imported_page.h"

#include "pdf/syntax.h"

// qpdf 11 asks to be told that its old pointers are not used.
#define POINTERHOLDER_TRANSITION 4
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageObjectHelper.hh>

#include <map>
#include <string_view>

namespace dyeleaf {

namespace {

std::string_view bytes_of(const std::shared_ptr<Buffer>& data) {
    return {reinterpret_cast<const char*>(data->getBuffer()), data->getSize()};
}

// Copies objects, each once, under numbers of the file that takes them.
class Copier {
  public:
    explicit Copier(ObjectFile& file) : file_(file) {}

    int copy_form(QPDFObjectHandle form) {
        const std::string entries = entries_of(form.getDict(), {"/Length", "/Filter", "/DecodeParms"});
        return file_.put_stream(entries, bytes_of(form.getStreamData()));
    }

  private:
    int copy(QPDFObjectHandle object) {
        const auto [known, is_new] = numbers_.try_emplace(object.getObjGen());
        if (!is_new) return known->second;
        const int number = known->second = file_.reserve();
        if (object.isStream()) {
            file_.put_packed(number, entries_of(object.getDict(), {"/Length"}), bytes_of(object.getRawStreamData()));
        } else {
            file_.put(number, direct(object));
        }
        return number;
    }

    std::string value(QPDFObjectHandle object) {
        return object.isIndirect() ? reference(copy(object)) : direct(object);
    }

    std::string direct(QPDFObjectHandle object) {
        if (object.isDictionary()) return "<<" + entries_of(object, {}) + ">>";
        if (!object.isArray()) return object.unparseResolved();
        std::string text = "[";
        for (const QPDFObjectHandle& one : object.getArrayAsVector())
            text += value(one) + " ";
        return text + "]";
    }

    std::string entries_of(QPDFObjectHandle dictionary, const std::set<std::string>& left_out) {
        std::string text;
        for (const std::string& key : dictionary.getKeys()) {
            if (!left_out.contains(key)) text += key + " " + value(dictionary.getKey(key));
        }
        return text;
    }

    ObjectFile& file_;
    std::map<QPDFObjGen, int> numbers_;
};

} // namespace

int import_page(const std::string& pdf, ObjectFile& file) {
    QPDF document;
    document.processMemoryFile("a drawing", pdf.data(), pdf.size());
    QPDFPageObjectHelper page{document.getAllPages().at(0)};
    return Copier{file}.copy_form(page.getFormXObjectForPage());
}

} // namespace dyeleaf
