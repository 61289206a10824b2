#pragma once

#include "core/fields.hpp"
#include "core/quantity.hpp"
#include "job/ids.hpp"
#include "job/step_kind.hpp"

#include <string_view>

namespace flapdoor::job {

/// On-the-job training by the certified renovator.
struct TrainWorker {
    static constexpr std::string_view name = "train-worker";
    static constexpr std::string_view title = "Train a worker for the tasks";
    static constexpr Phase phase = Phase::paper;
    static constexpr Hands hands = Hands::certified;
    static constexpr Time takes = 30.0_min;
    static constexpr Per per = Per::card;
    static constexpr std::string_view needs = "";

    PersonId worker;

    static void fields(auto& self, auto&& visit)
    {
        visit("worker", self.worker, required, About{"who is trained"});
    }
};

}
