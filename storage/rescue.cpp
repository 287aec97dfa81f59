// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/rescue.hpp"

#include <functional>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <utility>

#include "storage/batch_reader.hpp"
#include "storage/intake_parts.hpp"
#include "storage/open_book.hpp"

namespace arc::storage {
namespace {

constexpr std::size_t shownLosses = 100;

/// A damaged page stops a scan; the same scan from the other end reaches what lies behind it.
void scanFromBothEnds(Connection& connection, const char* upwards, const char* downwards,
                      const std::function<void(const Query&)>& onRow) {
    for (const char* sql : {upwards, downwards}) {
        try {
            Query q = connection.query(sql);
            while (q.step()) onRow(q);
            return;
        } catch (const SQLite::Exception&) {
            // The other direction.
        }
    }
}

std::set<std::int64_t> journalRows(Connection& from) {
    std::set<std::int64_t> rows;
    scanFromBothEnds(from, "SELECT row FROM journal ORDER BY row",
                     "SELECT row FROM journal ORDER BY row DESC",
                     [&rows](const Query& q) { rows.insert(q.integer(0)); });
    return rows;
}

/// Which arcs lie under which journal row.
std::set<std::pair<std::int64_t, std::int64_t>> splicesByJournal(Connection& from) {
    std::set<std::pair<std::int64_t, std::int64_t>> keys;
    const auto take = [&keys](const Query& q) { keys.emplace(q.integer(0), q.integer(1)); };
    scanFromBothEnds(from, "SELECT journal, key FROM arc ORDER BY key",
                     "SELECT journal, key FROM arc ORDER BY key DESC", take);
    scanFromBothEnds(from, "SELECT journal, arc FROM reading ORDER BY arc",
                     "SELECT journal, arc FROM reading ORDER BY arc DESC", take);
    return keys;
}

class Rescuer {
  public:
    Rescuer(Connection& from, Connection& into, Clock& clock, Random& random)
        : from_(from), ledger_(into, clock, random), reader_(from, BatchReader::Splices::Given) {}

    RescueCount run(Progress& progress) {
        ledger_.begin();
        for (const auto& [journal, key] : splicesByJournal(from_)) reader_.giveSplice(journal, key);
        try {
            headlines_ = headlinesOf(from_);
            names_ = deviceNames(from_);
        } catch (const std::exception&) {
            // What they say is said in the journal too.
        }
        const auto rows = journalRows(from_);
        const std::int64_t last = rows.empty() ? 0 : *rows.rbegin();
        for (std::int64_t row = 1; row <= last; ++row) {
            if (progress.stopRequested())
                throw IntakeStop{{ProblemCode::Cancelled, "the rescue was stopped", "", ""}};
            if (row % 256 == 1)
                progress.report(static_cast<std::uint64_t>(row), static_cast<std::uint64_t>(last),
                                "Rescuing");
            rescueRow(row);
        }
        return std::move(result_);
    }

  private:
    void rescueRow(std::int64_t row) {
        const auto read = reader_.tryRow(row);
        const JournalRow& journal = reader_.journal();
        Batch& batch = reader_.batch();
        if (read == BatchReader::Extent::Nothing) {
            gap_ = true;
            ++result_.lost;
            tell("journal row " + std::to_string(row) + " cannot be read");
            return;
        }
        noteDeviceName(batch);
        if (headlines_.contains(row)) {
            rescueHeadline(journal);
            return;
        }
        // After the first gap everything is written anew, in order: an older entry must not come to lie above
        // a later one.
        Chain& chain = chains_[journal.device];
        if (!gap_ && read == BatchReader::Extent::Whole && hashOf(journal) == journal.hash &&
            digestOf(batch) == journal.digest && journal.seq == chain.seq + 1 && journal.prev == chain.hash &&
            keepContents(batch)) {
            ledger_.take(journal, batch, nameOf(journal.device));
            chain = {journal.seq, journal.hash};
            ++result_.whole;
            return;
        }
        gap_ = true;
        std::erase_if(batch.records, [](const RecordVersion& v) {
            return v.row.kind == "device" || v.row.kind == "book" || v.row.kind == "attachment";
        });
        for (auto& version : batch.records) version.base.reset();
        if (batch.empty()) {
            ++result_.lost;
            tell("nothing is left of: " + showable(journal.stamp.text, 80) + " (" + toIso(journal.at) + ")");
            return;
        }
        Stamp stamp = journal.stamp;
        stamp.source = "rescue of an entry of " + toIso(journal.at);
        stamp.text = "Rescued: " + stamp.text;
        stamp.retryKey.reset();
        ledger_.write(batch, stamp);
        ++result_.partly;
        tell("written anew, perhaps in part: " + showable(journal.stamp.text, 80) + " (" + toIso(journal.at) +
             ")");
    }

    /// There was no content to lose; after a gap it has no place in a chain.
    void rescueHeadline(const JournalRow& journal) {
        Chain& chain = chains_[journal.device];
        if (gap_ || hashOf(journal) != journal.hash || journal.seq != chain.seq + 1 ||
            journal.prev != chain.hash)
            return;
        ledger_.takeHeadline(journal, nameOf(journal.device));
        chain = {journal.seq, journal.hash};
        ++result_.whole;
    }

    /// The table of devices may be what is damaged; each device named itself in its first entry.
    void noteDeviceName(const Batch& batch) {
        for (const auto& record : batch.records) {
            if (record.row.kind != "device") continue;
            const auto body = nlohmann::json::parse(record.row.body, nullptr, false);
            if (body.is_object() && body.contains("name") && body["name"].is_string())
                names_[record.row.id] = body["name"].get<std::string>();
        }
    }
    [[nodiscard]] std::string nameOf(const Uuid& device) const {
        const auto name = names_.find(device);
        return name == names_.end() ? "a device whose name is lost" : name->second;
    }

    bool keepContents(const Batch& batch) {
        for (const auto& record : batch.records) {
            if (record.row.kind != "attachment") continue;
            try {
                const std::string hex = attachmentHash(record.row.body);
                Query q = from_.query("SELECT bytes FROM attachment WHERE lower(hex(sha256)) = ?");
                if (!q.with(hex).step() || toHex(sha256(asText(q.bytes(0)))) != hex) return false;
                ledger_.storeContent(asText(q.bytes(0)));
            } catch (const std::exception&) {
                return false;
            }
        }
        return true;
    }
    void tell(std::string text) {
        if (result_.losses.size() < shownLosses) result_.losses.push_back(std::move(text));
    }

    struct Chain {
        std::int64_t seq = 0;
        Digest hash{};
    };
    Connection& from_;
    Ledger ledger_;
    BatchReader reader_;
    std::map<Uuid, std::string> names_;
    std::map<Uuid, Chain> chains_;
    std::set<std::int64_t> headlines_;
    bool gap_ = false;
    RescueCount result_;
};

}  // namespace

Result<RescueCount> rescueBook(const std::filesystem::path& damaged, const std::filesystem::path& rescued,
                               Clock& clock, Random& random, Progress& progress) {
    auto from = openBook(damaged, OpenMode::ReadOnly);
    if (!from) return tl::unexpected(from.error());
    auto into = makeEmptyBook(rescued);
    if (!into) return tl::unexpected(into.error());
    auto done = guarded(rescued, [&]() -> Result<RescueCount> {
        try {
            // No transaction on the damaged book: after the first damaged page SQLite would let nothing more
            // be written in it, not even our temporary table.
            WriteTransaction transaction(*into->connection);
            RescueCount result = Rescuer(*from->connection, *into->connection, clock, random).run(progress);
            transaction.commit();
            return result;
        } catch (const IntakeStop& stop) {
            return tl::unexpected(stop.problem);
        }
    });
    if (!done) {
        into->connection.reset();
        std::error_code ignored;
        for (const char* suffix : {"", "-wal", "-shm"})
            std::filesystem::remove(rescued.string() + suffix, ignored);
    }
    return done;
}

}  // namespace arc::storage
