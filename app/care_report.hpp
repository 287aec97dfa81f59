// SPDX-License-Identifier: GPL-3.0-or-later
// Queues, due items and care records as words for people and as JSON for other programs.
#pragma once
#include <iosfwd>
#include <nlohmann/json_fwd.hpp>
#include <span>
#include <string>

#include "app/care_view.hpp"
#include "core/care/queues.hpp"
#include "core/care/record.hpp"

namespace arc::app {

nlohmann::ordered_json itemJson(const care::DueItem& item);
nlohmann::ordered_json recordJson(const CareRecord& record, const std::string& label);

/// {"at", "queues": {"hold": […], …}, "to_order": […], "calibration_owed": […]}
std::string queuesJson(const CareView& view, std::span<const care::OrderLine> orders);
void writeQueuesText(std::ostream& out, const CareView& view, std::span<const care::OrderLine> orders);

}  // namespace arc::app
