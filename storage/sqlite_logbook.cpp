// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sqlite_logbook.hpp"

#include <algorithm>
#include <utility>

#include "storage/damage.hpp"
#include "storage/sqlite_book.hpp"

namespace arc::storage {
namespace {

/// Carries a Problem through code that otherwise throws SQLite's exceptions.
struct Refusal {
    Problem problem;
};

[[noreturn]] void refuse(ProblemCode code, std::string what, std::string where = {}, std::string next = {}) {
    throw Refusal{{code, std::move(what), std::move(where), std::move(next)}};
}

/// Kinds with a label that must be unique, and within what.
struct Label {
    std::string_view kind;
    std::string label;
    Uuid id;
    std::optional<Uuid> within;
};

std::optional<Label> labelOf(const Entry& entry) {
    if (const auto* t = std::get_if<Tool>(&entry)) return Label{"tool", t->label, t->id.uuid, {}};
    if (const auto* j = std::get_if<Job>(&entry)) return Label{"job", j->label, j->id.uuid, {}};
    if (const auto* c = std::get_if<Closure>(&entry))
        return Label{"closure", c->label, c->id.uuid, c->job.uuid};
    if (const auto* c = std::get_if<Cable>(&entry)) return Label{"cable", c->label, c->id.uuid, c->job.uuid};
    if (const auto* s = std::get_if<Span>(&entry)) return Label{"span", s->label, s->id.uuid, s->job.uuid};
    return std::nullopt;
}

}  // namespace

SqliteBook::SqliteBook(OpenBook book, Clock& clock, Random& random)
    : book_(std::move(book)),
      clock_(clock),
      random_(random),
      ledger_(std::make_unique<Ledger>(*book_.connection, clock, random)),
      id_(bookId(*book_.connection)) {}

SqliteBook::~SqliteBook() = default;

Result<Receipt> SqliteBook::append(std::span<const Entry> entries, const Context& context) {
    const auto file = book_.connection->file();  // a copy: the connection may be opened anew below
    if (book_.connection->access() == Access::ReadOnly || book_.connection->access() == Access::Immutable)
        return fail(ProblemCode::Refused, "the logbook is open for reading only", file.string(),
                    "Close it where it is being written to, then open it again");
    if (auto damage = knownDamage(file)) return tl::unexpected(std::move(*damage));
    for (const Entry& entry : entries)
        if (auto valid = validate(entry); !valid) return tl::unexpected(valid.error());
    // Every append has a key, so that one that has to be repeated is never written twice.
    const Uuid key = context.retryKey.value_or(makeUuid7(clock_.now(), random_));
    constexpr int tries = 3;
    for (int attempt = 0; attempt < tries; ++attempt) {
        auto written = guarded(file, [&]() -> Result<Receipt> {
            try {
                WriteTransaction transaction(*book_.connection);
                if (const auto before = writtenBefore(key)) return *before;
                const Rows rows = writeAll(entries, context, key);
                transaction.commit();
                return Receipt{clock_.now(), static_cast<std::uint64_t>(rows.firstRow),
                               static_cast<std::uint64_t>(rows.lastRow)};
            } catch (const Refusal& refusal) {
                return tl::unexpected(refusal.problem);
            }
        });
        if (!written) {
            ledger_->forget();
            if (isPageDamage(written.error())) markDamaged(file, "a page could not be read while writing");
            return written;
        }
        if (book_.connection->filesStillOurs()) return written;
        // Somebody deleted or replaced the files under us: what we just committed may be nowhere.
        auto again = guarded(file, [&]() -> Result<void> {
            auto fresh = reopen(*book_.connection);
            if (bookId(*fresh) != id_)
                return fail(ProblemCode::Conflict, "another file was put in the place of the logbook",
                            file.string(), "Nothing was saved; put the right file back or open it anew");
            ledger_.reset();
            book_.connection = std::move(fresh);
            ledger_ = std::make_unique<Ledger>(*book_.connection, clock_, random_);
            return {};
        });
        if (!again) {
            if (again.error().code == ProblemCode::Conflict) return tl::unexpected(again.error());
            return fail(ProblemCode::Unavailable, "the logbook file was taken away; this entry is not saved",
                        file.string(), "Put it back or plug the stick in again, then save once more");
        }
    }
    return fail(ProblemCode::Unavailable, "another program keeps replacing the logbook's files",
                file.string(), "Close that program; this entry may not be saved");
}

std::optional<Receipt> SqliteBook::writtenBefore(const Uuid& retryKey) {
    Query q = book_.connection->query(
        "SELECT min(row), max(row), max(at_ms), max(offset_min) FROM journal WHERE retry_key = ?");
    q.with(retryKey);
    if (!q.step() || q.isNull(0)) return std::nullopt;
    return Receipt{Instant{q.integer(2), static_cast<std::int16_t>(q.integer(3))},
                   static_cast<std::uint64_t>(q.integer(0)), static_cast<std::uint64_t>(q.integer(1))};
}

SqliteBook::Rows SqliteBook::writeAll(std::span<const Entry> entries, const Context& context,
                                      const Uuid& retryKey) {
    Rows span;
    for (const Entry& entry : entries) {
        checkAgainstBook(entry);
        Batch batch = batchFor(entry);
        if (batch.empty()) continue;
        const Stamp stamp{context.who, context.source, std::string(kindName(entry)), text(entry), retryKey};
        const std::int64_t row = ledger_->write(batch, stamp);
        if (span.firstRow == 0) span.firstRow = row;
        span.lastRow = row;
    }
    return span;
}

Base SqliteBook::baseOfRecord(const RecordRow& row, std::string& latestBody) {
    {
        Query q = book_.connection->query("SELECT body FROM record WHERE id = ? AND kind = ? AND live = 1");
        if (q.with(row.id).with(row.kind).step()) latestBody = q.text(0);
    }
    // Of whatever kind: who takes a record back, or brings it again, knew what was written about it last.
    Query q = book_.connection->query(
        "SELECT j.hash FROM journal j JOIN device d ON d.key = j.device WHERE j.row IN ("
        "SELECT journal FROM record WHERE id = ?1 UNION "
        "SELECT a.journal FROM identity i JOIN arc a ON a.key = i.key WHERE i.id = ?1 UNION "
        "SELECT r.journal FROM identity i JOIN reading r ON r.arc = i.key WHERE i.id = ?1) "
        "ORDER BY j.tick DESC, d.id DESC LIMIT 1");
    if (!q.with(row.id).step()) return std::nullopt;
    return halfOf(q.bytes(0));
}

/// Empty when the entry changes nothing.
Batch SqliteBook::batchFor(const Entry& entry) {
    Batch batch;
    if (const auto* spliceArc = std::get_if<SpliceArc>(&entry)) {
        addArc(*spliceArc, batch);
        return batch;
    }
    if (const auto* change = std::get_if<ReadingChange>(&entry)) {
        addReading(change->arc.uuid, change->reading, batch);
        return batch;
    }
    RecordVersion version{toRecord(entry), {}};
    std::string latest;
    version.base = baseOfRecord(version.row, latest);
    if (version.row.kind == "withdrawal") {
        latest.clear();  // the same record may be taken back, brought again and taken back
    }
    if (latest == version.row.body) return batch;
    if (const auto* attachment = std::get_if<Attachment>(&entry)) ledger_->storeContent(attachment->bytes);
    batch.records.push_back(std::move(version));
    return batch;
}

void SqliteBook::addArc(const SpliceArc& spliceArc, Batch& batch) {
    ArcVersion version{spliceArc, {}};
    version.arc.readings.clear();
    bool same = false;
    if (const auto key = ledger_->findIdentity(spliceArc.id.uuid)) {
        Query q = book_.connection->query(
            "SELECT j.hash FROM journal j JOIN device d ON d.key = j.device WHERE j.row IN ("
            "SELECT journal FROM arc WHERE key = ? UNION "
            "SELECT journal FROM record WHERE id = ? AND kind = 'withdrawal') "
            "ORDER BY j.tick DESC, d.id DESC LIMIT 1");
        q.with(*key).with(spliceArc.id.uuid);
        if (q.step()) version.base = halfOf(q.bytes(0));
        const auto now = headOf(*key);
        same = now && *now == version.arc && now->at.offsetMinutes == version.arc.at.offsetMinutes;
    }
    if (!same) batch.arcs.push_back(std::move(version));
    // Readings that are left out stay as they are.
    for (const Reading& reading : spliceArc.readings) addReading(spliceArc.id.uuid, reading, batch);
}

void SqliteBook::addReading(const Uuid& arcId, const Reading& reading, Batch& batch) {
    ReadingVersion version{arcId, reading, {}};
    if (const auto key = ledger_->findIdentity(arcId)) {
        for (const Reading& now : readingsOf(*key))
            if (now == reading) return;
        Query q = book_.connection->query(
            "SELECT j.hash FROM reading r JOIN journal j ON j.row = r.journal "
            "WHERE r.arc = ? AND r.channel = ? AND r.live = 1");
        q.with(*key).with(reading.channel);
        if (q.step()) version.base = halfOf(q.bytes(0));
    }
    batch.readings.push_back(std::move(version));
}

void SqliteBook::needRecord(std::string_view kind, const Uuid& id, const std::string& what) {
    Query q = book_.connection->query("SELECT 1 FROM record WHERE id = ? AND kind = ? AND live = 1");
    if (!q.with(id).with(kind).step())
        refuse(ProblemCode::NotFound, "the " + what + " is not in this logbook", toText(id), "Add it first");
}

void SqliteBook::needTool(ToolId id, const std::string& what) {
    needRecord("tool", id.uuid, what);
}

void SqliteBook::checkAgainstBook(const Entry& entry) {
    if (const auto label = labelOf(entry)) {
        Query q = book_.connection->query(
            "SELECT id FROM record WHERE kind = ? AND live = 1 AND id <> ? AND json_extract(body, '$.label') "
            "= ? "
            "AND (?4 IS NULL OR subject = ?4)");
        q.with(label->kind).with(label->id).with(label->label).with(label->within);
        if (q.step())
            refuse(ProblemCode::Conflict,
                   "there is already a " + std::string(label->kind) + " called \"" + label->label + "\"",
                   "label", "Choose another label");
    }
    if (const auto* a = std::get_if<SpliceArc>(&entry)) {
        needTool(a->splicer, "splicer");
        if (a->cleaver) needTool(*a->cleaver, "cleaver");
        if (a->job) needRecord("job", a->job->uuid, "job");
        if (a->closure) needRecord("closure", a->closure->uuid, "closure");
    } else if (const auto* change = std::get_if<ReadingChange>(&entry)) {
        const auto key = ledger_->findIdentity(change->arc.uuid);
        const auto head = key ? headOf(*key) : std::nullopt;
        if (!head)
            refuse(ProblemCode::NotFound, "the splice is not in this logbook", toText(change->arc.uuid));
        if (change->reading.channel > head->channels)
            refuse(ProblemCode::BadInput,
                   "channel " + std::to_string(change->reading.channel) + " is beyond the " +
                       std::to_string(head->channels) + " fibres of this arc",
                   "channel", "Correct the channel");
    } else if (const auto* care = std::get_if<CareRecord>(&entry)) {
        needTool(care->tool, "tool");
    } else if (const auto* pairing = std::get_if<Pairing>(&entry)) {
        needTool(pairing->splicer, "splicer");
        needTool(pairing->cleaver, "cleaver");
    } else if (const auto* span = std::get_if<Span>(&entry)) {
        needRecord("job", span->job.uuid, "job");
        if (span->cable) needRecord("cable", span->cable->uuid, "cable");
        for (const auto& end : {span->from.closure, span->to.closure})
            if (end) needRecord("closure", end->uuid, "closure");
        for (const ClosureId closure : span->closures) needRecord("closure", closure.uuid, "closure");
    } else if (const auto* issued = std::get_if<IssuedRecord>(&entry)) {
        needRecord("job", issued->job.uuid, "job");
        std::string latest;
        if (baseOfRecord(toRecord(entry), latest) && latest != toRecord(entry).body)
            refuse(ProblemCode::Refused, "an issued record is never changed", "", "Issue a new one instead");
    } else if (const auto* withdrawal = std::get_if<Withdrawal>(&entry)) {
        Query q = book_.connection->query(
            "SELECT 1 FROM record WHERE id = ? AND kind <> 'withdrawal' "
            "UNION ALL SELECT 1 FROM identity i JOIN arc a ON a.key = i.key WHERE i.id = ?");
        if (!q.with(withdrawal->of).with(withdrawal->of).step())
            refuse(ProblemCode::NotFound, "what is to be taken back is not in this logbook",
                   toText(withdrawal->of));
        Query issued2 = book_.connection->query(
            "SELECT 1 FROM record WHERE id = ? AND kind IN ('issued_record', 'book', 'device')");
        if (issued2.with(withdrawal->of).step())
            refuse(ProblemCode::Refused, "an issued record cannot be taken back", "",
                   "Issue a new one that supersedes it");
    }
}

Result<std::unique_ptr<Logbook>> createLogbook(const std::filesystem::path& book, Clock& clock,
                                               Random& random) {
    auto made = makeBook(book, clock, random);
    if (!made) return tl::unexpected(made.error());
    return guarded(book, [&]() -> Result<std::unique_ptr<Logbook>> {
        return std::make_unique<SqliteBook>(std::move(*made), clock, random);
    });
}

Result<std::unique_ptr<Logbook>> openLogbook(const std::filesystem::path& book, OpenMode mode, Clock& clock,
                                             Random& random) {
    auto open = openBook(book, mode);
    if (!open) return tl::unexpected(open.error());
    return guarded(book, [&]() -> Result<std::unique_ptr<Logbook>> {
        return std::make_unique<SqliteBook>(std::move(*open), clock, random);
    });
}

}  // namespace arc::storage
