// SPDX-License-Identifier: GPL-3.0-or-later
// Estimate against measurement for every splicer of a logbook.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/analytics/agreement.hpp"
#include "core/logbook.hpp"
#include "core/result.hpp"

namespace arc::drift {

/// One splicer at one wavelength.
struct SplicerAgreement {
    ToolId splicer;
    std::string label;
    int wavelengthNm = 1550;
    std::vector<MeasuredSplice> splices;  ///< measured from both ends, oldest first
    std::optional<Agreement> agreement;   ///< empty below three splices
    /// The chart starts afresh with each cleaning of the camera lenses.
    std::optional<Instant> chartSince;
    std::size_t chartFrom = 0;  ///< index of its first splice; chart indices count from there
    DifferenceChart chart;
};

struct AgreementReport {
    std::vector<SplicerAgreement> splicers;  ///< by label, then wavelength
    int oneWay = 0;                          ///< measurements seen from one end only, left out
    int unmatched = 0;                       ///< two-way measurements without a splice in the book
};

/// `budget`: one false signal per so many measured splices of a splicer, 10 to 1e6.
[[nodiscard]] Result<AgreementReport> agreementReport(Logbook& book, double budget);

/// One false signal per so many measured splices of a splicer unless somebody asks for another budget.
inline constexpr double usualDifferenceBudget = 500;

}  // namespace arc::drift
