// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers of a closeout record: averages, histogram, link budget. Sums are taken in whole 0.001 dB, so that a
// reader with a calculator gets the same figures.
#pragma once
#include <cstddef>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/result.hpp"
#include "core/units/quantity.hpp"
#include "core/work/acceptance.hpp"

namespace arc::closeout {

struct Averages {
    std::size_t splices = 0;
    std::size_t attempts = 0;      ///< all tries, re-splices too
    std::size_t firstTime = 0;     ///< splices that took one attempt
    std::optional<double> meanDb;  ///< none without splices
    std::optional<double> medianDb;
    std::optional<double> sdDb;  ///< of the sample (n - 1); none below two
    std::optional<Loss> worst;
};

/// `losses` of the final splices; `attempts` at least as many.
Averages average(std::span<const Loss> losses, std::size_t attempts, std::size_t firstTime);

struct HistogramBin {
    Loss from;  ///< including
    Loss to;    ///< excluding
    std::size_t count = 0;
};
/// Bins of equal width from zero; what lies beyond the last one is counted in `beyond`.
struct Histogram {
    Loss width{10};
    std::vector<HistogramBin> bins;
    std::size_t beyond = 0;
};
/// Bins of 0.01 dB from 0 up to twice the splice limit (at least 0.10, at most 0.60 dB).
Histogram histogram(std::span<const Loss> losses, Loss limit);

struct BudgetLine {
    std::string what;  ///< "fibre", "splices", "connectors"
    double quantity = 0;
    std::string unit;  ///< "km", "pieces"
    double eachDb = 0;
    double totalDb = 0;
};

/// What one fibre from end to end may lose, and what it is expected to lose as spliced.
struct LinkBudget {
    int wavelengthNm = 1550;
    std::vector<BudgetLine> allowed;
    double allowedDb = 0;
    std::vector<BudgetLine> asSpliced;
    double asSplicedDb = 0;
    std::size_t measured = 0;   ///< splices whose mean of both directions at this wavelength went in
    std::size_t estimated = 0;  ///< splices of which the splicer's estimate went in
};

/// Coefficients of the budget; the shipped ones are samples (common practice), a contract has its own.
struct LinkAssumptions {
    struct Attenuation {
        int wavelengthNm;
        double dbPerKm;
    };
    std::vector<Attenuation> attenuation{{1310, 0.40}, {1550, 0.30}};
    int connectors = 2;
    double dbPerConnector = 0.5;
};

/// What one splice of the mean fibre loses at one wavelength, and where that is from.
struct SplicedMean {
    double db = 0;
    std::size_t measured = 0, estimated = 0;
};

/// A fibre through `lengthKm` of cable and `splices` closures; connectors as assumed.
Result<std::vector<LinkBudget>> linkBudgets(const LinkAssumptions& assumptions, double lengthKm, int splices,
                                            const AcceptanceRule& rule,
                                            const std::function<SplicedMean(int wavelengthNm)>& asSpliced);

}  // namespace arc::closeout
