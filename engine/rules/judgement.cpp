#include "rules/judgement.hpp"

namespace flapdoor::rules {

void Judgement::join(Judgement other)
{
    if (other.finding == Finding::broken) finding = Finding::broken;
    if (other.finding == Finding::kept) keep();
    for (Fault& fault : other.faults) faults.push_back(std::move(fault));
    for (CardPair& pair : other.pairs) pairs.push_back(std::move(pair));
}

}
