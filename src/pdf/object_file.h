// A PDF file as numbered objects (ISO 32000-1, 7.5), written as they come, so that memory does not grow with the pages:
// what is kept of an object is where it lies.
#pragma once

#include "display/digest.h"
#include "pdf/deflate.h"

#include <cstddef>
#include <cstdint>
#include <deque>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

using ByteSink = std::function<void(std::string_view)>;

class ObjectFile {
  public:
    explicit ObjectFile(ByteSink sink);

    // A number to refer to, for an object that is put later. Each is to be put once.
    int reserve();
    void put(int object, std::string_view value);
    int put(std::string_view value);
    // One that may be too long to be held: `give` is called once, and hands it over piece by piece.
    void put_long(int object, const std::function<void(const ByteSink& piece)>& give);
    // `entries` are those of its dictionary besides length and filter: "/Type/XObject".
    void put_stream(int object, std::string_view entries, std::string_view bytes);
    int put_stream(std::string_view entries, std::string_view bytes);
    // The bytes as they are; `entries` name the filter that made them.
    void put_packed(int object, std::string_view entries, std::string_view packed);
    int put_packed(std::string_view entries, std::string_view packed);

    // The table of all objects, and the trailer with these two. The id is made from the contents alone.
    void finish(int catalog, int information);

  private:
    void write(std::string_view bytes);
    void close_group();
    void note_place(int object, std::uint32_t place);
    void note_offset(int object);
    [[nodiscard]] std::string row_of(std::uint32_t place) const;
    [[nodiscard]] std::string packed_table();

    ByteSink sink_;
    Deflater deflater_;
    Digest digest_;
    std::uint64_t written_ = 0;
    std::string pending_; // bytes to go
    // Where an object lies: the number of an offset, or with `in_group` of a group, its objects' stream, and of a place
    // in it. There is an object for each part of each label, but most lie behind the one before: a series of such is
    // kept as one.
    static constexpr std::uint32_t in_group = 0x80000000;
    struct Series {
        int object = 0; // the first
        std::uint32_t place = 0;
        int count = 1;
    };
    std::deque<Series> series_;         // as they were put
    int objects_ = 1;                   // 0 is none
    std::deque<std::uint64_t> offsets_; // in the file
    std::vector<int> groups_;           // the streams that hold them
    bool group_is_open_ = false;
    std::uint32_t in_group_ = 0; // objects, so far
    std::string group_table_, group_values_;
};

} // namespace dyeleaf
