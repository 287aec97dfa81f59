// SPDX-License-Identifier: GPL-3.0-or-later
// Writes values into bytes and reads them back, field by field (never padding), little-endian hosts only as
// all that Debian 12 builds for here. A struct takes part by a function `fields(archive, value)` beside it.
// Reading bytes that end too early throws std::out_of_range.
#pragma once
#include <array>
#include <cstring>
#include <deque>
#include <map>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace arc::drift {

template <class T>
concept PlainValue = std::is_arithmetic_v<T> || std::is_enum_v<T>;

class ByteWriter {
  public:
    template <class... Values>
    void operator()(const Values&... values) {
        (put(values), ...);
    }
    std::string bytes;

  private:
    template <PlainValue T>
    void put(const T& value) {
        const auto size = bytes.size();
        bytes.resize(size + sizeof(T));
        std::memcpy(bytes.data() + size, &value, sizeof(T));
    }
    void put(const std::string& text) {
        put(text.size());
        bytes += text;
    }
    template <class T>
    void put(const std::optional<T>& value) {
        put(value.has_value());
        if (value) put(*value);
    }
    template <class T>
    void putAll(const T& items) {
        put(items.size());
        for (const auto& item : items) put(item);
    }
    template <class T>
    void put(const std::vector<T>& items) {
        putAll(items);
    }
    template <class T>
    void put(const std::deque<T>& items) {
        putAll(items);
    }
    template <class T, std::size_t n>
    void put(const std::array<T, n>& items) {
        for (const auto& item : items) put(item);
    }
    template <class K, class V>
    void put(const std::map<K, V>& items) {
        put(items.size());
        for (const auto& [key, value] : items) (*this)(key, value);
    }
    template <class T>
    requires(!PlainValue<T>) void put(const T& value) {
        fields(*this, const_cast<T&>(value));  // fields only reads when the archive writes
    }
};

class ByteReader {
  public:
    explicit ByteReader(std::string_view bytes) : rest_(bytes) {}
    template <class... Values>
    void operator()(Values&... values) {
        (get(values), ...);
    }
    [[nodiscard]] bool atEnd() const { return rest_.empty(); }

  private:
    std::string_view take(std::size_t size) {
        if (size > rest_.size()) throw std::out_of_range("stored chart state ends too early");
        const auto part = rest_.substr(0, size);
        rest_.remove_prefix(size);
        return part;
    }
    std::size_t count() {
        std::size_t n = 0;
        get(n);
        if (n > rest_.size()) throw std::out_of_range("stored chart state ends too early");
        return n;
    }
    template <PlainValue T>
    void get(T& value) {
        std::memcpy(&value, take(sizeof(T)).data(), sizeof(T));
    }
    void get(std::string& text) {
        const auto n = count();
        text = std::string(take(n));
    }
    template <class T>
    void get(std::optional<T>& value) {
        bool has = false;
        get(has);
        value.reset();
        if (has) get(value.emplace());
    }
    template <class T>
    void getAll(T& items) {
        items.clear();
        for (auto n = count(); n > 0; --n) get(items.emplace_back());
    }
    template <class T>
    void get(std::vector<T>& items) {
        getAll(items);
    }
    template <class T>
    void get(std::deque<T>& items) {
        getAll(items);
    }
    template <class T, std::size_t n>
    void get(std::array<T, n>& items) {
        for (auto& item : items) get(item);
    }
    template <class K, class V>
    void get(std::map<K, V>& items) {
        items.clear();
        for (auto n = count(); n > 0; --n) {
            K key{};
            get(key);
            get(items[key]);
        }
    }
    template <class T>
    requires(!PlainValue<T>) void get(T& value) { fields(*this, value); }
    std::string_view rest_;
};

}  // namespace arc::drift
