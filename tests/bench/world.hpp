// SPDX-License-Identifier: GPL-3.0-or-later
// Something big to measure on: an invented log of a chosen size as CSV, as a logbook and as histories, in a
// scratch folder that goes away.
#pragma once
#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "core/analytics/stream.hpp"
#include "core/entry.hpp"
#include "core/logbook.hpp"
#include "core/ports.hpp"
#include "core/scenario/simulate.hpp"

namespace arc::bench {

/// Counts the milliseconds on, so that entries of one run differ.
class SteppingClock final : public Clock {
  public:
    [[nodiscard]] Instant now() override;

  private:
    std::int64_t ms_ = 4'000'000'000'000;
};

class SeededRandom final : public Random {
  public:
    void fill(std::uint8_t* bytes, std::size_t count) override;

  private:
    std::uint64_t state_ = 1;
};

/// One mass splicer, no re-splices, nothing wrong.
scenario::Scenario steadyScenario(std::uint64_t readings);

class World {
  public:
    explicit World(std::uint64_t readings);
    ~World();
    World(const World&) = delete;
    World& operator=(const World&) = delete;

    std::uint64_t readings;
    std::filesystem::path folder, csv;
    std::filesystem::path big, small, empty;  ///< logbooks: all readings, 1,000 readings, none
    std::vector<SplicerHistory> crew;
    SteppingClock clock;
    SeededRandom random;

    [[nodiscard]] std::filesystem::path file(const std::string& name) const { return folder / name; }
    /// A logbook with the log in it, imported as a person would.
    void import(const std::filesystem::path& book, const std::filesystem::path& file);
    std::unique_ptr<Logbook> open(const std::filesystem::path& book);
};

/// The next arc of a splicer, later than any before; `fibres` 1 or 12.
SpliceArc nextArc(ToolId splicer, int fibres, Clock& clock, Random& random);

/// The answer, or a sentence on standard error and the end of the program.
void stop(const Problem& problem);
template <class T>
T must(Result<T> result) {
    if (!result) stop(result.error());
    if constexpr (!std::is_void_v<T>) return std::move(*result);
}

}  // namespace arc::bench
