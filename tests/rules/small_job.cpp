#include "small_job.hpp"

#include "core/insist.hpp"
#include "text/writing.hpp"

#include <algorithm>
#include <set>

namespace flapdoor::rules {

job::CloseBag closed(const char* bag)
{
    job::CloseBag card;
    card.bag = {bag};
    return card;
}
job::VacuumSurfaces vacuumed(job::Target target)
{
    job::VacuumSurfaces card;
    card.target = target;
    card.vacuum = {"vac"};
    return card;
}
job::MopFloor mopped()
{
    job::MopFloor card;
    card.mop = {"buckets"};
    return card;
}

job::Scenario small_scenario()
{
    job::Scenario s;
    s.id = "small";
    s.title = "Small job";
    s.building.built = 1930;
    s.zones = {{{"room"}, "Room", job::ZoneRole::work_room, {}, {}, 12.0_ft, 12.0_ft}, {{"hall"}, "Hall", job::ZoneRole::passage, 12.0_ft, {}, 4.0_ft, 12.0_ft},
               {{"closet"}, "Closet", job::ZoneRole::closet, {}, 12.0_ft, 4.0_ft, 3.0_ft}};
    const auto opening = [](std::string id, std::string title, job::OpeningKindOf kind, std::string leads_to) {
        job::Opening o;
        o.id = {std::move(id)};
        o.title = std::move(title);
        o.kind = kind;
        o.zone = {"room"};
        o.leads_to = {std::move(leads_to)};
        return o;
    };
    s.openings = {opening("window", "West window", job::OpeningKindOf::window, ""), opening("return", "Return register", job::OpeningKindOf::return_air, ""),
                  opening("closet-door", "Closet door", job::OpeningKindOf::door, "closet"), opening("door", "Room door", job::OpeningKindOf::door, "hall")};
    job::Object table;
    table.id = {"table"};
    table.title = "Table";
    table.zone = {"room"};
    s.objects = {table};
    s.sills = {{{"sill"}, "West sill", {"window"}}};
    job::Counter shelf;
    shelf.id = {"shelf"};
    shelf.title = "Built-in shelf";
    shelf.zone = {"room"};
    s.counters = {shelf};
    job::Component casing;
    casing.id = {"casing"};
    casing.title = "Window casing";
    casing.zone = {"room"};
    casing.opening = {"window"};
    casing.area = 12.0_ft2;
    casing.lead = 2.0_mgpcm2;
    s.components = {casing};
    s.crew = {{{"ana"}, "Ana", job::Role::certified_renovator}, {{"ben"}, "Ben", job::Role::trained_worker}};
    using Kind = job::SupplyKindOf;
    const auto supply = [](std::string id, Kind kind) { return job::Supply{{std::move(id)}, {}, kind}; };
    s.supplies = {supply("poly", Kind::sheeting), supply("vac", Kind::hepa_vacuum), supply("shop-vac", Kind::shop_vacuum), supply("bags", Kind::bag),
                  supply("kitchen-bags", Kind::trash_bag), supply("mister", Kind::mister), supply("wipes", Kind::cloth), supply("dry", Kind::dry_cloth),
                  supply("rags", Kind::rag), supply("buckets", Kind::mop_two_bucket), supply("one-bucket", Kind::mop_one_bucket), supply("pad", Kind::tack_pad),
                  supply("broom", Kind::broom)};
    s.air_handling.return_flow = 100.0_m3ph;
    return s;
}

job::StateChange begins(std::string state, std::string object) { return {{}, std::move(state), std::move(object), true}; }
job::StateChange ends(std::string state, std::string object) { return {{}, std::move(state), std::move(object), false}; }
job::Measure truth(std::string name, std::string object, bool value) { return {std::move(name), std::move(object), job::MeasureKind::truth, value ? 1.0 : 0.0}; }
job::Measure number(std::string name, std::string object, double value) { return {std::move(name), std::move(object), job::MeasureKind::number, value}; }
job::Measure length(std::string name, std::string object, Length value) { return {std::move(name), std::move(object), job::MeasureKind::length, value.si}; }
job::Measure area(std::string name, std::string object, Area value) { return {std::move(name), std::move(object), job::MeasureKind::area, value.si}; }
job::Measure duration(std::string name, std::string object, Time value) { return {std::move(name), std::move(object), job::MeasureKind::time, value.si}; }

SmallJob& SmallJob::add(Act act)
{
    acts_.push_back(std::move(act));
    return *this;
}

std::size_t SmallJob::index(std::string_view label) const
{
    const auto found = std::find_if(acts_.begin(), acts_.end(), [&](const Act& act) { return act.label == label; });
    insist(found != acts_.end(), "a test names an act of the small job");
    return static_cast<std::size_t>(found - acts_.begin());
}

Act& SmallJob::at(std::string_view label) { return acts_[index(label)]; }

SmallJob& SmallJob::without(std::string_view label)
{
    acts_.erase(acts_.begin() + static_cast<std::ptrdiff_t>(index(label)));
    return *this;
}

SmallJob& SmallJob::add_before(std::string_view other, Act act)
{
    acts_.insert(acts_.begin() + static_cast<std::ptrdiff_t>(index(other)), std::move(act));
    return *this;
}

SmallJob& SmallJob::add_after(std::string_view other, Act act)
{
    acts_.insert(acts_.begin() + static_cast<std::ptrdiff_t>(index(other)) + 1, std::move(act));
    return *this;
}

SmallJob& SmallJob::move_before(std::string_view label, std::string_view other)
{
    Act act = at(label);
    return without(label).add_before(other, std::move(act));
}

SmallJob& SmallJob::move_after(std::string_view label, std::string_view other)
{
    Act act = at(label);
    return without(label).add_after(other, std::move(act));
}

job::RunLog SmallJob::log() const
{
    job::RunLog log;
    std::set<std::pair<std::string, std::string>> holding;
    const auto change = [&](job::StateChange state, Time at) {
        const bool is_new = state.holds ? holding.insert({state.state, state.object}).second : holding.erase({state.state, state.object}) > 0;
        state.at = at;
        if (is_new) log.states.push_back(std::move(state));
    };
    const auto holds = [&](const char* state, const char* object) { return holding.contains({state, object}); };
    Time now = 8.0_h;
    change(begins("certified-on-site"), now);
    change(begins("certified-reachable"), now);
    change(begins("hvac-running"), now);
    for (const Act& act : acts_) {
        if (act.starts_at >= 0.0) now = Time{act.starts_at * 60.0};
        job::LogEntry entry;
        entry.card = static_cast<int>(log.entries.size());
        entry.step = std::visit([](const auto& step) { return std::string(step.name); }, act.step);
        entry.label = act.label;
        for (const std::string& who : act.by) entry.by.push_back({who});
        std::visit([&](const auto& step) {
            for (text::ShownField& field : text::describe_fields(step)) entry.with.push_back({std::move(field.key), std::move(field.value)});
        }, act.step);
        entry.outcome = act.outcome;
        entry.start = now;
        now += Time{act.minutes * 60.0};
        entry.end = now;
        entry.measured = act.measured;
        if (entry.step == "disturb-paint") change(begins("paint-disturbed"), entry.start);
        log.entries.push_back(std::move(entry));
        for (const job::StateChange& state : act.states) change(state, now);
        const bool is_whole = holds("floor-covered", "") && holds("register-closed", "return") && holds("register-covered", "return") && holds("window-closed", "window") &&
                              holds("door-closed", "closet-door") && holds("door-covered", "closet-door") && holds("flap-hung", "door");
        change(is_whole ? begins("containment-whole") : ends("containment-whole"), now);
    }
    return log;
}

/// What the site measures when paint is worked on.
std::vector<job::Measure> worked_on(Length reach, bool has_debris_beyond)
{
    return {length("reach", "casing", reach), truth("visible-release", "casing", false), truth("debris-beyond", "casing", has_debris_beyond)};
}

SmallJob good_job()
{
    const job::SupplyId poly{"poly"}, vac{"vac"}, wipes{"wipes"};
    const job::OpeningId door{"door"};
    const std::vector<job::Measure> clean_exit{truth("soles-cleaned", "ben", true), truth("clothes-cleaned", "ben", true)};
    const auto carried = [&](const std::string& bag) {
        std::vector<job::Measure> all = clean_exit;
        all.push_back(truth("sealed", bag, true));
        all.push_back(truth("skin-cleaned", bag, true));
        return all;
    };
    const std::vector<std::string> ana{"ana"}, ben{"ben"};
    SmallJob job;
    job.add({"pamphlet", job::GivePamphlet{}, ana, {}, {}});
    job.add({"declare", job::DeclarePaint{}, ana, {}, {}});
    job.add({"train", job::TrainWorker{{"ben"}}, ana, {}, {}});
    job.add({"signs", job::PostSigns{door}, ben, {begins("signs-up", "door")}, {}});
    job.add({"table", job::CoverObject{{"table"}, poly}, ben, {begins("objects-safe", "table")}, {}});
    job.add({"hvac", job::SwitchHvacOff{}, ben, {ends("hvac-running")}, {}});
    job.add({"window", job::CloseWindow{{"window"}}, ben, {begins("window-closed", "window")}, {}});
    job.add({"close-return", job::CloseRegister{{"return"}}, ben, {begins("register-closed", "return")}, {}});
    job.add({"cover-return", job::CoverRegister{{"return"}, poly}, ben, {begins("register-covered", "return")}, {}});
    job.add({"close-closet", job::CloseDoor{{"closet-door"}}, ben, {begins("door-closed", "closet-door")}, {}});
    job.add({"cover-closet", job::CoverDoor{{"closet-door"}, poly}, ben, {begins("door-covered", "closet-door")}, {}});
    job.add({"sheet", job::LayFloorSheet{poly}, ben, {begins("floor-covered")}, {length("reach", "casing", 6.0_ft)}});
    job.add({"stage", job::StageTools{{vac, wipes}}, ben, {}, {}});
    job.add({"flap", job::HangFlap{door, poly}, ben, {begins("flap-hung", "door"), begins("flap-taped", "door")}, {}});
    job.add({"pad", job::LayTackPad{door, {"pad"}}, ben, {begins("tack-pad-down")}, {}});
    job.add({"gear", job::PutOnGear{}, {"ana", "ben"}, {}, {}});
    job.add({"check", job::CheckContainment{}, ana, {}, {truth("way-out-free", "", true)}});
    job.add({"scrape", job::DisturbPaint{{"casing"}, job::Technique::hand_scrape}, ben, {}, worked_on(6.0_ft), 30.0});
    job.add({"leave", job::LeaveWorkArea{door}, ben, {}, clean_exit});
    job.add({"enter", job::EnterWorkArea{door}, ben, {}, {}});
    job.add({"pry", job::DisturbPaint{{"casing"}}, ben, {}, worked_on(6.0_ft), 20.0});
    job.add({"chips", job::BagDebris{{"bag-1"}, {"bags"}}, ben, {}, {}});
    job.add({"close-bag-1", closed("bag-1"), ben, {begins("waste-contained", "bag-1")}, {}});
    job.add({"vac-bag-1", job::VacuumBag{{"bag-1"}, vac}, ben, {}, {}});
    job.add({"out-1", job::CarryOut{{"bag-1"}, door}, ben, {}, carried("bag-1")});
    job.add({"in-1", job::EnterWorkArea{door}, ben, {}, {}});
    job.add({"tools", job::CleanTools{}, ben, {}, {}});
    job.add({"walls", job::VacuumWalls{vac}, ben, {}, {}});
    job.add({"mist", job::MistSheeting{{"mister"}}, ben, {}, {}});
    job.add({"fold", job::FoldSheeting{}, ben, {ends("floor-covered")}, {}});
    job.add({"bag-sheet", job::BagSheeting{{"bag-2"}, {"bags"}}, ben, {}, {}});
    job.add({"close-bag-2", closed("bag-2"), ben, {begins("waste-contained", "bag-2")}, {}});
    job.add({"vac-bag-2", job::VacuumBag{{"bag-2"}, vac}, ben, {}, {}});
    job.add({"out-2", job::CarryOut{{"bag-2"}, door}, ben, {}, carried("bag-2")});
    job.add({"store", job::StoreWaste{}, ben, {}, {}});
    job.add({"in-2", job::EnterWorkArea{door}, ben, {}, {}});
    job.add({"vacuum", vacuumed(job::Target::everything), ben, {}, {}, 30.0});
    job.add({"wipe", job::WipeSurfaces{job::Target::everything, wipes}, ben, {}, {}, 20.0});
    job.add({"mop", mopped(), ben, {}, {}, 15.0});
    job.add({"beyond", job::CleanBeyond{2.0_ft, vac, {"buckets"}}, ben, {}, {length("cleaned-margin", "", 2.0_ft)}});
    job.add({"inspect", job::Inspect{}, ana, {begins("inspection-passed")}, {truth("dust-seen", "", false)}, 10.0});
    job.add({"flap-down", job::TakeDownFlap{door}, ana, {ends("flap-hung", "door"), ends("flap-taped", "door")}, {}});
    job.add({"wipe-sill", job::WipeSill{{"sill"}, wipes}, ana, {begins("verified", "sill")}, {number("result", "sill", 0.0)}, 2.0});
    job.add({"wipe-shelf", job::WipeCounter{{"shelf"}, 0, wipes}, ana, {begins("verified", "shelf")}, {number("result", "shelf", 0.0)}, 2.0});
    job.add({"wipe-floor", job::WipeFloor{0, 0, wipes}, ana, {begins("passed")},
             {number("result", "floor 1", 0.0), area("cloth-area", "floor 1", 36.0_ft2), number("result", "floor 2", 0.0), area("cloth-area", "floor 2", 36.0_ft2),
              number("result", "floor 3", 0.0), area("cloth-area", "floor 3", 36.0_ft2), number("result", "floor 4", 0.0), area("cloth-area", "floor 4", 36.0_ft2),
              number("sections", "", 4.0)},
             16.0});
    job.add({"covers-down", job::TakeDownCovers{}, ben, {ends("register-covered", "return"), ends("door-covered", "closet-door")}, {}});
    job.add({"signs-down", job::TakeDownSigns{door}, ana, {ends("signs-up", "door")}, {}});
    job.add({"hvac-on", job::SwitchHvacOn{}, ana, {begins("hvac-running")}, {}});
    job.add({"record", job::WriteRecord{}, ana, {}, {}});
    job.add({"report", job::HandOverReport{}, ana, {}, {}});
    job.add({"back", job::AdmitOccupants{}, ana, {begins("occupants-in")}, {}});
    return job;
}

}
