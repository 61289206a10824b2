#pragma once

#include "core/picograms.hpp"
#include "dust/size_class.hpp"
#include "dust/source_book.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace flapdoor::dust {

/// How dust left the work area.
enum class Pathway {
    none,
    return_air,
    seam,
    doorway,
    shoes,
    clothing,
    tools,
    bag,
    sheeting_removal,
    recovered   ///< not a way out: cleaned up outside, or carried back in by air
};
inline constexpr std::size_t pathway_count = 10;

/// Which side of the containment an account is on.
enum class Side {
    paint,      ///< the film the dust came from: its balance is minus what was released
    inside,     ///< in the work area: its air, its surfaces, the people and tools in it
    outside,    ///< anywhere else in or around the building: what the job must avoid
    contained,  ///< out of the world: sealed bags, vacuum and filter contents, wash water
    before      ///< where the dust came from that lay there before the job: its balance is minus what was found
};

using AccountId = std::size_t;

struct Account {
    std::string name;
    Side side = Side::inside;
    PerClass<Amount> balance;
    PerClass<Amount> old;       ///< of the balance: what lay there before the job

    PerClass<Amount> from_work() const;     ///< of the balance: what the job made
};

/// An account and the place in it where an amount is physically held. Both change together, or not at all.
struct Holding {
    Amount& held;
    AccountId account;
};

/// Double-entry books of dust and lead by host, size class and pathway. The accounts always add up to zero; what the job
/// made and is outside is always what crossed by some pathway.
///
/// Old dust that lay there before the job is booked apart within each account, so that nobody is blamed for it: an account
/// counts as well mixed, and what leaves it takes old and new along in proportion. Pathways and sides count what the job made.
class Ledger {
public:
    AccountId open(std::string name, Side side);

    /// Takes an amount from one holding and puts it into another.
    /// @param pathway  how it crossed: named exactly when one side is outside and the other is not; insists
    void move(Holding from, Holding to, SizeClass k, Amount amount, Pathway pathway = Pathway::none);

    /// Fresh dust from the paint film into a holding.
    void release(AccountId paint, Holding to, SizeClass k, Amount amount);

    /// Old dust into a holding on any side, out of the account of what lay there before.
    void find(AccountId before, Holding to, SizeClass k, Amount amount);

    /// A whole account changes sides, with all it holds: a worker walks out, a bag is carried out.
    /// @param pathway  as for move
    void move_account(AccountId account, Side side, Pathway pathway);

    /// From now on keeps a second set of books: which card let loose what. Before the first dust; insists. It costs time and changes
    /// no result.
    void trace();
    void stop_tracing() { sources_.reset(); }
    /// The step in progress, for what is traced. @param entry  its place in the run log
    void begin_step(int entry)
    {
        if (sources_) sources_->begin_step(entry);
    }
    /// Who let loose what; nothing when it is not traced.
    const std::optional<SourceBook>& sources() const { return sources_; }

    const std::vector<Account>& accounts() const { return accounts_; }
    const Account& account(AccountId id) const { return accounts_.at(id); }
    /// Net amount of what the job made that went outside by a pathway.
    const PerClass<Amount>& crossed(Pathway pathway) const { return crossed_[static_cast<std::size_t>(pathway)]; }

    /// Does every class of dust and lead, old dust by itself too, add up to 0 pg over all accounts, and is all that the job
    /// made and is outside accounted for by pathways? And, where it is traced, do the sources of every account and of every pathway
    /// add up to it?
    bool closes() const;

    Amount released() const;        ///< all that ever left the paint
    Amount found() const;           ///< all that lay there before
    Amount on(Side side) const;     ///< what the job made and is there now
    Amount old_on(Side side) const; ///< what lay somewhere before the job and is there now

private:
    void book_crossing(Side from, Side to, SizeClass k, Amount amount, Pathway pathway);
    bool sources_add_up() const;

    std::vector<Account> accounts_;
    std::array<PerClass<Amount>, pathway_count> crossed_{};
    std::optional<SourceBook> sources_;
};

/// Sum over classes.
Amount total(const PerClass<Amount>& amounts);

}

namespace flapdoor::inline core {
template <> struct Words<dust::Pathway> {
    static constexpr std::array<std::string_view, dust::pathway_count> words{
        "none", "return air", "seams and undercuts", "doorway and flap", "shoes", "clothing", "tools", "bags", "sheeting removal", "cleaned up or carried back"};
};
template <> struct Words<dust::Side> { static constexpr std::array<std::string_view, 5> words{"paint", "inside", "outside", "contained", "there before"}; };
}
