#pragma once

#include "quiz/mark.hpp"
#include "quiz/option.hpp"
#include "quiz/response.hpp"

#include <string_view>
#include <vector>

namespace flapdoor::quiz {

/// Any number of options is right.
struct ChooseSeveral {
    static constexpr std::string_view name = "choose-several";
    std::vector<Option> options;

    static void fields(auto& self, auto&& visit) { visit("option", self.options, required, About{"the answers; one or more are right"}); }
};

/// Share: right ones chosen less wrong ones chosen, of all right ones; never below 0.
Mark mark(const ChooseSeveral& asked, const Response& response);
void check(const ChooseSeveral& asked, const Place& where, Complaints& complaints);

}
