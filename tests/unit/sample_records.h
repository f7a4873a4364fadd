// One small set of records that tests of layouts share: a dye with three swatches and little else recorded.
#pragma once

#include "records/records.h"

namespace dyeleaf {

inline Records sample_records() {
    Records records;
    records.studio.name = "Test Studio";
    Base base;
    base.id.value = "sock";
    base.name = "Sock";
    base.code = "sock";
    base.fibres = {{"wool", percent(100)}};
    base.skein = {{grams(100), grams(100), {}}, {metres(400), metres(400), {}}};
    records.bases.push_back(base);
    Dye dye;
    dye.id.value = "sloe";
    dye.name = "Sloe";
    dye.line = "Test line";
    dye.code = "T-1";
    for (const double depth : {0.5, 1.0, 2.0}) {
        Swatch swatch;
        swatch.depth = percent(depth);
        swatch.base.value = "sock";
        swatch.colour = Sourced<RecordedColour>{Rgb{0.4, 0.3, 0.5}, {}};
        dye.swatches.push_back(swatch);
    }
    records.dyes.push_back(dye);
    Ingredient salt;
    salt.id.value = "salt";
    salt.name = "salt";
    records.ingredients.push_back(salt);
    Jar jar;
    jar.id.value = "sloe-shaker";
    jar.code = "T-1";
    jar.parts = {{{"sloe", {}}, true, 1, std::nullopt}, {{"salt", {}}, false, 1, std::nullopt}};
    jar.girth = {Girth::By::diameter, mm(42), mm(42)};
    jar.height = mm(70);
    records.jars.push_back(jar);
    Lot lot;
    lot.id.value = "0077";
    lot.colourway = "Hedge";
    lot.base.value = "sock";
    lot.skeins = 6;
    records.lots.push_back(lot);
    return records;
}

} // namespace dyeleaf
