#include "pdf/object_file.h"

#include "pdf/syntax.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <stdexcept>
#include <utility>

namespace dyeleaf {

namespace {

constexpr std::uint32_t most_in_group = 256; // objects that share a stream: their numbers take a byte
constexpr std::size_t most_pending = 65'536;
constexpr std::size_t row_width = 1 + 5 + 1; // of the table, in bytes

void append_big_endian(std::string& bytes, std::uint64_t value, int count) {
    for (int i = count - 1; i >= 0; --i)
        bytes += static_cast<char>(value >> (8 * static_cast<unsigned>(i)) & 0xffU);
}

} // namespace

ObjectFile::ObjectFile(ByteSink sink) : sink_(std::move(sink)) {
    // The second line tells programs that carry files that this one is binary (7.5.2).
    write("%PDF-1.6\n%\xE2\xE3\xCF\xD3\n");
}

int ObjectFile::reserve() {
    return objects_++;
}

void ObjectFile::put(int object, std::string_view value) {
    if (!std::exchange(group_is_open_, true)) groups_.push_back(reserve());
    fmt::format_to(std::back_inserter(group_table_), "{} {} ", object, group_values_.size());
    group_values_ += value;
    group_values_ += '\n';
    const auto group = static_cast<std::uint32_t>(groups_.size() - 1);
    note_place(object, in_group | (group * most_in_group + in_group_));
    if (++in_group_ == most_in_group) close_group();
}

int ObjectFile::put(std::string_view value) {
    const int object = reserve();
    put(object, value);
    return object;
}

void ObjectFile::put_long(int object, const std::function<void(const ByteSink& piece)>& give) {
    close_group();
    groups_.push_back(reserve());
    note_place(object, in_group | (static_cast<std::uint32_t>(groups_.size() - 1) * most_in_group));
    const std::string table = fmt::format("{} 0 ", object);
    std::string packed;
    deflater_.start();
    deflater_.add(table, packed);
    give([&](std::string_view piece) { deflater_.add(piece, packed); });
    deflater_.end(packed);
    put_packed(groups_.back(), fmt::format("/Type/ObjStm/N 1/First {}/Filter/FlateDecode", table.size()), packed);
}

void ObjectFile::put_stream(int object, std::string_view entries, std::string_view bytes) {
    put_packed(object, std::string{entries} + "/Filter/FlateDecode", deflater_.deflated(bytes));
}

int ObjectFile::put_stream(std::string_view entries, std::string_view bytes) {
    const int object = reserve();
    put_stream(object, entries, bytes);
    return object;
}

void ObjectFile::put_packed(int object, std::string_view entries, std::string_view packed) {
    note_offset(object);
    write(fmt::format("{} 0 obj\n<<{}/Length {}>>stream\n", object, entries, packed.size()));
    write(packed);
    write("\nendstream\nendobj\n");
}

int ObjectFile::put_packed(std::string_view entries, std::string_view packed) {
    const int object = reserve();
    put_packed(object, entries, packed);
    return object;
}

void ObjectFile::note_place(int object, std::uint32_t place) {
    const auto goes_on = [&](const Series& series) {
        return object == series.object + series.count &&
               place == series.place + static_cast<std::uint32_t>(series.count);
    };
    if (!series_.empty() && goes_on(series_.back())) {
        ++series_.back().count;
    } else {
        series_.push_back({object, place});
    }
}

void ObjectFile::note_offset(int object) {
    note_place(object, static_cast<std::uint32_t>(offsets_.size()));
    offsets_.push_back(written_);
}

// 7.5.7
void ObjectFile::close_group() {
    if (!std::exchange(group_is_open_, false)) return;
    put_stream(groups_.back(), fmt::format("/Type/ObjStm/N {}/First {}", in_group_, group_table_.size()),
               group_table_ + group_values_);
    group_table_.clear();
    group_values_.clear();
    in_group_ = 0;
}

// Kind, place and number in it (7.5.8.3).
std::string ObjectFile::row_of(std::uint32_t place) const {
    std::string row;
    if ((place & in_group) == 0) {
        append_big_endian(row, 1, 1);
        append_big_endian(row, offsets_.at(place), 5);
        append_big_endian(row, 0, 1);
    } else {
        const std::uint32_t number = place & ~in_group;
        append_big_endian(row, 2, 1);
        append_big_endian(row, static_cast<std::uint64_t>(groups_.at(number / most_in_group)), 5);
        append_big_endian(row, number % most_in_group, 1);
    }
    return row;
}

// Rows are written as differences from the row above (7.4.4.4), which makes them small.
std::string ObjectFile::packed_table() {
    std::string packed;
    std::string above(row_width, '\0');
    deflater_.start();
    const auto add = [&](const std::string& row) {
        std::string differences = "\2";
        for (std::size_t column = 0; column < row_width; ++column)
            differences += static_cast<char>(row[column] - above[column]);
        deflater_.add(differences, packed);
        above = row;
    };
    add(above); // object 0 is none
    std::ranges::sort(series_, {}, &Series::object);
    int object = 1;
    for (const Series& series : series_) {
        if (series.object != object) throw std::runtime_error("a part of it was never made");
        for (int i = 0; i < series.count; ++i)
            add(row_of(series.place + static_cast<std::uint32_t>(i)));
        object += series.count;
    }
    if (object != objects_) throw std::runtime_error("a part of it was never made");
    deflater_.end(packed);
    return packed;
}

void ObjectFile::finish(int catalog, int information) {
    close_group();
    const int table = reserve();
    const std::uint64_t start = written_;
    note_offset(table);
    const std::string packed = packed_table();
    digest_.add(written_);
    const std::uint64_t first = digest_.value();
    digest_.add(static_cast<std::uint64_t>(table));
    const std::string id = fmt::format("<{:016X}{:016X}>", first, digest_.value());
    write(fmt::format("{} 0 obj\n<</Type/XRef/Size {}/W[1 5 1]/Root {}/Info {}/ID[{}{}]"
                      "/Filter/FlateDecode/DecodeParms<</Predictor 12/Columns {}>>/Length {}>>stream\n",
                      table, objects_, reference(catalog), reference(information), id, id, row_width, packed.size()));
    write(packed);
    write(fmt::format("\nendstream\nendobj\nstartxref\n{}\n%%EOF\n", start));
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
