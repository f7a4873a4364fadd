#include "pdf/deflate.h"

#include <zlib.h>

#include <new>
#include <stdexcept>

namespace dyeleaf {

void Deflater::End::operator()(z_stream_s* stream) const {
    deflateEnd(stream);
    delete stream;
}

Deflater::Deflater() : stream_(new z_stream{}) {
    if (deflateInit(stream_.get(), Z_DEFAULT_COMPRESSION) != Z_OK) throw std::bad_alloc{};
}

std::string Deflater::deflated(std::string_view bytes) {
    z_stream& stream = *stream_;
    deflateReset(&stream);
    std::string packed(deflateBound(&stream, static_cast<uLong>(bytes.size())), '\0');
    // zlib reads its input through a pointer that is not const.
    stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(bytes.data()));
    stream.avail_in = static_cast<uInt>(bytes.size());
    stream.next_out = reinterpret_cast<Bytef*>(packed.data());
    stream.avail_out = static_cast<uInt>(packed.size());
    if (deflate(&stream, Z_FINISH) != Z_STREAM_END) throw std::runtime_error("a part of it cannot be packed");
    packed.resize(stream.total_out);
    return packed;
}

} // namespace dyeleaf
