#include "quiz/practice/knowledge.hpp"

#include "practices.hpp"

#include <catch2/catch.hpp>

namespace flapdoor::quiz {

// The formulas of Corbett & Anderson 1995 (UMUAI 4, 253-278) worked out apart from this program, six digits.
TEST_CASE("knowledge follows the answers as the published formulas say")
{
    struct Row { bool is_right; double before, chance, after; };
    const std::vector<Row> rows{{false, 0.200000, 0.380000, 0.177419}, {true, 0.177419, 0.365323, 0.521523}, {true, 0.521523, 0.588990, 0.827372},
                                {false, 0.827372, 0.787792, 0.481404}, {true, 0.481404, 0.562912, 0.804229}, {true, 0.804229, 0.772749, 0.946165},
                                {true, 0.946165, 0.865007, 0.986775}, {true, 0.986775, 0.891404, 0.996847}};
    double knowledge = 0.20;
    Practice practice = toward(7);
    for (const Row& row : rows) {
        CHECK(knowledge == Approx(row.before).margin(5e-7));
        CHECK(chance_of_right(knowledge, 0.25) == Approx(row.chance).margin(5e-7));
        knowledge = knowledge_after(knowledge, row.is_right, 0.25);
        CHECK(knowledge == Approx(row.after).margin(5e-7));
        add(practice, Topic::gear, 0, row.is_right);
    }
    CHECK(chance_of_right(knowledge, 0.25) == Approx(0.897951).margin(5e-7));
    CHECK(knowledge_of(practice.attempts, Topic::gear) == Approx(knowledge));
    CHECK(knowledge_of(practice.attempts, Topic::dust) == 0.20);
}

}
