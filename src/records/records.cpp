#include "records/records.h"

#include <algorithm>
#include <cassert>

namespace dyeleaf {

namespace {

template <class Record> const Record& by_id(const std::vector<Record>& records, const std::string& id) {
    const auto found = std::ranges::find_if(records, [&](const Record& record) { return record.id.value == id; });
    assert(found != records.end());
    return *found;
}

} // namespace

bool has_statements(const Records& records) {
    const auto has_some = [](const auto& one) {
        return (one.hazards && !one.hazards->empty()) || (one.precautions && !one.precautions->empty());
    };
    return std::ranges::any_of(records.dyes, has_some) || std::ranges::any_of(records.ingredients, has_some);
}

const PhotoColour* photo_of(const RecordedColour& colour) {
    const auto* photo = std::get_if<Boxed<PhotoColour>>(&colour);
    return photo == nullptr ? nullptr : &**photo;
}

const Dye& Records::dye(const std::string& id) const {
    return by_id(dyes, id);
}
const Jar& Records::jar(const std::string& id) const {
    return by_id(jars, id);
}
const Base& Records::base(const std::string& id) const {
    return by_id(bases, id);
}
const Ingredient& Records::ingredient(const std::string& id) const {
    return by_id(ingredients, id);
}

} // namespace dyeleaf
