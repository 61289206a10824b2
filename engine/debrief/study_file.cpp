#include "debrief/study_file.hpp"

#include "core/hash.hpp"
#include "debrief/csv_line.hpp"
#include "debrief/wording.hpp"
#include "text/atomic_file.hpp"
#include "text/input_file.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <map>
#include <utility>

namespace flapdoor::debrief {

namespace {

constexpr std::size_t most_problems = 20;
constexpr std::size_t fixed_columns = 3;    // seed, plan, site

using Cells = std::vector<CsvCell>;

std::string number_text(const std::optional<double>& value) { return value ? fmt::format("{}", *value) : std::string(); }

std::vector<std::string> input_cells(std::string what, const StudyInput& input) { return {"# " + std::move(what), input.name, to_hex(input.hash), input.title}; }

template <class Number>
std::optional<Number> whole_text(std::string_view text, int base = 10)
{
    Number value{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value, base);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return value;
}

std::optional<double> number_from(std::string_view text)
{
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value)) return std::nullopt;
    return value;
}

std::optional<std::uint64_t> hash_from(std::string_view text) { return text.size() == 16 ? whole_text<std::uint64_t>(text, 16) : std::nullopt; }

/// "3 7"; nothing unless all are whole and at least 1.
std::optional<std::vector<int>> fault_numbers(std::string_view text)
{
    std::vector<int> numbers;
    while (true) {
        const std::size_t space = text.find(' ');
        const auto number = whole_text<int>(text.substr(0, space));
        if (!number || *number < 1) return std::nullopt;
        numbers.push_back(*number);
        if (space == std::string_view::npos) return numbers;
        text.remove_prefix(space + 1);
    }
}

/// Reads a study line by line and gathers what is wrong with it.
class Reader {
public:
    Reader(std::string_view text, const std::string& file) : rest_(text), file_(file) {}

    Result<Study> read()
    {
        if (read_basis())
            while (has_line() && problems_.size() < most_problems) read_row();
        if (problems_.size() > most_problems) problems_.resize(most_problems);
        if (!problems_.empty()) return failed(std::move(problems_));
        std::sort(study_.rows.begin(), study_.rows.end(), [](const StudyRow& a, const StudyRow& b) { return std::pair(a.seed, a.plan) < std::pair(b.seed, b.plan); });
        return std::move(study_);
    }

private:
    bool has_line() const { return !rest_.empty(); }

    /// The next line as cells; nothing, and a problem, when there is none or it does not read.
    std::optional<Cells> next()
    {
        ++line_;
        if (rest_.empty()) return complain(1, "another line", "the end of the file"), std::nullopt;
        const std::size_t end = rest_.find('\n');
        std::string_view line = rest_.substr(0, end);
        if (end == std::string_view::npos) return complain(static_cast<int>(line.size()) + 1, "the end of the line", "the end of the file: the line is cut off"), rest_ = {}, std::nullopt;
        rest_.remove_prefix(end + 1);
        if (line.ends_with('\r')) line.remove_suffix(1);
        Result<Cells> cells = csv_cells(line, file_, line_);
        if (cells) return std::move(*cells);
        problems_.insert(problems_.end(), cells.error().begin(), cells.error().end());
        return std::nullopt;
    }

    void complain(int column, std::string expected, std::string found) { problems_.push_back({{file_, line_, column}, std::move(expected), std::move(found)}); }

    /// A cell that is not there stands at the end of its line.
    CsvCell cell_at(const Cells& cells, std::size_t i) const
    {
        if (i < cells.size()) return cells[i];
        return {{}, cells.back().column + static_cast<int>(cells.back().text.size())};
    }

    std::string shown(const CsvCell& cell) const { return fmt::format("`{}`", cell.text.substr(0, 40)); }

    std::optional<Cells> next_of(std::string_view what, std::size_t width)
    {
        std::optional<Cells> cells = next();
        if (!cells) return std::nullopt;
        const std::string expected = fmt::format("# {}", what);
        if (cells->front().text != expected) return complain(1, fmt::format("`{}`", expected), shown(cells->front())), std::nullopt;
        if (cells->size() < width) return complain(cell_at(*cells, width).column, fmt::format("{} cells", width), fmt::format("{}", cells->size())), std::nullopt;
        return cells;
    }

    std::optional<StudyInput> input_from(const Cells& cells)
    {
        const auto hash = hash_from(cells[2].text);
        if (!hash) return complain(cells[2].column, "a hash of sixteen hexadecimal digits", shown(cells[2])), std::nullopt;
        return StudyInput{cells[1].text, *hash, cells[3].text};
    }

    bool read_input(std::string_view what, StudyInput& input)
    {
        const std::optional<Cells> cells = next_of(what, 4);
        if (!cells) return false;
        const std::optional<StudyInput> read = input_from(*cells);
        if (read) input = *read;
        return read.has_value();
    }

    /// What the study was made from. False when the rows cannot be understood.
    bool read_basis()
    {
        const std::optional<Cells> mark = next_of("flapdoor study", 2);
        if (!mark) return false;
        if ((*mark)[1].text != fmt::format("{}", study_format)) return complain((*mark)[1].column, fmt::format("format {}", study_format), shown((*mark)[1])), false;
        const std::optional<Cells> program = next_of("program", 2);
        if (!program) return false;
        study_.basis.program = (*program)[1].text;
        const std::optional<Cells> detail = next_of("detail", 2);
        if (!detail) return false;
        const std::optional<double> share = number_from((*detail)[1].text);
        if (!share || !(*share > 0.0) || *share > 1.0) return complain((*detail)[1].column, "a share above 0, at most 1", shown((*detail)[1])), false;
        study_.basis.detail = *share;
        if (!read_input("scenario", study_.basis.scenario) || !read_input("rule book", study_.basis.book)) return false;
        while (rest_.starts_with("# plan")) {
            study_.basis.plans.emplace_back();
            if (!read_input("plan", study_.basis.plans.back()) || !number_plan()) return false;
        }
        if (study_.basis.plans.empty()) return ++line_, complain(1, "`# plan`", "none"), false;
        while (rest_.starts_with("# repaired plan"))
            if (!read_repaired_plan()) return false;
        return read_heads();
    }

    bool number_plan()
    {
        const std::string& name = study_.basis.plans.back().name;
        if (plan_numbers_.emplace(name, study_.basis.plans.size() - 1).second) return true;
        return complain(1, "plans with names of their own", fmt::format("`{}` again", name)), false;
    }

    /// A plan as above, then the one it comes from and the faults that it is without, "3 7".
    bool read_repaired_plan()
    {
        const std::optional<Cells> cells = next_of("repaired plan", 6);
        if (!cells) return false;
        const std::optional<StudyInput> input = input_from(*cells);
        if (!input) return false;
        const CsvCell &from = (*cells)[4], &faults = (*cells)[5];
        const auto known = plan_numbers_.find(from.text);
        if (known == plan_numbers_.end() || study_.basis.plans[known->second].is_repaired()) return complain(from.column, "a plan named above", shown(from)), false;
        std::optional<std::vector<int>> numbers = fault_numbers(faults.text);
        if (!numbers) return complain(faults.column, "numbers of faults, such as `3 7`", shown(faults)), false;
        study_.basis.plans.push_back({*input, from.text, std::move(*numbers)});
        return number_plan();
    }

    bool read_heads()
    {
        const std::optional<Cells> heads = next();
        if (!heads) return false;
        constexpr std::array<std::string_view, fixed_columns> fixed{"seed", "plan", "site"};
        for (std::size_t i = 0; i < fixed.size(); ++i)
            if (cell_at(*heads, i).text != fixed[i]) complain(cell_at(*heads, i).column, fmt::format("`{}`", fixed[i]), shown(cell_at(*heads, i)));
        for (std::size_t i = fixed.size(); i < heads->size(); ++i) {
            std::optional<StudyColumn> column = column_from((*heads)[i].text);
            if (column) study_.basis.columns.push_back(std::move(*column));
            else complain((*heads)[i].column, "a column of a study", shown((*heads)[i]));
        }
        return problems_.empty();
    }

    void read_row()
    {
        const std::optional<Cells> cells = next();
        if (!cells) return;
        const std::size_t width = fixed_columns + study_.basis.columns.size();
        if (cells->size() != width) return complain(cell_at(*cells, width).column, fmt::format("{} cells", width), fmt::format("{}", cells->size()));
        const std::size_t before = problems_.size();
        StudyRow row;
        const auto& fields = *cells;
        if (const auto seed = whole_text<std::uint64_t>(fields[0].text)) row.seed = *seed;
        else complain(fields[0].column, "a seed", shown(fields[0]));
        if (const auto plan = plan_numbers_.find(fields[1].text); plan != plan_numbers_.end()) row.plan = plan->second;
        else complain(fields[1].column, "a plan named above", shown(fields[1]));
        if (const auto hash = hash_from(fields[2].text)) row.hash = *hash;
        else complain(fields[2].column, "a hash of sixteen hexadecimal digits", shown(fields[2]));
        for (std::size_t i = fixed_columns; i < width; ++i) {
            row.values.push_back(number_from(fields[i].text));
            if (!row.values.back() && !fields[i].text.empty()) complain(fields[i].column, "a number or nothing", shown(fields[i]));
        }
        if (problems_.size() > before) return;
        if (!lines_.emplace(std::pair(row.seed, row.plan), line_).second)
            return complain(1, "each seed and plan once", fmt::format("those of line {} again", lines_[std::pair(row.seed, row.plan)]));
        study_.rows.push_back(std::move(row));
        if (study_.rows.size() > most_study_runs) complain(1, fmt::format("at most {} runs", most_study_runs), "more");
    }

    std::string_view rest_;
    std::string file_;
    int line_ = 0;
    Study study_;
    Problems problems_;
    std::map<std::string, std::size_t> plan_numbers_;
    std::map<std::pair<std::uint64_t, std::size_t>, int> lines_;
};

}

std::string study_text(const Study& study)
{
    const StudyBasis& basis = study.basis;
    std::string out;
    const auto add = [&](const std::vector<std::string>& cells) { out += csv_line(cells); };
    add({"# flapdoor study", fmt::format("{}", study_format), std::string(model_note)});
    add({"# program", basis.program});
    add({"# detail", fmt::format("{}", basis.detail)});
    add(input_cells("scenario", basis.scenario));
    add(input_cells("rule book", basis.book));
    for (const StudyPlan& plan : basis.plans) {
        std::vector<std::string> cells = input_cells(plan.is_repaired() ? "repaired plan" : "plan", plan);
        if (plan.is_repaired()) cells.insert(cells.end(), {plan.repaired_from, fmt::format("{}", fmt::join(plan.faults, " "))});
        add(cells);
    }
    std::vector<std::string> cells{"seed", "plan", "site"};
    for (const StudyColumn& column : basis.columns) cells.push_back(head_of(column));
    add(cells);
    for (const StudyRow& row : study.rows) {
        cells = {fmt::format("{}", row.seed), basis.plans.at(row.plan).name, to_hex(row.hash)};
        for (const std::optional<double>& value : row.values) cells.push_back(number_text(value));
        add(cells);
    }
    return out;
}

Result<Study> parse_study(std::string_view text, const std::string& file) { return Reader(text, file).read(); }

Result<Study> load_study(const std::string& path)
{
    const Result<std::string> text = text::read_file(path);
    if (!text) return failed(text.error());
    return parse_study(*text, path);
}

Result<void> save_study(const Study& study, const std::string& path) { return text::save_atomically(path, study_text(study)); }

}
