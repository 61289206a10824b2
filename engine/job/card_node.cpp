#include "job/card_node.hpp"

#include "text/reading.hpp"
#include "text/writing.hpp"

namespace flapdoor::job {

text::Node card_node(const Card& card) { return text::to_node(card); }

Result<Card> card_from(const text::Node& node)
{
    Card card;
    Problems problems;
    text::read(node, card, problems);
    if (!problems.empty()) return failed(std::move(problems));
    return card;
}

std::string plan_text(const WorkPlan& plan) { return text::write_toml(plan); }

}
