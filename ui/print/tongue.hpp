// SPDX-License-Identifier: GPL-3.0-or-later
// What the pages say, in the language asked for. Made for one record and used by its thread alone, so that a
// window may change its own language meanwhile.
#pragma once
#include <QString>

#include <memory>
#include <string_view>

#include "core/closeout/paper.hpp"
#include "core/work/fibre.hpp"

namespace arc::ui::text {
class Translator;
}

namespace arc::print {

class Tongue {
  public:
    explicit Tongue(closeout::PageLanguage language);
    ~Tongue();
    Tongue(const Tongue&) = delete;
    Tongue& operator=(const Tongue&) = delete;

    /// Words of the pages themselves.
    [[nodiscard]] QString tr(const char* english) const;
    /// A sentence or term that core made; control characters out, very long ones cut.
    [[nodiscard]] QString spoken(std::string_view english) const;
    [[nodiscard]] QString colour(FibreColour colour) const;

  private:
    std::unique_ptr<const ui::text::Translator> m_translator;  ///< null: English, as the code says it
};

}  // namespace arc::print
