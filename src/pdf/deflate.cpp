#include "pdf/deflate.h"

#include <zlib.h>

#include <new>

namespace dyeleaf {

void Deflater::End::operator()(z_stream_s* stream) const {
    deflateEnd(stream);
    delete stream;
}

Deflater::Deflater() : stream_(new z_stream{}) {
    if (deflateInit(stream_.get(), Z_DEFAULT_COMPRESSION) != Z_OK) throw std::bad_alloc{};
}

std::string Deflater::deflated(std::string_view bytes) {
    std::string packed;
    start();
    add(bytes, packed);
    end(packed);
    return packed;
}

void Deflater::start() {
    deflateReset(stream_.get());
}

void Deflater::add(std::string_view bytes, std::string& packed) {
    run(bytes, Z_NO_FLUSH, packed);
}

void Deflater::end(std::string& packed) {
    run({}, Z_FINISH, packed);
}

void Deflater::run(std::string_view bytes, int flush, std::string& packed) {
    constexpr std::size_t piece = 8'192;
    z_stream& stream = *stream_;
    // zlib reads its input through a pointer that is not const.
    stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(bytes.data()));
    stream.avail_in = static_cast<uInt>(bytes.size());
    do {
        const std::size_t before = packed.size();
        packed.resize(before + piece);
        stream.next_out = reinterpret_cast<Bytef*>(packed.data() + before);
        stream.avail_out = piece;
        deflate(&stream, flush); // fails only where its state is broken
        packed.resize(packed.size() - stream.avail_out);
    } while (stream.avail_out == 0);
}

} // namespace dyeleaf
