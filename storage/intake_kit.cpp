// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "storage/intake_parts.hpp"

namespace arc::storage {
namespace {

/// Which kind of tool an action is done to, from the first word of its key.
enum class ToolKind { Splicer, Cleaver, Stripper, Any };
ToolKind kindFor(const std::string& action) {
    if (action.starts_with("cleaver_") || action.starts_with("blade_")) return ToolKind::Cleaver;
    if (action.starts_with("stripper_")) return ToolKind::Stripper;
    if (action == action::note || action == action::environmentChange) return ToolKind::Any;
    return ToolKind::Splicer;
}

const char* kindWord(const Tool& tool) {
    if (asSplicer(tool) != nullptr) return "splicer";
    return asCleaver(tool) != nullptr ? "cleaver" : "stripper";
}

Tool newTool(const std::string& label) {
    Tool tool;
    tool.id = ToolId{namedUuid("tool/" + label)};
    tool.label = label;
    return tool;
}

Splicer splicerFor(int channels) {
    Splicer splicer;
    splicer.kind = channels > 1 ? SplicerKind::MassFusion : SplicerKind::SingleFibre;
    splicer.grooves = std::max(1, channels);
    return splicer;
}

RowFault wrongKind(const Tool& tool, const char* column, const char* wanted) {
    return {column, "\"" + tool.label + "\" is a " + kindWord(tool) + " in the kit, not a " + wanted};
}

}  // namespace

KitFinder::KitFinder(Connection& connection, Ledger& ledger) : connection_(connection), ledger_(ledger) {
    Query q = connection_.query("SELECT kind, body FROM record WHERE kind IN ('tool', 'job') AND live = 1");
    while (q.step()) {
        if (q.text(0) == "tool") {
            Tool tool = fromBody<Tool>(q.text(1));
            tools_.emplace(tool.label, KnownTool{tool, false});
        } else {
            const Job job = fromBody<Job>(q.text(1));
            jobs_.emplace(job.label, job.id);
        }
    }
    loadClosures();
}

void KitFinder::loadClosures() {
    Query q = connection_.query(
        "SELECT id, subject, json_extract(body, '$.label') FROM record WHERE kind = 'closure' AND live = 1");
    while (q.step())
        closures_.emplace(std::pair(JobId{q.uuid(1)}, std::string(q.text(2))), ClosureId{q.uuid(0)});
}

tl::expected<ToolId, RowFault> KitFinder::make(const std::string& column, Tool tool) {
    if (auto valid = validate(tool); !valid) return tl::unexpected(RowFault{column, valid.error().what});
    const ToolId id = tool.id;
    std::string label = tool.label;
    tools_.emplace(std::move(label), KnownTool{std::move(tool), true});
    return id;
}

tl::expected<ToolId, RowFault> KitFinder::splicer(const std::string& label, int channels) {
    const auto found = tools_.find(label);
    if (found == tools_.end()) {
        Tool tool = newTool(label);
        tool.traits = splicerFor(channels);
        return make("splicer", std::move(tool));
    }
    KnownTool& known = found->second;
    auto* const splicer = std::get_if<Splicer>(&known.tool.traits);
    if (splicer == nullptr) return tl::unexpected(wrongKind(known.tool, "splicer", "splicer"));
    if (splicer->grooves < channels) {
        // The log shows what the machine can do; the kit learns it.
        if (!known.unwritten)
            notes_.push_back(label + " splices " + std::to_string(channels) +
                             " fibres in one arc; the kit said " + std::to_string(splicer->grooves) +
                             " and was brought up to date");
        splicer->grooves = channels;
        splicer->kind = SplicerKind::MassFusion;
        known.unwritten = true;
    }
    return known.tool.id;
}

tl::expected<ToolId, RowFault> KitFinder::cleaver(const std::string& label) {
    const auto found = tools_.find(label);
    if (found == tools_.end()) {
        Tool tool = newTool(label);
        tool.traits = Cleaver{};
        return make("cleaver", std::move(tool));
    }
    if (asCleaver(found->second.tool) == nullptr)
        return tl::unexpected(wrongKind(found->second.tool, "cleaver", "cleaver"));
    return found->second.tool.id;
}

tl::expected<ToolId, RowFault> KitFinder::toolFor(const std::string& label, const std::string& action) {
    const ToolKind kind = kindFor(action);
    const auto found = tools_.find(label);
    if (found != tools_.end()) {
        const Tool& tool = found->second.tool;
        const bool fits = kind == ToolKind::Any ||
                          (kind == ToolKind::Splicer && asSplicer(tool) != nullptr) ||
                          (kind == ToolKind::Cleaver && asCleaver(tool) != nullptr) ||
                          (kind == ToolKind::Stripper && asStripper(tool) != nullptr);
        if (!fits)
            return tl::unexpected(RowFault{
                "equipment", "\"" + label + "\" is a " + kindWord(tool) + "; " + action + " is not for it"});
        return tool.id;
    }
    if (kind == ToolKind::Any)
        return tl::unexpected(RowFault{
            "equipment",
            "there is no tool called \"" + label + "\" in the kit and the action does not tell its kind"});
    Tool tool = newTool(label);
    if (kind == ToolKind::Cleaver) {
        tool.traits = Cleaver{};
    } else if (kind == ToolKind::Stripper) {
        tool.traits = Stripper{};
    } else {
        tool.traits = Splicer{};
    }
    return make("equipment", std::move(tool));
}

tl::expected<JobId, RowFault> KitFinder::job(const std::string& label, int channels) {
    const auto found = jobs_.find(label);
    if (found != jobs_.end()) return found->second;
    Job made;
    made.id = JobId{namedUuid("job/" + label)};
    made.label = label;
    made.rule = sampleRuleFor(channels);
    if (auto valid = validate(made); !valid) return tl::unexpected(RowFault{"job", valid.error().what});
    unwritten_.emplace_back(made);
    jobs_.emplace(label, made.id);
    return made.id;
}

tl::expected<ClosureId, RowFault> KitFinder::closure(JobId job, const std::string& label) {
    const auto found = closures_.find({job, label});
    if (found != closures_.end()) return found->second;
    Closure made;
    made.id = ClosureId{namedUuid("closure/" + toText(job.uuid) + "/" + label)};
    made.job = job;
    made.label = label;
    if (auto valid = validate(made); !valid) return tl::unexpected(RowFault{"closure", valid.error().what});
    unwritten_.emplace_back(made);
    closures_.emplace(std::pair(job, label), made.id);
    return made.id;
}

tl::expected<KitFinder::Place, RowFault> KitFinder::knownClosure(const std::string& jobLabel,
                                                                 const std::string& label) {
    std::vector<Place> found;
    for (const auto& [key, closure] : closures_) {
        if (key.second != label) continue;
        if (!jobLabel.empty() && (!jobs_.contains(jobLabel) || jobs_.at(jobLabel) != key.first)) continue;
        found.push_back({key.first, closure});
    }
    if (found.empty())
        return tl::unexpected(
            RowFault{"closure", "there is no closure called \"" + label + "\"; import the splice log first"});
    if (found.size() > 1)
        return tl::unexpected(RowFault{
            "closure", "several jobs have a closure called \"" + label + "\"; add a column \"job\""});
    return found.front();
}

void writeRecord(Connection& connection, Ledger& ledger, const Entry& entry, Stamp stamp) {
    Batch batch;
    RecordVersion version{toRecord(entry), {}};
    {
        Query q = connection.query(
            "SELECT j.hash, r.body FROM record r JOIN journal j ON j.row = r.journal "
            "WHERE r.id = ? AND r.kind = ? AND r.live = 1");
        if (q.with(version.row.id).with(version.row.kind).step()) {
            if (q.text(1) == version.row.body) return;
            version.base = halfOf(q.bytes(0));
        }
    }
    batch.records.push_back(std::move(version));
    ledger.write(batch, stamp);
}

void KitFinder::writeNew(const Stamp& stamp) {
    std::vector<Entry> entries;
    for (auto& [label, known] : tools_) {
        if (!known.unwritten) continue;
        known.unwritten = false;
        entries.emplace_back(known.tool);
    }
    // The order of a hash map is nobody's: by label.
    std::sort(entries.begin(), entries.end(), [](const Entry& a, const Entry& b) {
        return std::get<Tool>(a).label < std::get<Tool>(b).label;
    });
    entries.insert(entries.end(), unwritten_.begin(), unwritten_.end());
    unwritten_.clear();
    for (const Entry& entry : entries) {
        if (auto valid = validate(entry); !valid) throw IntakeStop{valid.error()};
        Stamp own = stamp;
        own.kind = kindName(entry);
        own.text = text(entry);
        writeRecord(connection_, ledger_, entry, std::move(own));
    }
}

std::vector<std::string> KitFinder::takeNotes() {
    return std::exchange(notes_, {});
}

}  // namespace arc::storage
