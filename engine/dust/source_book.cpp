#include "dust/source_book.hpp"

#include "core/insist.hpp"

#include <algorithm>

namespace flapdoor::dust {

namespace {

constexpr std::size_t pathways = 16;    // room for all

/// How much of one source goes, when so much of what is left goes: its share, and never so much or so little that the rest could
/// not be made up by the sources that follow.
Picograms share_of(Picograms held, Picograms going, Picograms left)
{
    if (held.count == 0 || going.count == 0) return {};
    if (held == left) return going;
    const Picograms share = part(held, static_cast<double>(going.count) / static_cast<double>(left.count));
    return std::clamp(share, std::max(Picograms{}, going - (left - held)), std::min(held, going));
}

}

std::vector<Amount>& SourceBook::row(std::size_t account, SizeClass k)
{
    if (held_.size() <= account) held_.resize(account + 1);
    return held_[account][k];
}

void SourceBook::begin_step(int entry)
{
    for (std::size_t i = 0; i < crossed_now_.size(); ++i)
        if (!crossed_now_[i].is_zero()) crossings_.push_back({sources_[i / pathways], step_, i % pathways, crossed_now_[i]});
    std::fill(crossed_now_.begin(), crossed_now_.end(), Amount{});
    step_ = entry;
}

void SourceBook::cross(std::size_t source, std::size_t pathway, Amount amount, int sign)
{
    insist(pathway < pathways, "a pathway has its column");
    crossed_now_.resize(std::max(crossed_now_.size(), sources_.size() * pathways));
    Amount& sum = crossed_now_[source * pathways + pathway];
    if (sign > 0) sum += amount;
    else sum -= amount;
}

void SourceBook::release(std::size_t to, SizeClass k, Amount amount)
{
    if (sources_.empty() || (sources_.back() != step_ && sources_.size() < most_sources)) sources_.push_back(step_);
    std::vector<Amount>& taker = row(to, k);
    taker.resize(std::max(taker.size(), sources_.size()));
    taker[sources_.size() - 1] += amount;
}

void SourceBook::move(std::size_t from, std::size_t to, SizeClass k, Amount amount, int crosses, std::size_t pathway)
{
    if (amount.is_zero() || (from == to && crosses == 0)) return;
    row(std::max(from, to), k);     // so that neither moves when the other grows
    std::vector<Amount>& giver = row(from, k);
    std::vector<Amount>& taker = row(to, k);
    if (taker.size() < giver.size()) taker.resize(giver.size());
    Amount left;
    for (const Amount& held : giver) left += held;
    Amount going = amount;
    for (std::size_t source = 0; source < giver.size() && !going.is_zero(); ++source) {
        Amount& held = giver[source];
        const Amount was = held;
        const Amount piece{share_of(was.dust, going.dust, left.dust), share_of(was.lead, going.lead, left.lead)};
        left -= was;
        going -= piece;
        if (piece.is_zero()) continue;
        held -= piece;
        taker[source] += piece;
        if (crosses != 0) cross(source, pathway, piece, crosses);
    }
    insist(going.is_zero(), "sources add up to what is moved");
}

void SourceBook::move_account(std::size_t account, int crosses, std::size_t pathway)
{
    if (crosses == 0) return;
    for (const SizeClass k : all_classes()) {
        const std::vector<Amount>& held = row(account, k);
        for (std::size_t source = 0; source < held.size(); ++source) cross(source, pathway, held[source], crosses);
    }
}

Amount SourceBook::held(std::size_t account, std::size_t source, SizeClass k) const
{
    if (account >= held_.size() || source >= held_[account][k].size()) return {};
    return held_[account][k][source];
}

Amount SourceBook::held(std::size_t account, std::size_t source) const
{
    Amount sum;
    for (const SizeClass k : all_classes()) sum += held(account, source, k);
    return sum;
}

std::vector<SourceBook::Crossing> SourceBook::crossings() const
{
    std::vector<Crossing> all = crossings_;
    for (std::size_t i = 0; i < crossed_now_.size(); ++i)
        if (!crossed_now_[i].is_zero()) all.push_back({sources_[i / pathways], step_, i % pathways, crossed_now_[i]});
    return all;
}

}
