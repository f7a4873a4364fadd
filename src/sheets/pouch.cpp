#include "sheets/pouch.h"

#include "base/number.h"
#include "base/words.h"
#include "sheets/misfits.h"

namespace dyeleaf {

bool goes_into_pouch(const std::vector<Trim>& labels, const Stock& stock, const std::vector<std::string>& names,
                     const Spot& at, Diagnostics& diagnostics) {
    const Laminate& laminate = *stock.laminate;
    const Length film = laminate.film * 2;
    const auto misfit = [&](const Trim& label) -> std::optional<Misfit> {
        const bool lies = label.size.width > label.size.height;
        const bool pouch_lies = laminate.pouch.width > laminate.pouch.height;
        const Size pouch = lies == pouch_lies ? laminate.pouch : turned_size(Turn::right, laminate.pouch);
        const Size needed = {label.size.width + film, label.size.height + film};
        const bool wide = !fits(needed.width, pouch.width);
        if (!wide && fits(needed.height, pouch.height)) return std::nullopt;
        const Length side = wide ? label.size.width : label.size.height;
        const Length across = wide ? pouch.width : pouch.height;
        return Misfit{"the card is " + in_words(label) + ", and with film on both sides " + decimal(side.in_mm(), 2) +
                          " + 2 × " + decimal(laminate.film.in_mm(), 2) + " = " + to_string(side + film) +
                          "; the pouch of " + in_quotes(stock.name) + " is " + to_string(across) +
                          (wide ? " wide: " : " high: ") + to_string(side + film - across) + " are missing",
                      "take a larger pouch, or a card of at most " +
                          measures({pouch.width - film, pouch.height - film})};
    };
    return !complain_of_misfits(labels, names, misfit, at, diagnostics);
}

} // namespace dyeleaf
