// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a satchel, and any bytes as the payload of one that an accepted device really signed: taken in
// or refused in one sentence, and the logbook's journal holds afterwards.
#include <cstdint>
#include <fstream>

#include "storage/satchel.hpp"
#include "storage/satchel_file.hpp"
#include "storage/verify.hpp"
#include "tests/fuzz/scratch.hpp"

namespace {

void write(const std::filesystem::path& file, const std::uint8_t* data, std::size_t size) {
    std::ofstream(file, std::ios::binary | std::ios::trunc)
        .write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace arc;
    static fuzz::Scratch scratch;
    static const storage::DeviceKey key = storage::deviceKey(scratch.folder / "device").value();
    if (size == 0) return 0;
    const auto satchel = scratch.folder / "in.satchel";
    if (data[0] == 'w') {  // the whole file
        write(satchel, data + 1, size - 1);
    } else {  // its payload; the second half of the choice is the schema it claims
        const auto payload = scratch.folder / "payload";
        write(payload, data + 1, size - 1);
        std::error_code ignored;
        std::filesystem::remove(satchel, ignored);
        storage::SatchelLabel label;
        label.madeBy = "fuzz";
        label.madeAt = scratch.clock.now();
        label.signer = key.publicKey;
        label.schema = data[0] % 4;
        if (!storage::writeSatchelFile(satchel, label, payload, std::nullopt, key, scratch.random))
            std::abort();
    }
    NoProgress unwatched;
    if (const auto said = storage::verifySatchel(satchel, std::nullopt, unwatched); !said)
        fuzz::demandSentence(said.error());
    const storage::UnpackRequest request{scratch.book, satchel, std::nullopt, {key.publicKey},
                                         storage::OpenMode::ReadWrite};
    const auto taken = storage::unpackSatchel(request, scratch.clock, scratch.random, unwatched);
    if (!taken) {
        fuzz::demandSentence(taken.error());
        return 0;
    }
    if (taken->newRows == 0) return 0;
    if (!storage::verifyBook(scratch.book, unwatched)) std::abort();
    std::error_code ignored;
    for (const char* end : {"", "-wal", "-shm"})
        std::filesystem::remove(scratch.book.string() + end, ignored);
    if (!storage::createLogbook(scratch.book, scratch.clock, scratch.random)) std::abort();
    return 0;
}
