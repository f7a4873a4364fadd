// A PDF on its way to the disk.
#pragma once

#include "finish/write_file.h"
#include "pdf/pdf_writer.h"

#include <filesystem>
#include <functional>
#include <utility>

namespace dyeleaf {

class PdfFile {
  public:
    explicit PdfFile(std::filesystem::path target)
        : file_(std::move(target)), writer_([this](std::string_view bytes) { file_.write(bytes); }) {}
    PdfFile(const PdfFile&) = delete; // the writer holds on to this very file
    PdfFile& operator=(const PdfFile&) = delete;
    ~PdfFile() = default;

    void page(const DisplayList& list, const std::function<PdfPage(TaggedPage)>& describe) {
        writer_.page(list, describe);
    }
    // To be put in place. Nothing may be added afterwards.
    PendingFile finish(const PdfDetails& details) {
        writer_.finish(details);
        return std::move(file_);
    }

  private:
    PendingFile file_;
    PdfWriter writer_;
};

} // namespace dyeleaf
