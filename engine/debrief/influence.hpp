#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace flapdoor::debrief {

/// How far two lists rise together by rank, from -1 to 1: Spearman's coefficient, equal values sharing their mean rank.
/// Nothing when a list has fewer than three values or all of them are equal. Insists on lists of one length.
/// Source: Spearman 1904 (memory); worked through on small lists in tests/debrief/influence_test.cpp.
std::optional<double> rank_correlation(const std::vector<double>& a, const std::vector<double>& b);

/// What chance alone exceeds, either way, in one of a hundred lists of this length: 2.58 / sqrt(runs - 1), the large-sample
/// value; at most 1.
double beyond_chance(std::size_t runs);

}
