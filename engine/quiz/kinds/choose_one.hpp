#pragma once

#include "quiz/mark.hpp"
#include "quiz/option.hpp"
#include "quiz/response.hpp"

#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// Exactly one option is right.
struct ChooseOne {
    static constexpr std::string_view name = "choose-one";
    std::vector<Option> options;

    static void fields(auto& self, auto&& visit) { visit("option", self.options, required, About{"the answers; exactly one is right"}); }
};

Mark mark(const ChooseOne& asked, const Response& response);
void check(const ChooseOne& asked, const Place& where, Complaints& complaints);

}
