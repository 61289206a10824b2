#include "quiz/paper.hpp"

#include "core/hash.hpp"
#include "text/writing.hpp"

namespace flapdoor::quiz {

int points_of(const Paper& paper)
{
    int points = 0;
    for (const PaperItem& item : paper.items) points += item.question.points;
    return points;
}

std::uint64_t fingerprint(const Paper& paper)
{
    Fingerprint print;
    print.add_text(paper.blueprint);
    print.add_word(paper.seed);
    for (const PaperItem& item : paper.items) {
        print.add_text(item.item);
        print.add_text(text::write_toml(item.question));
        print.add_text(in_english(item.question.text));     // what was filled into its blanks
    }
    return print.value();
}

}
