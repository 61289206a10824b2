#pragma once

#include "quiz/paper.hpp"
#include "quiz/qti/export_item.hpp"

#include <string>
#include <vector>

namespace flapdoor::quiz {

/// A question that lost something on its way out.
struct Loss {
    std::string item;
    std::string what;
};

/// The files of a content package: `imsmanifest.xml`, items, pictures, and the test of a paper.
struct QtiPackage {
    std::vector<QtiFile> files;     ///< in a fixed order, each path once
    std::vector<Loss> losses;
};

/// Questions as items, without a test. Insists on questions that can be asked, each name once.
QtiPackage export_items(const std::string& identifier, const std::vector<PaperItem>& items);

/// The same with a test that asks them in the order of the paper, with its time limit.
QtiPackage export_paper(const Paper& paper);

}
