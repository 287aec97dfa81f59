// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/outcome.hpp"

#include "ui/text/format.hpp"
#include "ui/widgets/words.hpp"

namespace arc::ui {

namespace {

QString capital(QString line) {
    if (!line.isEmpty()) line[0] = line[0].toUpper();
    return line;
}

}  // namespace

QString asLine(std::string_view sentence) {
    return capital(text::spoken(sentence));
}

QString asLine(const Problem& problem) {
    return capital(text::spoken(problem));
}

Outcome::Outcome(QWidget* parent) : QLabel(parent) {
    setTextFormat(Qt::PlainText);
    setProperty("text_role", QStringLiteral("body"));
    setWordWrap(true);
    setTextInteractionFlags(Qt::TextSelectableByMouse);
    hide();
}

void Outcome::say(const QString& sentence, Mark mark) {
    setText(sentence);
    setState(this, stateName(mark));
    show();
}

void Outcome::say(const Problem& problem) {
    say(asLine(problem), problem.code == ProblemCode::Cancelled ? Mark::Watch : Mark::Drifting);
}

void Outcome::quiet() {
    clear();
    hide();
}

}  // namespace arc::ui
