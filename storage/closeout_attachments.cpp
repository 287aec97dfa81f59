// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/closeout_attachments.hpp"

#include <algorithm>
#include <set>

#include "core/care/words.hpp"
#include "core/work/attachments.hpp"
#include "storage/plain_file.hpp"

namespace arc::storage {
namespace {

using closeout::Record;

/// "attachment-001-tray.jpg": a name that the manifest takes and no two share.
std::string fileName(std::size_t number, const Attachment& attachment) {
    constexpr std::size_t digits = 3, longest = 60;
    std::string count = std::to_string(number);
    if (count.size() < digits) count.insert(0, digits - count.size(), '0');
    std::string name = harmlessFileName(attachment.name);
    std::ranges::replace_if(
        name,
        [](char c) {
            return !((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '.' ||
                     c == '-' || c == '_');
        },
        '_');
    if (name.size() > longest) name.erase(0, name.size() - longest);
    return "attachment-" + count + "-" + name;
}

class Collector {
  public:
    Collector(Logbook& book, Record& record, const CloseoutStage& stage)
        : book_(book), record_(record), stage_(stage) {}

    Result<void> closures() {
        for (const closeout::ClosureSection& section : record_.closures) {
            if (!section.closure) continue;
            if (auto done = of(section.closure->uuid, "closure " + section.label); !done) return done;
        }
        return {};
    }
    Result<void> splices() {
        for (const closeout::ClosureSection& section : record_.closures)
            for (const closeout::Splice& splice : section.splices)
                for (const closeout::Attempt& attempt : splice.attempts) {
                    const std::string where = section.label + ", splice of " + toIso(attempt.at) + " on " +
                                              record_.equipment[attempt.splicer].tool.label;
                    if (auto done = of(attempt.arc.uuid, where); !done) return done;
                }
        return {};
    }
    Result<void> care() {
        for (const closeout::Equipment& item : record_.equipment) {
            const auto all = book_.careRecords(item.tool.id);
            if (!all) return tl::unexpected(all.error());
            for (const CareRecord& one : *all) {
                const auto isIt = [&one](const closeout::CareLine& line) {
                    return line.at.ms == one.at.ms && line.action == one.action;
                };
                if (!std::ranges::any_of(item.before, isIt) && !std::ranges::any_of(item.during, isIt))
                    continue;
                const std::string where = item.tool.label + ", care " + care::spaced(one.action) + " of " + toIso(one.at);
                if (auto done = of(one.id.uuid, where); !done) return done;
            }
        }
        return {};
    }

  private:
    Result<void> of(const Uuid& owner, const std::string& where) {
        if (!seen_.insert(owner).second) return {};
        const auto list = book_.attachments(owner);
        if (!list) return tl::unexpected(list.error());
        for (const Attachment& attachment : *list) {
            closeout::AttachedFile file;
            file.file = fileName(record_.attachments.size() + 1, attachment);
            file.name = attachment.name;
            file.mediaType = attachment.mediaType;
            file.where = where;
            file.bytes = attachment.bytes.size();
            file.sha256 = sha256Hex(attachment.bytes);
            if (auto done = writePlainFile(stage_.file(file.file), attachment.bytes, FileMode::Normal); !done)
                return done;
            record_.attachments.push_back(std::move(file));
        }
        return {};
    }

    Logbook& book_;
    Record& record_;
    const CloseoutStage& stage_;
    std::set<Uuid> seen_;
};

}  // namespace

Result<void> addAttachments(Logbook& book, Record& record, const CloseoutStage& stage) {
    record.attachments.clear();
    Collector collector(book, record, stage);
    return collector.closures().and_then([&] { return collector.splices(); }).and_then([&] {
        return collector.care();
    });
}

}  // namespace arc::storage
