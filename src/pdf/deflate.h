// Bytes made small (RFC 1950), by zlib.
#pragma once

#include <memory>
#include <string>
#include <string_view>

struct z_stream_s;

namespace dyeleaf {

// Its memory serves one text after the other.
class Deflater {
  public:
    Deflater();
    std::string deflated(std::string_view bytes);

    // The same piece by piece: all that was added, packed, is what the calls appended to `packed` until the last one.
    void start();
    void add(std::string_view bytes, std::string& packed);
    void end(std::string& packed);

  private:
    void run(std::string_view bytes, int flush, std::string& packed);

    struct End {
        void operator()(z_stream_s* stream) const;
    };
    std::unique_ptr<z_stream_s, End> stream_;
};

} // namespace dyeleaf
