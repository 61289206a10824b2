#include "debrief/trace.hpp"

#include "core/insist.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <tuple>

namespace flapdoor::debrief {

namespace {

using dust::Pathway;
using dust::Side;
using dust::SourceBook;

bool has_more_lead(Amount a, Amount b) { return a.lead != b.lead ? a.lead > b.lead : a.dust > b.dust; }

std::vector<SourceLine> sources_of(const dust::Ledger& ledger)
{
    const SourceBook& book = *ledger.sources();
    std::vector<SourceLine> lines;
    for (std::size_t s = 0; s < book.sources().size(); ++s) {
        SourceLine line;
        line.source = book.sources()[s];
        for (dust::AccountId a = 0; a < ledger.accounts().size(); ++a) {
            const Amount held = book.held(a, s);
            switch (ledger.account(a).side) {
                case Side::outside: line.outside += held; break;
                case Side::inside: line.inside += held; break;
                case Side::contained: line.contained += held; break;
                default: insist(held.is_zero(), "paint and old dust hold nothing that was let loose");
            }
        }
        line.released = line.outside + line.inside + line.contained;
        lines.push_back(line);
    }
    return lines;
}

std::vector<TraceLine> crossings_of(const dust::Ledger& ledger)
{
    std::map<std::tuple<int, int, std::size_t>, Amount> sums;     // the last source may stand for several cards
    for (const SourceBook::Crossing& crossing : ledger.sources()->crossings()) sums[{crossing.source, crossing.step, crossing.pathway}] += crossing.amount;
    std::vector<TraceLine> lines;
    Picograms all;
    for (const auto& [key, amount] : sums) {
        const auto [source, step, pathway] = key;
        lines.push_back({source, step, static_cast<Pathway>(pathway), amount, 0.0});
        all += std::max(Picograms{}, amount.lead);
    }
    for (TraceLine& line : lines)
        if (all > Picograms{}) line.share = static_cast<double>(std::max(Picograms{}, line.amount.lead).count) / static_cast<double>(all.count);
    std::stable_sort(lines.begin(), lines.end(), [](const TraceLine& a, const TraceLine& b) { return has_more_lead(a.amount, b.amount); });
    return lines;
}

std::vector<LeftLine> left_in(const dust::Ledger& ledger)
{
    std::vector<LeftLine> lines;
    for (dust::AccountId a = 0; a < ledger.accounts().size(); ++a) {
        if (ledger.account(a).side != Side::inside) continue;
        for (std::size_t s = 0; s < ledger.sources()->sources().size(); ++s)
            if (const Amount held = ledger.sources()->held(a, s); !held.is_zero()) lines.push_back({ledger.sources()->sources()[s], ledger.account(a).name, held});
    }
    std::stable_sort(lines.begin(), lines.end(), [](const LeftLine& a, const LeftLine& b) { return has_more_lead(a.amount, b.amount); });
    return lines;
}

void check(const Trace& trace, const dust::Ledger& ledger)
{
    SourceLine all;
    for (const SourceLine& line : trace.sources) {
        all.released += line.released;
        all.outside += line.outside;
        all.inside += line.inside;
        all.contained += line.contained;
    }
    insist(all.released == ledger.released() && all.outside == ledger.on(Side::outside) && all.inside == ledger.on(Side::inside) && all.contained == ledger.on(Side::contained),
           "what is traced adds up to the ledger");
    std::array<Amount, dust::pathway_count> crossed{};
    Amount left;
    for (const TraceLine& line : trace.crossings) crossed.at(static_cast<std::size_t>(line.pathway)) += line.amount;
    for (const LeftLine& line : trace.left) left += line.amount;
    for (std::size_t p = 0; p < dust::pathway_count; ++p) insist(crossed[p] == dust::total(ledger.crossed(static_cast<Pathway>(p))), "what is traced by a way out adds up to it");
    insist(left == ledger.on(Side::inside), "what is traced to a place adds up to what was left");
}

}

Trace trace_of(const site::Site& site)
{
    if (!site.ledger.sources()) return {};
    Trace trace{sources_of(site.ledger), crossings_of(site.ledger), left_in(site.ledger)};
    check(trace, site.ledger);
    return trace;
}

std::vector<WayOfSource> ways_of_sources(const Trace& trace)
{
    std::map<std::pair<int, Pathway>, Amount> sums;
    for (const TraceLine& line : trace.crossings)
        if (line.pathway != Pathway::recovered) sums[{line.source, line.pathway}] += line.amount;
    std::vector<WayOfSource> ways;
    Picograms all;
    for (const auto& [key, amount] : sums) {
        ways.push_back({key.first, key.second, amount, 0.0});
        all += std::max(Picograms{}, amount.lead);
    }
    for (WayOfSource& way : ways)
        if (all > Picograms{}) way.share = static_cast<double>(std::max(Picograms{}, way.amount.lead).count) / static_cast<double>(all.count);
    std::stable_sort(ways.begin(), ways.end(), [](const WayOfSource& a, const WayOfSource& b) { return has_more_lead(a.amount, b.amount); });
    return ways;
}

}
