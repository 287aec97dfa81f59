// SPDX-License-Identifier: GPL-3.0-or-later
// What may be attached to a splice, a closure or a care record: photos and notes up to attachmentLimit.
#pragma once
#include <string>
#include <string_view>

#include "core/entry.hpp"
#include "core/result.hpp"

namespace arc {

/// "image/jpeg" or "image/png" by the first bytes of the content (JPEG: ITU-T T.81, SOI marker; PNG: ISO/IEC
/// 15948, signature). The Problem names the file.
Result<std::string> photoType(std::string_view fileName, std::string_view bytes);

/// BadInput when the content is empty or above attachmentLimit; `bytes` is its size.
Result<void> fitsAsAttachment(std::string_view fileName, std::uint64_t bytes);

/// The name as a plain file name: no folders, no characters a file system takes for something else, never
/// empty, at most 120 bytes. Records come from other laptops, so nothing is written under a name as it came.
std::string harmlessFileName(std::string_view name);

}  // namespace arc
