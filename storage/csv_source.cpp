// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/csv_source.hpp"

#include <algorithm>
#include <cstring>
#include <fstream>
#include <memory>
#include <sstream>
#include <system_error>
#include <uchardet.h>

namespace arc::storage {
namespace {

constexpr std::size_t lookBytes = 64 << 10;

/// A guess, for the sentence only.
std::string looksLike(const std::string& bytes) {
    const std::unique_ptr<uchardet, decltype(&uchardet_delete)> detector(uchardet_new(), uchardet_delete);
    uchardet_handle_data(detector.get(), bytes.data(), bytes.size());
    uchardet_data_end(detector.get());
    return uchardet_get_charset(detector.get());
}

/// Cuts a sequence off the end that the look broke in two.
std::string_view withoutBrokenEnd(std::string_view text) {
    for (std::size_t back = 1; back <= 3 && back <= text.size(); ++back) {
        const auto byte = static_cast<unsigned char>(text[text.size() - back]);
        if (byte < 0x80) break;
        if (byte >= 0xC0) return text.substr(0, text.size() - back);
    }
    return text;
}

void appendCodePoint(std::string& out, std::uint32_t c) {
    if (c < 0x80) {
        out += static_cast<char>(c);
    } else if (c < 0x800) {
        out += static_cast<char>(0xC0 | (c >> 6));
        out += static_cast<char>(0x80 | (c & 0x3F));
    } else if (c < 0x10000) {
        out += static_cast<char>(0xE0 | (c >> 12));
        out += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
        out += static_cast<char>(0x80 | (c & 0x3F));
    } else {
        out += static_cast<char>(0xF0 | (c >> 18));
        out += static_cast<char>(0x80 | ((c >> 12) & 0x3F));
        out += static_cast<char>(0x80 | ((c >> 6) & 0x3F));
        out += static_cast<char>(0x80 | (c & 0x3F));
    }
}

}  // namespace

bool isUtf8(std::string_view text) {
    std::size_t i = 0;
    // Rows are mostly plain ASCII: eight bytes at a time.
    while (i < text.size()) {
        std::uint64_t word = 0;
        while (i + 8 <= text.size()) {
            std::memcpy(&word, text.data() + i, 8);
            if ((word & 0x8080808080808080ULL) != 0) break;
            i += 8;
        }
        if (i >= text.size()) break;
        const auto lead = static_cast<unsigned char>(text[i]);
        if (lead < 0x80) {
            ++i;
            continue;
        }
        std::size_t more = 0;
        unsigned char low = 0x80;
        unsigned char high = 0xBF;
        if (lead >= 0xC2 && lead <= 0xDF) {
            more = 1;
        } else if (lead >= 0xE0 && lead <= 0xEF) {
            more = 2;
            if (lead == 0xE0) low = 0xA0;
            if (lead == 0xED) high = 0x9F;
        } else if (lead >= 0xF0 && lead <= 0xF4) {
            more = 3;
            if (lead == 0xF0) low = 0x90;
            if (lead == 0xF4) high = 0x8F;
        } else {
            return false;
        }
        if (i + more >= text.size()) return false;
        for (std::size_t k = 1; k <= more; ++k) {
            const auto byte = static_cast<unsigned char>(text[i + k]);
            if (byte < low || byte > high) return false;
            low = 0x80;
            high = 0xBF;
        }
        i += more + 1;
    }
    return true;
}

Result<CsvSource> CsvSource::open(const std::filesystem::path& file) {
    std::error_code error;
    if (std::filesystem::is_directory(file, error))
        return fail(ProblemCode::BadInput, "this is a folder, not a file", file.string());
    if (!std::filesystem::exists(file, error))
        return fail(ProblemCode::NotFound, "there is no such file", file.string(), "Check the name");
    auto stream = std::make_unique<std::ifstream>(file, std::ios::binary);
    if (!*stream)
        return fail(ProblemCode::Unavailable, "the file cannot be read", file.string(),
                    "Check that you may read it");
    CsvSource source(file, std::move(stream));
    const auto size = std::filesystem::file_size(file, error);
    source.size_ = error ? 0 : size;
    std::string head(lookBytes, '\0');
    source.stream_->read(head.data(), static_cast<std::streamsize>(head.size()));
    head.resize(static_cast<std::size_t>(source.stream_->gcount()));
    const bool whole = source.stream_->eof();
    source.stream_->clear();
    std::size_t skip = 0;
    if (head.starts_with("\xEF\xBB\xBF")) {
        skip = 3;
    } else if (head.starts_with("\xFF\xFE")) {
        source.form_ = TextForm::Utf16Little;
        skip = 2;
    } else if (head.starts_with("\xFE\xFF")) {
        source.form_ = TextForm::Utf16Big;
        skip = 2;
    } else if (head.size() >= 4 && head[1] == '\0' && head[0] != '\0' && head[3] == '\0') {
        source.form_ = TextForm::Utf16Little;
    } else if (head.size() >= 4 && head[0] == '\0' && head[1] != '\0' && head[2] == '\0') {
        source.form_ = TextForm::Utf16Big;
    }
    if (source.form_ == TextForm::Utf8) {
        const std::string_view text(head);
        if (text.find('\0') != std::string_view::npos)
            return fail(ProblemCode::BadInput, "the file holds zero bytes and is no text", file.string(),
                        "Export the log as CSV and import that");
        if (!isUtf8(whole ? text : withoutBrokenEnd(text))) {
            const std::string guess = looksLike(head);
            return fail(
                ProblemCode::BadInput,
                "the file is not UTF-8" + (guess.empty() ? std::string() : "; it looks like " + guess),
                file.string(), "Save it as UTF-8 and import that");
        }
    }
    source.stream_->seekg(static_cast<std::streamoff>(skip));
    source.done_ = skip;
    return source;
}

CsvSource CsvSource::ofText(const std::filesystem::path& name, std::string text) {
    CsvSource source(name, std::make_unique<std::istringstream>(text));
    source.size_ = text.size();
    source.text_ = std::move(text);
    return source;
}

Result<CsvSource> CsvSource::again() const {
    return text_ ? Result<CsvSource>(ofText(file_, *text_)) : open(file_);
}

bool CsvSource::read(std::string& out, std::size_t limit) {
    if (form_ == TextForm::Utf8) {
        const std::size_t before = out.size();
        out.resize(before + limit);
        stream_->read(out.data() + before, static_cast<std::streamsize>(limit));
        const auto got = static_cast<std::size_t>(stream_->gcount());
        out.resize(before + got);
        done_ += got;
        if (stream_->bad()) throw std::ios_base::failure("the file cannot be read any further");
        return got > 0;
    }
    std::string raw(limit & ~std::size_t{1}, '\0');
    stream_->read(raw.data(), static_cast<std::streamsize>(raw.size()));
    raw.resize(static_cast<std::size_t>(stream_->gcount()));
    done_ += raw.size();
    if (stream_->bad()) throw std::ios_base::failure("the file cannot be read any further");
    if (raw.empty()) return false;
    appendUtf16(out, raw);
    return true;
}

void CsvSource::appendUtf16(std::string& out, const std::string& raw) {
    constexpr std::uint32_t replacement = 0xFFFD;
    const std::string bytes = carry_ + raw;
    carry_.clear();
    std::size_t i = 0;
    for (; i + 1 < bytes.size(); i += 2) {
        const auto a = static_cast<unsigned char>(bytes[i]);
        const auto b = static_cast<unsigned char>(bytes[i + 1]);
        const auto unit =
            static_cast<std::uint16_t>(form_ == TextForm::Utf16Little ? a | (b << 8) : (a << 8) | b);
        if (highHalf_ != 0) {
            if (unit >= 0xDC00 && unit <= 0xDFFF) {
                appendCodePoint(out, 0x10000u + ((highHalf_ - 0xD800u) << 10) + (unit - 0xDC00u));
                highHalf_ = 0;
                continue;
            }
            appendCodePoint(out, replacement);
            highHalf_ = 0;
        }
        if (unit >= 0xD800 && unit <= 0xDBFF) {
            highHalf_ = unit;
        } else {
            appendCodePoint(out, unit >= 0xDC00 && unit <= 0xDFFF ? replacement : unit);
        }
    }
    if (i < bytes.size()) carry_ = bytes.substr(i);
}

}  // namespace arc::storage
