#include "source/places.h"

#include "base/words.h"

#include <algorithm>
#include <utility>

namespace dyeleaf {

Places::Places(std::shared_ptr<const SourceFile> file) : file_(std::move(file)), text_(file_->text), line_starts_{0} {
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    if (text_.starts_with(byte_order_mark)) text_.remove_prefix(byte_order_mark.size());
    for (std::size_t end = text_.find('\n'); end != std::string_view::npos; end = text_.find('\n', end + 1))
        line_starts_.push_back(end + 1);
}

Spot Places::at(std::size_t offset, std::size_t bytes) {
    offset = std::min(offset, text_.size());
    const auto next = std::ranges::upper_bound(line_starts_, offset);
    const std::size_t start = *(next - 1);
    if (offset < last_offset_ || last_offset_ < start) {
        last_offset_ = start;
        last_column_ = 1;
    }
    last_column_ += code_points(text_.substr(last_offset_, offset - last_offset_));
    last_offset_ = offset;
    const std::string_view underlined = text_.substr(offset, bytes);
    return {file_, static_cast<int>(next - line_starts_.begin()), last_column_,
            std::max(1, code_points(underlined.substr(0, underlined.find('\n'))))};
}

} // namespace dyeleaf
