// SPDX-License-Identifier: GPL-3.0-or-later
// Every problem that core, storage and the window can report has its Spanish. The sentences are read from the
// source: what is not a literal stands for a label or a number.
#include <QRegularExpression>

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <set>
#include <sstream>

#include "source_dir.hpp"
#include "tests/support/in_language.hpp"

namespace arc::ui {
namespace {

namespace fs = std::filesystem;

std::string contentOf(const fs::path& file) {
    std::ostringstream all;
    all << std::ifstream(file).rdbuf();
    return all.str();
}

/// Cuts at a separator outside of quotes and brackets; ends at the bracket that closes.
std::vector<std::string> cut(const std::string& code, std::size_t from, char separator) {
    std::vector<std::string> parts(1);
    int depth = 0;
    for (std::size_t i = from; i < code.size(); ++i) {
        const char c = code[i];
        if (c == '"' || c == '\'') {
            const std::size_t begin = i;
            for (++i; i < code.size() && code[i] != c; ++i)
                if (code[i] == '\\') ++i;
            parts.back() += code.substr(begin, i - begin + 1);
            continue;
        }
        if (c == '(' || c == '{' || c == '[') ++depth;
        if (c == ')' || c == '}' || c == ']') --depth;
        if (depth < 0) break;
        if (c == separator && depth == 0)
            parts.emplace_back();
        else
            parts.back() += c;
    }
    return parts;
}

QString literalsOf(const QString& piece) {
    QString text;
    static const QRegularExpression literal(QStringLiteral("\"((?:[^\"\\\\]|\\\\.)*)\""));
    for (auto match = literal.globalMatch(piece); match.hasNext();) text += match.next().captured(1);
    return text.replace(QLatin1String("\\\""), QLatin1String("\""));
}

/// A sentence as it may read; empty when the code does not tell.
QString sampleOf(const std::string& expression) {
    QString sample;
    bool said = false;
    for (const auto& part : cut(expression, 0, '+')) {
        const QString piece = QString::fromStdString(part).trimmed();
        static const QRegularExpression only(
            QStringLiteral("^(std::string\\()?(\\s*\"([^\"\\\\]|\\\\.)*\")+\\)?$"));
        if (only.match(piece).hasMatch()) {
            sample += literalsOf(piece);
            said = true;
        } else if (const auto choice = piece.lastIndexOf(QLatin1Char(':'));
                   piece.contains(QLatin1Char('?')) && piece.contains(QLatin1Char('"'))) {
            sample += literalsOf(piece.mid(choice));
        } else if (piece.contains(QLatin1String("to_string")) || piece.contains(QLatin1String("grouped")) ||
                   piece.contains(QLatin1String("number(")) || piece.contains(QLatin1String("twoPlaces"))) {
            sample += QLatin1Char('7');
        } else {
            sample += QLatin1String("HR-7");
        }
    }
    return said ? sample : QString();
}

TEST(ProblemWords, everyProblemHasItsSpanish) {
    const test::InLanguage spanish{text::Language::Spanish};
    // Reached by the command line only.
    const std::set<std::string> headless{"stats",
                                         "scenario",
                                         "run_rules.cpp",
                                         "limit_search.cpp",
                                         "optics",
                                         "agreement",
                                         "two_sided_cusum.cpp",
                                         "run_length.cpp",
                                         "classical_charts.cpp",
                                         "several_streams.cpp",
                                         "discrete_cusum.cpp"};
    std::string missing;
    const auto look = [&](const std::string& expression, const fs::path& file) {
        const QString sample = sampleOf(expression);
        if (sample.contains(QLatin1Char(' ')) && spanish.phrasebook().spoken(sample) == sample)
            missing += file.filename().string() + ": " + sample.toStdString() + "\n";
    };
    for (const char* layer : {"core", "storage", "ui"})
        for (const auto& entry : fs::recursive_directory_iterator(fs::path(ARC_SOURCE_DIR) / layer)) {
            const auto& file = entry.path();
            if (file.extension() != ".cpp") continue;
            const bool skip = std::ranges::any_of(
                headless, [&](const auto& name) { return file.string().find(name) != std::string::npos; });
            if (skip) continue;
            const std::string code = contentOf(file);
            for (const std::string begin : {"fail(ProblemCode::", "Problem{ProblemCode::"})
                for (auto at = code.find(begin); at != std::string::npos; at = code.find(begin, at + 1)) {
                    const auto parts = cut(code, at + begin.size(), ',');
                    if (parts.size() > 1) look(parts[1], file);
                    if (parts.size() > 3) look(parts[3], file);
                }
        }
    EXPECT_EQ(missing, "");
}

}  // namespace
}  // namespace arc::ui
