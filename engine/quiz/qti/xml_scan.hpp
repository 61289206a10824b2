#pragma once

#include "core/result.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// Line and column of a byte of a text; columns count letters.
Place place_in(std::string_view text, std::size_t offset, const std::string& file_name);

/// Looks an XML text over before a parser sees it: encoding, DOCTYPE, references, depth, counts, and that every element is
/// closed. One pass, no recursion, no copies but the names of open elements.
class XmlScan {
public:
    XmlScan(std::string_view text, std::string file_name) : text_(text), file_name_(std::move(file_name)) {}

    /// Empty when a parser may see the text.
    Problems look_over();

private:
    bool is_readable();
    void step();
    void markup_declaration();
    void instruction();
    void end_tag();
    void start_tag();
    void attributes(std::size_t tag);
    void characters(std::size_t end);
    void reference();
    void close();

    bool starts_with(std::string_view what) const { return text_.substr(at_).starts_with(what); }
    bool skip_past(std::string_view what, std::string_view of);
    void skip_space();
    std::string_view take_name();
    void tell(std::size_t offset, std::string expected, std::string found);
    void stop(std::size_t offset, std::string expected, std::string found);     ///< the rest cannot be read

    std::string_view text_;
    std::string file_name_;
    std::size_t at_ = 0;
    std::size_t elements_ = 0;
    bool has_root_ = false;
    bool is_stopped_ = false;
    struct Open {
        std::string_view name;
        std::size_t offset;
    };
    std::vector<Open> open_;
    Problems problems_;
};

}
