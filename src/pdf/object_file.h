// A PDF file as numbered objects (ISO 32000-1, 7.5), written as they come, so that memory does not grow with the pages:
// what is kept of an object is where it lies.
#pragma once

#include "display/digest.h"
#include "pdf/deflate.h"

#include <cstddef>
#include <cstdint>
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
    // `entries` are those of its dictionary besides length and filter: "/Type/XObject".
    void put_stream(int object, std::string_view entries, std::string_view bytes);
    int put_stream(std::string_view entries, std::string_view bytes);
    // The bytes as they are; `entries` name the filter that made them.
    void put_packed(int object, std::string_view entries, std::string_view packed);
    int put_packed(std::string_view entries, std::string_view packed);

    // The table of all objects, and the trailer with these two. The id is made from the contents alone.
    void finish(int catalog, int information);

  private:
    // Where an object lies: in the file, or as one of several in a stream of objects. Small, since there is one for
    // each part of each label.
    struct Place {
        enum Kind : std::uint64_t { missing, in_file, in_stream };
        std::uint64_t kind : 2 = missing;
        std::uint64_t index : 16 = 0; // in its stream
        std::uint64_t at : 46 = 0;    // bytes from the file's start, or the number of the stream
    };

    void write(std::string_view bytes);
    void write_stream_at(int object, std::string_view entries, std::string_view packed);
    void close_group();

    ByteSink sink_;
    Deflater deflater_;
    Digest digest_;
    std::uint64_t written_ = 0;
    std::string pending_; // bytes to go
    std::vector<Place> places_;
    int group_ = 0; // of objects that share a stream; 0: none is open
    std::size_t in_group_ = 0;
    std::string group_table_, group_values_;
};

} // namespace dyeleaf
