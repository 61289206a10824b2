#include "rules/judgement.hpp"

#include "core/insist.hpp"

namespace flapdoor::rules {

std::string Sentence::text() const
{
    std::string out;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const bool is_part = pattern[i] == '{' && i + 2 < pattern.size() && pattern[i + 2] == '}';
        if (!is_part) {
            out += pattern[i];
            continue;
        }
        const auto part = static_cast<std::size_t>(pattern[i + 1] - '0');
        insist(part < parts.size(), "a sentence has a part for each of its gaps");
        out += parts[part];
        i += 2;
    }
    if (!out.empty() && out.front() >= 'a' && out.front() <= 'z') out.front() = static_cast<char>(out.front() - 'a' + 'A');
    return out;
}

void Judgement::join(Judgement other)
{
    if (other.finding == Finding::broken) finding = Finding::broken;
    if (other.finding == Finding::kept) keep();
    for (Fault& fault : other.faults) faults.push_back(std::move(fault));
    for (CardPair& pair : other.pairs) pairs.push_back(std::move(pair));
}

}
