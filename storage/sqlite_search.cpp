// SPDX-License-Identifier: GPL-3.0-or-later
// Searching the splices. The hits of a page are found on the narrow columns first; names and words are joined
// to those few afterwards. A text that nothing else narrows down is looked up among phrases and operators
// first, and only arcs that have one of those are read.
#include <algorithm>

#include "core/work/notes.hpp"
#include "storage/mentions.hpp"
#include "storage/splice_rows.hpp"
#include "storage/sqlite_book.hpp"

namespace arc::storage {
namespace {

/// % and _ of a search text are meant as themselves.
std::string likePattern(const std::string& text) {
    std::string pattern = "%";
    for (const char c : text) {
        if (c == '%' || c == '_' || c == '\\') pattern += '\\';
        pattern += c;
    }
    return pattern + "%";
}

std::string quoted(std::string_view words) {
    std::string text = "'";
    for (const char c : words) text += c == '\'' ? std::string("''") : std::string(1, c);
    return text + "'";
}

/// note::keeps in SQL.
std::string keepsTheSplice() {
    std::string sql = "(r.note <> ''";
    for (const std::string_view words : note::ours)
        sql += " AND substr(r.note, 1, " + std::to_string(words.size()) + ") <> " + quoted(words);
    return sql + ")";
}

/// The limits that most jobs have need no row of their own in a statement, however many crews the book
/// gathers.
bool sameLimits(const AcceptanceRule& one, const AcceptanceRule& other) {
    return one.perSplice == other.perSplice && one.average == other.average && one.ceiling == other.ceiling &&
           one.attempts == other.attempts;
}

AcceptanceRule mostCommon(const std::vector<AcceptanceRule>& rules) {
    return *std::ranges::max_element(rules, {}, [&](const AcceptanceRule& one) {
        return std::ranges::count_if(rules, [&](const auto& other) { return sameLimits(one, other); });
    });
}

/// verdictOf in SQL, as the number of the ReadingVerdict; `rule` holds the rules of the jobs that do not have
/// the common one.
std::string verdictNumber(const AcceptanceRule& common) {
    const AcceptanceRule usual = sampleRules().front();
    // A splice of no job, or of one this book does not know, is judged by the usual rule.
    const std::string ofKnownJob =
        "EXISTS (SELECT 1 FROM identity ji JOIN record jr ON jr.id = ji.id AND jr.kind = 'job' AND jr.live = "
        "1 "
        "WHERE ji.key = a.job)";
    const auto limit = [&](const char* column, int otherwise, int inCommon) {
        const std::string other = otherwise == inCommon
                                      ? std::to_string(otherwise)
                                      : "iif(" + ofKnownJob + ", " + std::to_string(inCommon) + ", " +
                                            std::to_string(otherwise) + ")";
        return "ifnull(rule." + std::string(column) + ", " + other + ")";
    };
    const auto number = [](ReadingVerdict verdict) { return std::to_string(static_cast<int>(verdict)); };
    return "CASE WHEN r.state = " + std::to_string(static_cast<int>(ReadingState::Voided)) + " THEN " +
           number(ReadingVerdict::Voided) + " WHEN r.loss_mdb > " +
           limit("ceiling", usual.ceiling.value, common.ceiling.value) + " THEN " +
           number(ReadingVerdict::OverCeiling) +
           " WHEN r.loss_mdb <= " + limit("average", usual.average.value, common.average.value) +
           " AND r.loss_mdb <= " + limit("splice", usual.perSplice.value, common.perSplice.value) + " THEN " +
           number(ReadingVerdict::Accept) +
           " WHEN r.loss_mdb <= " + limit("splice", usual.perSplice.value, common.perSplice.value) +
           " THEN " + number(ReadingVerdict::AcceptHigh) + " WHEN r.attempt < " +
           limit("attempts", usual.attempts, common.attempts) + " THEN " + number(ReadingVerdict::Resplice) +
           " WHEN " + keepsTheSplice() + " THEN " + number(ReadingVerdict::Kept) + " ELSE " +
           number(ReadingVerdict::NoteMissing) + " END";
}

/// A reading of this verdict, but for a voided one, has more than this under any of the rules.
Loss leastLoss(ReadingVerdict verdict, const std::vector<AcceptanceRule>& rules) {
    const auto least = [&](auto member) { return std::ranges::min(rules, {}, member).*member; };
    switch (verdict) {
        case ReadingVerdict::AcceptHigh:
            return least(&AcceptanceRule::average);
        case ReadingVerdict::Resplice:
        case ReadingVerdict::NoteMissing:
        case ReadingVerdict::Kept:
            return least(&AcceptanceRule::perSplice);
        case ReadingVerdict::OverCeiling:
            return least(&AcceptanceRule::ceiling);
        case ReadingVerdict::Accept:
        case ReadingVerdict::Voided:
            break;
    }
    return Loss{-1};
}

/// What a reading of this verdict has under any of the rules: asked before the rule of its job is looked up,
/// because of a million readings few come that far.
std::string atLeast(ReadingVerdict verdict, const std::vector<AcceptanceRule>& rules) {
    if (verdict == ReadingVerdict::Voided)
        return "r.state = " + std::to_string(static_cast<int>(ReadingState::Voided));
    std::string sql = "(r.loss_mdb > " + std::to_string(leastLoss(verdict, rules).value);
    if (verdict == ReadingVerdict::NoteMissing || verdict == ReadingVerdict::Kept)
        sql += " AND r.attempt >= " +
               std::to_string(std::ranges::min(rules, {}, &AcceptanceRule::attempts).attempts);
    return sql + ")";
}

/// The acceptance rules of the jobs that do not have the common one, as a table of the statement.
template <class KeyOf>
std::string rulesAsTable(const std::vector<Job>& jobs, const AcceptanceRule& common, KeyOf&& keyOf) {
    std::string rows = "(NULL, 0, 0, 0, 0)";
    for (const Job& job : jobs) {
        if (sameLimits(job.rule, common)) continue;
        const auto key = keyOf(job.id.uuid);
        if (!key) continue;
        const AcceptanceRule& rule = job.rule;
        rows += ", (" + std::to_string(*key) + ", " + std::to_string(rule.perSplice.value) + ", " +
                std::to_string(rule.average.value) + ", " + std::to_string(rule.ceiling.value) + ", " +
                std::to_string(rule.attempts) + ")";
    }
    return "rule(job, splice, average, ceiling, attempts) AS MATERIALIZED (VALUES " + rows + "), ";
}

/// Where a page is read from.
enum class From { AllArcs, GivenArcs };

/// One search, asked once or in pieces.
struct SpliceSearch {
    const SpliceFilter& filter;
    PageOrder order;
    std::optional<PageKey> after;
    const JobRules& rules;

    [[nodiscard]] std::string sql(From from) const;
    void run(Connection& connection, const std::string& sql, const std::string& givenArcs, std::size_t limit,
             std::vector<SpliceRow>& rows) const;
    /// Whether the arcs it is about are found by what they mention.
    [[nodiscard]] bool look(MentionSearch& mentions) const;
};

bool SpliceSearch::look(MentionSearch& mentions) const {
    // These have indices of their own.
    if (filter.job || filter.closure || filter.splicer || filter.cleaver) return false;
    if (!filter.text.empty()) return mentions.look(likePattern(filter.text)) == MentionSearch::Texts::Few;
    std::vector<std::string> marks;
    if (filter.lossAbove) {
        if (const auto mark = markAbove(*filter.lossAbove)) marks = {*mark};
    } else {
        for (const ReadingVerdict verdict : filter.verdicts) {
            const auto mark = verdict == ReadingVerdict::Voided ? markOfVoided()
                                                                : markAbove(leastLoss(verdict, rules.every));
            if (!mark) return false;
            marks.push_back(*mark);
        }
    }
    if (marks.empty()) return false;
    mentions.look(marks);
    return true;
}

std::string SpliceSearch::sql(From from) const {
    const bool up = order == PageOrder::OldestFirst;
    const std::string inOrder =
        up ? " ORDER BY a.at_ms, a.key, r.channel" : " ORDER BY a.at_ms DESC, a.key DESC, r.channel DESC";
    std::string sql = "WITH " + rules.table;
    sql += "hit AS MATERIALIZED (SELECT a.key AS key, a.journal AS journal, r.channel AS channel FROM ";
    sql +=
        from == From::GivenArcs ? "json_each(?12) given CROSS JOIN arc a ON a.key = given.value " : "arc a ";
    if (!filter.text.empty()) sql += "JOIN word o ON o.key = a.operator ";
    sql += "JOIN reading r ON r.arc = a.key AND r.live = 1 ";
    if (!filter.verdicts.empty()) sql += "LEFT JOIN rule ON rule.job = a.job ";
    sql += "WHERE a.live = 1";
    const auto narrow = [&sql](bool given, const std::string& condition) {
        if (given) sql += condition;
    };
    narrow(filter.job.has_value(), " AND a.job = (SELECT key FROM identity WHERE id = ?1)");
    narrow(filter.closure.has_value(), " AND a.closure = (SELECT key FROM identity WHERE id = ?2)");
    narrow(filter.splicer.has_value(), " AND a.splicer = (SELECT key FROM identity WHERE id = ?3)");
    narrow(filter.fromMs.has_value(), " AND a.at_ms >= ?4");
    narrow(filter.toMs.has_value(), " AND a.at_ms < ?5");
    narrow(filter.lossAbove.has_value(), " AND r.loss_mdb > ?6");
    narrow(!filter.text.empty(),
           " AND (r.fibre_a LIKE ?7 ESCAPE '\\' OR r.fibre_b LIKE ?7 ESCAPE '\\' OR r.note LIKE ?7 "
           "ESCAPE '\\' OR o.text LIKE ?7 ESCAPE '\\')");
    narrow(after.has_value() && up, " AND a.at_ms >= ?8 AND (a.at_ms > ?8 OR a.key * 32 + r.channel > ?9)");
    narrow(after.has_value() && !up, " AND a.at_ms <= ?8 AND (a.at_ms < ?8 OR a.key * 32 + r.channel < ?9)");
    narrow(filter.cleaver.has_value(), " AND a.cleaver = (SELECT key FROM identity WHERE id = ?11)");
    if (!filter.verdicts.empty()) {
        sql += " AND (0";
        for (const auto verdict : filter.verdicts) sql += " OR " + atLeast(verdict, rules.every);
        sql += ") AND " + verdictNumber(rules.common) + " IN (-1";
        for (const auto verdict : filter.verdicts) sql += ", " + std::to_string(static_cast<int>(verdict));
        sql += ")";
    }
    // CROSS: begin with the hits, however many jobs have rules; the planner takes those for the size of the
    // page.
    return sql + inOrder + " LIMIT ?10) SELECT " + arcColumns() + ", " + readingColumns() +
           ", a.key * 32 + r.channel, (SELECT count(DISTINCT v.loss_mdb || '/' || v.fibre_a || '/' || "
           "v.fibre_b) FROM reading v WHERE v.arc = r.arc AND v.channel = r.channel) FROM hit CROSS JOIN arc "
           "a "
           "ON a.key = hit.key AND a.journal = hit.journal CROSS JOIN reading r ON r.arc = hit.key AND "
           "r.channel = "
           "hit.channel AND r.live = 1 " +
           arcJoins() + inOrder;
}

void SpliceSearch::run(Connection& connection, const std::string& sql, const std::string& givenArcs,
                       std::size_t limit, std::vector<SpliceRow>& rows) const {
    const std::string pattern = likePattern(filter.text);
    Query q = connection.query(sql);
    const auto idOf = [](const auto& id) { return id ? std::optional(id->uuid) : std::nullopt; };
    const auto job = idOf(filter.job);
    const auto closure = idOf(filter.closure);
    const auto splicer = idOf(filter.splicer);
    const auto cleaver = idOf(filter.cleaver);
    q.at(1).with(job).with(closure).with(splicer).with(filter.fromMs).with(filter.toMs);
    q.with(filter.lossAbove ? std::optional<std::int64_t>(filter.lossAbove->value) : std::nullopt);
    q.with(pattern);
    q.with(after ? std::optional(after->atMs) : std::nullopt);
    q.with(after ? std::optional(after->row) : std::nullopt);
    q.with(static_cast<std::int64_t>(std::min<std::size_t>(limit, 1u << 30)));
    if (filter.cleaver) q.at(11).with(cleaver);
    if (!givenArcs.empty()) q.at(12).with(givenArcs);
    while (q.step()) {
        SpliceRow row;
        row.arc = arcFrom(q);
        row.reading = readingFrom(q, arcColumnCount);
        row.row = static_cast<std::uint64_t>(q.integer(arcColumnCount + 9));
        row.versions = static_cast<int>(q.integer(arcColumnCount + 10));
        rows.push_back(std::move(row));
    }
}

std::string asJson(const std::vector<std::int64_t>& keys) {
    std::string text = "[";
    for (const std::int64_t key : keys) text += (text.size() > 1 ? "," : "") + std::to_string(key);
    return text + "]";
}

}  // namespace

Result<const JobRules*> SqliteBook::jobRules() {
    const auto change = changeCount();
    if (!change) return tl::unexpected(change.error());
    if (!jobRules_ || jobRules_->change != *change) {
        const auto all = jobs();
        if (!all) return tl::unexpected(all.error());
        jobRules_ = JobRules{*change, {}, {sampleRules().front()}, {}};
        for (const Job& one : *all) jobRules_->every.push_back(one.rule);
        jobRules_->common = mostCommon(jobRules_->every);
        jobRules_->table = rulesAsTable(*all, jobRules_->common,
                                        [this](const Uuid& id) { return ledger_->findIdentity(id); });
    }
    return &*jobRules_;
}

Result<std::vector<SpliceRow>> SqliteBook::splices(const SpliceFilter& filter, PageOrder order,
                                                   std::optional<PageKey> after, std::size_t limit) {
    return read([&]() -> Result<std::vector<SpliceRow>> {
        static const JobRules unasked;
        const auto rules = filter.verdicts.empty() ? Result<const JobRules*>(&unasked) : jobRules();
        if (!rules) return tl::unexpected(rules.error());
        const SpliceSearch search{filter, order, after, **rules};
        Connection& connection = *book_.connection;
        std::vector<SpliceRow> rows;
        MentionSearch mentions(connection, filter, order, after);
        if (!search.look(mentions)) {
            search.run(connection, search.sql(From::AllArcs), "", limit, rows);
            return rows;
        }
        constexpr std::size_t longestPiece = 4'096;
        const std::string sql = search.sql(From::GivenArcs);
        for (std::size_t piece = std::clamp<std::size_t>(limit, 16, 256); rows.size() < limit;
             piece = std::min(piece * 2, longestPiece)) {
            const auto arcs = mentions.next(piece);
            if (arcs.empty()) break;
            search.run(connection, sql, asJson(arcs), limit - rows.size(), rows);
        }
        return rows;
    });
}

}  // namespace arc::storage
