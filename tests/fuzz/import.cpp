// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a splice log, event or measured-loss file: every row lands or is set aside, or the file is
// refused in one sentence; nothing else.
#include <cstdint>
#include <fstream>

#include "storage/intake.hpp"
#include "tests/fuzz/scratch.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace arc;
    static fuzz::Scratch scratch;
    if (size == 0) return 0;
    const auto file = scratch.folder / "file.csv";
    std::ofstream(file, std::ios::binary)
        .write(reinterpret_cast<const char*>(data + 1), static_cast<std::streamsize>(size - 1));
    storage::IntakeRequest request;
    request.book = scratch.book;
    request.purpose = storage::Purpose::TryOnly;
    storage::FileToRead read{file, {}};
    // The first byte says which file it is taken for; anything else lets the header decide.
    if (data[0] == 's') read.kind = FileKind::SpliceLog;
    if (data[0] == 'e') read.kind = FileKind::Events;
    if (data[0] == 'm') read.kind = FileKind::MeasuredLosses;
    request.files.push_back(read);
    NoProgress unwatched;
    const auto counts = storage::takeIn(request, scratch.clock, scratch.random, unwatched);
    if (!counts) {
        fuzz::demandSentence(counts.error());
        return 0;
    }
    const auto& count = counts->at(0);
    if (count.added + count.known + count.setAside != count.read) std::abort();
    return 0;
}
