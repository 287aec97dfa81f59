// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/conflicts.hpp"

#include <algorithm>
#include <optional>

namespace arc::storage {
namespace {

struct Version {
    std::string content;  ///< equal contents are no conflict
    std::string base;     ///< hash of the version it replaced, first half
    std::string ownHash;
    std::string text, device;
};

/// In the order that all laptops see: what the last one says shows. An edit that was made on top of the one
/// before it has settled whatever came earlier.
void tellConflicts(const std::vector<Version>& versions, std::vector<std::string>& told) {
    for (std::size_t i = versions.size(); i-- > 1;) {
        const Version& earlier = versions[i - 1];
        const Version& later = versions[i];
        if (!later.base.empty() && earlier.ownHash.starts_with(later.base)) return;
        if (later.content == earlier.content) continue;
        told.push_back("\"" + later.text + "\" (" + later.device + ") shows; \"" + earlier.text + "\" (" +
                       earlier.device + ") was written without knowing of it");
    }
}

std::vector<Version> versionsOf(Query q) {
    std::vector<Version> versions;
    while (q.step())
        versions.push_back({std::string(q.text(0)), std::string(q.text(1)), std::string(q.text(2)),
                            std::string(q.text(3)), std::string(q.text(4))});
    return versions;
}

}  // namespace

std::vector<std::string> concurrentEdits(Connection& connection, std::vector<Uuid> ids) {
    std::sort(ids.begin(), ids.end());
    ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
    std::vector<std::string> told;
    for (const Uuid& id : ids) {
        std::vector<std::string> kinds;
        {
            Query q = connection.query(
                "SELECT kind FROM record WHERE id = ? AND kind <> 'withdrawal' GROUP BY kind HAVING count(*) "
                "> 1");
            q.with(id);
            while (q.step()) kinds.emplace_back(q.text(0));
        }
        for (const auto& kind : kinds) {
            Query q = connection.query(
                "SELECT r.body, ifnull(hex(r.base), ''), hex(j.hash), j.text, d.name FROM record r JOIN "
                "journal j ON "
                "j.row = r.journal JOIN device d ON d.key = j.device WHERE r.id = ? AND r.kind = ? "
                "ORDER BY j.tick, d.id");
            q.with(id).with(kind);
            tellConflicts(versionsOf(std::move(q)), told);
        }
        std::vector<std::int64_t> channels;
        {
            Query q = connection.query(
                "SELECT r.channel FROM identity i JOIN reading r ON r.arc = i.key WHERE i.id = ? "
                "GROUP BY r.channel HAVING count(*) > 1");
            q.with(id);
            while (q.step()) channels.push_back(q.integer(0));
        }
        for (const auto channel : channels) {
            Query q = connection.query(
                "SELECT r.loss_mdb || '/' || r.state || '/' || r.note || '/' || r.fibre_a || '/' || "
                "r.fibre_b, "
                "ifnull(hex(r.base), ''), hex(j.hash), j.text, d.name FROM identity i JOIN reading r ON "
                "r.arc = i.key "
                "JOIN journal j ON j.row = r.journal JOIN device d ON d.key = j.device "
                "WHERE i.id = ? AND r.channel = ? ORDER BY j.tick, d.id");
            q.with(id).with(channel);
            tellConflicts(versionsOf(std::move(q)), told);
        }
    }
    return told;
}

}  // namespace arc::storage
