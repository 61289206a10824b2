#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

enum class SignLanguage { english, spanish, both };

/// Signs that define the work area and keep others out.
struct PostSigns {
    static constexpr std::string_view name = "post-signs";
    static constexpr std::string_view title = "Post warning signs";
    static constexpr Phase phase = Phase::set_up;
    static constexpr Hands hands = Hands::trained;
    static constexpr Time takes = 3.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "signs";

    OpeningId at;
    SignLanguage language = SignLanguage::english;

    static void fields(auto& self, auto&& visit)
    {
        visit("at", self.at, required, About{"the entrance where they hang"});
        visit("language", self.language, About{"what the occupants read"});
    }
};

}

namespace flapdoor::inline core {
template <> struct Words<job::SignLanguage> { static constexpr std::array<std::string_view, 3> words{"english", "spanish", "both"}; };
}
