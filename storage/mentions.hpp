// SPDX-License-Identifier: GPL-3.0-or-later
// What of an arc can be searched for: the fibre names of its readings together as one text, each note, and
// marks for what is seldom: a voided reading, a high loss. The tables `phrase` and `mention` say where each
// stands; see 0003_mentions.sql.
#pragma once
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/logbook.hpp"
#include "storage/connection.hpp"

namespace arc::storage {

struct ArcWords {
    std::string names;  ///< one a line, in the order of the channels
    std::vector<std::string> notes;
    Loss worst;
    ReadingState voided = ReadingState::Good;  ///< Voided when any of them is

    void add(std::string_view fibreA, std::string_view fibreB, std::string_view note, Loss loss,
             ReadingState state);
    void clear();
    /// Each text once; empty ones are left out.
    void each(const std::function<void(const std::string& text)>& use) const;
};

/// The phrase of arcs with a voided reading; of arcs with a loss above `loss` or a little below, none where
/// losses are too common to be worth one.
std::string markOfVoided();
std::optional<std::string> markAbove(Loss loss);

/// What the arc mentions as it shows now; nothing when it does not show.
struct ShownWords {
    std::int64_t atMs = 0;
    ArcWords words;
};
std::optional<ShownWords> shownWords(Connection& connection, std::int64_t arcKey);

/// The first arc for which the tables do not say what the arc mentions, as its key, or 0 for a row that
/// belongs to none; nothing when all is as it should be.
std::optional<std::int64_t> firstWrongMention(Connection& connection);

/// The arcs that mention something, in the order of a page.
class MentionSearch {
  public:
    /// The page begins after `after`.
    MentionSearch(Connection& connection, const SpliceFilter& filter, PageOrder order,
                  const std::optional<PageKey>& after);

    /// Many: so many texts that reading on in order of time finds it sooner.
    enum class Texts { Few, Many };
    /// Whatever has a name, note or operator like `pattern`, of LIKE with the escape \.
    Texts look(const std::string& pattern);
    /// Whatever has one of these phrases.
    void look(const std::vector<std::string>& marks);
    /// Keys of the next `count` arcs, fewer at the end.
    std::vector<std::int64_t> next(std::size_t count);

  private:
    struct Place {
        std::int64_t atMs = 0, arc = 0;
        bool operator==(const Place&) const = default;
    };
    /// One phrase, or one operator.
    struct Trail {
        const char* sql = nullptr;
        std::int64_t text = 0;
        std::vector<Place> ahead;  ///< the next one last
        std::size_t step = 0;
        std::optional<Place> last;
    };
    void follow(const char* places, std::int64_t text);
    void order();
    void refill(Trail& trail);
    [[nodiscard]] bool before(const Place& a, const Place& b) const;
    [[nodiscard]] bool later(const Trail& a, const Trail& b) const;

    Connection& connection_;
    PageOrder order_;
    Place start_;
    std::int64_t end_ = 0;
    std::vector<Trail> trails_;  ///< a heap, the one with the next place first
    std::optional<Place> given_;
};

}  // namespace arc::storage
