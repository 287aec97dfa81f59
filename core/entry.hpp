// SPDX-License-Identifier: GPL-3.0-or-later
// Everything that can be written into a logbook. An entry with an id the logbook knows is a new version of
// that record; nothing is overwritten. Validation, the words for people and the opposite (for undo) live here
// so that menu, journal and history read the same.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/analytics/choices.hpp"
#include "core/care/record.hpp"
#include "core/closeout/decisions.hpp"
#include "core/kit/tool.hpp"
#include "core/result.hpp"
#include "core/work/job.hpp"
#include "core/work/splice.hpp"

namespace arc {

/// One setting of the logbook, e.g. key "drift.budget_arcs", value "1000".
struct Setting {
    std::string key;
    std::string value;
    bool operator==(const Setting&) const = default;
};

/// A photo or note attached to a splice, closure or care record; the content is stored in the logbook with
/// its hash.
struct Attachment {
    EntryId id;
    Uuid of;  ///< the arc, closure or care record
    std::string name;
    std::string mediaType;
    std::string bytes;  ///< at most attachmentLimit
    bool operator==(const Attachment&) const = default;
};
inline constexpr std::size_t attachmentLimit = 8u << 20;

/// Takes a record back (undo). It stays in the journal and is left out of every read.
struct Withdrawal {
    Uuid of;
    std::string reason;
    bool operator==(const Withdrawal&) const = default;
};

using Entry =
    std::variant<Tool, Pairing, CounterCorrection, Job, Cable, Closure, SpliceArc, ReadingChange,
                 MeasuredLoss, CareRecord, CareRun, CardEdition, HoldOverride, BaselineChoice, SignalAnswer,
                 ExceptionDisposition, IssuedRecord, Setting, Attachment, Withdrawal, Span>;

/// Ranges and required fields, without looking at the logbook. The Problem names the field.
Result<void> validate(const Entry& entry);

/// One short sentence for menu, journal and history: "Re-splice of fibre 7: 0.04 dB".
std::string text(const Entry& entry);

/// Stable name of the kind, used in the journal and in satchels: "tool", "arc", "care", …
std::string_view kindName(const Entry& entry);

/// The record an entry writes or takes back; a reading belongs to its arc. A setting has a key, not an id.
std::optional<Uuid> recordOf(const Entry& entry);

/// What takes `written` back again: `before`, the version that showed until then, or a withdrawal when there
/// was none. A reading that was not there before is voided, a setting is emptied.
Entry opposite(const Entry& written, const std::optional<Entry>& before);

}  // namespace arc
