// How much there is to draw where the parts of a drawing refer to one another: a few lines can ask for the same square
// a thousand million times.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

class SvgWork {
  public:
    void open(std::string_view element);
    void attribute(std::string_view name, std::string_view value); // of the element opened last
    void close();
    // Of a style sheet, whole.
    void rules(std::string_view css);

    // Whether all elements, each as often as it is drawn, are more than any drawing needs.
    [[nodiscard]] bool is_endless();

  private:
    using Names = std::vector<std::string>;
    struct Element {
        std::string name;
        std::vector<std::size_t> inside;
        Names targets; // ids
        Names classes; // with their dots, its id with a #, and * for all
        std::optional<double> work;
        bool being_counted = false;
    };

    double work_of(std::size_t index, int depth);
    double work_of_target(const std::string& id, int depth);

    std::vector<Element> elements_;
    std::vector<std::size_t> open_;
    std::map<std::string, std::size_t, std::less<>> by_id_;
    std::map<std::string, Names, std::less<>> by_class_; // what a style sheet lets them refer to
};

} // namespace dyeleaf
