#include "pdf/imported_page.h"

#include "pdf/syntax.h"

#include <charconv>
#include <map>
#include <optional>
#include <stdexcept>
#include <string_view>
#include <system_error>
#include <vector>

namespace dyeleaf {

namespace {

[[noreturn]] void refuse() {
    throw std::runtime_error("a drawing cannot be put into it");
}

int number_at(std::string_view text, std::size_t at) {
    at = text.find_first_not_of(" \n", at);
    int number = 0;
    if (at == std::string_view::npos ||
        std::from_chars(text.data() + at, text.data() + text.size(), number).ec != std::errc{})
        refuse();
    return number;
}

// The number behind a key, or the first one in the array there.
int number_after(std::string_view text, std::string_view key) {
    const auto found = text.find(key);
    if (found == std::string_view::npos) refuse();
    return number_at(text, text.find_first_not_of(" [", found + key.size()));
}

struct PdfObject {
    std::string_view value;                // a dictionary, mostly
    std::optional<std::string_view> bytes; // of a stream, packed
};

class CairoFile {
  public:
    explicit CairoFile(std::string_view pdf) : pdf_(pdf) {
        const auto mark = pdf.rfind("startxref");
        if (mark == std::string_view::npos) refuse();
        const auto table = static_cast<std::size_t>(number_at(pdf, mark + 9));
        const std::size_t rows = pdf.find('\n', table + 5) + 1; // below "xref" and "0 12"
        const int count = number_at(pdf, table + 7);
        constexpr std::size_t row_length = 20;
        if (rows + static_cast<std::size_t>(count) * row_length > pdf.size()) refuse();
        for (int i = 0; i < count; ++i)
            offsets_.push_back(
                static_cast<std::size_t>(number_at(pdf, rows + static_cast<std::size_t>(i) * row_length)));
        trailer_ = pdf.substr(rows + static_cast<std::size_t>(count) * row_length);
    }

    [[nodiscard]] PdfObject object(int number) const {
        if (number <= 0 || static_cast<std::size_t>(number) >= offsets_.size()) refuse();
        std::string_view text = pdf_.substr(offsets_[static_cast<std::size_t>(number)]);
        text.remove_prefix(text.find("obj") + 3);
        const auto end = text.find("endobj");
        const auto stream = text.find("stream\n");
        if (end == std::string_view::npos) refuse();
        if (stream > end) return {text.substr(0, end), std::nullopt};
        const std::string_view dictionary = text.substr(0, stream);
        const auto length = static_cast<std::size_t>(length_in(dictionary));
        return {dictionary, text.substr(stream + 7, length)};
    }

    [[nodiscard]] PdfObject page() const {
        const PdfObject catalog = object(number_after(trailer_, "/Root"));
        return object(number_after(object(number_after(catalog.value, "/Pages")).value, "/Kids"));
    }

  private:
    // Written behind the stream, when its length is known.
    [[nodiscard]] int length_in(std::string_view dictionary) const {
        return number_at(object(number_after(dictionary, "/Length")).value, 0);
    }

    std::string_view pdf_, trailer_;
    std::vector<std::size_t> offsets_;
};

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

// Copies objects, each once, under numbers of the file that takes them.
class Copier {
  public:
    Copier(const CairoFile& from, ObjectFile& file) : from_(from), file_(file) {}

    // With every "12 0 R" in it made to mean the copy.
    std::string renumbered(std::string_view text) {
        std::string result;
        for (std::size_t i = 0; i < text.size();) {
            std::size_t past = i;
            while (past < text.size() && is_digit(text[past]))
                ++past;
            const bool starts_here = past > i && (i == 0 || text[i - 1] == ' ' || text[i - 1] == '[');
            if (starts_here && text.substr(past).starts_with(" 0 R")) {
                result += reference(copy(number_at(text, i)));
                i = past + 4;
            } else {
                result += text[i++];
            }
        }
        return result;
    }

    // A stream's dictionary without its brackets and its length.
    std::string entries_of(std::string_view dictionary) {
        const auto open = dictionary.find("<<");
        const auto close = dictionary.rfind(">>");
        const auto length = dictionary.find("/Length");
        if (open == std::string_view::npos || close == std::string_view::npos) refuse();
        std::string kept{dictionary.substr(open + 2, length - open - 2)};
        const auto rest = dictionary.find('R', length) + 1;
        kept += dictionary.substr(rest, close - rest);
        return renumbered(kept);
    }

  private:
    int copy(int number) {
        const auto [known, is_new] = numbers_.try_emplace(number);
        if (!is_new) return known->second;
        const int own = known->second = file_.reserve();
        const PdfObject object = from_.object(number);
        if (object.bytes) {
            file_.put_packed(own, entries_of(object.value), *object.bytes);
        } else {
            file_.put(own, renumbered(object.value));
        }
        return own;
    }

    const CairoFile& from_;
    ObjectFile& file_;
    std::map<int, int> numbers_;
};

// What stands between the brackets behind a key, brackets included.
std::string_view array_after(std::string_view text, std::string_view key) {
    const auto open = text.find('[', text.find(key));
    const auto close = text.find(']', open);
    if (open == std::string_view::npos || close == std::string_view::npos) refuse();
    return text.substr(open, close - open + 1);
}

} // namespace

int import_page(const std::string& pdf, ObjectFile& file) {
    const CairoFile from{pdf};
    const PdfObject page = from.page();
    const PdfObject contents = from.object(number_after(page.value, "/Contents"));
    if (!contents.bytes) refuse();
    Copier copier{from, file};
    const std::string resources = copier.renumbered(std::to_string(number_after(page.value, "/Resources")) + " 0 R");
    return file.put_packed("/Type/XObject/Subtype/Form/BBox" + std::string{array_after(page.value, "/MediaBox")} +
                               "/Resources " + resources + copier.entries_of(contents.value),
                           *contents.bytes);
}

} // namespace dyeleaf
