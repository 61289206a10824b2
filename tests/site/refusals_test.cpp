#include "trial.hpp"

#include <array>

namespace flapdoor::site {

namespace {

/// A card that cannot be carried out, or need not be, and what the trainee is told.
struct Row {
    std::string after;      ///< labels of the careful plan that come before
    std::string then;       ///< a card before it, or nothing
    std::string card;
    std::string outcome;
};

constexpr const char* dust_now = R"(do = "disturb-paint", component = "casing-1", technique = "hand-scrape", time = "1 min", share = 0.01)";
constexpr const char* contained = "sheet stage flap tape-flap tack-pad";

}

TEST_CASE("what cannot be done is refused with its reason")
{
    const std::array rows{
        // Paper and people
        Row{"", "", R"(do = "train-worker", worker = "lee", by = ["lee"])", "refused: only a certified renovator trains workers for the job"},
        Row{"", "", R"(do = "train-worker", worker = "rosa", by = ["rosa"])", "refused: nobody trains himself"},
        Row{"signs", "", R"(do = "post-signs", at = "door")", "refused: signs hang at Bedroom door already"},
        Row{"", "", R"(do = "post-signs", at = "return")", "refused: Return register is not a door"},
        Row{"", "", R"(do = "take-down-signs", at = "door")", "refused: no signs hang there"},
        // Things in the room
        Row{"", "", R"(do = "move-out", object = "radiator")", "refused: Old radiator cannot be moved"},
        Row{"dresser", "", R"(do = "move-out", object = "dresser")", "refused: Dresser is out already"},
        Row{"dresser", "", R"(do = "cover-object", object = "dresser", sheeting = "poly")", "refused: Dresser is not in the room"},
        Row{"radiator", "", R"(do = "cover-object", object = "radiator", sheeting = "poly")", "refused: Old radiator is covered already"},
        Row{"", "", R"(do = "cover-object", object = "radiator", sheeting = "wipes")", "refused: Wet disposable cloths cannot be used to cover things"},
        // Air handling and openings
        Row{"hvac-off", "", R"(do = "switch-hvac-off")", "refused: the air handling is off already"},
        Row{"", "", R"(do = "switch-hvac-on")", "refused: the air handling is running already"},
        Row{"window", "", R"(do = "close-window", opening = "window-1")", "refused: South window is closed already"},
        Row{"", "", R"(do = "close-window", opening = "door")", "refused: Bedroom door is not a window"},
        Row{"", "", R"(do = "open-window", opening = "window-1")", "refused: South window is open already"},
        Row{"", "", R"(do = "fit-window", opening = "door")", "refused: Bedroom door is not a window"},
        Row{"close-return", "", R"(do = "close-register", opening = "return")", "refused: Return register is closed already"},
        Row{"cover-return", "", R"(do = "close-register", opening = "return")", "refused: a covered register cannot be closed; its louvers are under the sheeting"},
        Row{"cover-return", "", R"(do = "cover-register", opening = "return", sheeting = "poly")", "refused: Return register is covered already"},
        Row{"", "", R"(do = "cover-register", opening = "door", sheeting = "poly")", "refused: Bedroom door is not a register"},
        Row{"close-closet", "", R"(do = "close-door", opening = "closet-door")", "refused: Closet door is closed already"},
        Row{"flap", "", R"(do = "close-door", opening = "door")", "refused: the flap door hangs in it"},
        Row{"", "", R"(do = "cover-door", opening = "closet-door", sheeting = "poly")", "refused: Closet door stands open; close it first"},
        Row{"close-closet cover-closet", "", R"(do = "cover-door", opening = "closet-door", sheeting = "poly")", "refused: Closet door is covered already"},
        Row{"close-closet cover-closet", "", R"(do = "hang-flap", opening = "closet-door", sheeting = "poly")", "refused: Closet door is covered; a flap needs the doorway"},
        Row{"flap", "", R"(do = "hang-flap", opening = "door", sheeting = "poly")", "refused: a flap door hangs there already"},
        Row{"", "", R"(do = "hang-flap", opening = "window-1", sheeting = "poly")", "refused: South window is not a door"},
        Row{"", "", R"(do = "take-down-flap", opening = "door")", "refused: no flap door hangs there"},
        Row{"", "", R"(do = "tape-seam", opening = "door", tape = "tape")", "refused: Bedroom door stands open; there is no seam to tape"},
        Row{"window", "", R"(do = "tape-seam", opening = "window-1", tape = "poly")", "refused: Plastic sheeting, 6 mil cannot be used to tape a seam"},
        Row{"window mop", "", R"(do = "tape-seam", opening = "window-1", tape = "tape")", "refused: tape does not hold on a wet surface"},
        Row{"", "", R"(do = "take-down-covers")", "refused: nothing is covered"},
        Row{"cover-return", "", R"(do = "repair-containment", opening = "return")", "refused: nothing has come loose at Return register"},
        // Sheeting and the entrance
        Row{"sheet fold", "", R"(do = "lay-floor-sheet", sheeting = "poly")", "refused: the old sheeting lies folded in the room; bag it first"},
        Row{"", "", R"(do = "lay-floor-sheet", sheeting = "poly", reach = "0 ft")", "not needed: no floor lies within that reach"},
        Row{"", "", R"(do = "lay-runner", zone = "bedroom", sheeting = "poly")", "refused: a runner lies outside the work room"},
        Row{"", "", R"(do = "lay-runner", zone = "closet", sheeting = "poly", length = "1 ft")", "not needed: the runner would not reach the entrance"},
        Row{"tack-pad", "", R"(do = "lay-tack-pad", opening = "door", pad = "tack-pad")", "refused: a tack pad lies there already"},
        Row{"", "", R"(do = "lay-tack-pad", opening = "door", pad = "broom")", "refused: Broom cannot be used to step on at the entrance"},
        Row{"", "", R"(do = "vacuum-sheeting", vacuum = "hepa-vacuum")", "refused: no sheeting lies on the floor"},
        Row{"", "", R"(do = "mist-sheeting", mister = "mister")", "refused: there is no sheeting to mist"},
        Row{"", "", R"(do = "fold-sheeting")", "refused: no sheeting lies on the floor"},
        Row{"sheet", "", R"(do = "bag-sheeting", bag = "bag-9", kind = "heavy-bags")", "refused: the sheeting is not folded yet"},
        Row{"sheet fold chips", "", R"(do = "bag-sheeting", bag = "bag-1", kind = "heavy-bags")", "refused: there is a bag of that name already"},
        // Work, and where people and supplies are
        Row{"", "", R"(do = "disturb-paint", component = "casing-1", technique = "remove-window")", "refused: Casing and stops of the south window is not a window"},
        Row{"leave-break", dust_now, R"(do = "vacuum-walls", vacuum = "hepa-vacuum", by = ["rosa"])", "refused: Rosa, certified renovator is outside the work area; enter first"},
        Row{"", "", R"(do = "enter-work-area", opening = "door")", "refused: Lee, worker is in the work area already"},
        Row{"leave-break", "", R"(do = "leave-work-area", opening = "door")", "refused: Lee, worker is outside already"},
        Row{"", "", R"(do = "leave-work-area", opening = "closet-door")", "refused: Closet door is not the way out of the work area"},
        Row{"leave-break", "", R"(do = "enter-work-area", opening = "hall-arch")", "refused: Arch from the hall is not the way into the work area"},
        Row{contained, dust_now, R"(do = "sweep-floor", broom = "broom")", "refused: Broom was left outside the flap door; fetch it first"},
        Row{"stage", "", R"(do = "fetch-item", item = "poly", opening = "door")", "refused: it is inside already"},
        Row{"", "", R"(do = "fetch-item", item = "poly", opening = "closet-door")", "refused: Closet door is not the way out of the work area"},
        Row{"", "", R"(do = "clean-off")", "refused: nothing is chosen to vacuum clothes and shoes"},
        Row{"", "", R"(do = "clean-off", vacuum = "broom")", "refused: Broom cannot be used to vacuum clothes and shoes"},
        Row{"", "", R"(do = "sweep-floor", broom = "rags")", "refused: Old rags cannot be used to sweep"},
        Row{"", "", R"(do = "vacuum-carpet", vacuum = "hepa-vacuum")", "refused: there is no carpet in the work room"},
        Row{"", "", R"(do = "vacuum-surfaces", target = "floor", vacuum = "broom")", "refused: Broom cannot be used to vacuum surfaces"},
        Row{"", "", R"(do = "wipe-surfaces", target = "floor", cloth = "wipes")", "refused: a floor is mopped, not wiped with a hand cloth"},
        Row{"", "", R"(do = "wipe-walls", cloth = "broom")", "refused: Broom cannot be used to wipe walls"},
        Row{"", "", R"(do = "mop-floor", mop = "broom")", "refused: Broom cannot be used to mop"},
        Row{"sheet", "", R"(do = "mop-floor", mop = "two-buckets")", "not needed: all the floor lies under sheeting"},
        Row{"", "", R"(do = "clean-beyond", reach = "2 ft", vacuum = "broom")", "refused: a vacuum is needed to clean beyond the work area"},
        // Bags
        Row{"", "", R"(do = "close-bag", bag = "bag-1")", "refused: there is no such bag yet"},
        Row{"", "", R"(do = "vacuum-bag", bag = "bag-1", vacuum = "hepa-vacuum")", "refused: there is no such bag yet"},
        Row{"", "", R"(do = "carry-out", bag = "bag-1", opening = "door")", "refused: there is no such bag yet"},
        Row{"chips", "", R"(do = "carry-out", bag = "bag-1", opening = "window-1")", "refused: South window is not the way out of the work area"},
        Row{"chips close-bag-1", "", R"(do = "close-bag", bag = "bag-1")", "refused: it is closed already"},
        Row{"chips close-bag-1", "", R"(do = "bag-debris", bag = "bag-1", kind = "heavy-bags")", "refused: that bag is closed already"},
        Row{"chips out-1", "", R"(do = "bag-debris", bag = "bag-1", kind = "heavy-bags")", "refused: that bag is out already"},
        Row{"chips out-1", "", R"(do = "close-bag", bag = "bag-1")", "refused: it is out already"},
        Row{"chips out-1", "", R"(do = "vacuum-bag", bag = "bag-1", vacuum = "hepa-vacuum")", "refused: it is out already"},
        Row{"chips out-1", "", R"(do = "carry-out", bag = "bag-1", opening = "door")", "refused: it is out already"},
        Row{"", "", R"(do = "bag-debris", bag = "bag-1", kind = "broom")", "refused: Broom cannot be used to hold debris"},
        Row{"", "", R"(do = "wrap-debris", component = "sash-1", sheeting = "poly", bag = "b")", "refused: nothing has been taken off that component yet"},
        Row{"chips", dust_now, R"(do = "wrap-debris", component = "casing-1", sheeting = "poly", bag = "bag-1")", "refused: there is a bag or bundle of that name already"},
        Row{"", dust_now, R"(do = "wrap-debris", component = "casing-1", sheeting = "drop-cloth", bag = "b")", "refused: Canvas drop cloth cannot be used to wrap debris"},
        Row{"", "", R"(do = "store-waste")", "refused: no waste has been carried out yet"},
        // Checking
        Row{"sheet", "", R"(do = "inspect")", "refused: the sheeting still lies on the floor; there is nothing to inspect under it"},
        Row{"inspect", "", R"(do = "inspect", by = ["rosa"])", "not needed: the last inspection found nothing"},
        Row{"", "", R"(do = "wipe-sill", sill = "sill-1", cloth = "broom", by = ["rosa"])", "refused: Broom cannot be used for a verification wipe"},
        Row{"inspect sill-1", "", R"(do = "wipe-sill", sill = "sill-1", cloth = "wipes", by = ["rosa"])", "not needed: nothing is due to be wiped there"},
        Row{"inspect", "", R"(do = "dry-wipe", cloth = "dry-cloths", by = ["rosa"])", "not needed: no surface has failed twice"},
        Row{"", "", R"(do = "dry-wipe", cloth = "broom", by = ["rosa"])", "refused: Broom cannot be used for a dry wipe"},
        Row{"", "", R"(do = "re-clean")", "refused: nothing is chosen to clean with"},
        Row{"inspect", "", R"(do = "re-clean", vacuum = "hepa-vacuum")", "not needed: nothing failed and no dust was seen"},
        Row{"inspect", "", R"(do = "wait", time = "5 min", only-if-due = true)", "not needed: no surface has failed twice"},
    };
    for (const Row& row : rows) {
        INFO("after " << row.after << "; " << row.then << "; card: " << row.card);
        Trial trial;
        trial.after(row.after);
        if (!row.then.empty()) trial.then(row.then);
        const Time before = trial.site.now;
        const std::uint64_t print = fingerprint(trial.site);
        const std::string outcome = trial.play(row.card).outcome;
        CHECK(outcome == row.outcome);
        if (outcome.rfind("refused", 0) != 0) continue;
        CHECK(trial.site.now == before);                    // a refusal costs no time
        CHECK(fingerprint(trial.site) == print);            // and changes nothing
    }
}

TEST_CASE("a counter is wiped by its own id, not by one that begins alike")
{
    const std::string counters = R"(
[[counter]]
id = "shelf"
title = "Shelf"
zone = "bedroom"
west = "9 ft"
south = "2 ft"
width = "1 ft"
depth = "3 ft"

[[counter]]
id = "shelf-2"
title = "Second shelf"
zone = "bedroom"
west = "9 ft"
south = "5 ft"
width = "1 ft"
depth = "3 ft"
)";
    Trial trial{job::shipped_scenario(counters)};
    trial.after("inspect");
    const auto state = [&](const std::string& name) {
        for (const Item& item : trial.site.verification.items)
            if (item.name == name) return item.state;
        FAIL("no such item");
        return ItemState::passed;
    };
    CHECK(trial.play(R"(do = "wipe-counter", counter = "shelf", cloth = "wipes", by = ["rosa"])").outcome == "done");
    CHECK(state("shelf") == ItemState::passed);
    CHECK(state("shelf-2") == ItemState::first_wipe_due);
    CHECK(trial.play(R"(do = "wipe-counter", counter = "shelf-2", section = 2, cloth = "wipes", by = ["rosa"])").outcome == "not needed: nothing is due to be wiped there");
    CHECK(trial.play(R"(do = "wipe-counter", counter = "shelf-2", section = 1, cloth = "wipes", by = ["rosa"])").outcome == "done");
    CHECK(state("shelf-2") == ItemState::passed);
}

TEST_CASE("a covered doorway lets nobody out")
{
    Trial trial;
    trial.then(R"(do = "close-door", opening = "door")").then(R"(do = "cover-door", opening = "door", sheeting = "poly")");
    CHECK(trial.play(R"(do = "leave-work-area", opening = "door")").outcome == "refused: Bedroom door is covered; nobody gets through");
    CHECK(trial.play(R"(do = "check-containment", by = ["rosa"])").measure("way-out-free") == 0.0);
    trial.then(R"(do = "take-down-covers")");
    CHECK(trial.play(R"(do = "leave-work-area", opening = "door")").outcome == "done");
}

}
