#include "air/stack.hpp"

namespace flapdoor::air {

Pressure stack_pressure(const Air& inside, const Air& outside, Length height)
{
    return (density(outside) - density(inside)) * gravity * height;
}

}
