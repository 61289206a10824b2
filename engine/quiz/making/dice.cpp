#include "quiz/making/dice.hpp"

#include "core/hash.hpp"
#include "core/insist.hpp"
#include "core/philox.hpp"

namespace flapdoor::quiz {

Dice::Dice(std::uint64_t seed, std::string_view purpose)
{
    Fingerprint key;
    key.add_word(seed);
    key.add_text(purpose);
    key_ = key.value();
}

int Dice::between(int least, int most)
{
    insist(least <= most, "there is something to choose from");
    // Runs have seeds of their own; the key keeps papers apart from them, whatever stream is named.
    const double u = Luck{key_, Stream::parameter}.uniform(0, thrown_++);
    return least + static_cast<int>(u * (static_cast<double>(most) - least + 1.0));
}

std::uint64_t Dice::seed() { return static_cast<std::uint64_t>(between(1, 999'999)); }

}
