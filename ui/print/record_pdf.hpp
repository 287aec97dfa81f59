// SPDX-License-Identifier: GPL-3.0-or-later
// record.pdf: the closeout record on paper. Needs a QGuiApplication and a font, no window.
#pragma once
#include <filesystem>
#include <memory>

#include "core/closeout/paper.hpp"
#include "core/closeout/record.hpp"
#include "core/ports.hpp"
#include "core/result.hpp"

namespace arc::print {

/// Makes a new file with words in the form's language; numbers and times are written as in the data beside
/// it. Problems: no font installed, the file cannot be written, stopped.
Result<void> writeRecordPdf(const closeout::Record& record, closeout::PageForm form,
                            const std::filesystem::path& file, Progress& progress);

/// What painting needs of Qt, for programs without a window: does nothing when there is an application
/// already.
class PrintApplication {
  public:
    PrintApplication();
    ~PrintApplication();
    PrintApplication(const PrintApplication&) = delete;
    PrintApplication& operator=(const PrintApplication&) = delete;

  private:
    struct Parts;
    std::unique_ptr<Parts> m_parts;
};

}  // namespace arc::print
