#include "records/check_records.h"

#include "records/article_numbers.h"

#include "base/nearest.h"
#include "base/words.h"

#include <algorithm>
#include <map>
#include <utility>

namespace dyeleaf {

namespace {

// "on line 4" or "in dyes.yaml on line 4", as seen from `here`.
std::string place(const Spot& spot, const Spot& here) {
    const std::string line = "on line " + std::to_string(spot.line);
    return spot.file == here.file || !spot.file ? line : "in " + spot.file->name + " " + line;
}

template <class Items> void refuse_repeated_ids(Items& items, const std::string& word, Diagnostics& diagnostics) {
    std::map<std::string, Spot> seen;
    std::erase_if(items, [&](const auto& item) {
        const auto [first, is_new] = seen.emplace(item.id.value, item.id.spot);
        if (is_new) return false;
        diagnostics.error(item.id.spot, "a second " + word + " with the id " + in_quotes(item.id.value),
                          "the first stands " + place(first->second, item.id.spot) + "; give one of them another id");
        return true;
    });
}

// Whether a complaint will be kept; looking for near words takes its time.
bool is_read(const Diagnostics& diagnostics) {
    return diagnostics.errors() < Diagnostics::most;
}

// The ids of a list or two, looked up by every reference to them.
class Known {
  public:
    Known(std::string word, bool complete) : word_(std::move(word)), complete_(complete) {}

    template <class Item> void add(const std::vector<Item>& items) {
        for (const Item& item : items) {
            ids_.push_back(item.id.value);
            names_.push_back(name_of(item));
        }
        sorted_ = ids_;
        std::ranges::sort(sorted_);
    }

    [[nodiscard]] bool has(const std::string& id) const { return std::ranges::binary_search(sorted_, id); }

    // Whether the reference is sound, or might be, were every record read.
    bool check(const Id& id, Diagnostics& diagnostics) const {
        if (id.value.empty() || has(id.value)) return true; // an empty one has had its complaint
        if (!complete_) return true;
        diagnostics.error(id.spot, "there is no " + word_ + " with the id " + in_quotes(shortened(id.value, 40)),
                          is_read(diagnostics) ? answer(id.value) : std::string{});
        return false;
    }

  private:
    template <class Item> static const std::string& name_of(const Item& item) { return item.name; }
    static const std::string& name_of(const Jar& jar) { return jar.name ? *jar.name : jar.code; }

    [[nodiscard]] std::vector<std::string> ids_named(const std::string& name) const {
        std::vector<std::string> ids;
        for (std::size_t i = 0; i < ids_.size(); ++i) {
            if (lower_case(names_[i]) == lower_case(name)) ids.push_back(in_quotes(ids_[i]));
        }
        return ids;
    }

    // A name in the place of an id is told its id.
    [[nodiscard]] std::string answer(const std::string& text) const {
        const bool near_an_id = nearest(text, ids_).has_value();
        const auto name = near_an_id ? std::nullopt : nearest(text, names_);
        for (const std::string& called : {text, name.value_or(text)}) {
            const auto ids = ids_named(called);
            if (ids.empty()) continue;
            return "did you mean " + joined(ids, " or ") + (ids.size() == 1 ? ", the id of " : ", the ids of ") +
                   in_quotes(shortened(called, 40)) + "?";
        }
        return suggest(text, ids_);
    }

    std::string word_;
    bool complete_;
    std::vector<std::string> ids_, names_, sorted_;
};

// Says what to write where a recipe calls a dye a jar, or a jar a dye.
bool refuse_other_kind(const Id& id, const Known& meant, const Known& other, const std::string& message,
                       const std::string& help, Diagnostics& diagnostics) {
    if (meant.has(id.value) || !other.has(id.value)) return false;
    diagnostics.error(id.spot, in_quotes(id.value) + message, help);
    return true;
}

void check_recipe_line(const RecipeLine& line, const Known& dyes, const Known& jars, Diagnostics& diagnostics) {
    if (const auto* from_jar = std::get_if<JarLine>(&line.what)) {
        const Id& id = from_jar->jar;
        if (refuse_other_kind(id, jars, dyes, " is a dye, not a jar",
                              "write the jar's id, or {dye: " + id.value + ", depth: 1.5 %}", diagnostics))
            return;
        jars.check(id, diagnostics);
    } else {
        const Id& id = std::get<DyeLine>(line.what).dye;
        if (refuse_other_kind(id, dyes, jars, " is a jar, not a dye",
                              "write the dye's id, or {jar: " + id.value + ", per skein: 1.5 g}", diagnostics))
            return;
        dyes.check(id, diagnostics);
    }
}

// Follows each dye to its successor, and complains about those that come round to themselves.
void check_successors(const std::vector<Dye>& dyes, Diagnostics& diagnostics) {
    std::map<std::string, const Dye*> by_id;
    for (const Dye& dye : dyes)
        by_id[dye.id.value] = &dye;
    std::map<const Dye*, std::size_t> walk_of; // on which walk each was come across
    for (std::size_t walk = 0; walk < dyes.size(); ++walk) {
        const Dye* dye = &dyes[walk];
        while (dye != nullptr && dye->replaced_by && walk_of.emplace(dye, walk).second) {
            const auto next = by_id.find(dye->replaced_by->value);
            dye = next == by_id.end() ? nullptr : next->second;
        }
        if (dye == nullptr || !dye->replaced_by || walk_of[dye] != walk) continue;
        const Dye* next = by_id[dye->replaced_by->value];
        diagnostics.error(dye->replaced_by->spot,
                          in_quotes(dye->id.value) + " is replaced by itself" + (next == dye ? "" : " in the end"),
                          "name the dye that you use now");
    }
}

void warn_of_namesakes(const std::vector<Dye>& dyes, Diagnostics& diagnostics) {
    std::map<std::pair<std::string, std::string>, Spot> seen;
    for (const Dye& dye : dyes) {
        const auto [first, is_new] = seen.emplace(std::pair{lower_case(dye.line), lower_case(dye.name)}, dye.id.spot);
        if (is_new || dye.name.empty() || dye.line.empty()) continue;
        diagnostics.warning(dye.id.spot,
                            "a second dye of the line " + in_quotes(dye.line) + " is called " + in_quotes(dye.name),
                            "the first stands " + place(first->second, dye.id.spot) +
                                "; give them codes that differ, so that nobody mixes them up");
    }
}

void warn_of_shared_codes(const std::vector<Jar>& jars, Diagnostics& diagnostics) {
    std::map<std::string, Spot> seen;
    for (const Jar& jar : jars) {
        const auto [first, is_new] = seen.emplace(lower_case(jar.code), jar.id.spot);
        if (is_new) continue;
        diagnostics.warning(jar.id.spot, "a second jar has the code " + in_quotes(jar.code),
                            "the first stands " + place(first->second, jar.id.spot) +
                                "; give them codes that differ, so that nobody mixes them up");
    }
}

// A part's id must mean one thing.
void refuse_shared_ids(const std::vector<Dye>& dyes, const Known& ingredients, Diagnostics& diagnostics) {
    for (const Dye& dye : dyes) {
        if (dye.id.value == "dye") {
            diagnostics.error(dye.id.spot, "a dye cannot have the id “dye”",
                              "among the parts of a mix that word means the jar's own dye; choose another id");
        } else if (ingredients.has(dye.id.value)) {
            diagnostics.error(dye.id.spot, in_quotes(dye.id.value) + " is the id of an ingredient too",
                              "the parts of a mix could mean either; choose another id for the dye");
        }
    }
}

void resolve_parts(Jar& jar, const Known& dyes, const Known& dyes_and_ingredients, const Unread& unread,
                   Diagnostics& diagnostics) {
    bool all_known = !unread.dyes;
    bool has_dye = false;
    for (Part& part : jar.parts) {
        part.is_dye = dyes.has(part.id.value);
        has_dye = has_dye || part.is_dye;
        if (!dyes_and_ingredients.check(part.id, diagnostics)) all_known = false;
    }
    for (TopUp& top_up : jar.topped_up) {
        for (Part& part : top_up.parts)
            part.is_dye = dyes.has(part.id.value); // one of the jar's own parts
    }
    if (all_known && !has_dye && !jar.parts.empty()) {
        diagnostics.error(jar.parts.front().id.spot, "none of these parts is a dye",
                          "a mix holds at least one dye: write dye: sloe in the jar and parts: {dye: 1, salt: 4}");
    }
}

} // namespace

void check_records(Records& records, const Unread& unread, Diagnostics& diagnostics) {
    refuse_repeated_ids(records.ingredients, "ingredient", diagnostics);
    refuse_repeated_ids(records.dyes, "dye", diagnostics);
    refuse_repeated_ids(records.jars, "jar", diagnostics);
    refuse_repeated_ids(records.bases, "base", diagnostics);
    refuse_repeated_ids(records.lots, "lot", diagnostics);
    const auto is_salt = [](const Ingredient& one) { return one.id.value == "salt"; };
    if (std::ranges::none_of(records.ingredients, is_salt))
        records.ingredients.push_back({{"salt", {}}, "salt", {}, {}, {}, {}});

    Known dyes{"dye", !unread.dyes};
    dyes.add(records.dyes);
    Known bases{"base", !unread.bases};
    bases.add(records.bases);
    Known ingredients{"ingredient", !unread.ingredients};
    ingredients.add(records.ingredients);
    Known jars{"jar", !unread.jars};
    jars.add(records.jars);
    Known dyes_and_ingredients{"dye or ingredient", !unread.dyes && !unread.ingredients};
    dyes_and_ingredients.add(records.dyes);
    dyes_and_ingredients.add(records.ingredients);
    refuse_shared_ids(records.dyes, ingredients, diagnostics);
    warn_of_namesakes(records.dyes, diagnostics);
    warn_of_shared_codes(records.jars, diagnostics);
    for (const Dye& dye : records.dyes) {
        if (dye.replaced_by) dyes.check(*dye.replaced_by, diagnostics);
        for (const Swatch& swatch : dye.swatches)
            bases.check(swatch.base, diagnostics);
    }
    check_successors(records.dyes, diagnostics);
    for (Jar& jar : records.jars)
        resolve_parts(jar, dyes, dyes_and_ingredients, unread, diagnostics);
    for (const Lot& lot : records.lots) {
        bases.check(lot.base, diagnostics);
        for (const Id& dye : lot.dyes)
            dyes.check(dye, diagnostics);
        for (const RecipeLine& line : lot.recipe.lines)
            check_recipe_line(line, dyes, jars, diagnostics);
    }
    warn_of_shared_numbers(records, diagnostics);
}

} // namespace dyeleaf
