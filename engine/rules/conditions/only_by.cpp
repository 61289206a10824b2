#include "rules/conditions/only_by.hpp"

#include "job/card_words.hpp"
#include "rules/telling.hpp"
#include "rules/things.hpp"

#include <algorithm>

namespace flapdoor::rules {

using text::sentence;

namespace {

job::Role role_at(const job::PersonId& person, Time at, const Evidence& evidence)
{
    const job::Person* known = job::find_by_id(evidence.scenario().crew, person);
    const job::Role role = known ? known->role : job::Role::untrained;
    if (role != job::Role::untrained) return role;
    for (const job::LogEntry& entry : evidence.log().entries) {
        if (entry.step != "train-worker" || entry.outcome != job::Outcome::done || entry.end > at || job::parameter(entry, "worker") != person.name) continue;
        const bool is_taught = std::any_of(entry.by.begin(), entry.by.end(), [&](const job::PersonId& teacher) {
            const job::Person* found = job::find_by_id(evidence.scenario().crew, teacher);
            return found && found->role == job::Role::certified_renovator;
        });
        if (is_taught) return job::Role::trained_worker;
    }
    return job::Role::untrained;
}

}

Judgement judge(const OnlyBy& condition, const Evidence& evidence, const std::string& self)
{
    Judgement judgement;
    for (const Occurrence& card : evidence.find(condition.cards, self)) {
        judgement.keep();
        for (const job::PersonId& person : evidence.entry(card.entry).by) {
            // Roles count down from the certified renovator.
            if (role_at(person, card.start, evidence) <= condition.role) continue;
            judgement.break_by({card.entry, -1, {}, person.name, card.start,
                                sentence("{0} was carried out by {1}; it asks for {2}.", card_text(evidence, card.entry), title_of_thing(person.name, evidence.scenario()), job::with_spaces(word_of(condition.role)))});
        }
    }
    return judgement;
}

}
