// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/job_rows.hpp"

#include <optional>
#include <string>
#include <vector>

#include "storage/record_json.hpp"

namespace arc::storage {
namespace {

struct Line {
    std::int64_t journal = 0;
    std::string kind;
    Uuid id;
    std::optional<Uuid> subject;
};

class JobRows {
  public:
    explicit JobRows(Connection& connection) : connection_(connection) {}

    std::set<std::int64_t> of(JobId job) {
        about_.insert(job.uuid);
        addSplices(job);
        addRecords();
        return std::move(rows_);
    }

  private:
    void addSplices(JobId job) {
        std::set<std::int64_t> arcs;
        for (const char* sql :
             {"SELECT key FROM arc WHERE job = (SELECT key FROM identity WHERE id = ?) AND live = 1",
              "SELECT key FROM arc WHERE job = (SELECT key FROM identity WHERE id = ?) AND live = 0"}) {
            Query q = connection_.query(sql);
            q.with(job.uuid);
            while (q.step()) arcs.insert(q.integer(0));
        }
        std::set<std::int64_t> tools;
        for (const auto key : arcs) {
            about_.insert(identityOf(key));
            Query q = connection_.query("SELECT journal, splicer, cleaver FROM arc WHERE key = ?");
            q.with(key);
            while (q.step()) {
                rows_.insert(q.integer(0));
                tools.insert(q.integer(1));
                if (const auto cleaver = q.maybeInteger(2)) tools.insert(*cleaver);
            }
            Query r = connection_.query("SELECT DISTINCT journal FROM reading WHERE arc = ?");
            r.with(key);
            while (r.step()) rows_.insert(r.integer(0));
        }
        for (const auto key : tools) about_.insert(identityOf(key));
    }

    /// A record may be about another that is found later: until nothing more is.
    void addRecords() {
        std::vector<Line> lines;
        {
            Query q = connection_.query(
                "SELECT journal, kind, id, subject, CASE WHEN kind = 'pairing' THEN body END FROM record");
            while (q.step()) {
                Line line{q.integer(0), std::string(q.text(1)), q.uuid(2), {}};
                if (!q.isNull(3)) line.subject = q.uuid(3);
                // The cleaver that was paired with a splicer of the job prepared its fibres.
                if (line.kind == "pairing") pairings_.push_back(fromBody<Pairing>(q.text(4)));
                lines.push_back(std::move(line));
            }
        }
        for (const Pairing& pairing : pairings_)
            if (about_.contains(pairing.splicer.uuid)) about_.insert(pairing.cleaver.uuid);
        for (bool more = true; more;) {
            more = false;
            for (const Line& line : lines) {
                const bool device = line.kind == "device";
                if (!device && !about_.contains(line.id) && !(line.subject && about_.contains(*line.subject)))
                    continue;
                rows_.insert(line.journal);
                if (!device && about_.insert(line.id).second) more = true;
            }
        }
    }

    Uuid identityOf(std::int64_t key) {
        Query q = connection_.query("SELECT id FROM identity WHERE key = ?");
        q.with(key).step();
        return q.uuid(0);
    }

    Connection& connection_;
    std::set<Uuid> about_;
    std::set<std::int64_t> rows_;
    std::vector<Pairing> pairings_;
};

}  // namespace

std::set<std::int64_t> journalRowsOfJob(Connection& connection, JobId job) {
    return JobRows(connection).of(job);
}

}  // namespace arc::storage
