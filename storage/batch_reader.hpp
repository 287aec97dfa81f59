// SPDX-License-Identifier: GPL-3.0-or-later
// Reads back what was written under each journal row, in journal order: for the verifier and for satchels.
#pragma once
#include <cstdint>
#include <map>
#include <set>
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

    /// These journal rows only have their splices sorted; next() still walks all of them.
    BatchReader(Connection& connection, const std::set<std::int64_t>& rows);

    /// The next journal row with its rows; false at the end. Throws std::runtime_error when rows hang in the
    /// air.
    bool next();
    /// In two steps, for who does not need the rows of every journal row.
    bool nextHeadline();
    void readRows();
    /// Whether the book has only the headline of this journal row.
    [[nodiscard]] bool isHeadline() const { return headlines_.contains(row_); }
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
    std::set<std::int64_t> headlines_;
    std::int64_t row_;
    JournalRow journal_;
    Batch batch_;
};

/// Journal rows of which only the headline is there.
std::set<std::int64_t> headlinesOf(Connection& connection);

/// Name of a device, for people.
std::map<Uuid, std::string> deviceNames(Connection& connection);

}  // namespace arc::storage
