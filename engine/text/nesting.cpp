#include "text/nesting.hpp"

#include "text/document.hpp"

#include <fmt/format.h>

#include <cstddef>

namespace flapdoor::text {
namespace {

constexpr int most_dotted_keys = 100'000;

/// Walks over a TOML text and sees brackets and dots outside quotes and comments.
class Scan {
public:
    Scan(std::string_view text, const std::string& file_name) : text_(text), file_name_(file_name) {}

    std::optional<Problem> find()
    {
        while (at_ < text_.size()) {
            const char c = text_[at_];
            if (c == '#') skip_comment();
            else if (c == '"' || c == '\'') skip_quotes(c);
            else if (auto problem = weigh(c)) return problem;
            else step();
        }
        return std::nullopt;
    }

private:
    std::optional<Problem> weigh(char c)
    {
        if (c == '[' || c == '{') ++depth_;
        if ((c == ']' || c == '}') && depth_ > 0) --depth_;
        if (c == '.' && ++dots_ == 1) ++dotted_keys_;
        // A list goes on over line ends, a chain of dots does not.
        if (c == '\n' || c == ',' || c == '=' || c == '[' || c == '{') dots_ = 0;

        if (depth_ > deepest) return excess(fmt::format("at most {} brackets inside one another", deepest));
        if (dots_ >= deepest) return excess(fmt::format("at most {} parts in a dotted key", deepest));
        if (dotted_keys_ > most_dotted_keys) return excess(fmt::format("at most {} dotted keys and decimal numbers", most_dotted_keys));
        return std::nullopt;
    }

    Problem excess(std::string expected) const { return {{file_name_, line_, column_}, std::move(expected), "more"}; }

    void skip_comment()
    {
        while (at_ < text_.size() && text_[at_] != '\n') step();
    }

    /// Leaves the position behind the closing quotes, or at the line end that breaks a one-line text off.
    void skip_quotes(char quote)
    {
        const std::string three(3, quote);
        const bool is_long = text_.substr(at_, 3) == three;
        for (int i = 0; i < (is_long ? 3 : 1); ++i) step();
        while (at_ < text_.size()) {
            const char c = text_[at_];
            if (!is_long && c == '\n') return;
            if (is_long ? text_.substr(at_, 3) == three : c == quote) {
                for (int i = 0; i < (is_long ? 3 : 1); ++i) step();
                return;
            }
            if (c == '\\' && quote == '"') step();
            step();
        }
    }

    void step()
    {
        if (at_ >= text_.size()) return;
        const char c = text_[at_++];
        if (c == '\n') {
            ++line_;
            column_ = 1;
        }
        else if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U) ++column_;
    }

    std::string_view text_;
    const std::string& file_name_;
    std::size_t at_ = 0;
    int line_ = 1, column_ = 1;
    int depth_ = 0, dots_ = 0, dotted_keys_ = 0;
};

}

std::optional<Problem> find_excess(std::string_view text, const std::string& file_name) { return Scan(text, file_name).find(); }

}
