// SPDX-License-Identifier: GPL-3.0-or-later
// The table of all splices over a big logbook and over one of 1,000 readings, in turns in one run: by
// keyboard from a question to the rows on the screen, and the longest time the window did not take events
// meanwhile.
//   arc_all_splices [READINGS]
#include <QApplication>
#include <QComboBox>
#include <QImage>
#include <QLineEdit>
#include <QTableView>
#include <QThread>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <memory>

#include "tests/bench/world.hpp"
#include "tests/support/ui_rig.hpp"
#include "ui/models/splice_table.hpp"
#include "ui/today/splice_search.hpp"

namespace {

using namespace arc;
using Clock = std::chrono::steady_clock;

constexpr int rounds = 5;
constexpr QSize size(1366, 768);

double since(Clock::time_point begin) {
    return std::chrono::duration<double, std::milli>(Clock::now() - begin).count();
}

double median(std::vector<double> times) {
    std::sort(times.begin(), times.end());
    return times[times.size() / 2];
}

struct Times {
    std::vector<double> answered, stalled;
};
/// In the order they are done.
using Table = std::vector<std::pair<std::string, Times>>;

class Person {
  public:
    Person(const std::filesystem::path& book, Table& table) : rig_(ui::Theme{}, book), table_(table) {
        rig_.start();
        search_ = std::make_unique<ui::SpliceSearch>(*rig_.session);
        search_->resize(size);
        search_->show();
    }

    void work() {
        does("opened", [&] { search_->begin(); });
        model_ = search_->findChild<ui::SpliceTable*>();
        view_ = search_->findChild<QTableView*>();
        does("50 pages down", [&] {
            view_->setFocus();
            for (int i = 0; i < 50; ++i) {
                key(view_, Qt::Key_PageDown);
                settle();
            }
        });
        does("oldest first (the end of the table)", [&] { choose("Order", 1); });
        does("newest first again", [&] { choose("Order", 0); });
        const QString middle = QString::fromStdString(toIso(middleOfBook()).substr(0, 7));
        does("a month in the middle", [&] { type("Time", middle); });
        does("any time again", [&] { type("Time", {}); });
        does("one splicer", [&] { choose("Tool", 1); });
        does("any splicer again", [&] { choose("Tool", 0); });
        does("one job", [&] { choose("Job", 1); });
        does("any job again", [&] { choose("Job", 0); });
        does("verdict over ceiling (there is none)", [&] { choose("Verdict", 6); });
        does("verdict accept", [&] { choose("Verdict", 1); });
        does("any verdict again", [&] { choose("Verdict", 0); });
        does("a word that stands in many rows", [&] { type("Search words", "12"); });
        does("no word again", [&] { type("Search words", {}); });
    }

  private:
    void key(QWidget* at, Qt::Key key) {
        const auto begin = Clock::now();
        QTest::keyClick(at, key);
        stall_ = std::max(stall_, since(begin));
    }
    template <class Control>
    Control* named(const char* name) {
        for (auto* one : search_->findChildren<Control*>())
            if (one->accessibleName() == QLatin1String(name)) return one;
        std::fprintf(stderr, "no control %s\n", name);
        std::exit(1);
    }
    void choose(const char* name, int index) {
        auto* box = named<QComboBox>(name);
        box->setFocus();
        key(box, Qt::Key_Home);
        for (int i = 0; i < index; ++i) key(box, Qt::Key_Down);
    }
    void type(const char* name, const QString& words) {
        QLineEdit* line = nullptr;
        for (auto* box : search_->findChildren<QComboBox*>())
            if (box->accessibleName() == QLatin1String(name)) line = box->lineEdit();
        if (!line) line = named<QLineEdit>(name);
        line->setFocus();
        line->selectAll();
        if (words.isEmpty()) key(line, Qt::Key_Delete);
        const auto begin = Clock::now();
        if (!words.isEmpty()) QTest::keyClicks(line, words);
        stall_ = std::max(stall_, since(begin));
    }
    void settle() {
        while (!search_->settled()) {
            const auto begin = Clock::now();
            QApplication::processEvents();
            stall_ = std::max(stall_, since(begin));
            QThread::usleep(200);
        }
        const auto begin = Clock::now();
        QApplication::processEvents();
        search_->render(&image_);
        stall_ = std::max(stall_, since(begin));
    }
    void does(const std::string& what, const std::function<void()>& act) {
        stall_ = 0;
        const auto begin = Clock::now();
        act();
        settle();
        auto found =
            std::find_if(table_.begin(), table_.end(), [&](const auto& row) { return row.first == what; });
        if (found == table_.end()) found = table_.insert(table_.end(), {what, {}});
        found->second.answered.push_back(since(begin));
        found->second.stalled.push_back(stall_);
    }
    Instant middleOfBook() {
        const auto oldest = bench::must(rig_.book->splices({}, PageOrder::OldestFirst, std::nullopt, 1));
        const auto newest = bench::must(rig_.book->splices({}, PageOrder::NewestFirst, std::nullopt, 1));
        return {(oldest.at(0).arc.at.ms + newest.at(0).arc.at.ms) / 2, 0};
    }

    test::UiRig rig_;
    Table& table_;
    std::unique_ptr<ui::SpliceSearch> search_;
    ui::SpliceTable* model_ = nullptr;
    QTableView* view_ = nullptr;
    QImage image_{size, QImage::Format_ARGB32_Premultiplied};
    double stall_ = 0;
};

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    const std::uint64_t readings = argc > 1 ? std::strtoull(argv[1], nullptr, 10) : 1'000'000;
    bench::World world(readings);
    Table big, small;
    for (int i = 0; i < rounds; ++i) {
        Person(world.big, big).work();
        Person(world.small, small).work();
    }
    std::printf(
        "| All splices, %llu readings | this log | 1,000 readings | ratio | longest without events |\n"
        "|---|---|---|---|---|\n",
        static_cast<unsigned long long>(readings));
    for (std::size_t i = 0; i < big.size(); ++i) {
        const double here = median(big[i].second.answered), there = median(small[i].second.answered);
        std::printf("| %s | %.0f ms | %.0f ms | %.2f | %.0f ms |\n", big[i].first.c_str(), here, there,
                    here / there,
                    *std::max_element(big[i].second.stalled.begin(), big[i].second.stalled.end()));
    }
}
