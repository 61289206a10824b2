#include "window/quiz/practice_plan.hpp"

#include "text/language.hpp"
#include "window/widgets/button.hpp"
#include "window/widgets/chips.hpp"
#include "window/widgets/field.hpp"
#include "window/widgets/words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace flapdoor::window {

namespace {

using text::say;
using text::say_number;
using text::say_with;

std::string questions_words(std::size_t count) { return say_number("{} question", "{} questions", static_cast<unsigned long>(count)); }

Standing sign_of(quiz::Standing standing) { return standing == quiz::Standing::mastered || standing == quiz::Standing::on_track ? Standing::good : Standing::plain; }

/// "today (2026-11-29)", "in 3 days (2026-12-02)": always with its date.
std::string dated(quiz::Day day, quiz::Day today)
{
    const std::string words = quiz::day_words(day, today);
    return day - today > 1 ? words : say_with("{} ({})", words, quiz::text_of(day));
}

/// Empty when it does not come again.
std::string due_text(const quiz::Practice& practice, const quiz::Box& box, quiz::Day today)
{
    const std::string due = quiz::due_words(practice, box, today);
    if (due == "-") return {};
    return due == say("ready") ? std::string(say("not again before the field day")) : say_with("due {}", due);
}

quiz::Day last_day_of(const quiz::Practice& practice) { return practice.attempts.empty() ? practice.begun : practice.attempts.back().day; }

}

PracticePlan::PracticePlan(const Places& places)
    : places_(places), today_(today_of(places)), learners_(read_learners(places)),
      reading_(std::make_unique<Beside<Result<quiz::PracticePool>>>(
          [folder = places.scenarios.string()](const std::atomic<bool>&) { return quiz::load_pool(quiz::scenarios_in(folder)); }))
{
}

void PracticePlan::take_what_is_there()
{
    if (reading_)
        if (auto pool = reading_->take()) {
            reading_.reset();
            if (*pool) pool_ = std::make_shared<const quiz::PracticePool>(std::move(**pool));
            else bank_problems_ = pool->error();
            count();
        }
    if (counting_)
        if (auto ahead = counting_->take()) {
            counting_.reset();
            ahead_ = std::move(*ahead);
        }
}

void PracticePlan::take_learner(const std::string& who)
{
    if (taken_ == who) return;
    taken_ = who;
    problems_.clear();
    practice_ = {};
    practice_.begun = today_;
    const auto known = std::find_if(learners_.begin(), learners_.end(), [&](const Learner& learner) { return learner.name == who; });
    if (known != learners_.end()) {
        if (known->practice) practice_ = *known->practice;
        else problems_ = known->practice.error();
    }
    field_day_ = practice_.field_day ? quiz::text_of(*practice_.field_day) : std::string();
    count();
}

void PracticePlan::count()
{
    ahead_.reset();
    counting_.reset();
    if (!pool_ || !taken_ || !problems_.empty() || last_day_of(practice_) > today_) return;
    counting_ = std::make_unique<Beside<Ahead>>([practice = practice_, pool = pool_, today = today_](const std::atomic<bool>&) {
        return Ahead{quiz::outlooks(practice, pool->topics, today), quiz::sessions_ahead(practice, pool->topics, today)};
    });
}

std::string PracticePlan::problem_with_field_day() const
{
    if (field_day_.empty()) return {};
    const auto day = quiz::parse_day(field_day_);
    if (!day) return std::string(say("a date such as 2026-12-06"));
    return *day < practice_.begun ? say_with("a day not before the first of the practice, {}", quiz::text_of(practice_.begun)) : std::string();
}

void PracticePlan::who_and_when(Ui& ui, std::string& who)
{
    if (!learners_.empty()) {
        std::vector<Option> options;
        std::optional<std::size_t> chosen;
        for (std::size_t i = 0; i < learners_.size(); ++i) {
            options.push_back({.name = learners_[i].name, .label = learners_[i].name});
            if (learners_[i].name == who) chosen = i;
        }
        if (choose_chip(ui, "learner", options, chosen) && chosen) who = learners_[*chosen].name;
        ui.gap(4.0F);
    }
    text_field(ui, "who", say("A name or number of your own choosing. Kept with the answers and nowhere else."), who,
               {.empty_text = say("nobody"), .problem = who.empty() || is_learner_name(who) ? std::string_view() : say("letters, digits, spaces, - and _, at most 40")});
    if (!is_learner_name(who)) return;
    take_learner(who);
    if (!problems_.empty()) return;
    how_many(ui);
    const std::string problem = problem_with_field_day();
    if (!text_field(ui, "field-day", say("The field day, the day to be ready for. May stay empty."), field_day_, {.empty_text = say("a date such as 2026-12-06"), .problem = problem, .width = 260.0F})) return;
    const std::optional<quiz::Day> day = quiz::parse_day(field_day_);
    if (!problem_with_field_day().empty() || practice_.field_day == day) return;
    practice_.field_day = day;
    count();
}

/// How long a session is.
void PracticePlan::how_many(Ui& ui)
{
    std::vector<int> counts{1, 2, 3};
    if (std::find(counts.begin(), counts.end(), practice_.each) == counts.end()) counts.push_back(practice_.each); // as the command was told
    std::vector<Option> options;
    for (const int count : counts) options.push_back({.name = std::to_string(count), .label = std::to_string(count)});
    std::optional<std::size_t> chosen = static_cast<std::size_t>(std::find(counts.begin(), counts.end(), practice_.each) - counts.begin());
    aside(ui, say("Questions of each topic that is due"));
    if (!choose_chip(ui, "each", options, chosen) || !chosen || counts[*chosen] == practice_.each) return;
    practice_.each = counts[*chosen];
    count();
}

bool PracticePlan::due_today(Ui& ui)
{
    if (practice_.field_day) {
        const int days = *practice_.field_day - today_;
        if (days > 0) words(ui, say_number("{0} day to the field day ({1}).", "{0} days to the field day ({1}).", static_cast<unsigned long>(days), quiz::text_of(*practice_.field_day)));
        else words(ui, days == 0 ? say("The field day is today.") : say("The field day is over."));
    }
    const bool is_due = !ahead_->sessions.empty() && ahead_->sessions.front().day == today_;
    if (!is_due) {
        words(ui, say("Nothing is due today."));
        return false;
    }
    const quiz::SessionDay& session = ahead_->sessions.front();
    words(ui, say_with("Today: {0}, {1}.", questions_words(session.questions), say_number("{} topic", "{} topics", static_cast<unsigned long>(session.topics.size()))));
    return button(ui, "practise", say("Practise what is due"), {.emphasis = Emphasis::primary, .icon = Icon::forward, .width = -1.0F});
}

void PracticePlan::days_ahead(Ui& ui)
{
    if (ahead_->sessions.empty()) return;
    strong(ui, say("The days ahead"));
    aside(ui, say("If every answer is right; what is missed comes again in the same session and the next day."));
    const Theme& t = ui.theme();
    std::size_t most = 1;
    float left = 0.0F, right = 0.0F;
    for (const quiz::SessionDay& session : ahead_->sessions) {
        most = std::max(most, session.questions);
        left = std::max(left, ui.canvas().measure(dated(session.day, today_), TextStyle::small).x);
        right = std::max(right, ui.canvas().measure(questions_words(session.questions), TextStyle::small).x);
    }
    const bool has_bar = ui.width_left() > left + right + ui.px(80.0F);
    for (const quiz::SessionDay& session : ahead_->sessions) {
        Canvas canvas = ui.canvas();
        const std::string day = dated(session.day, today_);
        const std::string count = questions_words(session.questions);
        const bool fits = has_bar || ui.width_left() >= left + right + ui.px(12.0F);
        const Box row = ui.place({ui.width_left(), ui.px(fits ? 22.0F : 42.0F)});
        ui.note({"ahead/" + quiz::text_of(session.day), Role::row, day, count, row});
        if (!fits) {
            canvas.text_wrapped(row.low, row.width(), day, TextStyle::small, t.ink);
            canvas.text_wrapped(row.low + Point{ui.px(12.0F), ui.px(20.0F)}, row.width(), count, TextStyle::small, t.muted);
            continue;
        }
        canvas.text_in({row.low, {row.low.x + left + 1.0F, row.high.y}}, day, TextStyle::small, t.ink);
        canvas.text_in({{row.high.x - right - 1.0F, row.low.y}, row.high}, count, TextStyle::small, t.ink, Align::right);
        if (!has_bar) continue;
        const Box rail{{row.low.x + left + ui.px(14.0F), row.center().y - ui.px(4.0F)}, {row.high.x - right - ui.px(14.0F), row.center().y + ui.px(4.0F)}};
        const float share = static_cast<float>(session.questions) / static_cast<float>(most);
        canvas.fill_box({rail.low, {rail.low.x + std::max(rail.width() * share, ui.px(4.0F)), rail.high.y}}, session.day == today_ ? t.accent : t.line, ui.px(3.0F));
    }
}

void PracticePlan::topic_row(Ui& ui, const quiz::TopicOutlook& one)
{
    const Theme& t = ui.theme();
    Canvas canvas = ui.canvas();
    const std::string_view title = say(quiz::title_of(one.topic()));
    const std::string_view standing = one.is_weak() ? say("weak") : say(quiz::word_of_standing(one.mastery.standing));
    const Standing sign = one.is_weak() ? Standing::caution : sign_of(one.mastery.standing);
    std::string more = one.mastery.of > 0 ? quiz::right_words(one.mastery) : std::string();
    if (const std::string due = due_text(practice_, one.box, today_); !due.empty()) more += (more.empty() ? "" : "  \xC2\xB7  ") + due;
    const float chip = canvas.measure(standing, TextStyle::small).x + ui.px(sign == Standing::plain ? 16.0F : 34.0F);
    const bool is_wide = ui.width_left() > chip + ui.px(150.0F);
    const float width = ui.width_left() - (is_wide ? chip + ui.px(12.0F) : 0.0F);
    const float title_height = canvas.measure_wrapped(width, title, TextStyle::body).y;
    const float more_height = canvas.measure_wrapped(width, more, TextStyle::small).y;
    const Box row = ui.place({ui.width_left(), title_height + more_height + ui.px(is_wide ? 8.0F : 38.0F)});
    ui.note({"topic/" + std::string(word_of(one.topic())), Role::row, std::string(title), std::string(standing), row});
    canvas.text_wrapped(row.low, width, title, TextStyle::body, t.ink);
    canvas.text_wrapped(row.low + Point{0.0F, title_height}, width, more, TextStyle::small, t.muted);
    const Point at = is_wide ? Point{row.high.x - chip, row.low.y + ui.px(4.0F)} : Point{row.low.x, row.low.y + title_height + more_height + ui.px(4.0F)};
    draw_mark(canvas, ui, at, sign, standing);
    canvas.fill_box({{row.low.x, row.high.y - 1.0F}, row.high}, t.hairline);
}

void PracticePlan::standings(Ui& ui)
{
    strong(ui, say("What to practise next"));
    for (const quiz::TopicOutlook& one : ahead_->topics) topic_row(ui, one);
    for (const std::string& line : quiz::standing_legend()) aside(ui, line);
}

bool PracticePlan::play(Ui& ui, std::string& who)
{
    take_what_is_there();
    strong(ui, say("Practise toward a field day"));
    who_and_when(ui, who);
    if (!is_learner_name(who)) {
        words(ui, say("With a name, the plan stands here: what is due today, what is weak, and on which days it comes again."));
        return false;
    }
    for (const auto& [what, problems] : {std::pair(say("The questions do not read:"), &bank_problems_), std::pair(say("What is kept does not read. The file stays where it is:"), &problems_)}) {
        if (problems->empty()) continue;
        words(ui, what);
        for (const Problem& problem : *problems) words(ui, describe(problem));
        return false;
    }
    if (const quiz::Day last = last_day_of(practice_); last > today_) {
        words(ui, say_with("There are answers of {}, and today is {}: look at the computer's date.", quiz::text_of(last), quiz::text_of(today_)));
        return false;
    }
    if (!ahead_) {
        words(ui, say("The plan is being worked out ..."));
        return false;
    }
    if (!problem_with_field_day().empty()) return false; // the field says so
    ui.gap(4.0F);
    const bool begins = due_today(ui);
    ui.gap(6.0F);
    rule(ui);
    days_ahead(ui);
    rule(ui);
    standings(ui);
    return begins;
}

}
