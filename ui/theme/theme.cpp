// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/theme.hpp"

#include <QApplication>
#include <QFile>
#include <QPalette>
#include <QRegularExpression>
#include <QStyleFactory>
#include <QVariant>

#include <algorithm>
#include <cmath>

#include "ui/theme/typeface.hpp"

// Resources of a static library are dropped by the linker unless somebody asks for them, and the macro must
// stand outside every namespace.
static void loadResources() {
    Q_INIT_RESOURCE(arcwright);
}

namespace arc::ui {
namespace {

constexpr const char* themeProperty = "arc.theme";

QPalette qtPalette(const Theme& theme) {
    QPalette p;
    p.setColor(QPalette::Window, theme.colour(Role::Paper));
    p.setColor(QPalette::WindowText, theme.colour(Role::Ink));
    p.setColor(QPalette::Base, theme.colour(Role::Card));
    p.setColor(QPalette::AlternateBase, theme.colour(Role::Paper));
    p.setColor(QPalette::Text, theme.colour(Role::Ink));
    p.setColor(QPalette::Button, theme.colour(Role::Card));
    p.setColor(QPalette::ButtonText, theme.colour(Role::Accent));
    p.setColor(QPalette::Highlight, theme.colour(Role::AccentWash));
    p.setColor(QPalette::HighlightedText, theme.colour(Role::Ink));
    p.setColor(QPalette::PlaceholderText, theme.colour(Role::Soft));
    p.setColor(QPalette::ToolTipBase, theme.colour(Role::Ink));
    p.setColor(QPalette::ToolTipText, theme.colour(Role::Card));
    p.setColor(QPalette::Link, theme.colour(Role::Accent));
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        p.setColor(QPalette::Disabled, role, theme.colour(Role::Soft));
    return p;
}

constexpr std::pair<const char*, Role> names[] = {
    {"paper", Role::Paper},
    {"card", Role::Card},
    {"line", Role::Line},
    {"edge", Role::Edge},
    {"ink", Role::Ink},
    {"soft", Role::Soft},
    {"accent", Role::Accent},
    {"on_accent", Role::OnAccent},
    {"wash", Role::AccentWash},
    {"steady", Role::Steady},
    {"watch", Role::Watch},
    {"drifting", Role::Drifting},
    {"recovered", Role::Recovered},
    {"on_drifting", Role::OnDrifting},
    {"shade", Role::Shade},
    {"rail", Role::Rail},
    {"rail_ink", Role::RailInk},
    {"rail_soft", Role::RailSoft},
};

/// Fills the sheet's "@role" and "px(n)" in.
QString styleSheet(const Theme& theme) {
    QFile file(QStringLiteral(":/themes/window.qss"));
    if (!file.open(QIODevice::ReadOnly)) return {};
    QString source = QString::fromUtf8(file.readAll());
    source.replace(QLatin1String("TONE"), QLatin1String(theme.tone() == Tone::Day ? "day" : "night"));
    static const QRegularExpression token(QStringLiteral(R"(@([a-z_]+)|px\(([0-9.]+)\))"));
    QString sheet;
    qsizetype end = 0;
    for (auto it = token.globalMatch(source); it.hasNext();) {
        const auto match = it.next();
        sheet += QStringView(source).mid(end, match.capturedStart() - end);
        end = match.capturedEnd();
        if (match.capturedLength(2) > 0) {
            sheet += QString::number(theme.px(match.captured(2).toDouble())) + QStringLiteral("px");
            continue;
        }
        const auto* known = std::ranges::find_if(
            names, [&](const auto& name) { return match.captured(1) == QLatin1String(name.first); });
        // Left as it stands, Qt names the line it cannot read.
        sheet += known == std::end(names) ? match.captured() : theme.colour(known->second).name();
    }
    return sheet + source.mid(end);
}

}  // namespace

Theme::Theme(Tone tone, double scale) : m_tone(tone), m_scale(std::clamp(scale, 1.0, 2.0)) {}

QColor Theme::colour(Role role, double alpha) const {
    QColor c = colour(role);
    c.setAlphaF(static_cast<float>(alpha));
    return c;
}

QFont Theme::font(Text size, Weight weight) const {
    QFont f(QStringList{typeface(), QStringLiteral("DejaVu Sans"), QStringLiteral("sans-serif")});
    f.setPixelSize(px(static_cast<double>(size)));
    f.setBold(weight == Weight::Bold);
    return f;
}

int Theme::px(double atScaleOne) const {
    return std::max(1, static_cast<int>(std::lround(atScaleOne * m_scale)));
}

void applyTheme(QApplication& application, const Theme& theme) {
    loadResources();
    application.setProperty(themeProperty, QVariant::fromValue(theme));
    if (application.styleSheet().isEmpty())
        application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    application.setPalette(qtPalette(theme));
    application.setFont(theme.font(Text::Body));
    application.setStyleSheet(styleSheet(theme));
}

Theme currentTheme() {
    const auto* application = QCoreApplication::instance();
    return application ? application->property(themeProperty).value<Theme>() : Theme{};
}

}  // namespace arc::ui
