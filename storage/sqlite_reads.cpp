// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <stdexcept>
#include <tuple>

#include "storage/canonical.hpp"
#include "storage/sqlite_book.hpp"

namespace arc::storage {
namespace {

template <class T>
void byLabel(std::vector<T>& list) {
    std::stable_sort(list.begin(), list.end(), [](const T& a, const T& b) {
        return std::tie(a.label, a.id) < std::tie(b.label, b.id);
    });
}

JournalLine lineFrom(const Query& q) {
    JournalLine line;
    line.row = static_cast<std::uint64_t>(q.integer(0));
    line.at = {q.integer(1), static_cast<std::int16_t>(q.integer(2))};
    line.device = q.text(3);
    line.who = q.text(4);
    line.source = q.text(5);
    line.kind = q.text(6);
    line.text = q.text(7);
    line.hashHex = toHex(q.bytes(8));
    return line;
}

}  // namespace

template <class T>
std::vector<T> SqliteBook::all(std::string_view kind) {
    Query q =
        book_.connection->query("SELECT body FROM record WHERE kind = ? AND live = 1 ORDER BY at_ms, id");
    q.with(kind);
    std::vector<T> list;
    while (q.step()) list.push_back(fromBody<T>(q.text(0)));
    return list;
}

template <class T>
std::vector<T> SqliteBook::about(std::string_view kind, const Uuid& subject) {
    Query q = book_.connection->query(
        "SELECT body FROM record WHERE kind = ? AND subject = ? AND live = 1 ORDER BY at_ms, id");
    q.with(kind).with(subject);
    std::vector<T> list;
    while (q.step()) list.push_back(fromBody<T>(q.text(0)));
    return list;
}

Result<std::vector<Tool>> SqliteBook::tools() {
    return read([this]() -> Result<std::vector<Tool>> {
        auto list = all<Tool>("tool");
        byLabel(list);
        return list;
    });
}
Result<std::vector<Pairing>> SqliteBook::pairings() {
    return read([this]() -> Result<std::vector<Pairing>> { return all<Pairing>("pairing"); });
}
Result<std::vector<CounterCorrection>> SqliteBook::counterCorrections() {
    return read([this]() -> Result<std::vector<CounterCorrection>> {
        return all<CounterCorrection>("counter_correction");
    });
}
Result<std::vector<Job>> SqliteBook::jobs() {
    return read([this]() -> Result<std::vector<Job>> {
        auto list = all<Job>("job");
        byLabel(list);
        return list;
    });
}
Result<std::vector<Cable>> SqliteBook::cables(JobId job) {
    return read([this, job]() -> Result<std::vector<Cable>> {
        auto list = about<Cable>("cable", job.uuid);
        byLabel(list);
        return list;
    });
}
Result<std::vector<Closure>> SqliteBook::closures(JobId job) {
    return read([this, job]() -> Result<std::vector<Closure>> {
        auto list = about<Closure>("closure", job.uuid);
        byLabel(list);
        return list;
    });
}
Result<std::vector<Span>> SqliteBook::spans(JobId job) {
    return read([this, job]() -> Result<std::vector<Span>> {
        auto list = about<Span>("span", job.uuid);
        byLabel(list);
        return list;
    });
}
Result<std::vector<CareRecord>> SqliteBook::careRecords(std::optional<ToolId> tool) {
    return read([this, tool]() -> Result<std::vector<CareRecord>> {
        return tool ? about<CareRecord>("care", tool->uuid) : all<CareRecord>("care");
    });
}
Result<std::vector<CareRun>> SqliteBook::openCareRuns() {
    return read([this]() -> Result<std::vector<CareRun>> {
        auto list = all<CareRun>("care_run");
        std::erase_if(list, [](const CareRun& run) { return run.state != RunState::Open; });
        return list;
    });
}
Result<std::vector<CardEdition>> SqliteBook::cardEditions() {
    return read([this]() -> Result<std::vector<CardEdition>> { return all<CardEdition>("card_edition"); });
}
Result<std::vector<HoldOverride>> SqliteBook::holdOverrides() {
    return read([this]() -> Result<std::vector<HoldOverride>> { return all<HoldOverride>("hold_override"); });
}
Result<std::vector<BaselineChoice>> SqliteBook::baselineChoices() {
    return read(
        [this]() -> Result<std::vector<BaselineChoice>> { return all<BaselineChoice>("baseline_choice"); });
}
Result<std::vector<SignalAnswer>> SqliteBook::signalAnswers() {
    return read([this]() -> Result<std::vector<SignalAnswer>> { return all<SignalAnswer>("signal_answer"); });
}
Result<std::vector<ExceptionDisposition>> SqliteBook::dispositions(JobId job) {
    return read([this, job]() -> Result<std::vector<ExceptionDisposition>> {
        return about<ExceptionDisposition>("disposition", job.uuid);
    });
}
Result<std::vector<IssuedRecord>> SqliteBook::issuedRecords(JobId job) {
    return read([this, job]() -> Result<std::vector<IssuedRecord>> {
        return about<IssuedRecord>("issued_record", job.uuid);
    });
}
Result<std::vector<MeasuredLoss>> SqliteBook::measuredLosses(std::optional<JobId> job) {
    return read([this, job]() -> Result<std::vector<MeasuredLoss>> {
        return job ? about<MeasuredLoss>("measured_loss", job->uuid) : all<MeasuredLoss>("measured_loss");
    });
}

Result<std::optional<std::string>> SqliteBook::setting(std::string_view key) {
    return read([this, key]() -> Result<std::optional<std::string>> {
        Query q =
            book_.connection->query("SELECT body FROM record WHERE id = ? AND kind = 'setting' AND live = 1");
        const Uuid id = settingId(key);
        if (!q.with(id).step()) return std::optional<std::string>();
        // An emptied setting is one that was taken back.
        auto value = fromBody<Setting>(q.text(0)).value;
        return value.empty() ? std::optional<std::string>() : std::optional(std::move(value));
    });
}

Result<std::vector<Attachment>> SqliteBook::attachments(const Uuid& of) {
    return read([this, of]() -> Result<std::vector<Attachment>> {
        Query q = book_.connection->query(
            "SELECT body FROM record WHERE kind = 'attachment' AND subject = ? AND live = 1 ORDER BY id");
        q.with(of);
        std::vector<Attachment> list;
        while (q.step()) {
            Attachment attachment = fromBody<Attachment>(q.text(0));
            const std::string hex = attachmentHash(q.text(0));
            Query content =
                book_.connection->query("SELECT bytes FROM attachment WHERE lower(hex(sha256)) = ?");
            content.with(hex);
            if (!content.step()) throw std::runtime_error("the content of an attachment is missing");
            attachment.bytes = asText(content.bytes(0));
            list.push_back(std::move(attachment));
        }
        return list;
    });
}

Result<Totals> SqliteBook::totals() {
    return read([this]() -> Result<Totals> {
        Totals totals;
        Query q =
            book_.connection->query("SELECT arcs, readings, care, (SELECT max(row) FROM journal) FROM total");
        if (!q.step()) throw std::runtime_error("the totals are missing");
        totals.arcs = static_cast<std::uint64_t>(q.integer(0));
        totals.readings = static_cast<std::uint64_t>(q.integer(1));
        totals.care = static_cast<std::uint64_t>(q.integer(2));
        totals.journalRows = static_cast<std::uint64_t>(q.integer(3));
        return totals;
    });
}

// --- journal
// ----------------------------------------------------------------------------------------------------

Result<std::vector<JournalLine>> SqliteBook::historyOf(const Uuid& record) {
    return read([this, record]() -> Result<std::vector<JournalLine>> {
        Query q = book_.connection->query(
            "SELECT j.row, j.at_ms, j.offset_min, d.name, j.who, j.source, j.kind, j.text, j.hash "
            "FROM journal j JOIN device d ON d.key = j.device WHERE j.row IN ("
            "SELECT journal FROM record WHERE id = ?1 UNION "
            "SELECT journal FROM record WHERE kind IN ('attachment') AND subject = ?1 UNION "
            "SELECT a.journal FROM identity i JOIN arc a ON a.key = i.key WHERE i.id = ?1 UNION "
            "SELECT r.journal FROM identity i JOIN reading r ON r.arc = i.key WHERE i.id = ?1) "
            "ORDER BY j.tick, d.id");
        q.with(record);
        std::vector<JournalLine> lines;
        while (q.step()) lines.push_back(lineFrom(q));
        return lines;
    });
}

Result<std::vector<JournalLine>> SqliteBook::journal(std::uint64_t beforeRow, std::size_t limit) {
    return read([this, beforeRow, limit]() -> Result<std::vector<JournalLine>> {
        Query q = book_.connection->query(
            "SELECT j.row, j.at_ms, j.offset_min, d.name, j.who, j.source, j.kind, j.text, j.hash "
            "FROM journal j JOIN device d ON d.key = j.device WHERE j.row < ? ORDER BY j.row DESC LIMIT ?");
        // 0 and the largest number both mean "from the newest".
        const auto before = beforeRow == 0 || beforeRow > static_cast<std::uint64_t>(INT64_MAX)
                                ? INT64_MAX
                                : static_cast<std::int64_t>(beforeRow);
        q.with(before).with(static_cast<std::int64_t>(std::min<std::size_t>(limit, 1u << 30)));
        std::vector<JournalLine> lines;
        while (q.step()) lines.push_back(lineFrom(q));
        return lines;
    });
}

Result<std::optional<Uuid>> SqliteBook::recordBehind(std::uint64_t row) {
    return read([this, row]() -> Result<std::optional<Uuid>> {
        const auto number = static_cast<std::int64_t>(row);
        std::vector<Uuid> found;
        const auto take = [&](const char* sql) {
            Query q = book_.connection->query(sql);
            q.with(number);
            while (q.step()) found.push_back(q.uuid(0));
        };
        take("SELECT DISTINCT id FROM record WHERE journal = ? LIMIT 2");
        // Splices have no index by journal row, it would slow every entry down. The newest are asked for
        // most.
        if (found.empty())
            take(
                "SELECT i.id FROM arc a JOIN identity i ON i.key = a.key WHERE a.journal = ? "
                "ORDER BY a.key DESC LIMIT 2");
        if (found.empty())
            take(
                "SELECT DISTINCT i.id FROM reading r JOIN identity i ON i.key = r.arc WHERE r.journal = ? "
                "ORDER BY r.arc DESC LIMIT 2");
        return found.size() == 1 ? std::optional(found.front()) : std::nullopt;
    });
}

Result<std::string> SqliteBook::journalHead() {
    return read([this]() -> Result<std::string> { return journalHeadOf(*book_.connection); });
}

Result<std::uint64_t> SqliteBook::changeCount() {
    return read([this]() -> Result<std::uint64_t> {
        const auto others = static_cast<std::uint64_t>(book_.connection->number("PRAGMA data_version"));
        const auto ours =
            static_cast<std::uint64_t>(sqlite3_total_changes64(book_.connection->database().getHandle()));
        return (others << 40) + ours;
    });
}

}  // namespace arc::storage
