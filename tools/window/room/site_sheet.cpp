#include "window/room/site_sheet.hpp"

#include "text/language.hpp"
#include "text/show.hpp"
#include "window/run/story.hpp"
#include "window/widgets/panel.hpp"
#include "window/widgets/words.hpp"

#include <algorithm>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;

/// A name at the left, how it stands at the right; the latter below when there is no room.
void line_of(Ui& ui, std::string_view name, std::string_view stands)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const float width = ui.width_left();
    const float gap = ui.px(12.0F);
    const float right = canvas.measure(stands, TextStyle::small).x;
    const bool is_beside = canvas.measure(name, TextStyle::body).x + gap + right <= width;
    const float name_height = canvas.measure_wrapped(width, name, TextStyle::body).y;
    const float stands_height = canvas.measure_wrapped(width, stands, TextStyle::small).y;
    const Box box = ui.place({width, is_beside ? name_height : name_height + stands_height});
    if (!ui.is_in_view(box)) return;
    canvas.text_wrapped(box.low, width, name, TextStyle::body, t.ink);
    if (is_beside)
        canvas.text_in({{box.high.x - right, box.low.y}, box.high}, stands, TextStyle::small, t.muted, Align::right);
    else
        canvas.text_wrapped(box.low + Point{0.0F, name_height}, width, stands, TextStyle::small, t.muted);
}

std::string where_is(const site::Site& site, const site::Worker& worker)
{
    std::string where(worker.is_inside ? say("in the work area") : say(site.zones[worker.zone].plan.title));
    if (!worker.is_on_site) where = say("off the site");
    if (worker.has_coverall) where += say(", in protective gear");
    return where;
}

std::string_view where_is(const site::Site& site, const job::Supply& supply)
{
    const bool is_inside = std::find(site.staged.begin(), site.staged.end(), supply.id) != site.staged.end();
    return is_inside ? say("in the work area") : say("outside");
}

}

void site_sheet(Ui& ui, const Box& box, const site::Site& site)
{
    panel(ui, "site", box, {.padding = 16.0F}, [&] {
        strong(ui, say_with("Site clock {}", text::show_clock(site.now)));
        aside(ui, site.is_hvac_running ? say("The air handling runs.") : say("The air handling is off."));
        rule(ui);
        strong(ui, say("Crew"));
        for (const site::Worker& worker : site.crew) line_of(ui, short_name(std::string(say(worker.title))), where_is(site, worker));
        if (!site.bags.empty()) {
            rule(ui);
            strong(ui, say("Bags"));
            for (const site::Bag& bag : site.bags) line_of(ui, bag.id.name, say_with("{} full", text::show_percent(bag.fill)));
        }
        rule(ui);
        strong(ui, say("Taken along"));
        for (const job::Supply& supply : site.scenario.supplies) line_of(ui, say(supply.title), where_is(site, supply));
    });
}

}
