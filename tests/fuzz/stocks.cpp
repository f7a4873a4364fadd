// Stock files, and labels laid on those that are sound.
#include "charts/stock_figure.h"
#include "input.h"
#include "sheets/impose.h"

using namespace dyeleaf;

namespace {

void lay(const Stock& stock, Diagnostics& diagnostics) {
    (void)draw_stock(stock, 1.0 / 6);
    const std::vector trims = {Trim{{mm(85), mm(55)}, false, mm(2), mm(3)}, Trim{{mm(38), mm(38)}, true, {}, {}}};
    const std::vector lists(trims.size(), std::make_shared<const DisplayList>());
    for (std::size_t kinds = 1; kinds <= trims.size(); ++kinds) {
        const std::vector some(trims.begin(), trims.begin() + static_cast<std::ptrdiff_t>(kinds));
        for (const SheetPlan& plan : plan_sheets(some, stock, {}, {}, diagnostics)) {
            std::vector<Trim> of_slots;
            for (const Slot& slot : plan.slots)
                of_slots.push_back(some[slot.label]);
            const std::vector of_sheet(plan.slots.size(), lists.front());
            for (const Side side : {Side::front, Side::back, Side::back_of_pad})
                (void)compose_sheet(plan, of_sheet, of_slots, stock, side, {});
        }
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    Diagnostics diagnostics;
    if (const auto node = parse_document(as_file(data, size), diagnostics)) {
        if (const auto stock = read_stock(*node, diagnostics); stock && diagnostics.errors() == 0)
            lay(*stock, diagnostics);
    }
    tell(diagnostics);
    return 0;
}
