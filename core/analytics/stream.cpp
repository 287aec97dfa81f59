// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analytics/stream.hpp"

namespace arc {

std::string stratumKey(const std::string& mode, int channels) {
    return mode + " / " + std::to_string(channels);
}

}  // namespace arc
