// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/export_manifest.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "storage/whole_number.hpp"

namespace arc::storage {
namespace {

using Json = nlohmann::ordered_json;
constexpr const char* formatName = "arcwright closeout manifest";
constexpr int formatVersion = 1;

std::string line(const Json& value) {
    // One line, with a blank after each colon and comma: the form the stranger's sed expects.
    std::string text = "{";
    for (const auto& [key, item] : value.items()) {
        if (text.size() > 1) text += ", ";
        text += Json(key).dump() + ": " + item.dump(-1, ' ', false, Json::error_handler_t::replace);
    }
    return text + "}";
}

bool isPlainName(std::string_view name) {
    const auto isAllowed = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '.' ||
               c == '-' || c == '_';
    };
    return !name.empty() && name.size() <= 100 && name.front() != '.' && std::ranges::all_of(name, isAllowed);
}

bool isSha256(std::string_view text) {
    return text.size() == 64 &&
           std::ranges::all_of(text, [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); });
}

/// The library keeps the last of two equal keys silently; here that would hide a file.
Json parseStrictly(std::string_view text) {
    std::vector<std::set<std::string>> open;
    bool isDoubled = false;
    const auto watch = [&](int, Json::parse_event_t event, Json& parsed) {
        if (event == Json::parse_event_t::object_start) open.emplace_back();
        if (event == Json::parse_event_t::object_end) open.pop_back();
        if (event == Json::parse_event_t::key && !open.back().insert(parsed.get<std::string>()).second)
            isDoubled = true;
        return true;
    };
    Json json = Json::parse(text, watch);
    if (isDoubled) throw std::runtime_error("a key comes twice");
    return json;
}

std::optional<int> maybeInt(const Json& json, const char* key) {
    const Json& value = json.at(key);
    if (value.is_null()) return std::nullopt;
    return needWholeNumber<int>(value);
}

tl::unexpected<Problem> noManifest(const std::string& why) {
    return fail(ProblemCode::Damaged, "manifest.json cannot be read: " + why, "manifest.json");
}

}  // namespace

Manifest manifestOf(const closeout::Record& record, const PublicKey& device,
                    std::vector<ManifestFile> files) {
    Manifest manifest;
    manifest.job = record.job.label;
    manifest.state = std::string(closeout::word(record.state));
    manifest.number = record.number;
    manifest.supersedes = record.supersedes;
    manifest.madeAt = toIso(record.madeAt);
    manifest.journalHead = record.journalHead;
    manifest.device = device;
    manifest.files = std::move(files);
    return manifest;
}

std::string toJson(const Manifest& manifest) {
    const auto number = [](const std::optional<int>& value) { return value ? Json(*value) : Json(nullptr); };
    const auto field = [](const char* key, const Json& value) {
        return "  " + Json(key).dump() + ": " + value.dump(-1, ' ', false, Json::error_handler_t::replace) +
               ",\n";
    };
    std::string text = "{\n";
    text += field("format", formatName);
    text += field("version", formatVersion);
    text += field("job", manifest.job);
    text += field("state", manifest.state);
    text += field("number", number(manifest.number));
    text += field("supersedes", number(manifest.supersedes));
    text += field("made_at", manifest.madeAt);
    text += field("journal_head", manifest.journalHead);
    text += field("device_key_type", "Ed25519");
    text += field("device_public_key", toDerBase64(manifest.device));
    text += "  \"files\": [\n";
    for (std::size_t i = 0; i < manifest.files.size(); ++i) {
        const ManifestFile& file = manifest.files[i];
        text += "    " + line({{"sha256", file.sha256}, {"name", file.name}, {"bytes", file.bytes}});
        text += i + 1 < manifest.files.size() ? ",\n" : "\n";
    }
    return text + "  ]\n}\n";
}

Result<Manifest> parseManifest(std::string_view text) {
    try {
        const Json json = parseStrictly(text);
        if (json.at("format") != formatName) return noManifest("it is no closeout manifest");
        if (needWholeNumber<int>(json.at("version")) > formatVersion)
            return fail(ProblemCode::Refused, "the record was made by a newer program", "manifest.json",
                        "Verify it with that version or later");
        Manifest manifest;
        manifest.job = json.at("job").get<std::string>();
        manifest.state = json.at("state").get<std::string>();
        manifest.number = maybeInt(json, "number");
        manifest.supersedes = maybeInt(json, "supersedes");
        manifest.madeAt = json.at("made_at").get<std::string>();
        manifest.journalHead = json.at("journal_head").get<std::string>();
        const auto key = fromDerBase64(json.at("device_public_key").get<std::string>());
        if (!key) return noManifest("the device's public key is no Ed25519 key");
        manifest.device = *key;
        std::set<std::string> names;
        for (const Json& item : json.at("files")) {
            ManifestFile file;
            file.name = item.at("name").get<std::string>();
            file.bytes = needWholeNumber<std::uint64_t>(item.at("bytes"));
            file.sha256 = item.at("sha256").get<std::string>();
            if (!isPlainName(file.name)) return noManifest("a file name in it is not a plain name");
            if (!names.insert(file.name).second) return noManifest("it lists a file twice");
            if (!isSha256(file.sha256)) return noManifest("a hash in it is no SHA-256");
            manifest.files.push_back(std::move(file));
        }
        return manifest;
    } catch (const std::exception& error) {
        return noManifest(error.what());
    }
}

}  // namespace arc::storage
