#include "debrief/repair/repair.hpp"

#include "debrief/repair/setting.hpp"
#include "debrief/repair/shelf.hpp"
#include "text/language.hpp"
#include "text/writing.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace flapdoor::debrief {

namespace {

using rules::Fault;
using text::say;

/// Finds the edits for one rule, kind of condition by kind.
class Repairer {
public:
    Repairer(const RepairShop& shop, const rules::Verdict& verdict) : shelf_(shop), shop_(shop), verdict_(verdict) {}

    Repair take()
    {
        if (repair_.edits.empty() && repair_.no_way.empty()) repair_.no_way = say("no card of the plan is to blame alone");
        if (!repair_.edits.empty()) repair_.no_way.clear();
        return std::move(repair_);
    }

    void fix(const rules::Before& before)
    {
        for (const auto& [object, then] : missing_before()) put_in(before.first, object, then);
        move_pairs();
    }

    void fix(const rules::NotBefore& not_before)
    {
        if (!not_before.until.state.empty()) {
            const std::string wanted = not_before.until.is.words.empty() ? "true" : not_before.until.is.words.front();
            for (const Fault& fault : verdict_.faults)
                bring_about(not_before.until.state, rules::resolved(not_before.until.of, fault.object), wanted != "false", fault.first < 0 ? shelf_.end() : fault.first);
            return;
        }
        for (const auto& [object, then] : missing_before()) put_in(not_before.until, object, then);
        move_pairs();
    }

    void fix(const rules::While& rule)
    {
        for (const Fault& fault : verdict_.faults) {
            if (fault.first < 0) continue;
            const std::string object = rules::resolved(rule.of, fault.object);
            const int ender = shelf_.changed_by(rule.state, object, !rule.is, fault.at);
            if (ender < 0) bring_about(rule.state, object, rule.is, fault.first);
            else hold_back(ender, rule.to, fault.object);
        }
    }

    void fix(const rules::AfterEach& rule)
    {
        for (const Fault& fault : verdict_.faults) {
            const int limit = rule.until && fault.second >= 0 ? fault.second : shelf_.end();
            const bool is_between = rule.until && shelf_.end() != limit;
            put_in(rule.remedy, fault.object, limit, is_between ? -1 : fault.second);
        }
    }

    void fix(const rules::Within& rule)
    {
        for (const Fault& fault : verdict_.faults) {
            if (!rule.counted.empty() && fault.first >= 0) {
                const text::Node most = text::leaf_node(std::int64_t{*rule.most});
                const std::optional<text::Node> right = shelf_.pattern_value(fault.first, rule.counted);
                set(fault.first, {{rule.counted, right ? *right : most}});
            }
            else if (fault.first >= 0) move(fault.first, fault.second + 1);
            else put_in(rule.what, fault.object, shelf_.end(), fault.second);
        }
    }

    void fix(const rules::OnlyBy& rule)
    {
        std::set<int> done;
        for (const Fault& fault : verdict_.faults) {
            if (fault.first < 0 || !done.insert(fault.first).second) continue;
            const std::optional<text::Node> by = shelf_.fitting_people(fault.first, rule.role);
            if (by) set(fault.first, {{"by", *by}});
            else repair_.no_way = say("nobody of the crew may do it");
        }
    }

    void fix(const rules::AtLeast& rule)
    {
        if (rule.done) {
            for (const Fault& fault : verdict_.faults) {
                const int limit = fault.first >= 0 ? fault.first : shelf_.end();
                const int mine = shelf_.set_otherwise(*rule.done, fault.object, limit);
                if (mine >= 0) set_like_pattern(mine);
                else put_in(*rule.done, fault.object, limit);
            }
            return;
        }
        for (const Fault& fault : verdict_.faults) {
            if (fault.first < 0) continue;
            const std::string_view decider = deciding_step(rule.measured);
            if (decider.empty() || decider == shop_.log.entries.at(static_cast<std::size_t>(fault.first)).step) set_like_pattern(fault.first);
            else decide(std::string(decider), fault);
        }
    }

    void fix(const rules::RepeatUntil& rule)
    {
        for (const Fault& fault : verdict_.faults) {
            const int after = fault.second;
            const int limit = fault.first >= 0 ? fault.first : shelf_.end();
            put_in(rule.again, fault.object, limit, after);
            if (fault.first < 0 || shop_.log.entries.at(static_cast<std::size_t>(fault.first)).step != shop_.log.entries.at(static_cast<std::size_t>(after)).step)
                put_in(rule.check, fault.object, limit, after);
        }
    }

    void fix(const rules::Never& rule)
    {
        std::set<int> done;
        for (const Fault& fault : verdict_.faults) {
            if (fault.first < 0 || !done.insert(fault.first).second) continue;
            std::vector<std::pair<std::string, text::Node>> values;
            bool is_absolute = false, is_measured = false;
            for (const rules::Spot& spot : rule.any_of) {
                if (!shelf_.is_spoken_of(fault.first, spot, fault.object)) continue;
                is_measured = is_measured || !spot.measured.empty();
                is_absolute = is_absolute || (spot.measured.empty() && spot.with.all.empty());
                if (!spot.with.all.empty())
                    for (auto& value : settings_against(shelf_, fault.first, spot, fault.object)) values.push_back(std::move(value));
            }
            if (!values.empty()) set(fault.first, std::move(values));
            else if (is_absolute) leave_out(fault.first);
            else if (is_measured) set_like_pattern(fault.first);
            else repair_.no_way = say("no other setting of the card is known");
        }
    }

    void fix(const rules::ExactlyOneOf& rule)
    {
        for (const Fault& fault : verdict_.faults) {
            if (fault.first >= 0) leave_out(fault.first);
            else put_in(rule.spots.front(), fault.object, shelf_.end());
        }
    }

private:
    using Values = std::vector<std::pair<std::string, text::Node>>;

    void add(PlanEdit edit)
    {
        if (std::find(repair_.edits.begin(), repair_.edits.end(), edit) == repair_.edits.end()) repair_.edits.push_back(std::move(edit));
    }

    void set(int card, Values values)
    {
        PlanEdit edit;
        edit.card = card;
        edit.values = std::move(values);
        for (PlanEdit& staging : shelf_.staging_for(edit.values, card)) add(std::move(staging));
        add(std::move(edit));
    }

    void set_like_pattern(int card)
    {
        Values values = shelf_.settings_of_twin(card);
        if (!values.empty()) set(card, std::move(values));
        else if (repair_.no_way.empty())
            repair_.no_way = shop_.pattern ? say("the reference plan has no such card with other settings") : say("there is no reference plan to take the settings from");
    }

    void move(int card, int before)
    {
        PlanEdit edit;
        edit.kind = PlanEdit::Kind::move;
        edit.card = card;
        edit.before = before;
        add(std::move(edit));
    }

    void leave_out(int card)
    {
        PlanEdit edit;
        edit.kind = PlanEdit::Kind::leave_out;
        edit.card = card;
        add(std::move(edit));
    }

    /// Where something is missing, the first card before which it has to come, for each thing it is missing for.
    std::map<std::string, int> missing_before() const
    {
        std::map<std::string, int> first;
        for (const Fault& fault : verdict_.faults) {
            if (fault.missing.empty()) continue;
            const int then = verdict_.pairs.empty() || fault.second >= 0 ? std::max(fault.first, fault.second) : fault.first;
            const auto [known, is_new] = first.emplace(fault.object, then);
            if (!is_new) known->second = std::min(known->second, then);
        }
        return first;
    }

    /// Puts in a card that a spot names, as the pattern has it.
    void put_in(const rules::Spot& spot, const std::string& object, int before, int after = -1)
    {
        if (!spot.state.empty()) return bring_about(spot.state, rules::resolved(spot.of, object), spot.is.words.empty() || spot.is.words.front() != "false", before);
        put_card(shelf_.from_pattern(spot, object), before, after);
    }

    void put_card(std::optional<Shelf::Taken> taken, int before, int after)
    {
        if (!taken) {
            repair_.no_way = shop_.pattern ? say("the reference plan has no such card") : say("there is no reference plan to take the card from");
            return;
        }
        const Shelf::Place place = shelf_.place_for(*taken, before, after);
        if (!place.at) {
            repair_.no_way = place.why_not;
            return;
        }
        PlanEdit edit;
        edit.kind = PlanEdit::Kind::put_in;
        edit.before = *place.at;
        edit.put = taken->card;
        edit.twin = taken->twin;
        for (PlanEdit& staging : shelf_.staging_for(edit.put, edit.before)) add(std::move(staging));
        add(std::move(edit));
    }

    /// Cards in the wrong order: the fewer of the two sides move, each to the nearest place at which it can be carried out.
    void move_pairs()
    {
        std::map<int, int> earlier, later;      // card: the first it must come before; the last it must come after
        for (const rules::CardPair& pair : verdict_.pairs) {
            if (pair.is_kept || pair.before < 0 || pair.after < 0 || pair.before == pair.after) continue;
            const auto [to, is_new] = earlier.emplace(pair.before, pair.after);
            to->second = is_new ? pair.after : std::min(to->second, pair.after);
            const auto [from, is_first] = later.emplace(pair.after, pair.before);
            from->second = is_first ? pair.before : std::max(from->second, pair.before);
        }
        std::vector<std::pair<int, int>> moves;
        for (const auto& [card, before] : earlier)
            if (const std::optional<int> at = shelf_.earlier_place(card, before)) moves.emplace_back(card, *at);
        if (moves.size() == earlier.size() && earlier.size() <= later.size())
            for (const auto& [card, at] : moves) move(card, at);
        else
            for (const auto& [card, after] : later) move(card, after + 1);
    }

    /// A state is to hold (or not) when a card begins.
    void bring_about(const std::string& state, const std::string& object, bool wanted, int by)
    {
        if (shelf_.hangs_on_a_result(state)) {
            repair_.no_way = say("it hangs on how the check comes out, not on one card");
            return;
        }
        if (const int late = shelf_.first_to_bring_about(state, object, wanted, by); late > by) {
            if (const std::optional<int> at = shelf_.earlier_place(late, by)) return move(late, *at);
            repair_.no_way = say("the card that would do it cannot be carried out so early");
            return;
        }
        const std::optional<Shelf::Taken> taken = shelf_.bringer_of_pattern(state, object, wanted);
        const int mine = taken ? shelf_.twin_here(taken->twin) : -1;
        if (mine < 0) return put_card(taken, by, -1);
        if (Values values = shelf_.settings_of_twin(mine); !values.empty()) set(mine, std::move(values));
        else repair_.no_way = say("the same card with the same settings did not do it here");
    }

    /// A card that ended a state too early comes after the last card until which it has to hold, or not at all.
    void hold_back(int card, const std::optional<rules::Spot>& to, const std::string& object)
    {
        const int last = to ? shelf_.last_of(*to, object) : -1;
        if (last > card) move(card, last + 1);
        else leave_out(card);
    }

    /// The card that decides a measure comes before the one at which it was measured: set right when there is one, else put in.
    void decide(const std::string& step, const Fault& fault)
    {
        if (const int mine = shelf_.last_before(step, fault.first, fault.object); mine >= 0) return set_like_pattern(mine);
        std::optional<Shelf::Taken> taken = shelf_.from_pattern_for(step, fault.first, fault.object);
        put_card(std::move(taken), fault.first, fault.first - 1);
    }

    Shelf shelf_;
    const RepairShop& shop_;
    const rules::Verdict& verdict_;
    Repair repair_;
};

}

Repair repair_of(const RepairShop& shop, const rules::Rule& rule, const rules::Verdict& verdict)
{
    Repairer repairer(shop, verdict);
    std::visit([&](const auto& condition) { repairer.fix(condition); }, rule.when.kind);
    return repairer.take();
}

}
