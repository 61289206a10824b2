#include "window/room/deck.hpp"

#include "debrief/wording.hpp"
#include "text/language.hpp"
#include "window/stage/icon.hpp"
#include "window/widgets/field.hpp"
#include "window/widgets/words.hpp"

#include <algorithm>
#include <cctype>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_with;

std::string lower(std::string_view text)
{
    std::string out(text);
    for (char& c : out) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return out;
}

/// Every word of the filter stands somewhere in what the card says.
bool fits(const StepKind& kind, const std::string& filter)
{
    const std::string words = lower(std::string(say(kind.title)) + ' ' + std::string(say(kind.needs)) + ' ' + std::string(say(debrief::title_of(kind.phase))) + ' ' + std::string(kind.title));
    std::size_t at = 0;
    while (at < filter.size()) {
        const std::size_t end = std::min(filter.find(' ', at), filter.size());
        if (words.find(lower(std::string_view(filter).substr(at, end - at))) == std::string::npos) return false;
        at = end + 1;
    }
    return true;
}

std::string_view hands_words(job::Hands hands)
{
    switch (hands) {
        case job::Hands::anyone: return say("anyone");
        case job::Hands::trained: return say("certified renovator or trained worker");
        case job::Hands::certified: return say("certified renovator only");
    }
    return {};
}

std::string note_of(const StepKind& kind)
{
    std::string note(hands_words(kind.hands));
    if (!kind.needs.empty()) note += "  \xC2\xB7  " + say_with("needs {}", say(kind.needs));
    return note;
}

void phase_line(Ui& ui, job::Phase phase)
{
    Canvas canvas = ui.canvas();
    const Box box = ui.place({ui.width_left(), ui.px(26.0F)});
    const std::string_view title = say(debrief::title_of(phase));
    canvas.text_in({{box.low.x, box.low.y + ui.px(4.0F)}, box.high}, title, TextStyle::small, ui.theme().accent);
    const float x = box.low.x + canvas.measure(title, TextStyle::small).x + ui.px(10.0F);
    canvas.line({x, box.low.y + ui.px(15.0F)}, {box.high.x, box.low.y + ui.px(15.0F)}, ui.theme().accent, ui.px(1.0F));
}

/// A card: title, who and with what; when it cannot be done now, why.
Touch deck_card(Ui& ui, const DeckCard& card)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const float width = ui.width_left();
    const float text_width = width - ui.px(24.0F);
    const std::string_view title = say(card.kind->title);
    const std::string note = note_of(*card.kind);
    const std::string why = card.why_none ? card.why_none->said() : std::string();
    const float title_height = canvas.measure_wrapped(text_width, title, TextStyle::strong).y;
    const float note_height = canvas.measure_wrapped(text_width, note, TextStyle::small).y;
    const float why_height = why.empty() ? 0.0F : canvas.measure_wrapped(text_width - ui.px(20.0F), why, TextStyle::small).y;
    const Touch touch = ui.touch({.name = "deck/" + std::string(card.kind->name),
                                  .role = Role::card,
                                  .label = title,
                                  .value = why.empty() ? note : why,
                                  .size = {width, title_height + note_height + why_height + ui.px(14.0F)},
                                  .is_enabled = true,
                                  .ring_rounding = 4.0F});
    if (!ui.is_in_view(touch.box)) return touch;
    const bool is_open = !card.why_none;
    canvas.fill_box(touch.box, touch.is_hovered ? t.field : t.sheet, ui.px(4.0F));
    canvas.frame_box(touch.box, is_open ? t.line : t.hairline, 1.0F, ui.px(4.0F));
    if (is_open) canvas.fill_box({touch.box.low, {touch.box.low.x + ui.px(4.0F), touch.box.high.y}}, t.accent, ui.px(2.0F));
    Point at{touch.box.low.x + ui.px(14.0F), touch.box.low.y + ui.px(6.0F)};
    at.y += canvas.text_wrapped(at, text_width, title, TextStyle::strong, is_open ? t.ink : t.muted);
    at.y += canvas.text_wrapped(at, text_width, note, TextStyle::small, t.muted);
    if (!why.empty()) {
        draw_icon(canvas, Icon::info, at + Point{ui.px(6.0F), ui.px(9.0F)}, ui.px(13.0F), t.caution, t.sheet);
        canvas.text_wrapped(at + Point{ui.px(20.0F), 0.0F}, text_width - ui.px(20.0F), why, TextStyle::small, t.caution);
    }
    return touch;
}

}

std::vector<DeckCard> deck_of(const site::Site& site, const std::vector<job::PersonId>& by)
{
    std::vector<DeckCard> cards;
    for (const StepKind& kind : step_kinds()) cards.push_back({&kind, why_none(site, kind, by)});
    std::stable_sort(cards.begin(), cards.end(), [](const DeckCard& a, const DeckCard& b) { return a.kind->phase < b.kind->phase; });
    return cards;
}

const StepKind* deck(Ui& ui, const std::vector<DeckCard>& cards, std::string& filter)
{
    text_field(ui, "filter", "", filter, {.empty_text = say("Type to find a card")});
    const StepKind* picked = nullptr;
    const job::Phase* phase = nullptr;
    std::vector<const DeckCard*> shown;
    for (const DeckCard& card : cards)
        if (fits(*card.kind, filter)) shown.push_back(&card);
    for (std::size_t i = 0; i < shown.size(); ++i) {
        if (phase == nullptr || *phase != shown[i]->kind->phase) phase_line(ui, shown[i]->kind->phase);
        phase = &shown[i]->kind->phase;
        const Touch touch = deck_card(ui, *shown[i]);
        if (touch.is_clicked) picked = shown[i]->kind;
        if (touch.has_focus && i + 1 < shown.size() && ui.take_key(Key::down)) ui.focus_on("deck/" + std::string(shown[i + 1]->kind->name));
        if (touch.has_focus && ui.take_key(Key::up)) ui.focus_on(i == 0 ? "filter" : "deck/" + std::string(shown[i - 1]->kind->name));
    }
    if (cards.empty()) aside(ui, say("The cards are being dealt ..."));
    else if (shown.empty()) aside(ui, say("No card has these words."));
    return picked;
}

}
