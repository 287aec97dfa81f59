// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/json_lines.hpp"

#include <set>

namespace arc::storage {
namespace {

class Scanner {
  public:
    explicit Scanner(std::string_view text) : text_(text) {}

    JsonLines scan() {
        value("");
        return std::move(found_);
    }

  private:
    static constexpr int deepest = 100;  // cards are four deep; a hostile file must not use up the stack

    char peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }
    void step() {
        if (peek() == '\n') ++line_;
        ++at_;
    }
    void blank() {
        while (at_ < text_.size() && (peek() == ' ' || peek() == '\n' || peek() == '\r' || peek() == '\t'))
            step();
    }

    std::string string() {
        std::string read;
        step();
        while (at_ < text_.size() && peek() != '"') {
            if (peek() == '\\') {
                read += peek();
                step();
            }
            if (at_ < text_.size()) {
                read += peek();
                step();
            }
        }
        step();
        return read;
    }

    void value(const std::string& pointer) {
        blank();
        found_.lineOf.emplace(pointer, line_);
        if (++depth_ < deepest) {
            if (peek() == '{')
                object(pointer);
            else if (peek() == '[')
                array(pointer);
            else if (peek() == '"')
                string();
            else
                while (at_ < text_.size() && peek() != ',' && peek() != '}' && peek() != ']') step();
        } else {
            at_ = text_.size();
        }
        --depth_;
    }

    void object(const std::string& pointer) {
        std::set<std::string> keys;
        step();
        for (blank(); at_ < text_.size() && peek() == '"'; blank()) {
            const int line = line_;
            const std::string key = string();
            if (!keys.insert(key).second && !found_.firstDuplicate)
                found_.firstDuplicate = JsonLines::Twice{key, line};
            blank();
            if (peek() == ':') step();
            value(pointer + "/" + key);
            blank();
            if (peek() == ',') step();
        }
        if (peek() == '}') step();
    }

    void array(const std::string& pointer) {
        step();
        int index = 0;
        for (blank(); at_ < text_.size() && peek() != ']' && peek() != '}'; blank()) {
            const std::size_t before = at_;
            value(pointer + "/" + std::to_string(index++));
            blank();
            if (peek() == ',') step();
            if (at_ == before) break;
        }
        if (peek() == ']') step();
    }

    std::string_view text_;
    std::size_t at_ = 0;
    int line_ = 1;
    int depth_ = 0;
    JsonLines found_;
};

}  // namespace

int JsonLines::line(std::string pointer) const {
    for (;;) {
        if (const auto found = lineOf.find(pointer); found != lineOf.end()) return found->second;
        const auto slash = pointer.rfind('/');
        if (slash == std::string::npos) return 1;
        pointer.resize(slash);
    }
}

JsonLines jsonLines(std::string_view text) {
    return Scanner(text).scan();
}

}  // namespace arc::storage
