// SPDX-License-Identifier: GPL-3.0-or-later
// The writing side of a logbook: rows and their journal row, hash chain, which version shows, totals. Every
// function runs inside a WriteTransaction of the caller and throws on failure; after a rollback call
// forget().
#pragma once
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <unordered_map>

#include "core/ports.hpp"
#include "storage/batch.hpp"
#include "storage/connection.hpp"
#include "storage/mentions.hpp"

namespace arc::storage {

/// What a journal row says besides the rows it covers.
struct Stamp {
    std::string who;
    std::string source;
    std::string kind;
    std::string text;
    std::optional<Uuid> retryKey;
};

/// A whole journal row as it travels; see 0001_first.sql for the columns.
struct JournalRow {
    std::int64_t row = 0;  ///< of this file
    Uuid device;
    std::int64_t seq = 0;
    std::int64_t tick = 0;
    Instant at;
    Stamp stamp;
    Digest digest{};
    Digest prev{};
    Digest hash{};
};

/// Hash over everything but the row number and the hash itself.
Digest hashOf(const JournalRow& row);
Base halfOf(std::span<const std::uint8_t> hash);

/// Seal over the book's own row: as it should be, and as it is stored.
Digest sealOf(Connection& connection);
Digest storedSeal(Connection& connection);

/// Hash over the end of every device's chain and the rows that are here as headlines only, lower-case hex.
std::string journalHeadOf(Connection& connection);

class Ledger {
  public:
    Ledger(Connection& connection, Clock& clock, Random& random);

    /// Identity of a new book and its first journal row.
    void begin();

    /// Writes the batch (sorting it) and its journal row; answers the row number.
    std::int64_t write(Batch& batch, const Stamp& stamp);
    /// Takes in a row of another device's chain as it is. Which version shows is worked out anew.
    std::int64_t take(const JournalRow& foreign, Batch& batch, const std::string& deviceName);

    /// Takes in the journal row alone: what was written under it is not at hand.
    std::int64_t takeHeadline(const JournalRow& foreign, const std::string& deviceName);
    /// What was written under a row that is here as a headline.
    void fillIn(std::int64_t journal, Batch& batch);

    /// The short key of an identity, or of a word; made when new.
    std::int64_t identityKey(const Uuid& id);
    std::int64_t wordKey(const std::string& word);
    /// Without making one, without remembering: for arcs, of which there are millions.
    std::optional<std::int64_t> findIdentity(const Uuid& id);

    /// Content of an attachment; the same content is kept once.
    void storeContent(std::string_view bytes);

    /// After a rollback: remembered keys may be gone.
    void forget();

  private:
    using Keys = std::unordered_map<std::string, std::int64_t>;
    std::int64_t keyOf(Keys& known, const std::string& text, const char* find, const char* add);
    struct Writer {
        std::int64_t key;
        Uuid id;
        std::int64_t seq;
        Digest hash;
    };
    Writer writer();
    Writer startChain();
    std::int64_t writeAs(const Writer& writer, Batch& batch, const Stamp& stamp);
    std::int64_t insertForeign(const JournalRow& foreign, const std::string& deviceName);
    void insertJournal(const JournalRow& row, std::int64_t deviceKey);
    void insertRows(const Batch& batch, std::int64_t journal);
    /// The arc that is being written; its readings follow it.
    enum class Shows { No, Yes };
    enum class Readings { None, Perhaps };
    enum class Withdrawals { None, Some };
    struct KnownArc {
        Uuid id;
        std::int64_t key = 0;
        Shows shows = Shows::No;
        Readings readings = Readings::Perhaps;
    };
    void insertSplices(const Batch& batch, std::int64_t journal);
    KnownArc insertArc(const ArcVersion& version, std::int64_t journal, KnownArc arc,
                       Withdrawals withdrawals);
    KnownArc findArc(const Uuid& id);
    KnownArc newArc(const Uuid& id);
    void insertReading(const ReadingVersion& version, std::int64_t journal, const KnownArc& arc);
    std::int64_t phraseKey(const std::string& text);
    void mention(std::int64_t atMs, std::int64_t arcKey, const ArcWords& words);
    /// Around a change of an arc that is there already: no longer what it mentions, then what it does now.
    void dropMentions(const KnownArc& arc);
    void addMentions(const KnownArc& arc);
    void insertSetAside(const SetAsideVersion& row, std::int64_t journal);
    void showLatestRecord(const std::string& kind, const Uuid& id);
    void showLatestArc(const Uuid& id);
    void showLatestReading(const KnownArc& arc, int channel);
    void addTotals();
    void sealBook();

    Connection& connection_;
    Clock& clock_;
    Random& random_;
    std::unordered_map<Uuid, std::int64_t> identities_;
    Keys words_, phrases_;
    std::int64_t othersWrote_ = 0;
    std::int64_t arcsAdded_ = 0, readingsAdded_ = 0, careAdded_ = 0;
};

}  // namespace arc::storage
