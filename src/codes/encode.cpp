#include "codes/encode.h"

#include <zint.h>

#include <algorithm>
#include <memory>

namespace dyeleaf {

namespace {

int symbology(CodeKind kind) {
    switch (kind) {
    case CodeKind::qr: return BARCODE_QRCODE;
    case CodeKind::ean_13: return BARCODE_EANX;
    case CodeKind::upc_a: return BARCODE_UPCA;
    case CodeKind::code_128: return BARCODE_CODE128;
    }
    return BARCODE_QRCODE;
}

bool is_ascii(const std::string& text) {
    return std::ranges::all_of(text, [](char c) { return static_cast<unsigned char>(c) < 128; });
}

} // namespace

std::optional<Modules> encode(CodeKind kind, const std::string& text) {
    const std::unique_ptr<zint_symbol, void (*)(zint_symbol*)> symbol{ZBarcode_Create(), ZBarcode_Delete};
    if (!symbol) return std::nullopt;
    symbol->symbology = symbology(kind);
    symbol->input_mode = UNICODE_MODE;
    if (kind == CodeKind::qr) {
        symbol->option_1 = 2;                  // error correction M: 15 % of it may be lost
        if (!is_ascii(text)) symbol->eci = 26; // UTF-8
    }
    const auto* bytes = reinterpret_cast<const unsigned char*>(text.data());
    if (ZBarcode_Encode(symbol.get(), bytes, static_cast<int>(text.size())) >= ZINT_ERROR) return std::nullopt;
    Modules modules{symbol->width, symbol->rows, {}};
    for (int y = 0; y < modules.rows; ++y) {
        for (int x = 0; x < modules.columns; ++x)
            modules.dark.push_back((symbol->encoded_data[y][x / 8] >> (x % 8) & 1) != 0);
    }
    return modules;
}

} // namespace dyeleaf
