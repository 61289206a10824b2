#include "window/run/phrases.hpp"

#include <array>
#include <utility>

namespace flapdoor::window {

std::string with_signs(std::string text)
{
    constexpr std::array<std::pair<std::string_view, std::string_view>, 4> signs{
        {{" ug", " \xC2\xB5g"}, {"ft2", "ft\xC2\xB2"}, {"m2", "m\xC2\xB2"}, {"m3", "m\xC2\xB3"}}};
    for (const auto& [plain, sign] : signs)
        for (std::size_t at = text.find(plain); at != std::string::npos; at = text.find(plain, at + sign.size()))
            text.replace(at, plain.size(), sign);
    return text;
}

}
