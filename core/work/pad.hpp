// SPDX-License-Identifier: GPL-3.0-or-later
// The entry pad without a window: which fibre is next, what the digits mean, what would be written, and what
// takes it back. A window sends keys in, appends the Write it gets back and says written() once the receipt
// is there; until then nothing typed is given up.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/entry.hpp"
#include "core/ports.hpp"
#include "core/work/acceptance.hpp"
#include "core/work/fibre.hpp"
#include "core/work/split.hpp"
#include "core/work/typed_loss.hpp"

namespace arc::pad {

/// What stays the same from splice to splice; set once.
struct SetUp {
    ToolId splicer;
    std::optional<ToolId> cleaver;
    std::optional<JobId> job;
    std::optional<ClosureId> closure;
    std::string mode;
    int fibresPerArc = 1;  ///< 1 for a single-fibre splicer, else the ribbon size
    int unitSize = 12;     ///< fibres shown together: one tube or ribbon, 1-16
    std::string operatorName;
    Ambient ambient;
    AcceptanceRule rule;
    Loss othersSum{0};    ///< losses accepted elsewhere in the span, for the average so far
    int othersCount = 0;  ///< how many they are
};

/// One line of the splice plan.
struct Fibre {
    int number = 1;            ///< 1-based, in the cable on side A
    int inUnit = 1;            ///< 1-based, in its tube or ribbon
    std::string nameA, nameB;  ///< as they are written into the logbook
    FibreLook look{FibreColour::Blue, 0};
};

using Attempt = ChainLink;

enum class Standing { Waiting, Noted, Accepted, AcceptedHigh, TooHigh, Kept, OverCeiling };
enum class Typing { NextAttempt, Correction };
enum class AverageNow { Within, Over };

struct Row {
    Fibre fibre;
    std::vector<Attempt> attempts;  ///< good ones, oldest first
    std::optional<Loss> noted;      ///< typed, goes out with the next Enter
};

/// What typing has come to: shown beside the digits.
struct Preview {
    Typed typed;
    int attempt = 1;
    std::optional<Verdict> verdict;
    AverageNow average = AverageNow::Within;
    double averageDb = 0;  ///< of the span, with this loss in it
};

/// What is to be appended in one go, and what takes it back.
struct Write {
    std::vector<Entry> entries;
    std::vector<Entry> opposite;
    std::string text;     ///< for menu and undo, from the entries
    std::size_t row = 0;  ///< where the pad stood
};

class Pad {
  public:
    /// `arcs`: what the logbook already has of this closure, oldest first.
    Pad(SetUp setUp, std::vector<Fibre> fibres, const std::vector<SpliceArc>& arcs);

    [[nodiscard]] const SetUp& setUp() const { return setUp_; }
    void changeSetUp(SetUp setUp);
    void changeAverage(Loss othersSum, int othersCount);
    /// The closure as the logbook has it now, after an undo or somebody else's entry; what is typed stays.
    void reload(const std::vector<SpliceArc>& arcs);
    [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }
    [[nodiscard]] std::size_t current() const { return current_; }
    [[nodiscard]] const std::string& typed() const { return typed_; }
    [[nodiscard]] std::size_t unitFirst(std::size_t row) const;
    [[nodiscard]] std::size_t unitEnd(std::size_t row) const;
    [[nodiscard]] Standing standing(std::size_t row) const;
    [[nodiscard]] Preview preview() const;
    [[nodiscard]] Typing typing() const;
    /// Fibres with a reading, and how many of them still ask for a re-splice.
    [[nodiscard]] std::size_t done() const;
    [[nodiscard]] std::size_t open() const;

    // Keys. None of them writes.
    void type(char key);  ///< digits, comma, point; others are ignored
    void erase();
    void clear();                                                     ///< what is typed and noted
    void restore(std::string typed, const std::vector<Loss>& noted);  ///< after a crash
    Result<void> moveTo(std::size_t row);  ///< refused while something typed is unsaved
    Result<void> note();                   ///< keeps what is typed for the next Enter and goes on
    Result<void> paste(std::string_view text);
    void askResplice(std::string reason);           ///< what is typed next is a further attempt
    [[nodiscard]] std::vector<Loss> noted() const;  ///< from the first noted row on

    // What goes into the logbook.
    Result<Write> enter(Clock& clock, Random& random);
    /// Enters the last allowed attempt and keeps it in one go: the note is there from its first version on.
    Result<Write> enterKept(const std::string& reason, Clock& clock, Random& random);
    [[nodiscard]] Result<Write> keep(const std::string& reason) const;
    [[nodiscard]] Result<Write> voidReading(const std::string& reason) const;
    /// Takes an attempt (by its number) of the current fibre out of its chain and puts it to the fibre of
    /// that number. In a ribbon it goes to the groove of that fibre; when the fibre lies in another ribbon,
    /// the whole arc goes there.
    [[nodiscard]] Result<Write> split(int attempt, int fibreNumber) const;
    /// The fibre that split offers first: the next one that waits, else the neighbour.
    [[nodiscard]] std::optional<int> splitOffer() const;
    /// The receipt is there.
    void written(const Write& write);

  private:
    struct KnownArc {
        ArcId id;
        Instant at;
        ToolId splicer;
        int channels = 1;
    };
    enum class Redo { No, Asked };

    void apply(const Entry& entry);
    void addReading(const KnownArc& arc, const Reading& reading);
    [[nodiscard]] std::optional<std::size_t> rowOf(const Reading& reading) const;
    [[nodiscard]] const Attempt* last(std::size_t row) const;
    /// The rows spliced together with this one, `size` fibres an arc.
    [[nodiscard]] std::size_t arcFirst(std::size_t row, int size) const;
    [[nodiscard]] std::size_t arcEnd(std::size_t row, int size) const;
    [[nodiscard]] std::size_t arcFirst(std::size_t row) const { return arcFirst(row, setUp_.fibresPerArc); }
    [[nodiscard]] std::size_t arcEnd(std::size_t row) const { return arcEnd(row, setUp_.fibresPerArc); }
    [[nodiscard]] int channelOf(std::size_t row) const;
    [[nodiscard]] Result<void> move(Write& write, std::size_t from, const ArcId& arc, std::size_t to,
                                    int channel) const;
    [[nodiscard]] bool clockIsBehind(Instant now) const;
    [[nodiscard]] const KnownArc* openArc(std::size_t row) const;
    [[nodiscard]] bool inArc(std::size_t row, const ArcId& arc) const;
    [[nodiscard]] int nextAttempt(std::size_t row) const;
    void goOn();
    void arrive(std::size_t row);
    [[nodiscard]] Write begin() const;
    void addEntries(Write& write, std::size_t row, Loss loss, std::optional<ArcId>& fresh, Clock& clock,
                    Random& random) const;

    SetUp setUp_;
    std::vector<Row> rows_;
    std::vector<KnownArc> arcs_;
    std::size_t current_ = 0;
    std::string typed_;
    std::string confirmed_;  ///< doubtful text that was entered once
    Redo redo_ = Redo::No;
    std::string redoReason_;
    std::optional<Write> unanswered_;  ///< sent, no receipt yet; the same text sends the same Write
};

}  // namespace arc::pad
