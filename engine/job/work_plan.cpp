#include "job/work_plan.hpp"

#include <utility>

namespace flapdoor::job {

Card::Card() = default;
Card::Card(Step what, std::vector<PersonId> who, std::string name) : step(std::move(what)), by(std::move(who)), label(std::move(name)) {}
Card::Card(const Card& other) = default;
Card::Card(Card&& other) noexcept = default;
Card& Card::operator=(const Card& other) = default;
Card& Card::operator=(Card&& other) noexcept = default;
Card::~Card() = default;

}
