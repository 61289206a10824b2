#include "quiz/topic.hpp"

#include "text/language.hpp"

namespace flapdoor::quiz {

using text::to_say;

std::string_view title_of(Topic topic)
{
    constexpr std::array<std::string_view, Words<Topic>::words.size()> titles{
        to_say("Does the rule apply?"), to_say("Who may do what"), to_say("Containment"), to_say("Air handling and openings"), to_say("Flap door"),
        to_say("Tack pad and leaving"), to_say("Barred practices"), to_say("Protective gear"), to_say("How dust behaves"), to_say("Bagging"),
        to_say("Order of cleaning"), to_say("Visual inspection"), to_say("Cleaning verification"), to_say("Papers and records"), to_say("Other")};
    return titles[static_cast<std::size_t>(topic)];
}

std::string_view title_of(Level level)
{
    constexpr std::array<std::string_view, Words<Level>::words.size()> titles{to_say("Know"), to_say("Apply"), to_say("Judge")};
    return titles[static_cast<std::size_t>(level)];
}

}
