#include "addin/audit/report/register.hpp"

#include <algorithm>
#include <charconv>
#include <map>

#include "addin/audit/book/shown_number.hpp"
#include "addin/audit/report/inputs.hpp"
#include "addin/audit/report/outliers.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

/// Of remarks.
enum Gravity { none, like_a_slip, unit_changed, unlike_column, unusual };

constexpr std::string_view between_values = "; ";

/// Adds what a cell holds to the values of a line, as it shows it and in numbers.
void add_value(const Book& book, const Spot& at, std::string& shown, std::string& typed) {
    const BookCell& cell = *book.find(at);
    const double* number = cell.number();
    const std::string text = cell.text() != nullptr ? *cell.text() : std::string();
    if (!typed.empty()) {
        shown += between_values;
        typed += between_values;
    }
    shown += number != nullptr ? exact_at(book, at, *number) : text;
    typed += number != nullptr ? exact_text(*number) : text;
}

std::optional<double> number_in(const std::string& text) {
    double number = 0;
    const char* const end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, number);
    return error == std::errc() && stop == end ? std::optional(number) : std::nullopt;
}

/// What a function of ours finds usual for one of its arguments, and whether a quantity is that.
struct Usual {
    std::string words;
    bool is_usual = true;
};

class RegisterComposer {
public:
    RegisterComposer(const AuditedBook& audited, const SheetHeads& heads, const TemplateMatch* match,
                     const SignedState* at_signing)
        : audited_(audited), heads_(heads), match_(match), at_signing_(at_signing), inputs_(audited, heads) {}

    std::vector<RegisterLine> lines() {
        std::vector<RegisterLine> made;
        for (const std::vector<Spot>& run : inputs_.runs()) add(run, made);
        std::stable_sort(made.begin(), made.end(),
                         [](const RegisterLine& a, const RegisterLine& b) { return a.gravity > b.gravity; });
        return made;
    }

private:
    /// A column of a table is one line, but for numbers in it that differ from the others.
    void add(const std::vector<Spot>& run, std::vector<RegisterLine>& made) {
        std::vector<double> numbers;
        for (const Spot& spot : run)
            if (const double* number = cell(spot).number()) numbers.push_back(*number);
        RegisterLine line = line_of(run);
        made.push_back(std::move(line));
        if (run.size() == 1 || numbers.size() != run.size()) return;
        const ColumnOfNumbers column(numbers);
        for (std::size_t i = 0; i < run.size(); ++i) {
            const auto differs = column.unlike_others(numbers[i]);
            if (!differs) continue;
            RegisterLine outlier = line_of({run[i]});
            outlier.remark = remark_on(*differs, run, run[i]);
            outlier.gravity = unlike_column;
            made.push_back(std::move(outlier));
        }
    }

    /// \param at is where it stands
    [[nodiscard]] std::string remark_on(const Unlike& unlike, const std::vector<Spot>& run,
                                        const Spot& at) const {
        const bool is_day = std::all_of(run.begin(), run.end(),
                                        [&](const Spot& spot) { return shows_day(audited_.book, spot); });
        const auto text = [&](double number) {
            return is_day ? rounded_at(audited_.book, at, number) : rounded_text(number);
        };
        const std::string others =
            text(unlike.least) + (unlike.least == unlike.greatest ? "" : " to " + text(unlike.greatest));
        return (is_day ? "far from" : "about " + unlike.times) + " the others of its column, which are " +
               others;
    }

    [[nodiscard]] const BookCell& cell(const Spot& spot) const { return *audited_.book.find(spot); }

    RegisterLine line_of(const std::vector<Spot>& run) {
        RegisterLine line;
        line.first = run.front();
        line.target = audited_.book.text(line.first);
        line.cells = cells_text(audited_.book, run);
        line.count = run.size();
        line.label = label_of(run);
        add_words(line);
        for (const Spot& spot : run) add_value(audited_.book, spot, line.value, line.typed);
        if (const auto unit = audited_.units.of(line.first)) line.unit = unit->text->text;
        add_state(run, line);
        line.key = key_of(line);
        if (at_signing_ != nullptr) compare_with_signed(run, line);
        add_template(run, line);
        if (line.count == 1) add_usual(line);
        return line;
    }

    [[nodiscard]] std::string label_of(const std::vector<Spot>& run) const {
        const Spot& first = run.front();
        if (run.size() == 1) {
            const std::string row = audited_.labels.of_row(first);
            const std::string head = audited_.labels.of_column(first);
            if (row.empty()) return head;
            const bool says_all = inputs_.has_own_line(first) || heads_.row(first.sheet) < 0;
            return says_all || head.empty() || head == row ? row : row + ": " + head;
        }
        return audited_.labels.of_column(first);
    }

    /// Reference, symbol and note, by the heads of the sheet or by where they stand.
    void add_words(RegisterLine& line) const {
        const auto text_of_cell = [&](const BookCell* cell) {
            const bool is_word = cell != nullptr && cell->text() != nullptr &&
                                 !inputs_.is_entry({line.first.sheet, cell->row, cell->column});
            return is_word ? *cell->text() : std::string();
        };
        line.reference = text_of_cell(heads_.cell(line.first, {"ref", "reference", "no", "no.", "item"}));
        if (line.count > 1) return;
        line.symbol = text_of_cell(heads_.cell(line.first, {"symbol", "sym", "sym."}));
        line.note = text_of_cell(
            heads_.cell(line.first, {"note or source", "note", "notes", "source", "remark", "remarks"}));
        if (line.note.starts_with("assumed")) line.note.erase(0, line.note.starts_with("assumed; ") ? 9 : 7);
        const bool is_unit = audited_.texts.read(line.note).unit.has_value();  // of a list's own column
        if (is_unit || line.note == line.symbol || line.note == line.label) line.note.clear();
        for (const CellComment& comment : audited_.sheet(line.first.sheet).comments) {
            if (comment.row != line.first.row || comment.column != line.first.column) continue;
            if (!line.note.empty()) line.note += "; ";
            line.note += comment.text;
        }
    }

    void add_state(const std::vector<Spot>& run, RegisterLine& line) const {
        std::size_t assumed = 0;
        for (const Spot& spot : run) {
            const BookCell* mark = heads_.cell(spot, {"ok"});
            const BookCell* counts = heads_.cell(spot, {"assumed"});
            if (mark != nullptr && !mark->shows_nothing())
                ++line.confirmed;
            else if (counts != nullptr && counts->number() != nullptr && *counts->number() == 1)
                ++assumed;
        }
        if (assumed > 0)
            line.state = InputState::assumed;
        else if (line.confirmed == run.size())
            line.state = InputState::confirmed;
    }

    std::string key_of(const RegisterLine& line) {
        const std::string name = audited_.sheet(line.first.sheet).name + "|" + line.label;
        return name + "|" + std::to_string(++seen_[name]);
    }

    void compare_with_signed(const std::vector<Spot>& run, RegisterLine& line) const {
        const auto then = at_signing_->inputs.find(line.key);
        if (then == at_signing_->inputs.end())
            line.when_signed.emplace();
        else if (then->second != line.kept())
            line.when_signed = shown_as_now(then->second, run, line);
    }

    /// What was kept in numbers, as the cells of now show numbers: days as days, unless they then read as
    /// now.
    [[nodiscard]] std::string shown_as_now(const std::string& kept, const std::vector<Spot>& run,
                                           const RegisterLine& line) const {
        std::string shown;
        std::size_t place = 0;
        for (std::size_t begin = 0; begin <= kept.size(); ++place) {
            const std::size_t end = std::min(kept.find(between_values, begin), kept.size());
            const std::string text = kept.substr(begin, end - begin);
            const std::optional<double> number = number_in(text);
            const Spot& at = run[std::min(place, run.size() - 1)];
            shown += (place == 0 ? "" : std::string(between_values)) +
                     (number ? exact_at(audited_.book, at, *number) : text);
            begin = end + between_values.size();
        }
        return shown == line.value_and_unit() ? kept : shown;
    }

    void add_template(const std::vector<Spot>& run, RegisterLine& line) const {
        if (match_ == nullptr) return;
        std::string shown;
        std::string values;
        std::string unit;
        for (const Spot& spot : run) {
            const auto from = match_->in_template(spot);
            const BookCell* there = from ? match_->from().find(*from) : nullptr;
            if (there == nullptr || there->is_formula() || there->shows_nothing()) continue;
            add_value(match_->from(), *from, shown, values);
            if (spot == line.first) unit = unit_in_template(spot, *from, line);
        }
        if (values.empty()) return;
        line.in_template = unit.empty() || unit == "1" ? shown : shown + " " + unit;
        const bool same = values == line.typed;
        if (line.state == InputState::unknown)
            line.state = same && unit == line.unit ? InputState::assumed : InputState::given;
        if (line.count > 1 || line.state == InputState::confirmed) return;
        const double* number = cell(line.first).number();
        if (number == nullptr || *number == 0) return;
        if (same && unit != line.unit && !unit.empty()) {
            line.remark = "the unit is another than the template's, and the number is the same";
            line.gravity = unit_changed;
        } else if (!same) {
            add_slip(*match_->from().find(*match_->in_template(line.first)), line);
        }
    }

    /// The unit that stood where the workbook's stands.
    [[nodiscard]] std::string unit_in_template(const Spot& spot, const Spot& from,
                                               const RegisterLine& line) const {
        const auto unit = audited_.units.of(spot);
        if (!unit) return {};
        Spot at{from.sheet, from.row, unit->at.column};
        if (!unit->beside) {
            const auto head = match_->in_template(unit->at);
            if (!head) return {};
            at = *head;
        }
        const BookCell* there = match_->from().find(at);
        if (there != nullptr && there->text() != nullptr) return *there->text();
        return there != nullptr ? line.unit : std::string();  // a bare 1
    }

    void add_slip(const BookCell& there, RegisterLine& line) const {
        if (there.number() == nullptr || shows_day(audited_.book, line.first)) return;
        const auto slip = slip_between(*there.number(), *cell(line.first).number());
        if (!slip) return;
        line.remark = *slip + " the template's";
        line.gravity = like_a_slip;
    }

    void add_usual(RegisterLine& line) const {
        const BookCell* words = heads_.cell(line.first, {"usual"});
        const BookCell* from = heads_.cell(line.first, {"usual from"});
        const BookCell* to = heads_.cell(line.first, {"usual to"});
        const BookCell* counted = heads_.cell(line.first, {"unusual"});
        const bool has_ends =
            from != nullptr && to != nullptr && from->number() != nullptr && to->number() != nullptr;
        const bool one_value = line.first.column == heads_.column(line.first.sheet, {"value"});
        if (has_ends && one_value)
            line.usual = rounded_at(audited_.book, line.first, *from->number()) + " to " +
                         rounded_at(audited_.book, line.first, *to->number());
        else if (words != nullptr && words->text() != nullptr)
            line.usual = *words->text();
        bool unusual_here =
            one_value && counted != nullptr && counted->number() != nullptr && *counted->number() == 1;
        if (!has_ends && words == nullptr) {
            const Usual usual = usual_by_function(line);
            line.usual = usual.words;
            unusual_here = !usual.is_usual;
        }
        if (!unusual_here) return;
        line.remark = "unusual" + (line.remark.empty() ? "" : "; " + line.remark);
        line.gravity = unusual;
    }

    [[nodiscard]] Usual usual_by_function(const RegisterLine& line) const {
        const double* number = cell(line.first).number();
        const auto argument = inputs_.argument(line.first);
        if (number == nullptr || !argument || argument->place >= argument->function->parameters.size())
            return {};
        const addin::Limits& limits = argument->function->parameters[argument->place].limits;
        if (!limits.is_stated || limits.usual.empty()) return {};
        Usual usual{limits.usual, true};
        const auto unit = audited_.units.of(line.first);
        if (!unit || !unit->text->unit || !unit->text->unit->dimension.same_kind(limits.dimension))
            return usual;
        const double bare =
            default_unit(limits.dimension).scale.from_coherent(unit->text->unit->scale.to_coherent(*number));
        const bool none = *number == 0 && limits.or_none;
        usual.is_usual = none || (bare >= limits.usual_least && bare <= limits.usual_most);
        return usual;
    }

    const AuditedBook& audited_;
    const SheetHeads& heads_;
    const TemplateMatch* match_;
    const SignedState* at_signing_;
    Inputs inputs_;
    std::map<std::string, int> seen_;
};

}  // namespace

std::string_view text_of(InputState state) {
    switch (state) {
        case InputState::unknown:
            return "";
        case InputState::given:
            return "given";
        case InputState::assumed:
            return "assumed";
        case InputState::confirmed:
            return "confirmed";
    }
    return "";
}

std::vector<RegisterLine> register_of(const AuditedBook& audited, const SheetHeads& heads,
                                      const TemplateMatch* match, const SignedState* at_signing) {
    return RegisterComposer(audited, heads, match, at_signing).lines();
}

}  // namespace undercroft::audit
