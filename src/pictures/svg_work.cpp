#include "pictures/svg_work.h"

#include <algorithm>
#include <limits>

namespace dyeleaf {

namespace {

constexpr double most_work = 200'000;
constexpr int deepest = 500; // elements in elements and references to references
constexpr double endless = std::numeric_limits<double>::infinity();
constexpr std::string_view blanks = " \t\r\n";

// The ids of url(#…) (CSS 2.1, 4.3.4).
std::vector<std::string> targets_in(std::string_view style) {
    std::vector<std::string> ids;
    for (auto at = style.find("url("); at != std::string_view::npos; at = style.find("url(", at + 1)) {
        const auto hash = style.find('#', at);
        if (hash == std::string_view::npos) break;
        const std::string_view rest = style.substr(hash + 1);
        ids.emplace_back(rest.substr(0, rest.find_first_of("\"') \t\r\n")));
    }
    return ids;
}

// What a selector goes by: ".st0", "#mark"; any other may mean every element.
std::vector<std::string> handles_in(std::string_view selectors) {
    std::vector<std::string> handles;
    for (auto at = selectors.find_first_of(".#"); at != std::string_view::npos;
         at = selectors.find_first_of(".#", at + 1)) {
        const std::string_view rest = selectors.substr(at);
        handles.emplace_back(rest.substr(0, rest.find_first_of(" \t\r\n.#,:>+~[*", 1)));
    }
    if (handles.empty()) handles.emplace_back("*");
    return handles;
}

bool is_gradient(std::string_view element) {
    return element == "linearGradient" || element == "radialGradient";
}

// Drawn by itself first, then laid over what refers to it.
bool is_layer(std::string_view element) {
    return element == "mask" || element == "pattern";
}

} // namespace

void SvgWork::open(std::string_view element) {
    if (!open_.empty()) elements_[open_.back()].inside.push_back(elements_.size());
    open_.push_back(elements_.size());
    elements_.push_back({std::string{element}, {}, {}, {"*"}, {}});
}

void SvgWork::attribute(std::string_view name, std::string_view value) {
    Element& element = elements_[open_.back()];
    if (name == "id") {
        by_id_.emplace(value, open_.back());
        element.classes.push_back("#" + std::string{value});
    } else if (name == "href" && value.starts_with('#')) {
        element.targets.emplace_back(value.substr(1));
    } else if (name == "class") {
        for (auto at = value.find_first_not_of(blanks); at != std::string_view::npos;) {
            const auto end = std::min(value.find_first_of(blanks, at), value.size());
            element.classes.push_back("." + std::string{value.substr(at, end - at)});
            at = value.find_first_not_of(blanks, end);
        }
    } else {
        std::ranges::move(targets_in(value), std::back_inserter(element.targets));
    }
}

void SvgWork::close() {
    open_.pop_back();
}

void SvgWork::rules(std::string_view css) {
    for (auto brace = css.find('{'); brace != std::string_view::npos; brace = css.find('{')) {
        const std::string_view selectors = css.substr(0, brace);
        css.remove_prefix(brace + 1);
        const auto end = std::min(css.find('}'), css.size());
        const auto targets = targets_in(css.substr(0, end));
        css.remove_prefix(std::min(end + 1, css.size()));
        if (targets.empty()) continue;
        for (const std::string& handle : handles_in(selectors)) {
            Names& known = by_class_[handle];
            known.insert(known.end(), targets.begin(), targets.end());
        }
    }
}

bool SvgWork::is_endless() {
    return !elements_.empty() && work_of(0, 0) > most_work;
}

double SvgWork::work_of(std::size_t index, int depth) {
    Element& element = elements_[index];
    if (element.work) return *element.work;
    if (depth > deepest) return endless;
    if (element.being_counted) return 0; // in a circle, which nobody follows
    element.being_counted = true;
    double work = 1;
    for (const std::size_t inside : element.inside)
        work += work_of(inside, depth + 1);
    for (const std::string& id : element.targets)
        work += work_of_target(id, depth + 1);
    for (const std::string& handle : element.classes) {
        const auto rules = by_class_.find(handle);
        if (rules == by_class_.end()) continue;
        for (const std::string& id : rules->second)
            work += work_of_target(id, depth + 1);
    }
    element.being_counted = false;
    element.work = work;
    return work;
}

double SvgWork::work_of_target(const std::string& id, int depth) {
    const auto target = by_id_.find(id);
    if (target == by_id_.end()) return 0;
    const std::string& name = elements_[target->second].name;
    constexpr double layer = 50;
    return is_gradient(name) ? 1 : work_of(target->second, depth) + (is_layer(name) ? layer : 0);
}

} // namespace dyeleaf
