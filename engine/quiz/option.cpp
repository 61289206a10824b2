#include "quiz/option.hpp"

#include "quiz/complaints.hpp"
#include "text/quote.hpp"

#include <algorithm>
#include <map>

namespace flapdoor::quiz {

const Option* find_option(const std::vector<Option>& options, const std::string& id)
{
    const auto found = std::find_if(options.begin(), options.end(), [&](const Option& option) { return option.id.text == id; });
    return found == options.end() ? nullptr : &*found;
}

void check_options(const std::vector<Option>& options, const Place& where, Complaints& complaints)
{
    if (options.size() < 2) complaints.add(where, "at least two `option`s", options.empty() ? "none" : "one");
    if (options.size() > 12) complaints.add(where, "at most twelve `option`s", std::to_string(options.size()));
    std::vector<rules::Marked> ids;
    std::map<std::string, std::string> texts;
    for (const Option& option : options) {
        ids.push_back(option.id);
        const auto [same, is_new] = texts.emplace(option.text.en, option.id.text);
        if (!is_new && same->second != option.id.text) complaints.add(option.text.where, "a text that no other option has", text::quoted(option.text.en) + " a second time");
        if (option.is_right && !option.misconception.empty()) complaints.add(option.id.where, "no `misconception` on a right option", text::quoted(option.misconception));
        if (option.is_right) continue;
        if (option.misconception.empty()) complaints.add(option.id.where, "a `misconception` on a wrong option", "none");
        if (option.told.is_empty()) complaints.add(option.id.where, "a `told` on a wrong option: what to say to whoever chose it", "none");
    }
    complaints.must_differ("an option id", ids);
}

}
