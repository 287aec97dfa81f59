// SPDX-License-Identifier: GPL-3.0-or-later
// The kinds of which there are few, as rows of the record table with a JSON body. Field names here stay for
// ever: logbooks and satchels hold them. Unknown fields of a body are left alone, missing ones take the
// default of the struct, so that books of older programs can be read.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/entry.hpp"

namespace arc::storage {

struct RecordRow {
    std::string kind;
    Uuid id;
    std::optional<Uuid>
        subject;  ///< what lists ask for: the tool, the job, the splicer, what it is attached to
    std::optional<std::int64_t> atMs;
    std::string body;
};

/// Identity of a setting: computed from its key.
Uuid settingId(std::string_view key);

/// Throws std::logic_error for arcs and readings, which have tables of their own.
RecordRow toRecord(const Entry& entry);

/// Reads a body back. Throws (JSON or range errors) when it is not what toRecord writes. The bytes of an
/// Attachment are not in its body; see attachmentHash.
template <class T>
T fromBody(std::string_view body);

/// SHA-256 of an attachment's bytes, hex, from its body.
std::string attachmentHash(std::string_view body);

/// Any kind, by name; nothing for a kind this program does not know.
std::optional<Entry> entryFrom(std::string_view kind, std::string_view body);

}  // namespace arc::storage
