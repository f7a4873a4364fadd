#include "pdf/object_file.h"

#include "pdf/syntax.h"

#include <fmt/format.h>

#include <iterator>
#include <stdexcept>
#include <utility>

namespace dyeleaf {

namespace {

constexpr std::size_t most_in_group = 200; // of objects that share a stream
constexpr std::size_t most_pending = 64 * 1024;
constexpr std::uint64_t most_at = (1ULL << 46U) - 1;

void append_big_endian(std::string& bytes, std::uint64_t value, int count) {
    for (int i = count - 1; i >= 0; --i)
        bytes += static_cast<char>(value >> (8 * static_cast<unsigned>(i)) & 0xffU);
}

} // namespace

ObjectFile::ObjectFile(ByteSink sink) : sink_(std::move(sink)), places_(1) {
    // The second line tells programs that carry files that this one is binary (7.5.2).
    write("%PDF-1.6\n%\xE2\xE3\xCF\xD3\n");
}

int ObjectFile::reserve() {
    places_.emplace_back();
    return static_cast<int>(places_.size()) - 1;
}

void ObjectFile::put(int object, std::string_view value) {
    if (group_ == 0) group_ = reserve();
    fmt::format_to(std::back_inserter(group_table_), "{} {} ", object, group_values_.size());
    group_values_ += value;
    group_values_ += '\n';
    Place& place = places_.at(static_cast<std::size_t>(object));
    place.kind = Place::in_stream;
    place.index = in_group_ & 0xffffU;
    place.at = static_cast<std::uint64_t>(group_) & most_at;
    if (++in_group_ == most_in_group) close_group();
}

int ObjectFile::put(std::string_view value) {
    const int object = reserve();
    put(object, value);
    return object;
}

void ObjectFile::put_stream(int object, std::string_view entries, std::string_view bytes) {
    write_stream_at(object, std::string{entries} + "/Filter/FlateDecode", deflater_.deflated(bytes));
}

int ObjectFile::put_stream(std::string_view entries, std::string_view bytes) {
    const int object = reserve();
    put_stream(object, entries, bytes);
    return object;
}

void ObjectFile::put_packed(int object, std::string_view entries, std::string_view packed) {
    write_stream_at(object, entries, packed);
}

int ObjectFile::put_packed(std::string_view entries, std::string_view packed) {
    const int object = reserve();
    put_packed(object, entries, packed);
    return object;
}

void ObjectFile::write_stream_at(int object, std::string_view entries, std::string_view packed) {
    Place& place = places_.at(static_cast<std::size_t>(object));
    place.kind = Place::in_file;
    place.at = written_ & most_at;
    write(fmt::format("{} 0 obj\n<<{}/Length {}>>stream\n", object, entries, packed.size()));
    write(packed);
    write("\nendstream\nendobj\n");
}

// 7.5.7
void ObjectFile::close_group() {
    if (group_ == 0) return;
    put_stream(std::exchange(group_, 0), fmt::format("/Type/ObjStm/N {}/First {}", in_group_, group_table_.size()),
               group_table_ + group_values_);
    group_table_.clear();
    group_values_.clear();
    in_group_ = 0;
}

// 7.5.8. Rows are written as differences from the row above (7.4.4.4), which makes them small.
void ObjectFile::finish(int catalog, int information) {
    close_group();
    const int table = reserve();
    places_.back().kind = Place::in_file;
    places_.back().at = written_ & most_at;
    constexpr int width = 1 + 5 + 2;
    std::string rows;
    std::string above(width, '\0');
    for (std::size_t i = 0; i < places_.size(); ++i) {
        const Place& place = places_[i];
        if (i > 0 && place.kind == Place::missing) throw std::runtime_error("a part of it was never made");
        std::string row;
        append_big_endian(row, place.kind, 1);
        append_big_endian(row, place.at, 5);
        append_big_endian(row, i == 0 ? 0xffffU : place.index, 2);
        rows += '\2'; // from above
        for (std::size_t column = 0; column < row.size(); ++column)
            rows += static_cast<char>(row[column] - above[column]);
        above = std::move(row);
    }
    digest_.add(written_);
    const std::uint64_t first = digest_.value();
    digest_.add(static_cast<std::uint64_t>(table));
    const std::string id = fmt::format("<{:016X}{:016X}>", first, digest_.value());
    const std::uint64_t start = written_;
    put_stream(
        table,
        fmt::format("/Type/XRef/Size {}/W[1 5 2]/Root {}/Info {}/ID[{}{}]/DecodeParms<</Predictor 12/Columns {}>>",
                    places_.size(), reference(catalog), reference(information), id, id, width),
        rows);
    write(fmt::format("startxref\n{}\n%%EOF\n", start));
    sink_(pending_);
    pending_.clear();
}

void ObjectFile::write(std::string_view bytes) {
    digest_.add(bytes);
    written_ += bytes.size();
    pending_ += bytes;
    if (pending_.size() < most_pending) return;
    sink_(pending_);
    pending_.clear();
}

} // namespace dyeleaf
