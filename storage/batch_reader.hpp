// SPDX-License-Identifier: GPL-3.0-or-later
// Reads back what was written under each journal row, in journal order: for the verifier and for satchels.
#pragma once
#include <cstdint>
#include <map>
#include <string>

#include "storage/batch.hpp"
#include "storage/connection.hpp"
#include "storage/ledger.hpp"

namespace arc::storage {

class BatchReader {
  public:
    /// Sorts the splices by journal row in a temporary table; costs a pass over them. Journal rows below
    /// `fromRow` are left out.
    BatchReader(Connection& connection, std::int64_t fromRow);
    /// For a damaged book: the caller tells by giveSplice which splices lie under which journal row.
    enum class Splices { Given };
    BatchReader(Connection& connection, Splices);
    void giveSplice(std::int64_t journal, std::int64_t key);

    /// The next journal row with its rows; false at the end. Throws std::runtime_error when rows hang in the
    /// air.
    bool next();
    /// One journal row of a damaged book, as far as it can be read.
    enum class Extent { Nothing, Part, Whole };
    Extent tryRow(std::int64_t row);
    [[nodiscard]] const JournalRow& journal() const { return journal_; }
    [[nodiscard]] Batch& batch() { return batch_; }

  private:
    bool readJournal(const char* sql);
    void readRecords();
    void readSplices();
    void readSetAside();

    Connection& connection_;
    std::int64_t row_;
    JournalRow journal_;
    Batch batch_;
};

/// Name of a device, for people.
std::map<Uuid, std::string> deviceNames(Connection& connection);

}  // namespace arc::storage
