// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a table that nobody has matched yet. What the guesser proposes names columns of that table only,
// can be saved and read back as it is, and reads the table or says in a sentence why not.
#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <fstream>

#include "core/intake/guess_key.hpp"
#include "storage/column_key.hpp"
#include "storage/table_preview.hpp"
#include "tests/fuzz/scratch.hpp"

namespace {

using namespace arc;

void demandNamesOf(const ColumnKey& key, const std::vector<std::string>& header) {
    const auto stands = [&](const std::string& theirs) {
        return std::ranges::any_of(header, [&](const auto& name) { return columnName(name) == theirs; });
    };
    for (const auto& [ours, theirs] : key.columns)
        if (!isOurColumn(ours) || !stands(theirs)) std::abort();
    for (const auto& [channel, theirs] : key.wide)
        if (channel < 1 || channel > mostChannels || !stands(theirs)) std::abort();
    if (!key.timeOfDay.empty() && !stands(key.timeOfDay)) std::abort();
}

void demandKept(ColumnKey key) {
    key.name = "guessed";
    const auto again = storage::readColumnKey(storage::toJson(key), "guessed.json");
    // An empty proposal is nothing to save, and the reader says so.
    if (!again && !key.columns.empty()) std::abort();
    if (again && *again != key) std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static fuzz::Scratch scratch;
    TableQuestion question;
    question.file = scratch.folder / "file.csv";
    std::ofstream(question.file, std::ios::binary)
        .write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
    const auto seen = storage::previewTable(scratch.book, question, scratch.clock, scratch.random);
    if (!seen) {
        fuzz::demandSentence(seen.error());
        return 0;
    }
    std::vector<std::vector<std::string>> rows;
    for (const auto& row : seen->rows) rows.push_back(row.theirs);
    for (const auto kind : {FileKind::SpliceLog, FileKind::Events, FileKind::MeasuredLosses}) {
        const auto guess = guessKey(kind, seen->theirHeader, rows, seen->separator);
        if (guess.key.kind != kind) std::abort();
        demandNamesOf(guess.key, seen->theirHeader);
        demandKept(guess.key);
        question.kind = kind;
        question.key = guess.key;
        const auto read = storage::previewTable(scratch.book, question, scratch.clock, scratch.random);
        if (!read) fuzz::demandSentence(read.error());
    }
    return 0;
}
