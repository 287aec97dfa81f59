// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/fibre_colours.hpp"

namespace arc::ui {

QColor fibreColour(FibreColour colour) {
    // A switch, so that the compiler names a colour that was forgotten.
    switch (colour) {
        case FibreColour::Blue:
            return {0x1F, 0x57, 0xC3};
        case FibreColour::Orange:
            return {0xE8, 0x75, 0x11};
        case FibreColour::Green:
            return {0x1C, 0x8A, 0x3B};
        case FibreColour::Brown:
            return {0x7A, 0x4A, 0x21};
        case FibreColour::Slate:
            return {0x7C, 0x86, 0x8D};
        case FibreColour::White:
            return {0xFF, 0xFF, 0xFF};
        case FibreColour::Red:
            return {0xC8, 0x1E, 0x1E};
        case FibreColour::Black:
            return {0x11, 0x11, 0x11};
        case FibreColour::Yellow:
            return {0xF2, 0xC5, 0x00};
        case FibreColour::Violet:
            return {0x6B, 0x2F, 0xA0};
        case FibreColour::Rose:
            return {0xEE, 0x8F, 0xA9};
        case FibreColour::Aqua:
            return {0x7F, 0xE3, 0xE3};
        case FibreColour::Turquoise:
            return {0x1F, 0xA5, 0xA5};
        case FibreColour::Natural:
            return {0xEF, 0xE6, 0xCF};
        case FibreColour::Lime:
            return {0xA6, 0xD9, 0x3A};
        case FibreColour::Grey:
            return {0x8C, 0x8C, 0x8C};
        case FibreColour::Pink:
            return {0xF2, 0x9A, 0xB8};
    }
    return {0xFF, 0xFF, 0xFF};
}

}  // namespace arc::ui
