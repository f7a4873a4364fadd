#include "cli/charted_stocks.h"

#include "base/words.h"
#include "charts/stock_chart.h"
#include "cli/pdf_file.h"
#include "cli/studio.h"

#include <algorithm>

namespace dyeleaf {

namespace {

// The studio's own, as far as its records can be read; stocks are drawn all the same.
std::optional<Languages> language_for(const ShowStocks& request, const Library& library, Diagnostics& diagnostics) {
    Diagnostics unheard;
    const auto records = request.folder ? read_studio(*request.folder, unheard) : std::nullopt;
    return languages_of(records.value_or(Records{}), library, diagnostics);
}

} // namespace

std::optional<Rendering> chart_stocks(const ShowStocks& request, const Library& library, Diagnostics& diagnostics) {
    const auto languages = language_for(request, library, diagnostics);
    const Typesetter typesetter{font_folders(library), diagnostics};
    std::vector<ChartedStock> stocks;
    for (const LibraryFile& file : find_stocks(library)) {
        if (auto stock = read_stock_file(file, diagnostics)) stocks.push_back({file.name, file.own, std::move(*stock)});
    }
    if (!languages || diagnostics.errors() > 0) return std::nullopt;

    const Language& language = languages->first;
    PdfFile pdf{*request.output};
    const std::vector<DisplayList> pages = draw_stock_chart(stocks, language, typesetter);
    for (std::size_t i = 0; i < pages.size(); ++i) {
        pdf.page(pages[i], [&](TaggedPage tagged) {
            return PdfPage{{{}, pages[i].size}, {}, std::to_string(i + 1), {}, std::move(tagged)};
        });
    }
    Rendering rendering;
    rendering.summary = counted(static_cast<int>(stocks.size()), "stock", "stocks") + " on " +
                        counted(static_cast<int>(pages.size()), "page", "pages");
    rendering.files.push_back(pdf.finish({language.say("stocks.title"), {}, language.code()}));
    return rendering;
}

} // namespace dyeleaf
