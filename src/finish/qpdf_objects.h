// qpdf's objects and the few kinds of value that finishing makes of them. For this folder alone.
#pragma once

// qpdf 11 asks to be told that its old pointers are not used.
#define POINTERHOLDER_TRANSITION 4
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>

#include <string>
#include <vector>

namespace dyeleaf {

using PdfObject = QPDFObjectHandle;

inline PdfObject pdf_text(const std::string& text) {
    return PdfObject::newUnicodeString(text);
}
inline PdfObject pdf_name(const std::string& name) {
    return PdfObject::newName(name);
}
inline PdfObject pdf_integer(std::size_t value) {
    return PdfObject::newInteger(static_cast<long long>(value));
}

} // namespace dyeleaf
