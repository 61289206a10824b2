#pragma once

#include "window/quiz/learners.hpp"
#include "window/shell/beside.hpp"
#include "window/stage/ui.hpp"

#include "quiz/practice/outlook.hpp"
#include "quiz/practice/pool.hpp"
#include "quiz/practice/session.hpp"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace flapdoor::window {

/// Who practises and toward which day; what is due today, which days come after it, and where the person stands, what is weak first.
class PracticePlan {
public:
    /// Reads banks and learners; the banks beside the window.
    explicit PracticePlan(const Places& places);

    /// In the panel under way. @param who  is chosen or written here
    /// @return true when what is due is to be practised now; then `practice` and `pool` are there
    bool play(Ui& ui, std::string& who);

    const quiz::Practice& practice() const { return practice_; }
    const std::shared_ptr<const quiz::PracticePool>& pool() const { return pool_; } ///< null until it is read
    bool is_moving() const { return reading_ != nullptr || counting_ != nullptr; }

private:
    /// What the days ahead ask.
    struct Ahead {
        std::vector<quiz::TopicOutlook> topics;
        std::vector<quiz::SessionDay> sessions;
    };

    void take_what_is_there();
    void take_learner(const std::string& who);
    void count();
    void who_and_when(Ui& ui, std::string& who);
    void how_many(Ui& ui);
    bool due_today(Ui& ui);
    void days_ahead(Ui& ui);
    void standings(Ui& ui);
    void topic_row(Ui& ui, const quiz::TopicOutlook& one);
    std::string problem_with_field_day() const;

    const Places& places_;
    quiz::Day today_;
    std::vector<Learner> learners_;
    std::unique_ptr<Beside<Result<quiz::PracticePool>>> reading_;
    std::shared_ptr<const quiz::PracticePool> pool_;
    std::unique_ptr<Beside<Ahead>> counting_;
    std::optional<Ahead> ahead_;            ///< of `practice_`
    std::optional<std::string> taken_;      ///< whose `practice_` is
    quiz::Practice practice_;
    std::string field_day_;                 ///< as written
    Problems bank_problems_;
    Problems problems_;                     ///< of the learner's file
};

}
