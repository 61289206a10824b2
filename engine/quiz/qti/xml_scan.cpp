#include "quiz/qti/xml_scan.hpp"

#include "quiz/qti/xml.hpp"
#include "text/document.hpp"
#include "text/quote.hpp"
#include "text/utf8.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace flapdoor::quiz {

namespace {

constexpr std::size_t most_problems = 20;

bool is_space(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

/// What a name may hold: letters, digits, `_ - . :` and everything beyond ASCII.
bool is_name(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '-' || c == '.' || c == ':' || static_cast<unsigned char>(c) >= 0x80;
}
bool may_begin_name(char c) { return is_name(c) && !(c >= '0' && c <= '9') && c != '-' && c != '.'; }

/// Characters that XML has no place for: controls but tab and line ends, halves of pairs, U+FFFE and U+FFFF.
bool is_character(char32_t code) { return code == '\t' || code == '\n' || code == '\r' || (code >= 0x20 && code < 0xD800) || (code >= 0xE000 && code < 0xFFFE) || (code >= 0x10000 && code <= 0x10FFFF); }

std::optional<char32_t> number_of(std::string_view digits)
{
    const bool is_hex = digits.starts_with('x');
    if (is_hex) digits.remove_prefix(1);
    if (digits.empty() || digits.size() > 8) return std::nullopt;
    char32_t code = 0;
    for (const char c : digits) {
        const int digit = c >= '0' && c <= '9' ? c - '0' : is_hex && c >= 'a' && c <= 'f' ? c - 'a' + 10 : is_hex && c >= 'A' && c <= 'F' ? c - 'A' + 10 : -1;
        if (digit < 0) return std::nullopt;
        code = code * (is_hex ? 16 : 10) + static_cast<char32_t>(digit);
    }
    return code;
}

std::string start_of(std::string_view text) { return text.empty() ? std::string("the end of the file") : text::quoted(text, 24); }

}

Place place_in(std::string_view text, std::size_t offset, const std::string& file_name)
{
    Place place{file_name, 1, 1};
    for (const char c : text.substr(0, offset)) {
        if (c == '\n') {
            place.line += 1;
            place.column = 1;
        }
        else if ((static_cast<unsigned char>(c) & 0xC0) != 0x80) place.column += 1;
    }
    return place;
}

void XmlScan::tell(std::size_t offset, std::string expected, std::string found)
{
    problems_.push_back({place_in(text_, offset, file_name_), std::move(expected), std::move(found)});
    if (problems_.size() >= most_problems) is_stopped_ = true;
}

void XmlScan::stop(std::size_t offset, std::string expected, std::string found)
{
    tell(offset, std::move(expected), std::move(found));
    is_stopped_ = true;
}

/// Size, encoding and letters, before markup is looked at.
bool XmlScan::is_readable()
{
    if (text_.size() > text::most_bytes) {
        stop(0, fmt::format("at most {} bytes", text::most_bytes), fmt::format("{}", text_.size()));
        return false;
    }
    if (text_.starts_with("\xFF\xFE") || text_.starts_with("\xFE\xFF") || text_.substr(0, 4).find('\0') != std::string_view::npos) {
        stop(0, "a file in UTF-8", "UTF-16 or UTF-32");
        return false;
    }
    for (std::size_t at = 0; at < text_.size();) {
        const text::Letter letter = text::first_letter(text_.substr(at));
        const bool is_broken = letter.code == 0xFFFD && text_.substr(at, 3) != "\xEF\xBF\xBD";
        if (is_broken || !is_character(letter.code)) {
            stop(at, "text in UTF-8", is_broken ? "bytes that are none" : fmt::format("the control character U+{:04X}", static_cast<unsigned>(letter.code)));
            return false;
        }
        at += letter.bytes;
    }
    return true;
}

bool XmlScan::skip_past(std::string_view what, std::string_view of)
{
    const std::size_t end = text_.find(what, at_);
    if (end == std::string_view::npos) {
        stop(at_, fmt::format("`{}` at the end of {}", what, of), "the end of the file");
        return false;
    }
    at_ = end + what.size();
    return true;
}

void XmlScan::skip_space()
{
    while (at_ < text_.size() && is_space(text_[at_])) ++at_;
}

std::string_view XmlScan::take_name()
{
    const std::size_t begin = at_;
    if (at_ < text_.size() && may_begin_name(text_[at_]))
        while (at_ < text_.size() && is_name(text_[at_])) ++at_;
    return text_.substr(begin, at_ - begin);
}

/// Only the five entities of XML and characters by number: others would need a DOCTYPE.
void XmlScan::reference()
{
    const std::size_t begin = at_;
    const std::size_t end = text_.find(';', at_);
    const std::string_view name = end == std::string_view::npos || end - at_ > 40 ? std::string_view() : text_.substr(at_ + 1, end - at_ - 1);
    constexpr std::array<std::string_view, 5> known{"amp", "lt", "gt", "quot", "apos"};
    const auto code = name.starts_with('#') ? number_of(name.substr(1)) : std::nullopt;
    if (std::find(known.begin(), known.end(), name) == known.end() && !(code && is_character(*code))) {
        tell(begin, "`&amp;`, `&lt;`, `&gt;`, `&quot;`, `&apos;` or a character by its number", start_of(text_.substr(begin, 1 + std::max<std::size_t>(name.size(), 8))));
        at_ = begin + 1;
        return;
    }
    at_ = end + 1;
}

void XmlScan::characters(std::size_t end)
{
    while (at_ < end && !is_stopped_) {
        if (text_[at_] == '&') reference();
        else {
            if (open_.empty() && !is_space(text_[at_])) return stop(at_, "one element with everything inside it", start_of(text_.substr(at_)));
            ++at_;
        }
    }
}

void XmlScan::instruction()
{
    const std::size_t begin = at_;
    if (!skip_past("?>", "an instruction")) return;
    const std::string_view whole = text_.substr(begin, at_ - begin);
    if (!whole.starts_with("<?xml ") && !whole.starts_with("<?xml\t") && !whole.starts_with("<?xml\n") && !whole.starts_with("<?xml\r")) return;
    const std::size_t key = whole.find("encoding");
    if (key == std::string_view::npos) return;
    std::string encoding;
    for (const char c : whole.substr(key + 8))
        if (is_name(c)) encoding += static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
        else if (!encoding.empty()) break;
    if (encoding != "utf-8" && encoding != "us-ascii") tell(begin + key, "encoding=\"UTF-8\"", text::quoted(encoding));
}

void XmlScan::markup_declaration()
{
    if (starts_with("<!--")) {
        at_ += 4;
        skip_past("-->", "a comment");
    }
    else if (starts_with("<![CDATA[") && !open_.empty()) skip_past("]]>", "CDATA");
    else stop(at_, "a file without DOCTYPE and entities", start_of(text_.substr(at_)));
}

void XmlScan::close()
{
    if (!open_.empty()) open_.pop_back();
}

void XmlScan::end_tag()
{
    const std::size_t begin = at_;
    at_ += 2;
    const std::string_view name = take_name();
    skip_space();
    if (open_.empty() || name != open_.back().name) {
        const std::string expected = open_.empty() ? std::string("no end tag here") : fmt::format("`</{}>`", text::printable(open_.back().name.substr(0, 60)));
        return stop(begin, expected, start_of(text_.substr(begin, std::min<std::size_t>(name.size() + 3, 60))));
    }
    if (!starts_with(">")) return stop(at_, "`>`", start_of(text_.substr(at_)));
    ++at_;
    close();
}

void XmlScan::attributes(std::size_t tag)
{
    std::vector<std::string_view> names;
    while (!is_stopped_) {
        const std::size_t before = at_;
        skip_space();
        if (at_ >= text_.size()) return stop(tag, "`>` at the end of the tag", "the end of the file");
        if (starts_with(">") || starts_with("/>")) return;
        const std::size_t begin = at_;
        const std::string_view name = take_name();
        if (name.empty() || before == begin) return stop(begin, "an attribute, `>` or `/>`", start_of(text_.substr(begin)));
        if (names.size() >= most_attributes) return stop(begin, fmt::format("at most {} attributes", most_attributes), "more");
        if (std::find(names.begin(), names.end(), name) != names.end()) tell(begin, "each attribute once", text::quoted(name));
        names.push_back(name);
        skip_space();
        if (!starts_with("=")) return stop(at_, "`=` and a value in quotes", start_of(text_.substr(at_)));
        ++at_;
        skip_space();
        if (!starts_with("\"") && !starts_with("'")) return stop(at_, "a value in quotes", start_of(text_.substr(at_)));
        const char quote = text_[at_++];
        const std::size_t end = text_.find(quote, at_);
        if (end == std::string_view::npos) return stop(begin, "a value that ends", "the end of the file");
        if (const std::size_t less = text_.substr(at_, end - at_).find('<'); less != std::string_view::npos) return stop(at_ + less, "no `<` inside a value", start_of(text_.substr(at_ + less)));
        characters(end);
        at_ = end + 1;
    }
}

void XmlScan::start_tag()
{
    const std::size_t begin = at_;
    ++at_;
    const std::string_view name = take_name();
    if (name.empty()) return stop(begin, "the name of an element after `<`", start_of(text_.substr(at_)));
    if (open_.empty() && has_root_) return stop(begin, "one element with everything inside it", start_of(text_.substr(begin)));
    has_root_ = true;
    if (++elements_ > most_elements) return stop(begin, fmt::format("at most {} elements", most_elements), "more");
    if (open_.size() >= static_cast<std::size_t>(deepest_element)) return stop(begin, fmt::format("elements at most {} deep inside one another", deepest_element), "deeper ones");
    open_.push_back({name, begin});
    attributes(begin);
    if (is_stopped_) return;
    if (starts_with("/>")) {
        at_ += 2;
        close();
    }
    else ++at_;
}

void XmlScan::step()
{
    if (text_[at_] != '<') return characters(std::min(text_.find('<', at_), text_.size()));
    if (starts_with("<!")) return markup_declaration();
    if (starts_with("<?")) return instruction();
    if (starts_with("</")) return end_tag();
    start_tag();
}

Problems XmlScan::look_over()
{
    if (!is_readable()) return problems_;
    if (starts_with("\xEF\xBB\xBF")) at_ = 3;
    while (at_ < text_.size() && !is_stopped_) step();
    if (!is_stopped_ && !open_.empty())
        stop(text_.size(), fmt::format("`</{}>`, opened in line {}", text::printable(open_.back().name.substr(0, 60)), place_in(text_, open_.back().offset, file_name_).line), "the end of the file");
    if (!is_stopped_ && !has_root_) stop(text_.size(), "an element", "the end of the file");
    return problems_;
}

}
