// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a splice log, event or measured-loss file: every row lands or is set aside, or the file is
// refused in one sentence; nothing else.
#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <unistd.h>

#include "core/scenario/randomness.hpp"
#include "storage/intake.hpp"
#include "storage/sqlite_logbook.hpp"

namespace {

using namespace arc;

class FixedClock final : public Clock {
  public:
    [[nodiscard]] Instant now() override { return {1'930'000'000'000, 60}; }
};
class SeededRandom final : public Random {
  public:
    void fill(std::uint8_t* bytes, std::size_t count) override {
        for (std::size_t i = 0; i < count; ++i)
            bytes[i] = static_cast<std::uint8_t>(scenario::splitmix(state_));
    }

  private:
    std::uint64_t state_ = 1;
};

struct Scratch {
    Scratch() {
        std::string pattern = (std::filesystem::temp_directory_path() / "arc-fuzz-XXXXXX").string();
        folder = mkdtemp(pattern.data());
        if (!storage::createLogbook(folder / "fuzz.arcbook", clock, random)) std::abort();
    }
    ~Scratch() {
        std::error_code ignored;
        std::filesystem::remove_all(folder, ignored);
    }
    std::filesystem::path folder;
    FixedClock clock;
    SeededRandom random;
};

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static Scratch scratch;
    if (size == 0) return 0;
    const auto file = scratch.folder / "file.csv";
    std::ofstream(file, std::ios::binary)
        .write(reinterpret_cast<const char*>(data + 1), static_cast<std::streamsize>(size - 1));
    storage::IntakeRequest request;
    request.book = scratch.folder / "fuzz.arcbook";
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
        if (counts.error().what.empty() || counts.error().code == ProblemCode::Internal) std::abort();
        return 0;
    }
    const auto& count = counts->at(0);
    if (count.added + count.known + count.setAside != count.read) std::abort();
    return 0;
}
