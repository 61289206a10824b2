#include "dust/ledger.hpp"

#include "core/insist.hpp"

#include <algorithm>
#include <utility>

namespace flapdoor::dust {

namespace {

/// The old dust in a part of a balance: in proportion, and never so much or so little that old or new goes below nothing.
Picograms old_share(Picograms old, Picograms amount, Picograms balance)
{
    if (old.count == 0 || amount.count == 0) return {};
    const Picograms share = part(old, static_cast<double>(amount.count) / static_cast<double>(balance.count));
    return std::clamp(share, std::max(Picograms{}, old - (balance - amount)), std::min(old, amount));
}

/// +1 when it goes out, -1 when it comes back, 0 when it stays on its side.
int outward(Side from, Side to) { return static_cast<int>(to == Side::outside) - static_cast<int>(from == Side::outside); }

}

PerClass<Amount> Account::from_work() const
{
    PerClass<Amount> made;
    for (const SizeClass k : all_classes()) made[k] = balance[k] - old[k];
    return made;
}

Amount total(const PerClass<Amount>& amounts)
{
    Amount sum;
    for (const SizeClass k : all_classes()) sum += amounts[k];
    return sum;
}

AccountId Ledger::open(std::string name, Side side)
{
    accounts_.push_back({std::move(name), side, {}, {}});
    return accounts_.size() - 1;
}

void Ledger::book_crossing(Side from, Side to, SizeClass k, Amount amount, Pathway pathway)
{
    const bool is_crossing = (from == Side::outside) != (to == Side::outside);
    insist(is_crossing == (pathway != Pathway::none), "a pathway is named exactly when dust crosses the containment");
    if (!is_crossing) return;
    Amount& total = crossed_[static_cast<std::size_t>(pathway)][k];
    if (to == Side::outside) total += amount;
    else total -= amount;
}

void Ledger::move(Holding from, Holding to, SizeClass k, Amount amount, Pathway pathway)
{
    if (amount.is_zero()) return;
    insist(amount.dust.count >= 0 && amount.lead.count >= 0, "amounts moved are not negative");
    insist(from.held.dust >= amount.dust && from.held.lead >= amount.lead, "no more is moved than is there");
    Account& giver = accounts_.at(from.account);
    Account& taker = accounts_.at(to.account);
    const Amount old{old_share(giver.old[k].dust, amount.dust, giver.balance[k].dust), old_share(giver.old[k].lead, amount.lead, giver.balance[k].lead)};
    book_crossing(giver.side, taker.side, k, amount - old, pathway);
    if (sources_) sources_->move(from.account, to.account, k, amount - old, outward(giver.side, taker.side), static_cast<std::size_t>(pathway));
    from.held -= amount;
    giver.balance[k] -= amount;
    giver.old[k] -= old;
    to.held += amount;
    taker.balance[k] += amount;
    taker.old[k] += old;
}

void Ledger::release(AccountId paint, Holding to, SizeClass k, Amount amount)
{
    insist(accounts_.at(paint).side == Side::paint && accounts_.at(to.account).side == Side::inside, "dust is released from paint into the work area");
    insist(amount.dust.count >= 0 && amount.lead.count >= 0, "amounts released are not negative");
    if (sources_ && !amount.is_zero()) sources_->release(to.account, k, amount);
    accounts_[paint].balance[k] -= amount;
    to.held += amount;
    accounts_[to.account].balance[k] += amount;
}

void Ledger::find(AccountId before, Holding to, SizeClass k, Amount amount)
{
    insist(accounts_.at(before).side == Side::before && accounts_.at(to.account).side != Side::paint, "old dust comes from what lay there before");
    insist(amount.dust.count >= 0 && amount.lead.count >= 0, "amounts found are not negative");
    Account& source = accounts_[before];
    Account& taker = accounts_[to.account];
    source.balance[k] -= amount;
    source.old[k] -= amount;
    to.held += amount;
    taker.balance[k] += amount;
    taker.old[k] += amount;
}

void Ledger::move_account(AccountId id, Side side, Pathway pathway)
{
    Account& account = accounts_.at(id);
    if (account.side == side) return;
    if ((account.side == Side::outside) == (side == Side::outside)) pathway = Pathway::none;
    for (const SizeClass k : all_classes()) book_crossing(account.side, side, k, account.balance[k] - account.old[k], pathway);
    if (sources_) sources_->move_account(id, outward(account.side, side), static_cast<std::size_t>(pathway));
    account.side = side;
}

bool Ledger::closes() const
{
    for (const SizeClass k : all_classes()) {
        Amount all;
        Amount old;
        Amount outside;
        Amount crossed;
        for (const Account& account : accounts_) {
            all += account.balance[k];
            old += account.old[k];
            if (account.side == Side::outside) outside += account.balance[k] - account.old[k];
        }
        for (const auto& by_pathway : crossed_) crossed += by_pathway[k];
        if (!all.is_zero() || !old.is_zero() || outside != crossed) return false;
    }
    return !sources_ || sources_add_up();
}

void Ledger::trace()
{
    insist(released().is_zero(), "sources are traced from the first dust on");
    sources_.emplace();
}

bool Ledger::sources_add_up() const
{
    for (AccountId a = 0; a < accounts_.size(); ++a) {
        if (accounts_[a].side == Side::paint || accounts_[a].side == Side::before) continue;
        const PerClass<Amount> made = accounts_[a].from_work();
        for (const SizeClass k : all_classes()) {
            Amount sum;
            for (std::size_t source = 0; source < sources_->sources().size(); ++source) sum += sources_->held(a, source, k);
            if (sum != made[k]) return false;
        }
    }
    std::array<Amount, pathway_count> by_pathway{};
    for (const SourceBook::Crossing& crossing : sources_->crossings()) by_pathway.at(crossing.pathway) += crossing.amount;
    for (std::size_t p = 0; p < pathway_count; ++p) {
        const auto pathway = static_cast<Pathway>(p);
        const Amount crossed = total(this->crossed(pathway));
        if (by_pathway[p] != crossed) return false;
    }
    return true;
}

Amount Ledger::released() const
{
    Amount sum;
    for (const Account& account : accounts_)
        if (account.side == Side::paint) sum = sum - total(account.balance);
    return sum;
}

Amount Ledger::found() const
{
    Amount sum;
    for (const Account& account : accounts_)
        if (account.side == Side::before) sum = sum - total(account.balance);
    return sum;
}

Amount Ledger::on(Side side) const
{
    Amount sum;
    for (const Account& account : accounts_)
        if (account.side == side) sum += total(account.from_work());
    return sum;
}

Amount Ledger::old_on(Side side) const
{
    Amount sum;
    for (const Account& account : accounts_)
        if (account.side == side) sum += total(account.old);
    return sum;
}

}
