// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/batch.hpp"

#include <algorithm>
#include <sodium/crypto_hash_sha256.h>
#include <tuple>

namespace arc::storage {
namespace {

template <class Q>
std::optional<std::int64_t> plain(const std::optional<Q>& quantity) {
    if (!quantity) return std::nullopt;
    return static_cast<std::int64_t>(quantity->value);
}
template <class AnyId>
std::optional<Uuid> plainId(const std::optional<AnyId>& id) {
    if (!id) return std::nullopt;
    return id->uuid;
}

void put(Canonical& c, const Base& base) {
    if (base) {
        c.bytes(*base);
    } else {
        c.nothing();
    }
}

void put(Canonical& c, const RecordVersion& v) {
    c.text("record").text(v.row.kind).uuid(v.row.id).maybe(v.row.subject).maybe(v.row.atMs).text(v.row.body);
    put(c, v.base);
}

void put(Canonical& c, const ArcVersion& v) {
    const SpliceArc& a = v.arc;
    c.text("arc").uuid(a.id.uuid).integer(a.at.ms).integer(a.at.offsetMinutes).uuid(a.splicer.uuid);
    c.maybe(plainId(a.cleaver)).maybe(plainId(a.job)).maybe(plainId(a.closure));
    c.text(a.mode).integer(a.channels).maybe(plain(a.counter)).maybe(plain(a.ambient.temperature));
    c.maybe(plain(a.ambient.humidity)).maybe(plain(a.ambient.pressure)).text(a.operatorName);
    c.integer(static_cast<int>(a.origin));
    put(c, v.base);
}

void put(Canonical& c, const ReadingVersion& v) {
    const Reading& r = v.reading;
    c.text("r").uuid(v.arc).integer(r.channel).integer(r.loss.value).maybe(plain(r.cleaveLeft));
    c.maybe(plain(r.cleaveRight)).text(r.fibreA).text(r.fibreB).integer(r.attempt);
    c.integer(static_cast<int>(r.state)).text(r.note);
    put(c, v.base);
}

void put(Canonical& c, const SetAsideVersion& v) {
    c.text("set aside").text(v.kind).text(v.file).integer(static_cast<std::int64_t>(v.line));
    c.text(v.column).text(v.reason).text(v.text);
}

template <class T, class Key>
void sortBy(std::vector<T>& rows, Key key) {
    const auto less = [&key](const T& a, const T& b) { return key(a) < key(b); };
    // Imports come sorted; looking is cheaper than sorting.
    if (!std::is_sorted(rows.begin(), rows.end(), less)) std::stable_sort(rows.begin(), rows.end(), less);
}

}  // namespace

void Batch::clear() {
    records.clear();
    arcs.clear();
    readings.clear();
    setAside.clear();
}

Digest digestOf(Batch& batch) {
    sortBy(batch.records, [](const RecordVersion& v) { return std::tie(v.row.kind, v.row.id); });
    sortBy(batch.arcs, [](const ArcVersion& v) { return v.arc.id; });
    sortBy(batch.readings, [](const ReadingVersion& v) { return std::tie(v.arc, v.reading.channel); });
    sortBy(batch.setAside, [](const SetAsideVersion& v) { return std::tie(v.kind, v.line, v.text); });
    crypto_hash_sha256_state state;
    crypto_hash_sha256_init(&state);
    Canonical c;
    const auto flush = [&] {
        crypto_hash_sha256_update(&state, reinterpret_cast<const unsigned char*>(c.view().data()),
                                  c.view().size());
        c.clear();
    };
    constexpr std::size_t piece = 1 << 16;
    const auto all = [&](const auto& rows) {
        for (const auto& row : rows) {
            put(c, row);
            if (c.view().size() > piece) flush();
        }
    };
    all(batch.records);
    all(batch.arcs);
    all(batch.readings);
    all(batch.setAside);
    flush();
    Digest digest;
    crypto_hash_sha256_final(&state, digest.data());
    return digest;
}

Digest setAsideKey(const SetAsideVersion& row) {
    return sha256(
        Canonical().text(row.kind).integer(static_cast<std::int64_t>(row.line)).text(row.text).view());
}

}  // namespace arc::storage
