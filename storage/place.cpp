// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/place.hpp"

#include <array>
#include <fstream>
#include <sys/stat.h>
#include <unistd.h>

namespace arc::storage {

std::string machineName() {
    std::array<char, 256> host{};
    if (gethostname(host.data(), host.size() - 1) != 0 || host[0] == '\0') return "this machine";
    return host.data();
}

namespace {

std::string readMachine() {
    std::string machine;
    std::ifstream("/etc/machine-id") >> machine;
    return machine.empty() ? machineName() : machine;
}

}  // namespace

Digest placeOf(const std::filesystem::path& file) {
    // It does not change while a program runs, and this is asked for at each entry.
    static const std::string machine = readMachine();
    struct stat info {};
    const std::int64_t inode = stat(file.c_str(), &info) == 0 ? static_cast<std::int64_t>(info.st_ino) : 0;
    return sha256(Canonical().text("place").text(machine).integer(inode).view());
}

}  // namespace arc::storage
