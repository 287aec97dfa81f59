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

/// What repeats from arc to arc is written once: a mark says "as before".
template <class T, class Write>
void unlessSame(Canonical& c, const T* before, const T& now, Write&& write) {
    if (before != nullptr && *before == now) {
        c.same();
    } else {
        write();
    }
}

void put(Canonical& c, const ArcVersion& v, const SpliceArc* before) {
    const SpliceArc& a = v.arc;
    const auto last = [before](auto member) { return before == nullptr ? nullptr : &(before->*member); };
    c.text("arc").uuid(a.id.uuid).integer(a.at.ms).integer(a.at.offsetMinutes);
    unlessSame(c, last(&SpliceArc::splicer), a.splicer, [&] { c.uuid(a.splicer.uuid); });
    unlessSame(c, last(&SpliceArc::cleaver), a.cleaver, [&] { c.maybe(plainId(a.cleaver)); });
    unlessSame(c, last(&SpliceArc::job), a.job, [&] { c.maybe(plainId(a.job)); });
    unlessSame(c, last(&SpliceArc::closure), a.closure, [&] { c.maybe(plainId(a.closure)); });
    unlessSame(c, last(&SpliceArc::mode), a.mode, [&] { c.text(a.mode); });
    unlessSame(c, last(&SpliceArc::operatorName), a.operatorName, [&] { c.text(a.operatorName); });
    c.integer(a.channels).maybe(plain(a.counter)).maybe(plain(a.ambient.temperature));
    c.maybe(plain(a.ambient.humidity)).maybe(plain(a.ambient.pressure)).integer(static_cast<int>(a.origin));
    put(c, v.base);
}

void put(Canonical& c, const ReadingVersion& v, const Uuid* before) {
    const Reading& r = v.reading;
    c.text("r");
    unlessSame(c, before, v.arc, [&] { c.uuid(v.arc); });
    c.integer(r.channel).integer(r.loss.value).maybe(plain(r.cleaveLeft));
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
    novelty = Novelty::Unknown;
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
    constexpr std::size_t piece = 1 << 14;
    const auto flushBig = [&] {
        if (c.view().size() > piece) flush();
    };
    for (const auto& row : batch.records) {
        put(c, row);
        flushBig();
    }
    const SpliceArc* lastArc = nullptr;
    for (const auto& row : batch.arcs) {
        put(c, row, lastArc);
        lastArc = &row.arc;
        flushBig();
    }
    const Uuid* lastOwner = nullptr;
    for (const auto& row : batch.readings) {
        put(c, row, lastOwner);
        lastOwner = &row.arc;
        flushBig();
    }
    for (const auto& row : batch.setAside) {
        put(c, row);
        flushBig();
    }
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
