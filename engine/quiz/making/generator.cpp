#include "quiz/making/generator.hpp"

#include <algorithm>
#include <iterator>

namespace flapdoor::quiz {

const std::vector<Generator>& generators()
{
    static const std::vector<Generator> all = [] {
        std::vector<Generator> list;
        for (const auto table : {section_generators, sheeting_generators, opening_generators, pass_generators, air_generators, sample_generators, unit_generators,
                                 crew_generators, supply_generators, scope_generators, waiting_generators, bag_generators, settling_generators, run_generators}) {
            std::vector<Generator> more = table();
            list.insert(list.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
        }
        return list;
    }();
    return all;
}

const Generator* find_generator(std::string_view name)
{
    const auto& all = generators();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Generator& generator) { return generator.name == name; });
    return found == all.end() ? nullptr : &*found;
}

}
